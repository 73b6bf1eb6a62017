import { createCanvas, loadImage } from '@napi-rs/canvas';
import { expect, test } from 'vitest';
import { drawPng } from '../../../main/report/drawPng.ts';
import type { Mark } from '../../../shared/report/page.ts';

async function pixels(marks: readonly Mark[]): Promise<(x: number, y: number) => number> {
  const picture = await loadImage(drawPng({ height: 20, marks }, 20));
  const canvas = createCanvas(picture.width, picture.height);
  canvas.getContext('2d').drawImage(picture, 0, 0);
  return (x, y) => canvas.getContext('2d').getImageData(x, y, 1, 1).data[0] ?? 0;
}

const rect = (x: number, width: number): Mark => ({
  mark: 'rect',
  x,
  y: 5,
  width,
  height: 10,
  fill: 'ink',
  stroke: null,
  weight: 0,
});

test('two pixels a point; ink #1d1b18 inside, paper outside, a quarter of a point covers half a pixel', async () => {
  const at = await pixels([rect(5, 10.25)]);
  expect([at(9, 20), at(10, 20), at(29, 20), at(31, 20)]).toEqual([255, 0x1d, 0x1d, 255]);
  expect(at(20, 9)).toBe(255);
  expect(Math.abs(at(30, 20) - (255 + 0x1d) / 2)).toBeLessThanOrEqual(1);
});

test('law: a circle of cubic curves with a hole in it covers the ring and not the hole', async () => {
  const k = 0.5523;
  const ring = (r: number, turn: 1 | -1) =>
    `M${10 + r},10` +
    [0, 1, 2, 3]
      .map((q) => {
        const [a, b] = [(turn * q * Math.PI) / 2, (turn * (q + 1) * Math.PI) / 2];
        const p = (t: number, out: number) =>
          `${10 + r * (Math.cos(t) - out * k * Math.sin(t) * turn)},${10 + r * (Math.sin(t) + out * k * Math.cos(t) * turn)}`;
        return `C${p(a, 1)} ${p(b, -1)} ${p(b, 0)}`;
      })
      .join('') +
    'Z';
  const at = await pixels([{ mark: 'path', d: ring(8, 1) + ring(4, -1), fill: 'ink', stroke: null, weight: 0 }]);
  expect([at(20, 20), at(20, 8), at(8, 20), at(20, 1)]).toEqual([255, 0x1d, 0x1d, 255]);
});

test('a dash of 2 and a gap of 2: half the line is drawn', async () => {
  const at = await pixels([{ mark: 'line', x1: 0, y1: 10, x2: 20, y2: 10, weight: 1, ink: 'ink', dash: [2, 2] }]);
  expect(Array.from({ length: 40 }, (_, x) => at(x, 20)).filter((one) => one < 100)).toHaveLength(20);
});
