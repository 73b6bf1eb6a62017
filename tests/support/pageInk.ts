import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

export const hasPoppler = spawnSync('pdftoppm', ['-v']).status === 0;

const ACROSS = 16;
const DOWN = 22;
/** Of 255, for one step of a cell; text covers some 40 of a cell. */
const STEP = 4;
/** A cell is another by so many steps: text that came, went or moved. Rendering anew moves none by two. */
const OTHER = 4;

/** How much ink lies in each cell of each page, one character a cell, one line a page: enough to see that a page changed. */
export function pageInk(pdf: Uint8Array, folder: string): string[] {
  const at = fs.mkdtempSync(path.join(folder, 'pages-'));
  fs.writeFileSync(path.join(at, 'made.pdf'), pdf);
  execFileSync('pdftoppm', ['-gray', '-r', '36', path.join(at, 'made.pdf'), path.join(at, 'page')]);
  return fs
    .readdirSync(at)
    .filter((name) => name.endsWith('.pgm'))
    .toSorted()
    .map((name) => inkOf(fs.readFileSync(path.join(at, name))));
}

function inkOf(pgm: Buffer): string {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString('latin1'));
  if (head === null) throw new Error('not a grey picture');
  const [width, height] = [Number(head[1]), Number(head[2])];
  const pixels = pgm.subarray(head[0].length);
  const sums = new Float64Array(ACROSS * DOWN);
  const counts = new Float64Array(ACROSS * DOWN);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const cell = Math.floor((y * DOWN) / height) * ACROSS + Math.floor((x * ACROSS) / width);
      sums[cell] = (sums[cell] ?? 0) + 255 - (pixels[y * width + x] ?? 255);
      counts[cell] = (counts[cell] ?? 0) + 1;
    }
  }
  return Array.from(sums, (sum, i) => Math.min(35, Math.round(sum / (counts[i] ?? 1) / STEP)).toString(36)).join('');
}

const levelAt = (ink: string, cell: number) => Number.parseInt(ink[cell] ?? '0', 36);

/** Pages that look different, counted from 1; one that came or went counts too. */
export function changedPages(before: readonly string[], now: readonly string[]): number[] {
  const pages = Array.from({ length: Math.max(before.length, now.length) }, (_, i) => i);
  return pages
    .filter((i) => {
      const [a, b] = [before[i] ?? '', now[i] ?? ''];
      return (
        a.length !== b.length ||
        Array.from(a, (_, at) => Math.abs(levelAt(a, at) - levelAt(b, at))).some((steps) => steps >= OTHER)
      );
    })
    .map((i) => i + 1);
}
