import { DomainError } from '../../errors.ts';
import type { Luma } from './image.ts';

/** A disc cut from a picture, its mean taken off, ready to be compared. */
export interface Template {
  /** Radius, px; the square around it has the side 2 · half + 1. */
  readonly half: number;
  /** Brightness less its mean, of the whole square, row by row. */
  readonly values: Float32Array;
  /** How far the disc reaches to either side in each row of the square, px. */
  readonly reach: Int32Array;
  /** Pixels of the disc. */
  readonly count: number;
  /** Root of the sum of squares over the disc; 0 for a featureless one. */
  readonly norm: number;
}

/** Whether a square around a pixel lies wholly inside a picture. */
export function fits({ width, height }: Luma, x: number, y: number, half: number): boolean {
  return x - half >= 0 && y - half >= 0 && x + half < width && y + half < height;
}

/**
 * Cuts a template around a pixel: a disc, since the corners of a square show what the point is not part of.
 * @param x column, whole
 * @param y row, whole
 * @throws DomainError 'input-out-of-range' if the square around the disc does not lie inside the picture
 */
export function cutTemplate(image: Luma, x: number, y: number, half: number): Template {
  if (!fits(image, x, y, half)) {
    throw new DomainError(
      'input-out-of-range',
      `cutTemplate needs a square of ${2 * half + 1} px inside ${image.width} × ${image.height} px, got its middle at ${x}, ${y}`,
    );
  }
  const side = 2 * half + 1;
  const values = new Float32Array(side * side);
  const reach = Int32Array.from({ length: side }, (_, row) => Math.sqrt((half + 0.5) ** 2 - (row - half) ** 2));
  let [count, sum] = [0, 0];
  for (let row = 0; row < side; row++) {
    const from = (y - half + row) * image.stride + x - half;
    const wide = reach[row] ?? 0;
    for (let column = 0; column < side; column++) {
      const value = image.data[from + column] ?? 0;
      values[row * side + column] = value;
      if (Math.abs(column - half) > wide) continue;
      count += 1;
      sum += value;
    }
  }
  const mean = sum / count;
  let squares = 0;
  for (let i = 0; i < values.length; i++) {
    const value = (values[i] ?? 0) - mean;
    values[i] = value;
    if (Math.abs((i % side) - half) <= (reach[Math.floor(i / side)] ?? 0)) squares += value * value;
  }
  return { half, values, reach, count, norm: Math.sqrt(squares) };
}
