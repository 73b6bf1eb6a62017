import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spacing } from '../../../../shared/kernel/signal/spacing.ts';

const of = (times: readonly number[]) => spacing(times, 'test', (sample) => `sample ${sample}`);
const clock = (rateHz: number, count: number, round = (t: number) => t) =>
  Array.from({ length: count }, (_, i) => round(i / rateHz));

describe('spacing of times', () => {
  test('law: an even clock gives its own rate back, wherever it starts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.integer({ min: 3, max: 400 }),
        fc.double({ min: -10, max: 10, noNaN: true }),
        (rate, count, start) => {
          const found = of(clock(rate, count).map((t) => t + start));
          expect(found).toMatchObject({ kind: 'even' });
          expect(found.kind === 'even' && found.rateHz / rate).toBeCloseTo(1, 6);
        },
      ),
    );
  });
  test('times printed to a millisecond are even and say so (Winter 2009, table A.1: 0.0143 s)', () => {
    const found = of(clock(1 / 0.0143, 106, (t) => Math.round(t * 1000) / 1000));
    expect(found.kind).toBe('rounded');
    // First and last are known to half a millisecond over 1.5 s.
    expect(found.kind === 'rounded' && Math.abs(found.rateHz * 0.0143 - 1)).toBeLessThan(0.0007);
    expect(found.kind === 'rounded' && found.resolutionS).toBeCloseTo(0.001, 9);
  });
  test('a dropped frame and a stumbling clock are uneven, at the place', () => {
    expect(of([0, 1, 2, 3, 5, 6, 7].map((n) => n / 60))).toMatchObject({ kind: 'uneven', after: 3 });
    expect(of(clock(30, 60).map((t, i) => t + (i % 7 === 3 ? 0.01 : 0))).kind).toBe('uneven');
  });
  test('refuses one time, and one that does not rise', () => {
    expect(() => of([0])).toThrow(/at least two times, got 1/);
    expect(() => of([0, 1, 1])).toThrow(expect.objectContaining({ code: 'input-malformed', path: 'sample 2' }));
  });
});
