import { z } from 'zod';
import { shippedItem } from '../../shared/knowledge/screening/shipped.ts';
import { measureById } from '../../shared/knowledge/measures/index.ts';
import { athlete } from '../../shared/model/athlete.ts';
import { LISTS } from '../../shared/model/caseLists.ts';
import { UNSAID, blankAthlete, blankCase, blankInjury } from '../../shared/model/blank.ts';
import { purpose } from '../../shared/model/case.ts';
import { CONDITIONS, injury, REGIONS } from '../../shared/model/injury.ts';
import { jumpTest } from '../../shared/model/jump.ts';
import { caseFile, type CaseFile } from '../../shared/model/records.ts';
import { grade } from '../../shared/model/screening.ts';
import { convert, isUnit, type Unit } from '../../shared/units.ts';

const unit = z.string().refine(isUnit, 'not a unit');
const side = z.enum(['left', 'right', 'none']);
const pain = z.int().min(0).max(10).nullable();

/** The form of a vignette file; README.md here says it in words. Strict, so that a misspelt field is noticed. */
export const vignette = z.strictObject({
  title: z.string(),
  told: z.string(),
  purpose: purpose.default('intake'),
  athlete: athlete.partial().strict(),
  injuries: z
    .array(
      z.strictObject({
        condition: z.enum(CONDITIONS),
        region: z.enum(REGIONS),
        side,
        status: injury.shape.status,
        onset: z.string(),
        diagnosis: z.string().default(''),
        hadSurgery: z.boolean().nullable().default(null),
        restrictions: z.string().default(''),
        clearedBy: z.string().default(''),
        clearedOn: z.string().nullable().default(null),
      }),
    )
    .default([]),
  screening: z
    .array(
      z.strictObject({
        test: z.string(),
        side,
        grade: grade.optional(),
        value: z.number().optional(),
        unit: unit.optional(),
        positive: z.boolean().optional(),
        pain,
      }),
    )
    .default([]),
  jumps: z
    .array(
      z.strictObject({
        heldOn: z.string().default('2026-11-18'),
        kind: jumpTest.shape.kind,
        method: z.literal('flight-time'),
        arms: jumpTest.shape.arms,
        device: z.string().default(''),
        flightTimes: z.array(z.number()),
        pains: z.array(pain),
      }),
    )
    .default([]),
  trials: z
    .array(
      z.strictObject({
        movement: z.string(),
        side,
        pain,
        values: z.array(
          z.strictObject({
            phase: z.string(),
            measure: z.string(),
            flag: z.boolean().optional(),
            value: z.number().optional(),
            unit: unit.optional(),
            side: side.default('none'),
          }),
        ),
      }),
    )
    .default([]),
  entered: z
    .array(
      z.strictObject({
        measure: z.string(),
        flag: z.boolean().optional(),
        value: z.number().optional(),
        unit: unit.optional(),
        side: side.default('none'),
      }),
    )
    .default([]),
  expect: z.array(
    z.strictObject({
      rule: z.string(),
      outcome: z.string(),
      printed: z.string().optional(),
      notPrinted: z.string().optional(),
      needed: z.string().optional(),
      clears: z.string().optional(),
    }),
  ),
  stops: z.array(z.string()).default([]),
  because: z.string(),
});
export type Vignette = z.infer<typeof vignette>;

const DAY = '2026-11-18';

/** The case file that a vignette tells of, checked by the model's own schemas. */
export function checkCaseFile(told: Omit<Vignette, 'title' | 'expect' | 'stops'>): CaseFile {
  let count = 0;
  const id = (): string => {
    count += 1;
    return `00000000-0000-4000-8000-${count.toString(16).padStart(12, '0')}`;
  };
  const caseId = id();
  const athleteId = id();
  const sessionId = id();
  const jumps = told.jumps.map((jump) => ({ ...jump, id: id() }));
  const trials = told.trials.map((trial) => ({ ...trial, id: id() }));
  const nothing = Object.values(LISTS).map((list) => [list, []]);
  return caseFile.parse({
    ...Object.fromEntries(nothing),
    revision: 0,
    judgedBy: { shared: [], held: null },
    case: {
      ...blankCase({ id: caseId, athleteId }, '2026-001', told.purpose, DAY),
      practitioner: 'R. Example',
      note: told.told,
      isInvented: true,
    },
    athlete: {
      ...blankAthlete(athleteId),
      name: 'Invented',
      isPseudonym: true,
      ...told.athlete,
    },
    injuries: told.injuries.map((one) => ({ ...blankInjury({ id: id(), athleteId }, one), ...one })),
    screeningSessions:
      told.screening.length === 0
        ? []
        : [
            {
              id: sessionId,
              caseId,
              heldOn: DAY,
              rater: '',
              batteryId: 'general',
              batteryVersion: '1',
              note: '',
              battery: null,
            },
          ],
    screeningResults: told.screening.map((one) => ({
      id: id(),
      sessionId,
      itemId: one.test,
      side: one.side,
      valueSi: toSi(one.value, one.unit, shippedItem({ batteryId: 'general', version: '1', itemId: one.test })?.unit),
      grade: one.grade ?? null,
      isPositive: one.positive ?? null,
      painNrs: one.pain,
      note: '',
      ...UNSAID,
    })),
    jumpTests: jumps.map(({ id: testId, heldOn, kind, method, arms, device }) => ({
      id: testId,
      caseId,
      heldOn,
      kind,
      method,
      arms,
      device,
      shoes: true,
      frameRateHz: null,
      standingReachM: null,
      dropHeightM: null,
      note: '',
      warmUp: '',
    })),
    jumpTrials: jumps.flatMap((test) =>
      test.flightTimes.map((flightTimeS, i) => ({
        id: id(),
        testId: test.id,
        number: i + 1,
        flightTimeS,
        contactTimeS: null,
        jumpReachM: null,
        force: null,
        mediaSha256: null,
        painNrs: test.pains[i] ?? null,
        movementTrialId: null,
        isSetAside: false,
        note: '',
      })),
    ),
    movementTrials: trials.map((trial) => ({
      id: trial.id,
      caseId,
      movementId: trial.movement,
      filmedOn: DAY,
      label: '',
      side: trial.side,
      captureRateHz: null,
      captureRateFrom: null,
      calibrationDraft: null,
      frameTimesS: null,
      playbackRateHz: null,
      clipSha256: null,
      calibration: null,
      ballId: null,
      targetDistanceM: null,
      targetHeightM: null,
      targetDistanceUM: null,
      targetHeightUM: null,
      painNrs: trial.pain,
      note: '',
    })),
    landmarkTracks: [],
    pointRepeats: [],
    stills: [],
    trialEvents: [],
    ownMovements: [],
    ownRules: [],
    enteredMeasures: [
      ...trials.flatMap((trial) => trial.values.map((value) => ({ ...value, trialId: trial.id }))),
      ...told.entered.map((value) => ({ ...value, trialId: null, phase: null })),
    ].map((one) => ({
      id: id(),
      caseId,
      trialId: one.trialId,
      measureId: one.measure,
      phase: one.phase,
      side: one.side,
      takenOn: DAY,
      valueSi: toSi(one.value, one.unit, measureById(one.measure)?.unit),
      uSi: null,
      flag: one.flag ?? null,
      note: '',
    })),
    findingDecisions: [],
    reports: [],
    media: [],
  });
}

function toSi(value: number | undefined, from: Unit | undefined, to: Unit | null | undefined): number | null {
  if (value === undefined) return null;
  if (from === undefined || to === undefined || to === null) throw new Error('a value without a unit, or of no unit');
  return convert(value, from, to);
}
