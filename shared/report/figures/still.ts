import type { Still } from '../../model/trial.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { Evidence } from '../evidence.ts';
import { rect } from './drawing.ts';

/** Points; lower where a page is shared by several. */
const TALLEST = 190;

/** A frame of the film with what was drawn on it; null where the picture is not at hand. */
export function stillFigure(
  { mediaSha, caption, alt }: Still,
  images: Evidence['images'],
  tallest = TALLEST,
): Figure | null {
  const image = images[mediaSha];
  if (image === undefined || image.width < 1 || image.height < 1) return null;
  return figure({
    alt: alt === '' ? (caption === '' ? 'A frame of the film.' : caption) : alt,
    caption: caption === '' ? null : caption,
    draw: (width) => {
      const scale = Math.min(width / image.width, tallest / image.height);
      const [w, h] = [image.width * scale, image.height * scale];
      return {
        height: h,
        marks: [{ mark: 'image', x: 0, y: 0, width: w, height: h, sha256: mediaSha }, rect(0, 0, w, h, null, 'muted')],
      };
    },
  });
}
