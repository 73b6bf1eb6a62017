import { DomainError } from '../errors.ts';
import { contactTime } from '../kernel/jump/contactTime.ts';
import { flightHeight } from '../kernel/jump/flightHeight.ts';
import { flightTimeFromEvents } from '../kernel/jump/flightTimeFromEvents.ts';
import { fromForceSummary, type RestoredJump } from '../kernel/jump/fromForceSummary.ts';
import { flightTime } from '../kernel/jump/flightTime.ts';
import { jumpAndReachHeight } from '../kernel/jump/jumpAndReachHeight.ts';
import { predictPower } from '../kernel/jump/predictPower.ts';
import { reactiveStrengthIndex } from '../kernel/jump/reactiveStrengthIndex.ts';
import { reactiveStrengthRatio } from '../kernel/jump/reactiveStrengthRatio.ts';
import { derive } from '../kernel/quantity/derive.ts';
import type { ForceSummary, JumpTest, JumpTrial } from '../model/jump.ts';
import type { CaseFile } from '../model/records.ts';
import { isKnown, measured, type Quantity, type Reading, type Source, type Unknown } from '../quantity.ts';
import type { Unit } from '../units.ts';
import type { Fact, FactValue } from './assessment.ts';
import { massOf } from './factsFromAthlete.ts';
import { computed, makeFact, number, unknown } from './makeFact.ts';

const definition: Source = { cite: 'Definition', status: 'convention' };

/** What each trial yields, then what the trials of a test say together, then the newest test against earlier ones. */
export function factsFromJumps(file: CaseFile): Fact[] {
  const tests = file.jumpTests.toSorted((a, b) => (a.heldOn < b.heldOn ? -1 : a.heldOn > b.heldOn ? 1 : 0));
  const together = new Map<JumpTest, readonly Fact[]>();
  const facts = tests.flatMap((test) => {
    const trials = file.jumpTrials.filter((trial) => trial.testId === test.id).toSorted((a, b) => a.number - b.number);
    const ofTrials = trials.map((trial) => ({ trial, facts: factsOfTrial(trial, test, file) }));
    const ofTest = factsOfTest(test, ofTrials);
    together.set(test, ofTest);
    return [...ofTrials.flatMap((one) => one.facts), ...ofTest];
  });
  return [...facts, ...changesFromBaseline(tests, together)];
}

/** The movement a jump test is judged as. */
function movementOf(test: JumpTest): string {
  return `${test.kind}-jump`;
}

function factsOfTrial(trial: JumpTrial, test: JumpTest, file: CaseFile): Fact[] {
  const base = {
    from: { kind: 'jumpTrial', id: trial.id },
    takenOn: test.heldOn,
    movement: movementOf(test),
    provenance: `trial ${trial.number}${test.device === '' ? '' : `, ${test.device}`}`,
  } as const;
  const add = (measure: string, value: FactValue, height: Fact['height'] = null): void => {
    facts.push(makeFact({ ...base, measure, value, height }));
  };
  const facts: Fact[] = [];

  const time = timeInAir(trial, test, file);
  if (time !== null) {
    const height = from(time, (t) => flightHeight(t));
    add('jump.flightTime', number(time));
    add('jump.height.flightTime', number(height), heightOf(test, 'take-off'));
    if (test.kind === 'drop' && trial.contactTimeS !== null) {
      const onGround = trial.contactTimeS;
      const contact = reading(() => contactTime(onGround, test.frameRateHz));
      add('jump.contactTime', number(contact));
      // Flight and contact share the instant of take-off.
      add('jump.rsr', number(from(time, (t) => from(contact, (c) => reactiveStrengthRatio(t, c)))));
      add('jump.rsi', number(from(height, (h) => from(contact, (c) => reactiveStrengthIndex(h, c, true)))));
    }
  }
  if (test.method === 'jump-and-reach' && trial.jumpReachM !== null) {
    const height = reachHeight(trial.jumpReachM, test);
    add('jump.height.reach', number(height), heightOf(test, 'standing'));
    const mass = massOf(file);
    if (test.kind !== 'drop' && mass !== null) {
      const equation = test.kind === 'squat' ? 'sayers-squat' : 'sayers-countermovement';
      add('jump.peakPowerEstimated', number(from(height, (h) => predictPower(equation, h, mass))));
    }
  }
  if (trial.force !== null) factsOfForce(trial.force, test, add);
  if (trial.painNrs !== null) {
    const nrs = trial.painNrs;
    add(
      'pain.jumpTest',
      computed(() => measured('NRS', 'pain', nrs, '{score}', 'a rating given by the athlete')),
    );
  }
  return facts;
}

