import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asymmetry } from '../../../../shared/kernel/change/asymmetry.ts';
import { ASYMMETRY_FORMULAS, type AsymmetryId } from '../../../../shared/kernel/change/asymmetryFormulas.ts';
import { coefficientOfVariation } from '../../../../shared/kernel/change/coefficientOfVariation.ts';
import { judgeChange } from '../../../../shared/kernel/change/judgeChange.ts';
import { minimalDetectableChange } from '../../../../shared/kernel/change/minimalDetectableChange.ts';
import { sidesAgainstVariation } from '../../../../shared/kernel/change/sidesAgainstVariation.ts';
import { smallestWorthwhileChange } from '../../../../shared/kernel/change/smallestWorthwhileChange.ts';
import { standardErrorOfMeasurement } from '../../../../shared/kernel/change/standardErrorOfMeasurement.ts';
import { symmetricPercent } from '../../../../shared/kernel/change/symmetricPercent.ts';
import { typicalError } from '../../../../shared/kernel/change/typicalError.ts';
import { DomainError } from '../../../../shared/errors.ts';
import { measured, type Quantity } from '../../../../shared/quantity.ts';
import type { Unit } from '../../../../shared/units.ts';

const exact = <U extends Unit>(value: number, unit: U, u = 0): Quantity<U> => measured('x', 'value', value, unit, u);
const above0 = fc.double({ min: 0.01, max: 1000, noNaN: true });

describe('asymmetry by each formula, 31.0 against 28.4 (computed check values, per cent)', () => {
  const expected: [AsymmetryId, number, string][] = [
    ['percentage-difference', 8.387, 'from memory'],
    ['bilateral-index', 4.377, 'from memory'],
    ['symmetry-index', 8.754, 'Robinson, Herzog & Nigg 1987'],
    ['limb-symmetry', 91.613, 'from memory'],
    ['symmetry-angle', 2.785, 'from memory'],
    ['log-ratio', 8.76, 'derived'],
  ];
  test.each(expected)('%s: %f (%s)', (id, percent) => {
    expect(asymmetry(id, exact(31, 'N'), exact(28.4, 'N')).value * 100).toBeCloseTo(percent, 3);
  });
  test('every formula has a check value', () => {
    expect(expected.map(([id]) => id).toSorted()).toEqual(ASYMMETRY_FORMULAS.map(({ id }) => id).toSorted());
  });
  test.each(ASYMMETRY_FORMULAS)(
    'law: $id of equal sides is even, and scaling both sides changes nothing',
    (formula) => {
      fc.assert(
        fc.property(above0, above0, above0, (a, b, scale) => {
          expect(asymmetry(formula.id, exact(a, 'm'), exact(a, 'm')).value).toBeCloseTo(formula.even, 12);
          const once = asymmetry(formula.id, exact(a, 'm'), exact(b, 'm')).value;
          const scaled = asymmetry(formula.id, exact(a * scale, 'm'), exact(b * scale, 'm')).value;
          expect(scaled - once).toBeCloseTo(0, 9);
        }),
      );
    },
  );
  test('law: swapping sides turns the sign of the signed formulas', () => {
    fc.assert(
      fc.property(above0, above0, (a, b) => {
        for (const id of ['bilateral-index', 'symmetry-index', 'symmetry-angle', 'log-ratio'] as const) {
          const sum =
            asymmetry(id, exact(a, 'm'), exact(b, 'm')).value + asymmetry(id, exact(b, 'm'), exact(a, 'm')).value;
          expect(sum).toBeCloseTo(0, 9);
        }
      }),
    );
  });
  test('refuses sides in two units and a side of zero', () => {
    expect(() => asymmetry('log-ratio', exact(1, 'm'), exact(1, 'N'))).toThrow(DomainError);
    expect(() => asymmetry('log-ratio', exact(1, 'm'), exact(0, 'm'))).toThrow(/above 0/);
  });
});

