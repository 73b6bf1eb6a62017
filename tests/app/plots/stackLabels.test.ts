import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { stackLabels } from '../../../app/plots/stackLabels.ts';

test('law: two labels in one row never come nearer than the gap', () => {
  const item = fc.record({ start: fc.integer({ min: 0, max: 500 }), width: fc.integer({ min: 1, max: 120 }) });
  fc.assert(
    fc.property(fc.array(item, { maxLength: 30 }), (unsorted) => {
      const items = unsorted.toSorted((a, b) => a.start - b.start);
      const rows = stackLabels(items, 8);
      items.forEach((one, i) =>
        items.slice(i + 1).forEach((other, k) => {
          if (rows[i] === rows[i + 1 + k]) expect(other.start).toBeGreaterThanOrEqual(one.start + one.width + 8);
        }),
      );
    }),
  );
});

test('labels that stand clear of each other share the first row', () => {
  const far = [0, 100, 200].map((start) => ({ start, width: 50 }));
  expect(stackLabels(far, 8)).toEqual([0, 0, 0]);
});
