import { expect, test } from 'vitest';
import { againstBest } from '../../../shared/assess/againstBest.ts';
import type { Fact } from '../../../shared/assess/assessment.ts';
import { collectFacts } from '../../../shared/assess/collectFacts.ts';
import type { JumpTest, JumpTrial } from '../../../shared/model/jump.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { isKnown, type Quantity } from '../../../shared/quantity.ts';
import { EXAMPLES, id } from '../../conformance/examples.ts';
import { sampleCase } from '../../support/sampleCase.ts';

// The jumps are invented. Laws of free flight and of uncertainty; the functions of the kernel have published values elsewhere.

const G = 9.80665;
const sample = sampleCase();
const caseId = sample.case.id;
const filmed = {
  ...EXAMPLES.movementTrial,
  id: id(801),
  caseId,
  movementId: 'countermovement-jump',
  label: 'second jump',
};
const event = (n: number, name: string, timeS: number, uS: number | null) =>
  ({ ...EXAMPLES.trialEvent, id: id(810 + n), trialId: filmed.id, event: name, timeS, uS }) as const;
const jumpTest = (n: number, method: JumpTest['method'], fields: Partial<JumpTest> = {}): JumpTest => ({
  ...EXAMPLES.jumpTest,
  id: id(820 + n),
  caseId,
  method,
  ...fields,
});
const jumpTrial = (n: number, fields: Partial<JumpTrial>): JumpTrial => ({
  ...EXAMPLES.jumpTrial,
  id: id(830 + n),
  testId: id(820 + n),
  flightTimeS: null,
  force: null,
  mediaSha256: null,
  ...fields,
});

const at = (landingS: number, uS: number | null = 0.004) => [
  event(1, 'take-off', 0.8, 0.003),
  event(2, 'landing', landingS, uS),
];

function factsOf(file: Partial<CaseFile>): readonly Fact[] {
  return collectFacts({ ...sample, jumpTests: [], jumpTrials: [], ...file });
}

function heightOf(facts: readonly Fact[], from: string): Fact {
  const found = facts.find((fact) => fact.from.id === from && fact.measure === 'jump.height.flightTime');
  return found ?? expect.fail('no height');
}

function known({ value }: Fact): Quantity {
  return value.kind === 'number' && isKnown(value.reading) ? value.reading : expect.fail('not known');
}

test('law: a mat with n samples a second is exact to one sample over √6 of time, and g T/4 of that in height (JCGM 100, 4.3.7 and 5.1.2)', () => {
  const facts = factsOf({
    jumpTests: [jumpTest(1, 'contact-mat', { frameRateHz: 500 })],
    jumpTrials: [jumpTrial(1, { flightTimeS: 0.512 })],
  });
  const height = heightOf(facts, id(831));
  expect(known(height).value).toBeCloseTo((G * 0.512 ** 2) / 8, 12);
  expect(known(height).u).toBeCloseTo(((G * 0.512) / 4) * (1 / (500 * Math.sqrt(6))), 8);
  expect(height.height).toEqual({ reference: 'take-off', method: 'contact-mat', arms: 'hips' });
});

test('a mat of unknown rate gives no uncertainty, and says why', () => {
  const facts = factsOf({
    jumpTests: [jumpTest(1, 'contact-mat')],
    jumpTrials: [jumpTrial(1, { flightTimeS: 0.5 })],
  });
  const time = facts.find((fact) => fact.from.id === id(831) && fact.measure === 'jump.flightTime');
  expect(known(time ?? expect.fail()).u).toBeNull();
});

test('law: a jump from a filmed trial lasts from its take-off to its landing, their uncertainties added in squares, and follows them', () => {
  const file = {
    jumpTests: [jumpTest(1, 'filmed-trial')],
    jumpTrials: [jumpTrial(1, { movementTrialId: filmed.id })],
    movementTrials: [filmed],
  };
  const height = known(heightOf(factsOf({ ...file, trialEvents: at(1.3) }), id(831)));
  expect(height.value).toBeCloseTo((G * 0.25) / 8, 12);
  expect(height.u).toBeCloseTo(((G * 0.5) / 4) * 0.005, 8);
  expect(known(heightOf(factsOf({ ...file, trialEvents: at(1.32) }), id(831))).value).toBeCloseTo(
    (G * 0.52 ** 2) / 8,
    12,
  );
  expect(known(heightOf(factsOf({ ...file, trialEvents: at(1.3, null) }), id(831))).u).toBeNull();
  const gone = heightOf(factsOf({ ...file, trialEvents: at(1.3).slice(0, 1) }), id(831)).value;
  expect(gone.kind === 'number' && !isKnown(gone.reading) ? gone.reading.unknown : gone).toMatchObject(
    expect.stringContaining('no landing marked'),
  );
});

test('like is compared with like: a height from a mat, from a film and from a filmed trial stand apart', () => {
  const methods = ['contact-mat', 'flight-time', 'filmed-trial', 'contact-mat'] as const;
  const facts = factsOf({
    jumpTests: methods.map((method, i) => jumpTest(i, method)),
    jumpTrials: methods.map((method, i) =>
      jumpTrial(i, method === 'filmed-trial' ? { movementTrialId: filmed.id } : { flightTimeS: 0.5 + i / 100 }),
    ),
    movementTrials: [filmed],
    trialEvents: [event(1, 'take-off', 0.8, 0.003), event(2, 'landing', 1.5, 0.003)],
  }).filter(({ from }) => from.kind === 'jumpTrial');
  const [mat] = againstBest(facts, id(830));
  expect(mat?.best?.fact.from.id).toBe(id(833));
  expect(mat?.unlike.map(({ why }) => why).join(' ')).toContain('one is by filmed trial, the other by contact mat');
});
