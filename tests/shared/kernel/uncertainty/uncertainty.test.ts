import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../../shared/errors.ts';
import { derive } from '../../../../shared/kernel/quantity/derive.ts';
import { betweenGroups } from '../../../../shared/kernel/uncertainty/betweenGroups.ts';
import { correlationOfReadings } from '../../../../shared/kernel/uncertainty/correlationOfReadings.ts';
import { coverageFactor } from '../../../../shared/kernel/uncertainty/coverageFactor.ts';
import { deriveByMonteCarlo } from '../../../../shared/kernel/uncertainty/deriveByMonteCarlo.ts';
import { deriveWhereBent } from '../../../../shared/kernel/uncertainty/deriveWhereBent.ts';
import { drawsFrom } from '../../../../shared/kernel/uncertainty/distribution.ts';
import { effectiveDegrees } from '../../../../shared/kernel/uncertainty/effectiveDegrees.ts';
import { fromHalfWidth } from '../../../../shared/kernel/uncertainty/fromHalfWidth.ts';
import { meanReading } from '../../../../shared/kernel/uncertainty/meanReading.ts';
import { monteCarlo } from '../../../../shared/kernel/uncertainty/monteCarlo.ts';
import { seededRandom } from '../../../../shared/kernel/uncertainty/seededRandom.ts';
import { straightLine } from '../../../../shared/kernel/uncertainty/straightLine.ts';
import { measured } from '../../../../shared/quantity.ts';

const what = {
  symbol: 'h',
  name: 'height',
  unit: 'm',
  formula: 'h = g t^2 / 8',
  source: { cite: 'law', status: 'derived' },
} as const;

const three = (seed: number) => Array.from({ length: 3 }, seededRandom(seed));

describe('random draws', () => {
  test('law: one seed, one sequence; another seed, another', () => {
    expect(three(42)).toEqual(three(42));
    expect(three(42)).not.toEqual(three(43));
    expect(() => seededRandom(0.5)).toThrow(DomainError);
  });

  test.each([
    [{ kind: 'normal', mean: 3, sd: 2 }, 3, 2],
    [{ kind: 'rectangular', low: 0, high: 6 }, 3, fromHalfWidth(3, 'rectangular')],
    [{ kind: 'triangular', low: 0, high: 6 }, 3, fromHalfWidth(3, 'triangular')],
    [{ kind: 'arcsine', low: 0, high: 6 }, 3, fromHalfWidth(3, 'arcsine')],
    // JCGM 101:2008, 6.4.3.3: variance (b − a)²/12 + d²/9.
    [{ kind: 'curvilinear-trapezoid', low: 0, high: 6, vagueness: 1 }, 3, Math.sqrt(3 + 1 / 9)],
    // JCGM 101:2008, 6.4.9.3: variance s² ν/(ν − 2).
    [{ kind: 't', centre: 3, scale: 1, degrees: 10 }, 3, Math.sqrt(10 / 8)],
  ] as const)('JCGM 101:2008, 6.4: mean and deviation of %o', (distribution, mean, sd) => {
    const draw = drawsFrom(distribution, seededRandom(11));
    const found = monteCarlo(draw, { leastDraws: 200_000 });
    // Four standard errors of 200 000 draws.
    expect(Math.abs(found.mean - mean)).toBeLessThan((4 * sd) / Math.sqrt(200_000));
    expect(Math.abs(found.sd / sd - 1)).toBeLessThan(0.01);
  });

  test('refuses what is no distribution, a coverage of 1 and a model without a value', () => {
    const random = seededRandom(1);
    expect(() => drawsFrom({ kind: 'normal', mean: 0, sd: -1 }, random)).toThrow(/needs a distribution/);
    expect(() => drawsFrom({ kind: 'rectangular', low: 1, high: 0 }, random)).toThrow(DomainError);
    expect(() => monteCarlo(random, { coverage: 1 })).toThrow(/coverage/);
    expect(() => monteCarlo(() => Number.NaN)).toThrow(/finite/);
  });

  test('stops as soon as it is stable, and says so when it never is', () => {
    const one = monteCarlo(seededRandom(1), { digits: 1 });
    expect(one.isStable).toBe(true);
    expect(one.draws).toBeLessThan(200_000);
    expect(monteCarlo(seededRandom(1), { digits: 2, mostDraws: 10_000 }).isStable).toBe(false);
  });
});

describe('deriveByMonteCarlo', () => {
  test('law: agrees with first order where the formula is near linear', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 0.9, noNaN: true }), fc.integer({ min: 1, max: 999 }), (t, seed) => {
        const inputs = { g: measured('g', 'gravity', 9.80665, 'm/s2', 0), t: measured('t', 'time', t, 's', 0.004) };
        const { quantity, distribution } = deriveByMonteCarlo(
          what,
          inputs,
          (x) => (x.g * x.t ** 2) / 8,
          seededRandom(seed),
        );
        const first = (9.80665 * t * 0.004) / 4;
        expect(Math.abs((quantity.u ?? 0) / first - 1)).toBeLessThan(0.03);
        expect(quantity.value).toBeCloseTo((9.80665 * t * t) / 8, 12);
        expect(distribution?.isStable).toBe(true);
      }),
      { numRuns: 5 },
    );
  });
  test('no uncertainty in, none out', () => {
    const inputs = { t: measured('t', 'time', 0.5, 's', 'read off a chart') };
    const { quantity, distribution } = deriveByMonteCarlo(what, inputs, ({ t }) => t, seededRandom(1));
    expect(distribution).toBeNull();
    expect(quantity.uReason).toContain('read off a chart');
  });
  test('refuses correlations that contradict each other', () => {
    const one = measured('a', 'a', 1, '1', 1);
    expect(() =>
      deriveByMonteCarlo(what, { a: one, b: one, c: one }, ({ a, b, c }) => a + b + c, seededRandom(1), {
        correlations: { 'a|b': 0.9, 'b|c': 0.9, 'a|c': -0.9 },
      }),
    ).toThrow(/correlations/);
  });
});

