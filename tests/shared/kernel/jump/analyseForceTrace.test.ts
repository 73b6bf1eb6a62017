import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../../shared/errors.ts';
import { analyseForceTrace } from '../../../../shared/kernel/jump/analyseForceTrace.ts';
import type { ForceTrace } from '../../../../shared/kernel/jump/forceTrace.ts';
import { toForceSummary } from '../../../../shared/kernel/jump/toForceSummary.ts';
import { seededRandom } from '../../../../shared/kernel/uncertainty/seededRandom.ts';
import { forceSummary } from '../../../../shared/model/jump.ts';

const g = 9.80665;

interface Shape {
  readonly massKg?: number;
  readonly rateHz?: number;
  readonly stillS?: number;
  readonly noiseN?: number;
  readonly offsetN?: number;
  readonly push?: number;
  readonly seed?: number;
}

/** Still stance, half sine down, half sine up, flight that free fall asks for, half sine to a stop, still stance. */
function jumpRecord({
  massKg = 70,
  rateHz = 1000,
  stillS = 1.5,
  noiseN = 0.5,
  offsetN = 0,
  push = 1,
  seed = 1,
}: Shape = {}): number[] {
  const W = massKg * g;
  const v = (0.36 * 2 * 1100 * push - 0.3 * 2 * 350) / Math.PI / 70;
  const flightS = (2 * v) / g;
  const random = seededRandom(seed);
  const scale = massKg / 70;
  const ends = [stillS, stillS + 0.3, stillS + 0.66, stillS + 0.66 + flightS, stillS + 0.96 + flightS];
  return Array.from({ length: Math.round((stillS + 3.5) * rateHz) }, (_, k) => {
    const t = k / rateHz;
    const [a = 0, b = 0, c = 0, d = 0, e = 0] = ends;
    const noise = offsetN + noiseN * (2 * random() - 1);
    if (t < a) return W + noise;
    if (t < b) return W - scale * 350 * Math.sin((Math.PI * (t - a)) / 0.3) + noise;
    if (t < c) return W + scale * 1100 * push * Math.sin((Math.PI * (t - b)) / 0.36) + noise;
    if (t < d) return noise;
    if (t < e) return W + scale * ((70 * v * Math.PI) / 0.6) * Math.sin((Math.PI * (t - d)) / 0.3) + noise;
    return W + noise;
  });
}

const analyse = (plates: readonly (readonly number[])[], rest: Partial<ForceTrace> = {}) =>
  analyseForceTrace({ rateHz: 1000, plates, massKg: null, kind: 'countermovement', ...rest });

