import { toDecimals } from '../../../shared/format/number.ts';
import { flexion } from '../../../shared/kernel/angle/flexion.ts';
import type { Place } from '../../../shared/kernel/track/image.ts';
import { LIMBS, TRUNK } from '../../../shared/knowledge/limbs.ts';

export interface StillDrawing {
  /** Points of the frame, px of the film. */
  readonly points: readonly (Place & { readonly point: string })[];
  /** Where the ball or the point at hand goes through the film, in the order of frames. */
  readonly path: readonly Place[];
  readonly metresPerPixel: number | null;
}

const HINGES = [
  ['elbow', 'shoulder', 'wrist'],
  ['knee', 'hip', 'ankle'],
] as const;
/** Flexion of elbows and knees as it looks in the picture; a camera that looks across the plane shows it as it is. */
function anglesIn(points: StillDrawing['points']): (Place & { readonly words: string })[] {
  const at = (name: string) => points.find(({ point }) => point === name);
  return HINGES.flatMap(([joint, above, below]) =>
    ['left', 'right'].flatMap((side) => {
      const [a, b, c] = [above, joint, below].map((part) => at(`${part}-${side}`));
      if (a === undefined || b === undefined || c === undefined) return [];
      const angle = flexion(a, b, c, 'drawn only');
      return [{ x: b.x, y: b.y, words: `${toDecimals((angle.value * 180) / Math.PI, 0)}°` }];
    }),
  );
}

/** The picture with its points, limbs, path, angles and a bar of known length, as it goes into a report. */
export function drawStill(
  picture: HTMLCanvasElement,
  { points, path, metresPerPixel }: StillDrawing,
): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  const { width, height } = picture;
  Object.assign(canvas, { width, height });
  const to = canvas.getContext('2d');
  if (to === null) return canvas;
  to.drawImage(picture, 0, 0);
  // The middle of the first pixel is 0, 0.
  to.translate(0.5, 0.5);
  const unit = width / 640;
  const stroke = (draw: () => void, colour = '#fff', dash: number[] = []) => {
    to.beginPath();
    draw();
    to.setLineDash([]);
    to.lineWidth = 3.5 * unit;
    to.strokeStyle = '#000';
    to.stroke();
    to.setLineDash(dash);
    to.lineWidth = 1.5 * unit;
    to.strokeStyle = colour;
    to.stroke();
    to.setLineDash([]);
  };
  const words = (text: string, x: number, y: number) => {
    to.font = `600 ${13 * unit}px sans-serif`;
    to.lineWidth = 3 * unit;
    to.strokeStyle = '#000';
    to.strokeText(text, x, y);
    to.fillStyle = '#fff';
    to.fillText(text, x, y);
  };
  if (path.length > 1)
    stroke(() => path.forEach(({ x, y }, i) => (i === 0 ? to.moveTo(x, y) : to.lineTo(x, y))), '#ffd84d');
  const at = new Map(points.map((one) => [one.point, one]));
  for (const [from, end] of [...TRUNK, ...LIMBS]) {
    const [a, b] = [at.get(from), at.get(end)];
    if (a === undefined || b === undefined) continue;
    // As everywhere: left limbs dashed, right limbs solid.
    const isLeft = from.endsWith('-left') && end.endsWith('-left');
    stroke(
      () => {
        to.moveTo(a.x, a.y);
        to.lineTo(b.x, b.y);
      },
      '#fff',
      isLeft ? [4 * unit, 3 * unit] : [],
    );
  }
  for (const { x, y } of points) stroke(() => to.arc(x, y, 3.5 * unit, 0, 2 * Math.PI));
  for (const { x, y, words: text } of anglesIn(points)) words(text, x + 8 * unit, y - 6 * unit);
  if (metresPerPixel !== null) {
    const metres = barOf(0.25 * width * metresPerPixel);
    const [x, y] = [16 * unit, height - 16 * unit];
    stroke(() => {
      to.moveTo(x, y);
      to.lineTo(x + metres / metresPerPixel, y);
    });
    words(`${metres} m`, x, y - 8 * unit);
  }
  return canvas;
}

/** The largest of 1, 2 and 5 times a power of ten that is not longer. */
function barOf(longestM: number): number {
  const power = 10 ** Math.floor(Math.log10(longestM));
  const times = [5, 2, 1].find((one) => one * power <= longestM) ?? 1;
  return Number((times * power).toPrecision(1));
}

/** Base64 of a canvas as a PNG. */
export function pngOf(canvas: HTMLCanvasElement): string {
  return canvas.toDataURL('image/png').replace(/^data:image\/png;base64,/, '');
}
