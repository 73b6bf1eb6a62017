import { expect, test } from 'vitest';
import { toDecoded, toShown } from '../../../app/bench/turn.ts';

/** A picture 4 wide and 3 high, as decoded. Where its top left and its bottom right pixel are once it is turned clockwise. */
test.each([
  [0, { x: 0, y: 0 }, { x: 3, y: 2 }],
  [90, { x: 2, y: 0 }, { x: 0, y: 3 }],
  [180, { x: 3, y: 2 }, { x: 0, y: 0 }],
  [270, { x: 0, y: 3 }, { x: 2, y: 0 }],
] as const)('law: turned by %d° a corner lands on a corner, and back on itself', (rotation, topLeft, bottomRight) => {
  expect(toShown({ x: 0, y: 0 }, rotation, 4, 3)).toEqual(topLeft);
  expect(toShown({ x: 3, y: 2 }, rotation, 4, 3)).toEqual(bottomRight);
  for (const place of [
    { x: 0, y: 0 },
    { x: 1.25, y: 0.5 },
    { x: 3, y: 2 },
  ]) {
    expect(toDecoded(toShown(place, rotation, 4, 3), rotation, 4, 3)).toEqual(place);
  }
});
