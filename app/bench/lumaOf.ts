import { DomainError } from '../../shared/errors.ts';
import type { Luma } from '../../shared/kernel/track/image.ts';
import type { Picture } from './frameStore.ts';

/** The brightness of a decoded picture. Where it is a plane of its own with 8 bits, the very bytes of the picture. */
export function lumaOf({ bytes, init }: Picture): Luma {
  const { format, codedWidth: width, codedHeight: height, layout } = init;
  const [plane] = layout;
  if (plane === undefined) throw new DomainError('not-comparable', 'The decoder gave a picture of no known form.');
  const { offset, stride } = plane;
  if (/^(I420A?|I422A?|I444A?|NV12)$/.test(format)) return { width, height, stride, data: bytes.subarray(offset) };
  const data = new Uint8Array(width * height);
  const bits = /P(10|12)$/.exec(format)?.[1];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if (bits === undefined) {
        // Four bytes a pixel; green, the middle of the three, carries most of the brightness.
        data[y * width + x] = bytes[offset + y * stride + 4 * x + 1] ?? 0;
      } else {
        const at = offset + y * stride + 2 * x;
        data[y * width + x] = ((bytes[at] ?? 0) | ((bytes[at + 1] ?? 0) << 8)) >> (Number(bits) - 8);
      }
    }
  }
  return { width, height, stride: width, data };
}
