import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { homography } from '../../shared/kernel/plane/homography.ts';

const sets = JSON.parse(
  readFileSync(join(import.meta.dirname, '..', 'fixtures', 'numpy-homography', 'homographies.json'), 'utf8'),
) as { ground: [number, number][]; image: [number, number][]; map: number[] }[];

test.each(sets)('NumPy 2.4.6 singular values: the same plane from $ground.length points', ({ ground, image, map }) => {
  const ours = homography(
    ground.map(([x, y]) => ({ x, y })),
    image.map(([x, y]) => ({ x, y })),
  ).to1DArray();
  // Relative to the largest of each row's parameters: two decompositions of one matrix agree to rounding.
  ours.forEach((value, i) => expect(value).toBeCloseTo(map[i] as number, i < 6 ? 6 : 9));
});
