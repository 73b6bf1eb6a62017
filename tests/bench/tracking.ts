import { createRequire } from 'node:module';
import path from 'node:path';
import type { Luma, Place } from '../../shared/kernel/track/image.ts';
import { pointTracker, TRACK_OPTIONS } from '../../shared/kernel/track/pointTracker.ts';
import { seededRandom } from '../../shared/kernel/uncertainty/seededRandom.ts';
import { plainCorrelation } from './plainCorrelation.ts';

const [WIDTH, HEIGHT] = [1920, 1080];
const PICTURES = 24;
const { halfPx: HALF, reachPx: REACH } = TRACK_OPTIONS;

export interface Tracked {
  readonly name: string;
  readonly msPerPoint: number;
  /** Root mean square distance from where the points truly are, px. */
  readonly rmsPx: number;
}

/** Ten round markers on a noisy ground of 1920 × 1080, each moving by a part of a pixel more than whole ones a picture. */
const MARKERS: readonly Place[] = Array.from({ length: 10 }, (_, k) => ({ x: 200 + 150 * k, y: 300 + 40 * k }));
const placeIn = ({ x, y }: Place, k: number): Place => ({ x: x + 5.3 * k, y: y + 2.7 * k });
const rounded = ({ x, y }: Place) => ({ x: Math.round(x), y: Math.round(y) });

function pictures(): Luma[] {
  const random = seededRandom(5);
  const ground = Uint8Array.from({ length: WIDTH * HEIGHT }, () => 90 + 60 * random());
  return Array.from({ length: PICTURES }, (_, k) => {
    const data = Uint8Array.from(ground);
    for (const marker of MARKERS) {
      const { x, y } = placeIn(marker, k);
      for (let row = Math.round(y) - 14; row <= y + 14; row++) {
        for (let column = Math.round(x) - 14; column <= x + 14; column++) {
          const off = Math.hypot(column - x, row - y);
          // Edges as wide as a pixel, as a lens draws them.
          const ring = Math.min(1, Math.max(0, 10.5 - off)) - Math.min(1, Math.max(0, 4.5 - off));
          if (off < 14) data[row * WIDTH + column] = 110 + 130 * ring;
        }
      }
    }
    return { width: WIDTH, height: HEIGHT, stride: WIDTH, data };
  });
}

/**
 * Tracking per point and picture: ours (search, followed back, sub-pixel), the same search written out plainly, and the
 * template matching of a computer-vision library where CASEFRAME_OPENCV names a folder with its package for JavaScript.
 */
export async function tracking(now: () => number): Promise<Tracked[]> {
  const film = pictures();
  const [first] = film;
  if (first === undefined) throw new Error('no pictures');
  const timed = (name: string, work: () => readonly (readonly Place[])[], share = MARKERS.length): Tracked => {
    work();
    const start = now();
    const found = work();
    const ms = now() - start;
    const off = found.flatMap((places, m) =>
      places.map(({ x, y }, i) => {
        const marker = MARKERS[m] ?? { x: 0, y: 0 };
        const truth = placeIn(marker, i + 1);
        // A click on a whole pixel is off from the start.
        const click = rounded(marker);
        return (x - truth.x - (click.x - marker.x)) ** 2 + (y - truth.y - (click.y - marker.y)) ** 2;
      }),
    );
    const rmsPx = Math.sqrt(off.reduce((sum, d) => sum + d, 0) / off.length);
    return { name, msPerPoint: ms / (PICTURES - 1) / share, rmsPx };
  };
  const matched = (find: (to: Luma, m: Place, near: Place, k: number) => Place, markers: readonly Place[]) => () =>
    markers.map((marker) => {
      const places: Place[] = [rounded(marker)];
      for (let k = 1; k < PICTURES; k++) {
        const [a, b] = [places.at(-1) ?? marker, places.at(-2) ?? places.at(-1) ?? marker];
        const to = film[k];
        if (to !== undefined)
          places.push(find(to, rounded(marker), rounded({ x: 2 * a.x - b.x, y: 2 * a.y - b.y }), k));
      }
      return places.slice(1);
    });

  const ours = timed('ours: found, followed back, between the pixels', () =>
    MARKERS.map((marker) => {
      const tracker = pointTracker(first, rounded(marker));
      return film.slice(1).map((picture) => {
        const found = tracker.next(picture);
        return 'lost' in found ? { x: Number.NaN, y: Number.NaN } : found;
      });
    }),
  );
  const plain = timed(
    'plain normalised cross-correlation of our own (tests/bench/plainCorrelation.ts), whole pixels, one way',
    matched((to, marker, near) => plainCorrelation(first, marker, HALF, to, near, REACH), MARKERS.slice(0, 1)),
    1,
  );
  const library = await openLibrary(film);
  return [
    ours,
    plain,
    ...(library === null
      ? []
      : [timed('matchTemplate of OpenCV, TM_CCOEFF_NORMED, whole pixels, one way', matched(library, MARKERS))]),
  ];
}

interface Mat {
  readonly data: Uint8Array;
  roi(rect: unknown): Mat;
  delete(): void;
}
/** The little of the library's package that is used here. */
interface Library {
  readonly Mat: new (rows?: number, columns?: number, type?: number) => Mat;
  readonly Rect: new (x: number, y: number, width: number, height: number) => unknown;
  readonly CV_8UC1: number;
  readonly TM_CCOEFF_NORMED: number;
  matchTemplate(image: Mat, template: Mat, result: Mat, method: number): void;
  minMaxLoc(result: Mat): { readonly maxLoc: Place };
}

async function openLibrary(film: readonly Luma[]) {
  const folder = process.env['CASEFRAME_OPENCV'];
  if (folder === undefined) return null;
  const require = createRequire(path.resolve(folder, 'package.json'));
  const loaded = require('@techstark/opencv-js') as Library | Promise<Library>;
  const cv = await loaded;
  const mats = film.map(({ data }) => {
    const mat = new cv.Mat(HEIGHT, WIDTH, cv.CV_8UC1);
    mat.data.set(data);
    return mat;
  });
  const [first] = mats;
  const result = new cv.Mat();
  const side = 2 * HALF + 1;
  return (_to: Luma, marker: Place, near: Place, k: number): Place => {
    const [x, y] = [near.x - HALF - REACH, near.y - HALF - REACH];
    const where = mats[k]?.roi(new cv.Rect(x, y, side + 2 * REACH, side + 2 * REACH));
    const template = first?.roi(new cv.Rect(marker.x - HALF, marker.y - HALF, side, side));
    if (where === undefined || template === undefined) throw new Error('no picture');
    cv.matchTemplate(where, template, result, cv.TM_CCOEFF_NORMED);
    const { maxLoc } = cv.minMaxLoc(result);
    where.delete();
    template.delete();
    return { x: x + HALF + maxLoc.x, y: y + HALF + maxLoc.y };
  };
}
