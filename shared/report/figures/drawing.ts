import type { FontMetrics } from '../metrics.ts';
import type { Face, Ink, Mark } from '../page.ts';
import { setLabel } from '../steps/setLabel.ts';

/** The few shapes that figures are made of. */

export interface LabelStyle {
  readonly size?: number;
  readonly face?: Face;
  readonly ink?: Ink;
  readonly align?: 'start' | 'middle' | 'end';
}

export function label(text: string, x: number, baseline: number, style: LabelStyle, metrics: FontMetrics): Mark {
  const { size = 8, face = 'sans', ink = 'ink', align = 'start' } = style;
  const set = setLabel(text, face, metrics);
  const width = metrics.width(set.text, set.face, size, true);
  const left = align === 'start' ? x : align === 'middle' ? x - width / 2 : x - width;
  return { mark: 'text', x: left, baseline, size, ink, width, tabular: true, ...set };
}

export function line(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  weight = 0.6,
  ink: Ink = 'ink',
  dash?: readonly number[],
): Mark {
  return { mark: 'line', x1, y1, x2, y2, weight, ink, ...(dash === undefined ? {} : { dash }) };
}

export function rect(
  x: number,
  y: number,
  width: number,
  height: number,
  fill: Ink | null,
  stroke: Ink | null = null,
): Mark {
  return { mark: 'rect', x, y, width, height, fill, stroke, weight: 0.6 };
}

/** A disc of radius r; Bézier quarter circles, off by less than 0.03 % of r. */
export function dot(x: number, y: number, r: number, fill: Ink | null = 'ink', stroke: Ink | null = null): Mark {
  const k = 0.5522847 * r;
  const d = [
    `M${c(x + r)},${c(y)}`,
    `C${c(x + r)},${c(y + k)},${c(x + k)},${c(y + r)},${c(x)},${c(y + r)}`,
    `C${c(x - k)},${c(y + r)},${c(x - r)},${c(y + k)},${c(x - r)},${c(y)}`,
    `C${c(x - r)},${c(y - k)},${c(x - k)},${c(y - r)},${c(x)},${c(y - r)}`,
    `C${c(x + k)},${c(y - r)},${c(x + r)},${c(y - k)},${c(x + r)},${c(y)}Z`,
  ].join('');
  return { mark: 'path', d, fill, stroke, weight: 0.8 };
}

/** Slanting lines that fill a box: ground that reads without colour. */
export function hatch(x: number, y: number, width: number, height: number, step = 4, ink: Ink = 'rule'): Mark[] {
  const marks: Mark[] = [];
  // Each line runs from the bottom edge up to the right; its foot may lie left of the box.
  for (let foot = x - height + step; foot < x + width; foot += step) {
    const from = Math.max(foot, x);
    const to = Math.min(foot + height, x + width);
    if (to - from > 0.1) marks.push(line(from, y + height - (from - foot), to, y + height - (to - foot), 0.45, ink));
  }
  return marks;
}

export function polyline(
  points: readonly (readonly [number, number])[],
  weight = 1,
  ink: Ink = 'ink',
  dash?: readonly number[],
): Mark {
  const d = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${c(x)},${c(y)}`).join('');
  return { mark: 'path', d, fill: null, stroke: ink, weight, ...(dash === undefined ? {} : { dash }) };
}

/** Coordinates to a hundredth of a point: finer cannot be seen. */
function c(n: number): string {
  return String(Number(n.toFixed(2)));
}
