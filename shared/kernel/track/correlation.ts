import type { Luma } from './image.ts';
import { fits, type Template } from './template.ts';

/**
 * Zero-mean normalised cross-correlation of a template with the disc around a pixel: 1 the same but for brightness
 * and contrast, 0 nothing in common, −1 the negative. Pearson's correlation over the pixels of the disc.
 *
 * @param x column, whole
 * @param y row, whole
 * @returns −1 to 1; 0 where either disc is featureless; null where the square around it does not lie inside the picture
 * @source Lewis 1995, "Fast normalized cross-correlation", Vision Interface, equation 2
 */
export function correlation(image: Luma, template: Template, x: number, y: number): number | null {
  const { half, values, reach, count, norm } = template;
  if (!fits(image, x, y, half)) return null;
  const side = 2 * half + 1;
  const { data, stride } = image;
  let [product, sum, squares] = [0, 0, 0];
  for (let row = 0; row < side; row++) {
    // In bounds by `fits`; the checked reads would be half of the cost of tracking.
    const wide = reach[row] as number;
    let at = (y - half + row) * stride + x - wide;
    const end = at + 2 * wide;
    for (let i = row * side + half - wide; at <= end; i++, at++) {
      const value = data[at] as number;
      product += (values[i] as number) * value;
      sum += value;
      squares += value * value;
    }
  }
  const spread = squares - (sum * sum) / count;
  return spread <= 0 || norm === 0 ? 0 : product / (Math.sqrt(spread) * norm);
}