const squares = ({ a, b }: { a: number; b: number }) => a * a + b * b;
const at = (a: number) => ({ a: measured('a', 'a', a, 'm', 0.005), b: measured('b', 'b', 0, 'm', 0.005) });

describe('deriveWhereBent', () => {
  test.each([
    // JCGM 101:2008, 9.4.2 (U13): u 50e-6 at 0, 112e-6 at 0.010; propagation would say 0 and 100e-6.
    [0, 50e-6],
    [0.01, 112e-6],
  ])('U13, JCGM 101:2008, 9.4: the sum of squares at %d is bent, and drawn', (a, u) => {
    const found = deriveWhereBent(what, at(a), squares, { digits: 2 });
    expect(Math.abs((found.u ?? 0) / u - 1)).toBeLessThan(0.02);
    expect(found.working.variant).toContain('random draws');
  });
  test('U13: at 0.050 first order does, and is what derive gives', () => {
    const inputs = at(0.05);
    expect(deriveWhereBent(what, inputs, ({ a }) => a * a)).toEqual(derive(what, inputs, ({ a }) => a * a));
  });
  test('no uncertainty in, none out; no value in some draws, none either', () => {
    const blind = { a: measured('a', 'a', 1, 'm', 'by eye') };
    expect(deriveWhereBent(what, blind, ({ a }) => a * a).uReason).toContain('by eye');
    const edge = { a: measured('a', 'a', 0.01, 'm', 0.02) };
    expect(deriveWhereBent(what, edge, ({ a }) => Math.sqrt(a)).uReason).toContain('no value for much');
  });
});

describe('coverage and degrees of freedom', () => {
  test('law: t falls with the degrees of freedom and rises with the probability', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.double({ min: 0.5, max: 0.99, noNaN: true }), (nu, p) => {
        expect(coverageFactor(p, nu)).toBeGreaterThan(coverageFactor(p, nu + 1));
        expect(coverageFactor(p + 0.005, nu)).toBeGreaterThan(coverageFactor(p, nu));
      }),
    );
  });
  test('closed form: with 1 degree of freedom t = tan(π p / 2), with 2 p √(2 / (1 − p²))', () => {
    expect(coverageFactor(0.95, 1)).toBeCloseTo(Math.tan((Math.PI * 0.95) / 2), 8);
    expect(coverageFactor(0.95, 2)).toBeCloseTo(0.95 * Math.sqrt(2 / (1 - 0.95 ** 2)), 8);
  });
  test('law: one contribution keeps its own degrees; equal ones add theirs', () => {
    expect(effectiveDegrees([{ u: 3, degrees: 7 }])).toBeCloseTo(7, 10);
    expect(
      effectiveDegrees([
        { u: 2, degrees: 5 },
        { u: 2, degrees: 5 },
      ]),
    ).toBeCloseTo(10, 10);
    expect(effectiveDegrees([{ u: 2, degrees: Number.POSITIVE_INFINITY }])).toBe(Number.POSITIVE_INFINITY);
  });
  test('refuses what makes no sense', () => {
    expect(() => coverageFactor(1, 5)).toThrow(DomainError);
    expect(() => coverageFactor(0.95, 0)).toThrow(DomainError);
    expect(() => effectiveDegrees([{ u: -1, degrees: 3 }])).toThrow(DomainError);
    expect(() => fromHalfWidth(-1, 'rectangular')).toThrow(DomainError);
  });
});

describe('readings, lines and groups', () => {
  test('refuses one reading, NaN, unlike lists, one place', () => {
    expect(() => meanReading('x', 'x', [1], 'm')).toThrow(/at least 2/);
    expect(() => meanReading('x', 'x', [1, Number.NaN], 'm')).toThrow(/finite/);
    expect(() => correlationOfReadings([1, 2], [1, 2, 3])).toThrow(/pairs/);
    expect(() => straightLine([1, 1, 1], [1, 2, 3], 0)).toThrow(/two places/);
    expect(() => betweenGroups([{ mean: 1, deviation: 0.1, size: 3 }])).toThrow(/two groups/);
    expect(() =>
      betweenGroups([
        { mean: 1, deviation: 0.1, size: 3 },
        { mean: 2, deviation: 0.1, size: 4 },
      ]),
    ).toThrow(/one size/);
  });
  test('law: points on a line are found exactly, wherever the reference lies', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9, max: 9 }),
        fc.integer({ min: -9, max: 9 }),
        fc.integer({ min: -9, max: 9 }),
        (a, b, at) => {
          const xs = [0, 1, 2, 5];
          const line = straightLine(
            xs,
            xs.map((x) => a + b * x),
            at,
          );
          expect(line.slope).toBeCloseTo(b, 10);
          expect(line.intercept).toBeCloseTo(a + b * at, 9);
          expect(line.residual).toBeCloseTo(0, 9);
        },
      ),
    );
  });
  test('law: readings that rise together correlate fully, against each other fully the other way', () => {
    expect(correlationOfReadings([1, 2, 3], [10, 20, 30])).toBeCloseTo(1, 12);
    expect(correlationOfReadings([1, 2, 3], [3, 2, 1])).toBeCloseTo(-1, 12);
    expect(correlationOfReadings([1, 1, 1], [3, 2, 1])).toBe(0);
  });
});
