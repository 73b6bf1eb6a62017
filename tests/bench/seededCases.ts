import { randomSource } from '../../main/demo/randomSource.ts';
import { conditionEntry } from '../../shared/knowledge/conditions/index.ts';
import { possibleRangeSi, plausibleRangeSi, measureById } from '../../shared/knowledge/measures/index.ts';
import { MOVEMENTS } from '../../shared/knowledge/movements/index.ts';
import { BATTERIES } from '../../shared/knowledge/screening/shipped.ts';
import { UNSAID, blankInjury } from '../../shared/model/blank.ts';
import { CONDITIONS } from '../../shared/model/injury.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { GRADES } from '../../shared/model/screening.ts';
import { sampleCase } from '../support/sampleCase.ts';

/**
 * So many full cases, no two alike and the same on every run: up to three injuries, every test of the battery, three
 * countermovement jumps, and two trials of different movements with a value for each of their checkpoints.
 */
export function seededCases(count: number): CaseFile[] {
  return Array.from({ length: count }, (_, i) => seededCase(i));
}

function seededCase(number: number): CaseFile {
  const { uniform, normal, id } = randomSource(number);
  const one = <T>(of: readonly T[]): T => of[Math.floor(uniform() * of.length)] as T;
  const within = ([low, high]: readonly [number, number]): number => low + uniform() * (high - low);
  const whole = sampleCase();
  const caseId = whole.case.id;
  const [battery] = BATTERIES;
  const session = whole.screeningSessions[0];
  const trial = whole.movementTrials[0];
  if (battery === undefined || session === undefined || trial === undefined) throw new Error('the sample case is bare');
  const pain = (): number => (uniform() < 0.9 ? 0 : Math.ceil(uniform() * 8));

  const first = Math.floor(uniform() * MOVEMENTS.length);
  const movements = [0, 1].map((k) => MOVEMENTS[(first + k * 3) % MOVEMENTS.length] as (typeof MOVEMENTS)[number]);
  const movementTrials = movements.map((movement) => ({
    ...trial,
    id: id(),
    movementId: movement.id,
    side: one(['left', 'right'] as const),
    painNrs: pain(),
  }));
  return {
    ...whole,
    athlete: {
      ...whole.athlete,
      birthDate: `${1985 + Math.floor(uniform() * 26)}-05-14`,
      referenceSex: one(['female', 'male'] as const),
      massKg: 50 + uniform() * 50,
      statureM: 1.5 + uniform() * 0.5,
      dominantSide: one(['left', 'right'] as const),
    },
    injuries: Array.from({ length: Math.floor(uniform() * 4) }, () => {
      const condition = one(CONDITIONS);
      const [region = 'knee'] = conditionEntry(condition).regions;
      return {
        ...blankInjury({ id: id(), athleteId: whole.athlete.id }, { region, side: one(['left', 'right'] as const) }),
        condition,
        status: one(['current', 'recovering', 'resolved'] as const),
        onset: `202${Math.floor(uniform() * 6)}-03`,
      };
    }),
    screeningResults: battery.items.flatMap((item) =>
      (item.hasSides ? (['left', 'right'] as const) : (['none'] as const)).map((side) => {
        const range = item.kind === 'measured' ? plausibleRangeSi(item.measure) : null;
        return {
          id: id(),
          sessionId: session.id,
          itemId: item.id,
          side,
          valueSi: range === null ? null : within(range),
          grade: item.kind === 'graded' ? one(GRADES) : null,
          isPositive: item.kind === 'clearing' ? uniform() < 0.05 : null,
          painNrs: pain(),
          note: '',
          ...UNSAID,
        };
      }),
    ),
    jumpTrials: whole.jumpTrials.map((jump) => ({ ...jump, flightTimeS: 0.5 + normal(0.05), painNrs: 0 })),
    movementTrials,
    trialEvents: [],
    enteredMeasures: movementTrials.flatMap((of, k) =>
      (movements[k]?.checkpoints ?? []).map(({ measure, phase }) => {
        const range = possibleRangeSi(measure) === null ? null : plausibleRangeSi(measure);
        return {
          id: id(),
          caseId,
          trialId: of.id,
          measureId: measure,
          phase,
          side: 'none' as const,
          takenOn: of.filmedOn,
          valueSi: range === null ? null : within(range),
          uSi: range === null ? null : (range[1] - range[0]) / 50,
          flag: measureById(measure)?.kind === 'flag' ? uniform() < 0.5 : null,
          note: '',
        };
      }),
    ),
  };
}
