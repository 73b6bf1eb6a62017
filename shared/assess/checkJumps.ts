import { formatDate } from '../format/number.ts';
import { bentLanding } from '../kernel/check/bentLanding.ts';
import { bodyWeightNotSubtracted } from '../kernel/check/bodyWeightNotSubtracted.ts';
import { reachInOtherShoes } from '../kernel/check/reachInOtherShoes.ts';
import { slowedSeconds } from '../kernel/check/slowedSeconds.ts';
import { FLIGHT_METHODS, type JumpTest } from '../model/jump.ts';
import type { CaseFile } from '../model/records.ts';
import type { CaseCheck, Fact } from './assessment.ts';
import { compared, factKeyOf, readingOf } from './checkedFacts.ts';

/** What the jump tests of a case could have got wrong. */
export function checkJumps(file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  return [
    ...heightsSideBySide(file, facts),
    ...file.jumpTests.flatMap((test) => [
      ...longestFlight(test.id, file, facts),
      ...landing(test, file, facts),
      ...footwear(test, file, facts),
    ]),
    ...forces(file, facts),
  ];
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

function longestFlight(testId: string, { jumpTrials }: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const longest = jumpTrials
    .filter((trial) => trial.testId === testId && trial.flightTimeS !== null)
    .toSorted((a, b) => (b.flightTimeS ?? 0) - (a.flightTimeS ?? 0))[0];
  if (longest === undefined) return [];
  const about = factKeyOf(facts, longest.id, 'jump.flightTime');
  return [slowedSeconds({ flightTimeS: longest.flightTimeS, riseM: null, gravityFound: null, about })];
}

/** Flight times against a film of the same jump on the same day. */
function landing(test: JumpTest, file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  if (!FLIGHT_METHODS.includes(test.method)) return [];
  const film = file.movementTrials.find(
    (trial) => trial.filmedOn === test.heldOn && trial.movementId === `${test.kind}-jump`,
  );
  if (film === undefined) return [];
  const seen = facts.filter((fact) => fact.from.id === film.id);
  const landed = seen.filter((fact) => fact.phase === 'landing');
  const none = { unknown: 'no force record' };
  const about = factKeyOf(facts, test.id, 'jump.height.flightTime');
  return [
    bentLanding({
      kneeAtTakeoff: readingOf(seen, 'knee.flexAtTakeoff', 'rad'),
      kneeAtLanding: readingOf(landed, 'knee.flexAtContact', 'rad'),
      byFlightTime: none,
      byImpulse: none,
      about,
    }),
  ];
}

function worn({ heldOn, standingReachM, shoes }: JumpTest) {
  return { label: `the test of ${formatDate(heldOn)}`, standingReachM, hasShoes: shoes };
}

function footwear(test: JumpTest, file: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  if (test.method !== 'jump-and-reach') return [];
  const others = file.jumpTests.filter((one) => one.id !== test.id && one.method === 'jump-and-reach').map(worn);
  return [reachInOtherShoes({ test: worn(test), others, about: factKeyOf(facts, test.id, 'jump.height.reach') })];
}

function forces({ jumpTrials }: CaseFile, facts: readonly Fact[]): CaseCheck[] {
  const none = { unknown: 'not filmed' };
  return jumpTrials.flatMap(({ id, force, isSetAside }) => {
    if (force === null || isSetAside) return [];
    const own = facts.filter((fact) => fact.from.id === id);
    return [
      bodyWeightNotSubtracted({
        takeoffVelocityMPerS: force.takeoffVelocityMPerS.value,
        integratedS: force.timeToTakeoffS.value,
        about: factKeyOf(facts, id, 'jump.takeoffVelocity'),
      }),
      bentLanding({
        kneeAtTakeoff: none,
        kneeAtLanding: none,
        byFlightTime: readingOf(own, 'jump.height.forceFlightTime', 'm'),
        byImpulse: readingOf(own, 'jump.height.force', 'm'),
        about: factKeyOf(facts, id, 'jump.height.forceFlightTime'),
      }),
    ];
  });
}
