import type { Luma, Place } from './image.ts';

/**
 * A picture at half its size: each pixel the mean of two by two. An odd last row or column is left out.
 * Pixel (x, y) of the half covers (2x, 2y) to (2x + 1, 2y + 1), so its centre lies at 2x + 0.5 of the whole.
 *
 * @param near px of the whole; with `reachPx`, only what lies no farther from there is worked out, the rest stays black
 * @source mean of two by two
 */
export function halve({ width, height, stride, data }: Luma, near: Place | null = null, reachPx = Infinity): Luma {
  const [w, h] = [width >> 1, height >> 1];
  const span = (middle: number, size: number) => [
    Math.max(0, Math.floor((middle - reachPx) / 2)),
    Math.min(size, Math.ceil((middle + reachPx) / 2) + 1),
  ];
  const [left = 0, right = w] = near === null ? [] : span(near.x, w);
  const [top = 0, bottom = h] = near === null ? [] : span(near.y, h);
  const half = new Uint8Array(w * h);
  for (let y = top; y < bottom; y++) {
    let from = 2 * (y * stride + left);
    for (let x = left; x < right; x++, from += 2) {
      const sum =
        (data[from] ?? 0) + (data[from + 1] ?? 0) + (data[from + stride] ?? 0) + (data[from + stride + 1] ?? 0);
      half[y * w + x] = (sum + 2) >> 2;
    }
  }
  return { width: w, height: h, stride: w, data: half };
}
