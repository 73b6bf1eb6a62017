import type { Luma } from './image.ts';

/**
 * A picture at half its size: each pixel the mean of two by two. An odd last row or column is left out.
 * Pixel (x, y) of the half covers (2x, 2y) to (2x + 1, 2y + 1), so its centre lies at 2x + 0.5 of the whole.
 *
 * @source mean of two by two
 */
export function halve({ width, height, stride, data }: Luma): Luma {
  const [w, h] = [width >> 1, height >> 1];
  const half = new Uint8Array(w * h);
  for (let y = 0; y < h; y++) {
    let from = 2 * y * stride;
    for (let x = 0; x < w; x++, from += 2) {
      const sum =
        (data[from] ?? 0) + (data[from + 1] ?? 0) + (data[from + stride] ?? 0) + (data[from + stride + 1] ?? 0);
      half[y * w + x] = (sum + 2) >> 2;
    }
  }
  return { width: w, height: h, stride: w, data: half };
}