function refusal(act: () => unknown): DomainError {
  try {
    act();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  return expect.fail('was not refused');
}

describe('refusals', () => {
  const record = jumpRecord();
  test.each([
    ['no plate', [], {}, 'not-enough-data'],
    ['one sample', [[700]], {}, 'not-enough-data'],
    ['an empty plate', [Array.from({ length: 2000 }, () => 0)], {}, 'not-enough-data'],
    ['someone who only stands', [Array.from({ length: 2000 }, () => 700)], {}, 'not-enough-data'],
    ['kilonewtons', [record.map((force) => force / 1000)], {}, 'not-enough-data'],
    ['plates of two lengths', [record, record.slice(1)], {}, 'input-malformed'],
    ['a rate of zero', [record], { rateHz: 0 }, 'input-out-of-range'],
    ['a mass of zero', [record], { massKg: 0 }, 'input-out-of-range'],
    ['a mass that is no number', [record], { massKg: Number.NaN }, 'input-out-of-range'],
  ] as const)('%s', (_what, plates, rest, code) => {
    expect(refusal(() => analyse(plates, rest)).code).toBe(code);
  });
  test('a reading that is no number, and where', () => {
    const broken = record.with(123, Number.NaN);
    const error = refusal(() => analyse([record, broken]));
    expect(error).toMatchObject({ code: 'input-out-of-range', path: 'plates.1.123' });
    expect(error.message).toContain('analyseForceTrace');
  });
  test('force counted downward: says that upward is positive', () => {
    expect(refusal(() => analyse([record.map((force) => -force)])).message).toContain('upward force positive');
  });
});

describe('laws', () => {
  const whole = analyse([jumpRecord()]);

  test('two plates are their sum', () => {
    const record = jumpRecord();
    const halves = analyse([record.map((force) => 0.4 * force), record.map((force) => 0.6 * force)]);
    expect(halves.jumpHeight.value).toBeCloseTo(whole.jumpHeight.value, 9);
    const [left, right] = halves.plates.map(({ impulse }) => impulse.value);
    expect((left ?? 0) / (right ?? 1)).toBeCloseTo(0.4 / 0.6, 9);
  });
  test('a body twice as heavy with twice the force jumps as high, with twice the power', () => {
    const heavy = analyse([jumpRecord().map((force) => 2 * force)]);
    expect(heavy.mass.value / whole.mass.value).toBeCloseTo(2, 9);
    expect(heavy.jumpHeight.value).toBeCloseTo(whole.jumpHeight.value, 3);
    expect(heavy.peakPower.value / whole.peakPower.value).toBeCloseTo(2, 2);
  });
  test('a longer stance before it changes no height', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 30 }), fc.integer({ min: 1, max: 99 }), (tenths, seed) => {
        const longer = analyse([jumpRecord({ stillS: tenths / 10, seed })]);
        // Noise of ±0.5 N decides the onset by a few samples.
        expect(Math.abs(longer.jumpHeight.value - whole.jumpHeight.value)).toBeLessThan(0.005);
      }),
      { numRuns: 15 },
    );
  });
  test('take-off velocity and flight time agree in free fall, within three standard uncertainties', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.7, max: 1.2, noNaN: true }), fc.integer({ min: 1, max: 99 }), (push, seed) => {
        const jump = analyse([jumpRecord({ push, seed })]);
        const apart = jump.jumpHeight.value - jump.jumpHeightFlightTime.value;
        const u = Math.hypot(jump.jumpHeight.u ?? 0, jump.jumpHeightFlightTime.u ?? 0);
        expect(Math.abs(apart)).toBeLessThan(3 * u);
        expect(jump.warnings).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });
  test('the rate of sampling changes no height by more than a few samples', () => {
    const slow = analyse([jumpRecord({ rateHz: 500 })], { rateHz: 500 });
    expect(Math.abs(slow.jumpHeight.value - whole.jumpHeight.value)).toBeLessThan(0.01);
  });
  test('the plate offset cancels from the net force but not from the mass, and is warned about', () => {
    const tared = analyse([jumpRecord({ offsetN: 8 })]);
    expect(tared.mass.value - whole.mass.value).toBeCloseTo(8 / g, 1);
    expect(tared.warnings.join()).toContain('not zeroed');
    expect(tared.jumpHeight.u).toBeGreaterThan(whole.jumpHeight.u ?? 1);
  });
});

describe('several jumps and doubtful ones', () => {
  test('three jumps in one record are all found, the highest first in the answer', () => {
    const record = [0.8, 1.1, 0.9].flatMap((push) => jumpRecord({ push }));
    const analysis = analyse([record]);
    expect(analysis.jumps).toHaveLength(3);
    expect(analysis.jumps.map((jump) => jump.isImpulseSound)).toEqual([true, true, true]);
    expect(analysis.takeoff.value).toBe(analysis.jumps[1]?.takeoff.value);
  });
  test('without a still stance: no uncertainty on what rests on the impulse, and the flight time keeps its own', () => {
    const swaying = jumpRecord({ stillS: 1.5, noiseN: 0 }).map((force, k) =>
      k < 1500 ? force + 25 * Math.sin((2 * Math.PI * k) / 300) : force,
    );
    const jump = analyse([swaying]).jumps[0];
    expect(jump?.isImpulseSound).toBe(false);
    expect(jump?.jumpHeight.u).toBeNull();
    expect(jump?.jumpHeight.uReason).toContain('nobody stood still');
    expect(jump?.jumpHeightFlightTime.u).not.toBeNull();
    expect(jump?.riseAboveStanding).toBeNull();
    expect(jump?.warnings.join()).toContain('use the height from flight time');
  });
  test('a mass entered at odds with the plate is questioned', () => {
    expect(analyse([jumpRecord()], { massKg: 75 }).warnings.join()).toContain('75.0 kg');
    expect(analyse([jumpRecord()], { massKg: 70.5 }).warnings).toEqual([]);
  });
  test('a squat jump that dips first is called what it is', () => {
    const jump = analyse([jumpRecord({ stillS: 1.5 })], { kind: 'squat' });
    expect(jump.warnings.join()).toContain('countermovement');
    expect(jump.countermovementDepth).toBeNull();
  });
  test('a drop jump that starts on the plate has no first contact', () => {
    expect(refusal(() => analyse([jumpRecord()], { kind: 'drop' })).code).toBe('not-enough-data');
  });
});

test('law: a summary meets the schema it is stored by', () => {
  const summary = toForceSummary(analyse([jumpRecord()]), 1000, ['fz_N']);
  expect(forceSummary.parse(summary)).toEqual(summary);
});
