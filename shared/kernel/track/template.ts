import { DomainError } from '../../errors.ts';
import type { Luma } from './image.ts';

/** A square cut from a picture, its mean taken off, ready to be compared. */
export interface Template {
  /** Side 2 · half + 1. */
  readonly half: number;
  readonly values: Float32Array;
  /** Root of the sum of squares; 0 for a featureless square. */
  readonly norm: number;
}

/** Whether a square around a pixel lies wholly inside a picture. */
export function fits({ width, height }: Luma, x: number, y: number, half: number): boolean {
  return x - half >= 0 && y - half >= 0 && x + half < width && y + half < height;
}

/**
 * Cuts a template around a pixel.
 * @param x column, whole
 * @param y row, whole
 * @throws DomainError 'input-out-of-range' if the square does not lie inside the picture
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
  let sum = 0;
  for (let row = 0; row < side; row++) {
    const from = (y - half + row) * image.stride + x - half;
    for (let column = 0; column < side; column++) {
      const value = image.data[from + column] ?? 0;
      values[row * side + column] = value;
      sum += value;
    }
  }
  const mean = sum / values.length;
  let squares = 0;
  for (let i = 0; i < values.length; i++) {
    const value = (values[i] ?? 0) - mean;
    values[i] = value;
    squares += value * value;
  }
  return { half, values, norm: Math.sqrt(squares) };
}
