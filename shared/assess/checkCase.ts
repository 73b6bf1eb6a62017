import { bodyWeightAsForceNeeded } from '../kernel/check/bodyWeightAsForceNeeded.ts';
import { impossibleRelease } from '../kernel/check/impossibleRelease.ts';
import { releaseAngleWithoutTarget } from '../kernel/check/releaseAngleWithoutTarget.ts';
import { slowedSeconds } from '../kernel/check/slowedSeconds.ts';
import { unlikeHeightsCompared } from '../kernel/check/unlikeHeightsCompared.ts';
import { weightAsMassTimesTen } from '../kernel/check/weightAsMassTimesTen.ts';
import { formatDate } from '../format/number.ts';
import { movementById } from '../knowledge/movements/index.ts';
import type { MovementTrial } from '../model/trial.ts';
import type { CaseFile } from '../model/records.ts';
import { isKnown, type Reading } from '../quantity.ts';
import type { Unit } from '../units.ts';
import type { CaseCheck, Fact } from './assessment.ts';

/**
 * The case checks, each asked wherever the file holds something that it could question. `about` is the key of the fact
 * questioned, or the id of the record where there is no fact of it.
 */
export function checkCase(file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  return [
    ...stated(file, facts),
    ...heightsSideBySide(file, facts),
    ...file.jumpTests.flatMap((test) => longestFlight(test.id, file, facts)),
    ...file.movementTrials.flatMap((trial) => checksOfTrial(trial, file, facts)),
  ];
}

/** Numbers that the author of the case worked out and typed in. */
function stated(file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  return file.enteredMeasures.flatMap(({ id, measureId, valueSi }): CaseCheck[] => {
    if (valueSi === null) return [];
    const about = factOf(facts, id, measureId);
    if (measureId === 'body.weight') {
      return [weightAsMassTimesTen({ statedWeightN: valueSi, massKg: file.athlete.massKg, about })];
    }
    if (measureId === 'jump.forceToLeave') {
      return [
        bodyWeightAsForceNeeded({
          statedForceN: valueSi,
          weight: readingOf(facts, 'body.weight', 'N'),
          height: readingOf(facts, 'jump.height.force', 'm'),
          pushOffDistance: readingOf(facts, 'jump.countermovementDepth', 'm'),
          about,
        }),
      ];
    }
    if (measureId === 'jump.shareOfStanding') return shareOfStanding(facts, about);
    return [];
  });
}

function shareOfStanding(facts: readonly Fact[], about: string): CaseCheck[] {
  const rise = facts.find((fact) => fact.measure === 'com.riseInSkill');
  const jump = facts.findLast((fact) => fact.measure.startsWith('jump.height.') && fact.from.kind === 'jumpTest');
  return compared(rise, jump, about);
}

/** Jump tests of one kind are set side by side by the report and by progress. */
function heightsSideBySide({ jumpTests }: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const tests = jumpTests.toSorted((a, b) => (a.heldOn < b.heldOn ? -1 : a.heldOn > b.heldOn ? 1 : 0));
  return tests.flatMap((test, i) => {
    const before = tests.slice(0, i).findLast((one) => one.kind === test.kind);
    const [earlier, later] = [before && heightOf(facts, before.id), heightOf(facts, test.id)];
    return compared(earlier, later, later?.key ?? test.id);
  });
}

function heightOf(facts: readonly Fact[], testId: string): Fact | undefined {
  return facts.find((fact) => fact.from.id === testId && fact.height !== null);
}

function compared(a: Fact | undefined, b: Fact | undefined, about: string): CaseCheck[] {
  const [one, other] = [comparable(a), comparable(b)];
  return one === null || other === null ? [] : [unlikeHeightsCompared({ a: one, b: other, about })];
}