describe('asymmetry against variation within each side (Exell et al. in Bishop et al. 2016)', () => {
  test('real only if bigger than the variation from trial to trial', () => {
    const real = sidesAgainstVariation('percentage-difference', [30, 31, 32], [25, 25.5, 26], 'N');
    expect(real).toMatchObject({ isBeyondVariation: true });
    // CV of 28, 31, 34 is 3/31 = 9.7 %, more than the 3.2 % between the means of 31 and 30.
    const noise = sidesAgainstVariation('percentage-difference', [28, 31, 34], [27, 30, 33], 'N');
    expect(noise).toMatchObject({ isBeyondVariation: false });
  });
  test('limb symmetry counts from 1, not from 0', () => {
    expect(sidesAgainstVariation('limb-symmetry', [30, 31, 32], [30, 31, 32], 'N')).toMatchObject({
      isBeyondVariation: false,
    });
  });
  test('cannot tell with two trials a side', () => {
    expect(sidesAgainstVariation('log-ratio', [30, 31], [28, 29], 'N')).toEqual({
      unknown: expect.stringContaining('3'),
    });
  });
});

describe('error and change', () => {
  test('common textbook arithmetic, no source: CV of 28, 31, 34 is 3/31', () => {
    expect(coefficientOfVariation([28, 31, 34], 'N').value).toBeCloseTo(3 / 31, 12);
  });
  test('Weir 2005, formula from memory: SD 10 and ICC 0.91 give SEM 3 and MDC 8.3156', () => {
    const sem = standardErrorOfMeasurement(exact(10, 'm'), exact(0.91, '1'));
    expect(sem.value).toBeCloseTo(3, 12);
    expect(minimalDetectableChange(sem).value).toBeCloseTo(1.96 * Math.sqrt(2) * 3, 10);
  });
  test('Hopkins 2000, formula from memory: differences 1, −1, 1, −1 have SD 1.1547 and typical error 0.8165', () => {
    const pairs = [
      [5, 6],
      [6, 5],
      [7, 8],
      [8, 7],
    ] as const;
    expect(typicalError(pairs, 'm').value).toBeCloseTo(Math.sqrt(4 / 3) / Math.SQRT2, 12);
  });
  test('law: a change common to everybody adds no typical error', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(above0, above0), { minLength: 2, maxLength: 8 }), above0, (pairs, shift) => {
        const shifted = pairs.map(([a, b]) => [a, b + shift] as const);
        expect(typicalError(shifted, 'm').value).toBeCloseTo(typicalError(pairs, 'm').value, 6);
      }),
    );
  });
  test('law: symmetric per cent of a gain and of the loss that undoes it cancel', () => {
    fc.assert(
      fc.property(above0, above0, (a, b) => {
        const there = symmetricPercent(exact(a, 'm'), exact(b, 'm')).value;
        expect(there + symmetricPercent(exact(b, 'm'), exact(a, 'm')).value).toBeCloseTo(0, 9);
      }),
    );
  });
  test('a fifth of the spread (convention)', () => {
    expect(smallestWorthwhileChange(exact(0.05, 'm')).value).toBeCloseTo(0.01, 12);
  });
  test('a change is judged by the MDC, else by twice its uncertainty, else cannot be told', () => {
    const [before, after] = [exact(0.3, 'm', 0.01), exact(0.35, 'm', 0.01)];
    expect(judgeChange(before, after, exact(0.06, 'm'))).toMatchObject({ isBeyondError: false });
    expect(judgeChange(before, after, exact(0.04, 'm'))).toMatchObject({ isBeyondError: true });
    expect(judgeChange(before, after, null)).toMatchObject({ isBeyondError: true });
    const vague = measured('x', 'height', 0.35, 'm', 'read by eye');
    expect(judgeChange(before, vague, null)).toEqual({ unknown: expect.stringContaining('read by eye') });
  });
});
