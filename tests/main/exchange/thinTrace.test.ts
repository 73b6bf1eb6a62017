import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { thinTrace } from '../../../main/exchange/thinTrace.ts';

const record = fc.array(fc.integer({ min: -5000, max: 5000 }), { minLength: 1, maxLength: 20_000 });

test('law: the greatest and the least force stay, times rise, and it is short enough to plot', () => {
  fc.assert(
    fc.property(record, (forces) => {
      const { timesS, forcesN } = thinTrace([forces], 1000);
      const [thinned = []] = forcesN;
      expect(Math.max(...thinned)).toBe(Math.max(...forces));
      expect(Math.min(...thinned)).toBe(Math.min(...forces));
      expect(timesS.every((time, i) => i === 0 || time > (timesS[i - 1] ?? 0))).toBe(true);
      expect(thinned.length).toBeLessThanOrEqual(3000);
    }),
    { numRuns: 50 },
  );
});

test('a short record stays whole, plate by plate', () => {
  expect(
    thinTrace(
      [
        [1, 2, 3],
        [4, 5, 6],
      ],
      10,
    ),
  ).toEqual({
    timesS: [0, 0.1, 0.2],
    forcesN: [
      [1, 2, 3],
      [4, 5, 6],
    ],
  });
});
