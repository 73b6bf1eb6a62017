import { z } from 'zod';
import { athlete } from './athlete.ts';
import { bodyMeasurement } from './bodyMeasurement.ts';
import { caseRecord } from './case.ts';
import { injury } from './injury.ts';
import { jumpTest, jumpTrial } from './jump.ts';
import { findingDecision, mediaRecord, reportRecord } from './outcome.ts';
import { ownMovement } from './ownMovement.ts';
import { BY_NOTHING_ELSE, judgedBy, ownRule } from './ownRule.ts';
import { screeningResult, screeningSession } from './screening.ts';
import {
  instabilityEvent,
  neurovascularCheck,
  provocationTest,
  questionnaireTotal,
  shoulderRecord,
} from './shoulder.ts';
import { enteredMeasure, landmarkTrack, movementTrial, pointRepeat, still, trialEvent } from './trial.ts';

/**
 * Every kind of record a practitioner can change, with its schema and the record it belongs to. One list serves the
 * contract, the store, its in-memory twin, undo and history, so that none of them can forget a kind.
 * `parent` is [kind, field of this record that holds the parent's id]; removing a parent removes its children.
 */
export const RECORDS = {
  athlete: { schema: athlete, parent: null },
  case: { schema: caseRecord, parent: ['athlete', 'athleteId'] },
  injury: { schema: injury, parent: ['athlete', 'athleteId'] },
  bodyMeasurement: { schema: bodyMeasurement, parent: ['athlete', 'athleteId'] },
  shoulderRecord: { schema: shoulderRecord, parent: ['injury', 'injuryId'] },
  instabilityEvent: { schema: instabilityEvent, parent: ['injury', 'injuryId'] },
  neurovascularCheck: { schema: neurovascularCheck, parent: ['injury', 'injuryId'] },
  provocationTest: { schema: provocationTest, parent: ['injury', 'injuryId'] },
  questionnaireTotal: { schema: questionnaireTotal, parent: ['injury', 'injuryId'] },
  screeningSession: { schema: screeningSession, parent: ['case', 'caseId'] },
  screeningResult: { schema: screeningResult, parent: ['screeningSession', 'sessionId'] },
  jumpTest: { schema: jumpTest, parent: ['case', 'caseId'] },
  jumpTrial: { schema: jumpTrial, parent: ['jumpTest', 'testId'] },
  ownMovement: { schema: ownMovement, parent: ['case', 'caseId'] },
  ownRule: { schema: ownRule, parent: ['case', 'caseId'] },
  movementTrial: { schema: movementTrial, parent: ['case', 'caseId'] },
  landmarkTrack: { schema: landmarkTrack, parent: ['movementTrial', 'trialId'] },
  pointRepeat: { schema: pointRepeat, parent: ['movementTrial', 'trialId'] },
  still: { schema: still, parent: ['movementTrial', 'trialId'] },
  trialEvent: { schema: trialEvent, parent: ['movementTrial', 'trialId'] },
  enteredMeasure: { schema: enteredMeasure, parent: ['case', 'caseId'] },
  findingDecision: { schema: findingDecision, parent: ['case', 'caseId'] },
  report: { schema: reportRecord, parent: ['case', 'caseId'] },
  media: { schema: mediaRecord, parent: ['case', 'caseId'] },
} as const satisfies Record<string, { schema: z.ZodObject; parent: readonly [string, string] | null }>;

export type Kind = keyof typeof RECORDS;
export type RecordOf<K extends Kind> = z.infer<(typeof RECORDS)[K]['schema']>;
export type AnyRecord = { [K in Kind]: RecordOf<K> }[Kind];
export const KINDS = Object.keys(RECORDS) as Kind[];

/** Whether records of a kind describe the athlete and so show in every case of theirs. */
export function isOfAthlete(kind: Kind): boolean {
  if (kind === 'athlete' || kind === 'case') return kind === 'athlete';
  return isOfAthlete(RECORDS[kind].parent[0]);
}

/** Everything in one case: what the renderer shows, the rules judge, the report prints and an export contains. */
export const caseFile = z.strictObject({
  /** Counts up with every edit, undo and redo. */
  revision: z.int().min(0),
  judgedBy: judgedBy.default(BY_NOTHING_ELSE),
  case: caseRecord,
  athlete,
  injuries: z.array(injury),
  bodyMeasurements: z.array(bodyMeasurement),
  shoulderRecords: z.array(shoulderRecord),
  instabilityEvents: z.array(instabilityEvent),
  neurovascularChecks: z.array(neurovascularCheck),
  provocationTests: z.array(provocationTest),
  questionnaireTotals: z.array(questionnaireTotal),
  screeningSessions: z.array(screeningSession),
  screeningResults: z.array(screeningResult),
  jumpTests: z.array(jumpTest),
  jumpTrials: z.array(jumpTrial),
  ownMovements: z.array(ownMovement),
  ownRules: z.array(ownRule),
  movementTrials: z.array(movementTrial),
  landmarkTracks: z.array(landmarkTrack),
  pointRepeats: z.array(pointRepeat),
  stills: z.array(still),
  trialEvents: z.array(trialEvent),
  enteredMeasures: z.array(enteredMeasure),
  findingDecisions: z.array(findingDecision),
  reports: z.array(reportRecord),
  media: z.array(mediaRecord),
});
export type CaseFile = z.infer<typeof caseFile>;
