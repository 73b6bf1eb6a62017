import { crc32, deflateSync } from 'node:zlib';
import type { Drawing } from '../../shared/report/blocks/figure.ts';
import { INK_ON_PAPER } from '../../shared/report/inks.ts';
import type { Ink, Mark } from '../../shared/report/page.ts';
import { TABULAR } from './fontMetrics.ts';
import { drawnText } from './drawnText.ts';
import { layOut, openFont } from './openFonts.ts';

/** Pixels to a point: 144 to the inch. */
const SCALE = 2;
/** Pieces that a curve is drawn as: at this size none is seen. */
const PIECES = 8;

type Point = readonly [x: number, y: number];

/**
 * A figure as a picture (PNG, ISO/IEC 15948) on white, for programs that draw no vector figure. Letters are the outlines
 * of the report's typefaces. Photographs are left out: only their place is framed.
 */
export function drawPng({ height, marks }: Drawing, width: number): Buffer {
  const canvas = new Canvas(Math.ceil(width * SCALE), Math.ceil(height * SCALE));
  for (const mark of marks) drawMark(canvas, mark);
  return canvas.png();
}

function drawMark(canvas: Canvas, mark: Mark): void {
  switch (mark.mark) {
    case 'text':
      return canvas.paint(outlinesOf(mark), mark.ink);
    case 'line':
      return stroke(
        canvas,
        [
          [
            [mark.x1, mark.y1],
            [mark.x2, mark.y2],
          ],
        ],
        mark.ink,
        mark.weight,
        mark.dash,
      );
    case 'rect':
    case 'image': {
      const { x, y, width, height } = mark;
      const box: Point[] = [
        [x, y],
        [x + width, y],
        [x + width, y + height],
        [x, y + height],
        [x, y],
      ];
      const { fill, stroke: edge, weight } = mark.mark === 'rect' ? mark : FRAME;
      if (fill !== null) canvas.paint([box], fill);
      if (edge !== null) stroke(canvas, [box], edge, weight);
      return;
    }
    case 'path': {
      const lines = linesOf(commandsOf(mark.d));
      if (mark.fill !== null) canvas.paint(lines, mark.fill);
      if (mark.stroke !== null) stroke(canvas, lines, mark.stroke, mark.weight, mark.dash);
      return;
    }
  }
}

const FRAME = { fill: null, stroke: 'rule', weight: 0.5 } as const;

interface Command {
  readonly kind: string;
  readonly args: readonly number[];
}

/** Absolute M, L, C, Q and Z only, as marks have them. */
function commandsOf(d: string): Command[] {
  return [...d.matchAll(/([MLCQZ])([^MLCQZ]*)/g)].map(([, kind = '', args = '']) => ({
    kind,
    args: (args.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number),
  }));
}

function linesOf(commands: readonly Command[]): Point[][] {
  const lines: Point[][] = [];
  let line: Point[] = [];
  for (const { kind, args } of commands) {
    const points = Array.from({ length: args.length / 2 }, (_, i): Point => [args[2 * i] ?? 0, args[2 * i + 1] ?? 0]);
    if (kind === 'M') lines.push((line = []));
    if (kind === 'M' || kind === 'L') line.push(...points);
    else if (kind === 'Z') line.push(...line.slice(0, 1));
    else line.push(...curve([...line.slice(-1), ...points]));
  }
  return lines;
}

/** Points along a Bézier curve of any degree (de Casteljau), without the first. */
function curve(control: readonly Point[]): Point[] {
  return Array.from({ length: PIECES }, (_, i) => {
    const t = (i + 1) / PIECES;
    let some = control;
    while (some.length > 1) some = some.slice(1).map(([x, y], k) => between(some[k] ?? [x, y], [x, y], t));
    return some[0] ?? [0, 0];
  });
}

function between(a: Point, b: Point, t: number): Point {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}

const KINDS: Readonly<Record<string, string>> = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
};

function outlinesOf(mark: Extract<Mark, { mark: 'text' }>): Point[][] {
  const { face, size, x, baseline, tabular } = mark;
  const font = openFont(face);
  const em = size / font.unitsPerEm;
  const { glyphs, positions } = layOut(font, drawnText(mark), tabular === true ? TABULAR : []);
  let pen = x;
  return glyphs.flatMap(({ path }, i) => {
    const { xAdvance, xOffset, yOffset } = positions[i] ?? { xAdvance: 0, xOffset: 0, yOffset: 0 };
    const at = pen + xOffset * em;
    pen += xAdvance * em;
    const commands = path.commands.map(({ command, args }) => ({ kind: KINDS[command] ?? '', args }));
    return linesOf(commands).map((line) =>
      line.map(([px, py]): Point => [at + px * em, baseline - (py + yOffset) * em]),
    );
  });
}

/** Each piece of a line as a small bar; a dash leaves gaps. */
function stroke(canvas: Canvas, lines: readonly Point[][], ink: Ink, weight: number, dash?: readonly number[]): void {
  for (const line of lines) {
    const bars: Point[][] = [];
    let along = 0;
    for (const [i, to] of line.entries()) {
      const from = line[i - 1];
      if (from === undefined) continue;
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      if (length === 0) continue;
      for (const [a, b] of dashes(along, length, dash)) {
        bars.push(bar(between(from, to, a / length), between(from, to, b / length), weight / 2));
      }
      along += length;
    }
    for (const one of bars) canvas.paint([one], ink);
  }
}

