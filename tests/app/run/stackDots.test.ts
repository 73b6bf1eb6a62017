import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { stackDots } from '../../../app/run/stackDots.ts';

test('law: no two dots overlap, each stands at its own place, and a dot alone stands on the line', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 60 }), (places) => {
      const xs = places.toSorted((a, b) => a - b);
      const dots = stackDots(xs, 11);
      expect(dots.map(({ x }) => x)).toEqual(xs);
      for (const [i, a] of dots.entries()) {
        for (const b of dots.slice(i + 1)) expect(a.level === b.level && Math.abs(a.x - b.x) < 11).toBe(false);
      }
      if (dots[0] !== undefined) expect(dots[0].level).toBe(0);
    }),
  );
});