/** A known height with what it may be compared by. */
function comparable(fact: Fact | undefined): Parameters<typeof unlikeHeightsCompared>[0]['a'] | null {
  if (fact === undefined || fact.height === null || fact.value.kind !== 'number' || !isKnown(fact.value.reading))
    return null;
  const { reference, method, arms } = fact.height;
  const label = fact.takenOn === null ? fact.label : `${fact.label} of ${formatDate(fact.takenOn)}`;
  return { label, heightM: fact.value.reading.value, reference, method, arms: arms === 'not recorded' ? null : arms };
}

function longestFlight(testId: string, { jumpTrials }: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const longest = jumpTrials
    .filter((trial) => trial.testId === testId && trial.flightTimeS !== null)
    .toSorted((a, b) => (b.flightTimeS ?? 0) - (a.flightTimeS ?? 0))[0];
  if (longest === undefined) return [];
  const about = factOf(facts, longest.id, 'jump.flightTime');
  return [slowedSeconds({ flightTimeS: longest.flightTimeS, riseM: null, gravityFound: null, about })];
}

function checksOfTrial(trial: MovementTrial, file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const own = facts.filter((fact) => fact.from.id === trial.id);
  if (own.length === 0) return [];
  const about = (measure: string) => factOf(own, trial.id, measure);
  const rise = readingOf(own, 'com.riseInSkill', 'm');
  const timing = slowedSeconds({
    flightTimeS: inTheAir(trial.id, file),
    riseM: isKnown(rise) ? rise.value : null,
    gravityFound: readingOf(own, 'ball.gravityFound', 'm/s2'),
    about: about('ball.gravityFound'),
  });
  const movement = movementById(trial.movementId);
  if (movement === null || !movement.aimsAtTarget || !hasBall(own)) return [timing];
  return [
    timing,
    impossibleRelease({
      releaseSpeed: readingOf(own, 'ball.releaseSpeed', 'm/s'),
      leastSpeed: readingOf(own, 'ball.leastSpeed', 'm/s'),
      entryAngle: readingOf(own, 'ball.entryAngle', 'rad'),
      mustFall: movement.checkpoints.some(({ measure }) => measure === 'ball.entryAngle'),
      about: about('ball.releaseSpeed'),
    }),
    releaseAngleWithoutTarget({
      releaseAngle: readingOf(own, 'ball.releaseAngle', 'rad'),
      targetDistanceM: trial.targetDistanceM,
      targetHeightM: trial.targetHeightM,
      aimsAtTarget: movement.aimsAtTarget,
      about: about('ball.releaseAngle'),
    }),
  ];
}

/** The fact that came of a record, under the record's own id or from the trial it belongs to; a known one before others. */
function factOf(facts: readonly Fact[], recordId: string, measure: string): string {
  const own = facts.filter(
    (one) => one.measure === measure && (one.from.id === recordId || one.key.includes(recordId)),
  );
  const known = own.find(({ value }) => value.kind === 'number' && isKnown(value.reading));
  return (known ?? own[0])?.key ?? recordId;
}

/** Whether anything of the ball is known: a trial without one is not questioned about it. */
function hasBall(own: readonly Fact[]): boolean {
  return own.some(
    (fact) => fact.measure.startsWith('ball.') && fact.value.kind === 'number' && isKnown(fact.value.reading),
  );
}

function inTheAir(trialId: string, { trialEvents }: CaseFile): number | null {
  const at = (event: string) => trialEvents.find((one) => one.trialId === trialId && one.event === event)?.timeS;
  const [off, down] = [at('take-off'), at('landing')];
  return off === undefined || down === undefined || down <= off ? null : down - off;
}

function readingOf<U extends Unit>(facts: readonly Fact[], measure: string, unit: U): Reading<U> {
  for (const fact of facts) {
    if (fact.measure !== measure || fact.value.kind !== 'number' || !isKnown(fact.value.reading)) continue;
    if (fact.value.reading.unit === unit) return fact.value.reading as Reading<U>;
  }
  return { unknown: 'not recorded' };
}