/** Typed, or between the events of a filmed trial; null: neither is there. */
function timeInAir(trial: JumpTrial, test: JumpTest, file: CaseFile): Reading<'s'> | null {
  const { flightTimeS, movementTrialId } = trial;
  if (flightTimeS !== null) return reading(() => flightTime(flightTimeS, test.frameRateHz));
  if (movementTrialId === null) return null;
  const at = (event: string) =>
    file.trialEvents.find((one) => one.trialId === movementTrialId && one.event === event) ?? null;
  const [takeoff, landing] = [at('take-off'), at('landing')];
  if (takeoff === null || landing === null) {
    return { unknown: 'the filmed trial has no take-off or no landing marked any more' };
  }
  return reading(() => flightTimeFromEvents(takeoff, landing));
}

function reachHeight(jumpReachM: number, test: JumpTest): Reading<'m'> {
  const { standingReachM } = test;
  if (standingReachM === null) return { unknown: 'standing reach is not recorded' };
  const noU = 'read off the wall without an uncertainty';
  return reading(() =>
    jumpAndReachHeight(
      measured('r_s', 'standing reach', standingReachM, 'm', noU),
      measured('r_j', 'jump reach', jumpReachM, 'm', noU),
    ),
  );
}

function heightOf(test: JumpTest, reference: 'take-off' | 'standing'): Fact['height'] {
  return { reference, method: test.method, arms: test.arms ?? 'not recorded' };
}

function factsOfForce(
  force: ForceSummary,
  test: JumpTest,
  add: (measure: string, value: FactValue, height?: Fact['height']) => void,
): void {
  const jump = restored(force, test);
  const addOf = (measure: string, pick: (known: RestoredJump) => Quantity | null, height: Fact['height'] = null) => {
    const picked = 'unknown' in jump ? jump : pick(jump);
    if (picked !== null) add(measure, number(picked), height);
  };
  addOf('jump.height.force', (known) => known.jumpHeight, heightOf(test, 'take-off'));
  // The same flight timed instead of integrated: a height of another method, never compared with the first.
  addOf('jump.height.forceFlightTime', (known) => known.jumpHeightFlightTime, {
    reference: 'take-off',
    method: 'flight-time',
    arms: test.arms ?? 'not recorded',
  });
  addOf('jump.riseAboveStanding', (known) => known.riseAboveStanding, heightOf(test, 'standing'));
  addOf('jump.takeoffVelocity', (known) => known.takeoffVelocity);
  addOf('jump.timeToTakeoff', (known) => known.timeToTakeoff);
  if (test.kind === 'countermovement') addOf('jump.rsiModified', (known) => known.rsiModified);
  addOf('jump.peakForce', (known) => known.peakForce);
  addOf('jump.peakPower', (known) => known.peakPower);
  addOf('jump.peakPowerPerMass', (known) => perMass(known.peakPower, known.mass));
  addOf('jump.countermovementDepth', (known) => known.countermovementDepth);
}

/** A summary that no jump can have gives nothing, with the reason. */
function restored(force: ForceSummary, { kind }: JumpTest): RestoredJump | Unknown {
  try {
    return fromForceSummary(force, kind);
  } catch (thrown) {
    if (thrown instanceof DomainError) return { unknown: thrown.message };
    throw thrown;
  }
}

function perMass(power: Quantity<'W'>, mass: Quantity<'kg'>): Quantity<'W/kg'> {
  const what = {
    symbol: 'p',
    name: 'peak power for body mass',
    unit: 'W/kg',
    formula: 'p = P / m',
    source: definition,
  } as const;
  return derive(what, { P: power, m: mass }, ({ P, m }) => P / m);
}

/** Measures whose mean over the trials stands for the test. */
const AVERAGED = [
  'jump.height.flightTime',
  'jump.height.reach',
  'jump.height.force',
  'jump.rsi',
  'jump.rsr',
  'jump.rsiModified',
  'jump.countermovementDepth',
  'jump.peakPowerPerMass',
];
const HEIGHTS = ['jump.height.force', 'jump.height.flightTime', 'jump.height.reach'];

interface OfTrial {
  readonly trial: JumpTrial;
  readonly facts: readonly Fact[];
}

function factsOfTest(test: JumpTest, all: readonly OfTrial[]): Fact[] {
  const base = { from: { kind: 'jumpTest', id: test.id }, takenOn: test.heldOn, movement: movementOf(test) } as const;
  const counted = all.filter(({ trial }) => !trial.isSetAside);
  const facts = AVERAGED.flatMap((measure): Fact[] => {
    const readings = readingsOf(counted, measure);
    if (!isFilled(readings)) return [];
    const height = counted.flatMap((one) => one.facts).find((fact) => fact.measure === measure)?.height ?? null;
    const provenance = readings.length === 1 ? 'the one trial that counts' : `mean of ${readings.length} trials`;
    return [makeFact({ ...base, measure, value: computed(() => mean(readings)), provenance, height })];
  });
  const heights = HEIGHTS.map((measure) => readingsOf(counted, measure)).find((readings) => readings.length > 0) ?? [];
  if (test.kind === 'countermovement' && heights.length >= 3) {
    const value = computed(() => spreadOf(heights));
    facts.push(
      makeFact({ ...base, measure: 'cmj.trialSpread', value, provenance: `sample of ${heights.length} trials` }),
    );
  }
  // A jump that is set aside does not count, but it hurt all the same.
  const pains = readingsOf(all, 'pain.jumpTest').toSorted((a, b) => b.value - a.value);
  if (isFilled(pains)) {
    const provenance = pains.length === 1 ? 'in one trial' : `worst of ${pains.length} trials`;
    facts.push(
      makeFact({ ...base, measure: 'pain.jumpTest', label: 'Pain in the jumps', value: number(pains[0]), provenance }),
    );
  }
  return facts;
}

