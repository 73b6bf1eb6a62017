import { inverse, Matrix } from 'ml-matrix';
import type { Luma, Place } from './image.ts';
import { fits, type Template } from './template.ts';

export interface Aligned extends Place {
  /** Standard uncertainty of one coordinate, as far as the fit itself tells, px. */
  readonly uPx: number;
}

/** Standard deviation of the window, in shares of the disc's radius: what lies in the middle counts most. */
const WINDOW = 0.6;
/** Cauchy's weights: 95 % as efficient as least squares where nothing is covered. Holland & Welsch 1977 (from memory). */
const TUNING = 2.385;
/** Differences of brightness below this are never held against a pixel: about the noise of a coded picture. A convention. */
const LEAST_SD = 3;
const MOST_STEPS = 12;
const NEAR_ENOUGH_PX = 0.01;
/** It starts within a pixel; what runs off further is no match. */
const MOST_SHIFT_PX = 3;
/** Neighbouring pixels of a coded picture err alike, and sampling between them errs: variances are so much larger. */
const CORRELATED = 6;

/** Pixels of a template's disc, and how its brightness rises there. */
interface Slopes {
  readonly half: number;
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly value: Float64Array;
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  readonly window: Float64Array;
}
/** How a template's brightness shows in the picture. */
interface Light {
  readonly gain: number;
  readonly level: number;
}
/** Worked out once for a template. */
const slopesKnown = new WeakMap<Template, Slopes>();

/**
 * Where a template lies between the pixels: least squares over its disc, iterated, of shift, contrast and brightness, with
 * weights that leave out what does not look as it did (a limb that passes, another marker).
 *
 * @param near the match to the pixel
 * @returns null where it finds no best place near there
 * @source Lucas & Kanade 1981, IJCAI; light and what is covered: Hager & Belhumeur 1998, IEEE PAMI 20(10), sections 3 and
 *   4; the uncertainty: JCGM 100:2008, H.3 (least squares), its scale a convention (CORRELATED)
 */
export function alignTemplate(image: Luma, template: Template, near: Place): Aligned | null {
  const slopes = slopesKnown.get(template) ?? slopesOf(template);
  slopesKnown.set(template, slopes);
  const { count, value, window } = slopes;
  const [shown, off] = [new Float64Array(count), new Float64Array(count)];
  let { x, y } = near;
  if (!sample(image, slopes, near, shown)) return null;
  let light = lightOf(value, shown, window);
  for (let step = 1; sample(image, slopes, { x, y }, shown); step++) {
    const { gain, level }: Light = light;
    for (let k = 0; k < count; k++) off[k] = (shown[k] as number) - gain * (value[k] as number) - level;
    const sd = Math.max(LEAST_SD, 1.4826 * medianOf(off.map(Math.abs)));
    const { normal, right, variance } = equations(slopes, off, gain, sd);
    const covariance = inverted(normal);
    if (covariance === null) return null;
    const [dx = 0, dy = 0, dGain = 0, dLevel = 0]: number[] = covariance.mmul(Matrix.columnVector(right)).getColumn(0);
    light = { gain: gain + dGain, level: level + dLevel };
    [x, y] = [x + dx, y + dy];
    // Not a number is not near either.
    if (!(Math.hypot(x - near.x, y - near.y) <= MOST_SHIFT_PX && light.gain > 0)) return null;
    if (step < MOST_STEPS && Math.hypot(dx, dy) >= NEAR_ENOUGH_PX) continue;
    const spread = (covariance.get(0, 0) + covariance.get(1, 1)) / 2;
    return { x, y, uPx: Math.sqrt(CORRELATED * variance * spread) };
  }
  return null;
}

function slopesOf({ half, values, reach }: Template): Slopes {
  const side = 2 * half + 1;
  const room = () => new Float64Array(side * side);
  const slopes = { x: room(), y: room(), value: room(), dx: room(), dy: room(), window: room() };
  let count = 0;
  for (let row = 1; row < side - 1; row++) {
    const wide = Math.min(reach[row] ?? 0, half - 1);
    for (let column = half - wide; column <= half + wide; column++, count++) {
      const i = row * side + column;
      const [x, y] = [column - half, row - half];
      slopes.x[count] = x;
      slopes.y[count] = y;
      slopes.value[count] = values[i] ?? 0;
      slopes.dx[count] = ((values[i + 1] ?? 0) - (values[i - 1] ?? 0)) / 2;
      slopes.dy[count] = ((values[i + side] ?? 0) - (values[i - side] ?? 0)) / 2;
      slopes.window[count] = Math.exp(-(x * x + y * y) / (2 * (WINDOW * half) ** 2));
    }
  }
  return { half, count, ...slopes };
}

/** Brightness of the picture where the pixels of the template would lie, bilinear between its own; false: outside it. */
function sample(image: Luma, { count, half, x, y }: Slopes, at: Place, into: Float64Array): boolean {
  const { data, stride } = image;
  const [left, top] = [Math.floor(at.x), Math.floor(at.y)];
  if (!fits(image, left, top, half)) return false;
  const [ax, ay] = [at.x - left, at.y - top];
  for (let k = 0; k < count; k++) {
    // In bounds by `fits`: the outermost ring of the disc is not among these pixels.
    const i = (top + (y[k] as number)) * stride + left + (x[k] as number);
    const [a, b] = [data[i] as number, data[i + 1] as number];
    const [c, d] = [data[i + stride] as number, data[i + stride + 1] as number];
    const above = a + ax * (b - a);
    into[k] = above + ay * (c + ax * (d - c) - above);
  }
  return true;
}

/** Contrast and brightness by plain least squares, to begin with. */
function lightOf(value: Float64Array, shown: Float64Array, window: Float64Array): Light {
  let [w0, t0, v0, tt, tv] = [0, 0, 0, 0, 0];
  for (let k = 0; k < shown.length; k++) {
    const [w, t, v] = [window[k] as number, value[k] as number, shown[k] as number];
    w0 += w;
    t0 += w * t;
    v0 += w * v;
    tt += w * t * t;
    tv += w * t * v;
  }
  const gain = (tv - (t0 * v0) / w0) / (tt - (t0 * t0) / w0);
  return { gain, level: (v0 - gain * t0) / w0 };
}

/** Weighted normal equations of shift x and y, contrast and brightness, and the weighted variance of what is left. */
function equations({ count, value, dx, dy, window }: Slopes, off: Float64Array, gain: number, sd: number) {
  const normal = new Float64Array(16);
  const right = new Float64Array(4);
  const row = new Float64Array(4);
  let [weight, squares] = [0, 0];
  for (let k = 0; k < count; k++) {
    const r = off[k] as number;
    const w = (window[k] as number) / (1 + (r / (TUNING * sd)) ** 2);
    weight += w;
    squares += w * r * r;
    row[0] = gain * (dx[k] as number);
    row[1] = gain * (dy[k] as number);
    row[2] = -(value[k] as number);
    row[3] = -1;
    for (let i = 0; i < 4; i++) {
      const wi = w * (row[i] as number);
      right[i] = (right[i] as number) - wi * r;
      for (let j = 0; j < 4; j++) normal[i * 4 + j] = (normal[i * 4 + j] as number) + wi * (row[j] as number);
    }
  }
  return { normal, right, variance: squares / weight };
}

/** null where the disc does not say both coordinates: even, or a straight edge. */
function inverted(normal: Float64Array): Matrix | null {
  try {
    return inverse(Matrix.from1DArray(4, 4, normal));
  } catch {
    return null;
  }
}

function medianOf(values: Float64Array): number {
  return values.toSorted()[values.length >> 1] ?? 0;
}
