import type { Luma, Place } from '../../shared/kernel/track/image.ts';

/**
 * Normalised cross-correlation written out: at every place within reach, the mean and spread of what is there and its
 * correlation with the square, all from scratch. No half-size picture, no prediction, whole pixels.
 */
export function plainCorrelation(from: Luma, at: Place, half: number, to: Luma, near: Place, reach: number): Place {
  const square = (image: Luma, x0: number, y0: number): number[] => {
    const values: number[] = [];
    for (let y = y0 - half; y <= y0 + half; y++)
      for (let x = x0 - half; x <= x0 + half; x++) values.push(image.data[y * image.stride + x] ?? 0);
    return values;
  };
  const template = square(from, at.x, at.y);
  let best = { score: -1, x: near.x, y: near.y };
  for (let y = near.y - reach; y <= near.y + reach; y++) {
    for (let x = near.x - reach; x <= near.x + reach; x++) {
      const score = correlated(template, square(to, x, y));
      if (score > best.score) best = { score, x, y };
    }
  }
  return best;
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

function correlated(a: readonly number[], b: readonly number[]): number {
  const [ma, mb] = [mean(a), mean(b)];
  let [ab, aa, bb] = [0, 0, 0];
  a.forEach((value, i) => {
    const [da, db] = [value - ma, (b[i] ?? 0) - mb];
    ab += da * db;
    aa += da * da;
    bb += db * db;
  });
  return aa === 0 || bb === 0 ? 0 : ab / Math.sqrt(aa * bb);
}