/** From where to where a stretch is drawn that begins so far along its line. */
function dashes(along: number, length: number, dash?: readonly number[]): [number, number][] {
  if (dash === undefined) return [[0, length]];
  const on = dash[0] ?? 1;
  const period = on + (dash[1] ?? on);
  const parts: [number, number][] = [];
  for (let start = -(along % period); start < length; start += period) {
    if (start + on > 0) parts.push([Math.max(0, start), Math.min(length, start + on)]);
  }
  return parts;
}

function bar(from: Point, to: Point, half: number): Point[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [ux, uy] = [((to[0] - from[0]) / length) * half, ((to[1] - from[1]) / length) * half];
  return [
    [from[0] - uy, from[1] + ux],
    [to[0] - uy, to[1] + ux],
    [to[0] + uy, to[1] - ux],
    [from[0] + uy, from[1] - ux],
    [from[0] - uy, from[1] + ux],
  ];
}

/** White paper that takes filled outlines, each pixel by the share of it that they cover. */
class Canvas {
  readonly #width: number;
  readonly #height: number;
  readonly #rgb: Uint8Array;

  constructor(width: number, height: number) {
    this.#width = width;
    this.#height = height;
    this.#rgb = new Uint8Array(width * height * 3).fill(255);
  }

  paint(lines: readonly Point[][], ink: Ink): void {
    const ys = lines.flat().map(([, y]) => y * SCALE);
    const xs = lines.flat().map(([x]) => this.#inside(x * SCALE));
    const [left, right] = [Math.floor(Math.min(...xs)), Math.ceil(Math.max(...xs))];
    const [top, bottom] = [
      Math.max(0, Math.floor(Math.min(...ys))),
      Math.min(this.#height, Math.ceil(Math.max(...ys))),
    ];
    if (!(bottom > top && right > left)) return;
    const stride = right - left + 2;
    const area = new Float32Array(stride * (bottom - top));
    for (const line of lines) {
      const scaled = line.map(([x, y]): Point => [this.#inside(x * SCALE) - left, y * SCALE - top]);
      // An outline closes itself.
      scaled.forEach((to, i) => addEdge(area, stride, scaled[i - 1] ?? scaled.at(-1) ?? to, to));
    }
    const colour = [1, 3, 5].map((at) => Number.parseInt(INK_ON_PAPER[ink].slice(at, at + 2), 16));
    for (let y = top; y < bottom; y++) {
      let sum = 0;
      for (let x = left; x < right; x++) {
        sum += area[(y - top) * stride + x - left] ?? 0;
        const cover = Math.min(1, Math.abs(sum));
        if (cover < 1 / 512) continue;
        for (let c = 0; c < 3; c++) {
          const at = (y * this.#width + x) * 3 + c;
          const under = this.#rgb[at] ?? 255;
          this.#rgb[at] = Math.round(under + ((colour[c] ?? 0) - under) * cover);
        }
      }
    }
  }

  #inside(x: number): number {
    return Math.min(this.#width, Math.max(0, x));
  }

  png(): Buffer {
    const row = this.#width * 3;
    const rows = Buffer.alloc((row + 1) * this.#height);
    for (let y = 0; y < this.#height; y++) rows.set(this.#rgb.subarray(y * row, (y + 1) * row), y * (row + 1) + 1);
    const head = Buffer.alloc(13);
    head.writeUInt32BE(this.#width, 0);
    head.writeUInt32BE(this.#height, 4);
    // Eight bits a sample, red green blue, nothing interlaced.
    head.set([8, 2, 0, 0, 0], 8);
    const parts = [chunk('IHDR', head), chunk('IDAT', deflateSync(rows, { level: 9 })), chunk('IEND', Buffer.alloc(0))];
    return Buffer.concat([Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]), ...parts]);
  }
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/**
 * What one edge adds to the signed area right of it, pixel by pixel: summed along a row this is how much of each pixel
 * the outline covers. Every crossed pixel gets its exact share.
 */
function addEdge(area: Float32Array, stride: number, a: Point, b: Point): void {
  if (a[1] === b[1]) return;
  const sign = a[1] < b[1] ? 1 : -1;
  const [[x0, y0], [x1, y1]] = sign > 0 ? [a, b] : [b, a];
  const slope = (x1 - x0) / (y1 - y0);
  const rows = Math.min(area.length / stride, Math.ceil(y1));
  for (let row = Math.max(0, Math.floor(y0)); row < rows; row++) {
    const [from, to] = [Math.max(row, y0), Math.min(row + 1, y1)];
    const d = (to - from) * sign;
    const [here, next] = [x0 + (from - y0) * slope, x0 + (to - y0) * slope];
    const [p, q] = [Math.min(here, next), Math.max(here, next)];
    const at = row * stride;
    for (let x = Math.floor(p); x <= Math.floor(q); x++) {
      // Of this stretch of the edge the part that runs over this pixel.
      const [l, r] = [Math.max(x, p), Math.min(x + 1, q)];
      const part = q === p ? d : (d * (r - l)) / (q - p);
      const covered = part * (x + 1 - (l + r) / 2);
      area[at + x] = (area[at + x] ?? 0) + covered;
      area[at + x + 1] = (area[at + x + 1] ?? 0) + part - covered;
    }
  }
}