function readingsOf(trials: readonly OfTrial[], measure: string): Quantity[] {
  return trials.flatMap(({ facts }) =>
    facts.flatMap(({ measure: id, value }) =>
      id === measure && value.kind === 'number' && isKnown(value.reading) ? [value.reading] : [],
    ),
  );
}

type Filled<T> = readonly [T, ...T[]];

function isFilled<T>(list: readonly T[]): list is Filled<T> {
  return list.length > 0;
}

function mean(readings: Filled<Quantity>): Quantity {
  const [first] = readings;
  if (readings.length === 1) return first;
  const { unit } = first;
  const inputs = Object.fromEntries(readings.map((one, i) => [`x_${i + 1}`, one]));
  const what = {
    symbol: 'x',
    name: `mean ${first.working.name}`,
    unit,
    formula: `x = (${Object.keys(inputs).join(' + ')}) / ${readings.length}`,
    source: definition,
  };
  return derive(
    what,
    inputs,
    (values) => Object.values(values).reduce((sum, value) => sum + value, 0) / readings.length,
  );
}

/** Sample standard deviation (n − 1) over the mean. */
function spreadOf(readings: readonly Quantity[]): Quantity<'1'> {
  const values = readings.map((one) => one.value);
  const average = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - average) ** 2, 0) / (values.length - 1);
  return measured(
    'CV',
    'spread of the trials',
    Math.sqrt(variance) / average,
    '1',
    'itself a measure of spread',
    definition,
  );
}

/** The newest countermovement test against the mean of the earlier ones that were held in the same way. */
function changesFromBaseline(tests: readonly JumpTest[], together: ReadonlyMap<JumpTest, readonly Fact[]>): Fact[] {
  const newest = tests.findLast((test) => test.kind === 'countermovement' && heightFact(together.get(test)) !== null);
  if (newest === undefined) return [];
  const base = {
    measure: 'cmj.changePct',
    from: { kind: 'jumpTest', id: newest.id },
    takenOn: newest.heldOn,
    movement: movementOf(newest),
  } as const;
  const now = heightFact(together.get(newest));
  const earlier = tests
    .filter((test) => test.heldOn < newest.heldOn && isAlike(test, newest))
    .flatMap((test) => heightFact(together.get(test)) ?? []);
  if (now === null || !isFilled(earlier)) {
    const value = unknown('an earlier test held in the same way is needed: same method, arms, shoes and device');
    return [makeFact({ ...base, value, provenance: 'no earlier test to compare with' })];
  }
  const what = {
    symbol: 'Δ',
    name: 'change from baseline',
    unit: '1',
    formula: 'Δ = h / h_0 - 1',
    source: definition,
  } as const;
  const value = computed(() => derive(what, { h: now, h_0: mean(earlier) }, ({ h, h_0 }) => h / h_0 - 1));
  return [
    makeFact({
      ...base,
      value,
      provenance: `against ${earlier.length === 1 ? 'one earlier test' : `${earlier.length} earlier tests`}`,
    }),
  ];
}

function heightFact(facts: readonly Fact[] | undefined): Quantity | null {
  for (const measure of HEIGHTS) {
    const fact = facts?.find((one) => one.measure === measure);
    if (fact?.value.kind === 'number' && isKnown(fact.value.reading)) return fact.value.reading;
  }
  return null;
}

/** Heights may be compared only if everything that changes them agrees, and is known. */
function isAlike(a: JumpTest, b: JumpTest): boolean {
  return (
    a.kind === b.kind &&
    a.method === b.method &&
    a.arms !== null &&
    a.arms === b.arms &&
    a.shoes === b.shoes &&
    a.device === b.device
  );
}

/** A computation as a reading: errors thrown on purpose become the reason why there is none. */
function reading<U extends Unit>(compute: () => Reading<U>): Reading<U> {
  const value = computed(compute);
  return value.kind === 'number'
    ? (value.reading as Reading<U>)
    : { unknown: value.kind === 'unknown' ? value.reason : '' };
}

/** Goes on from a reading if it is known. */
function from<A extends Unit, B extends Unit>(one: Reading<A>, next: (known: Quantity<A>) => Reading<B>): Reading<B> {
  return isKnown(one) ? reading(() => next(one)) : one;
}
