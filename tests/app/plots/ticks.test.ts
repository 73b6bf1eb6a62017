import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { ticks } from '../../../app/plots/ticks.ts';

test('decimal steps come out as typed, not as binary sums', () => {
  expect(ticks(0, 0.5, 5)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5]);
});

test('law: ticks rise by one even step and lie inside the range', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
      fc.integer({ min: 1, max: 12 }),
      (from, span, count) => {
        const found = ticks(from, from + span, count);
        const slack = span * 1e-6;
        for (const value of found) {
          expect(value).toBeGreaterThanOrEqual(from - slack);
          expect(value).toBeLessThanOrEqual(from + span + slack);
        }
        const steps = found.slice(1).map((value, i) => value - (found[i] ?? 0));
        for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 6);
      },
    ),
  );
});

test('a range without length has no ticks', () => {
  expect(ticks(2, 2, 5)).toEqual([]);
  expect(ticks(0, Number.NaN, 5)).toEqual([]);
});
