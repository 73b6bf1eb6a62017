import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Matrix, solve } from 'ml-matrix';
import { beforeAll, describe, expect, test } from 'vitest';
import { gravityCheck } from '../../shared/kernel/flight/gravityCheck.ts';
import type { Luma, Place } from '../../shared/kernel/track/image.ts';
import { pointTracker, TRACK_OPTIONS } from '../../shared/kernel/track/pointTracker.ts';
import { picturesOf } from '../main/media/films.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { describeOpenData } from '../support/openData.ts';

const [WIDTH, HEIGHT] = [1080, 1920];
/** Of the file. */
const RATE_HZ = 8_694_000 / 72_439;
/** Nothing in this scene has a known length, so one thousand pixels stand for a metre. */
const PX = 1000;

/**
 * The middle of the largest bright spot, weighted by brightness: no template, no prediction, no memory of the picture
 * before. The ball is the only large white thing in this film; the targets on the panel are a tenth of its area.
 */
function brightSpot({ width, data }: Luma): Place {
  const isSeen = new Uint8Array(data.length);
  let best = { area: 0, weight: 1, x: 0, y: 0 };
  for (let first = 0; first < data.length; first++) {
    if (isSeen[first] === 1 || (data[first] ?? 0) < 180) continue;
    const spot = { area: 0, weight: 0, x: 0, y: 0 };
    isSeen[first] = 1;
    for (const open = [first]; open.length > 0; ) {
      const at = open.pop() ?? 0;
      const weight = data[at] ?? 0;
      spot.area += 1;
      spot.weight += weight;
      spot.x += weight * (at % width);
      spot.y += weight * Math.floor(at / width);
      for (const next of [at - 1, at + 1, at - width, at + width]) {
        if ((data[next] ?? 0) < 180 || isSeen[next] === 1) continue;
        isSeen[next] = 1;
        open.push(next);
      }
    }
    if (spot.area > best.area) best = spot;
  }
  return { x: best.x / best.weight, y: best.y / best.weight };
}

interface ByHand {
  /** Of the film. */
  readonly frame: number;
  readonly t: number;
  readonly x: number;
  readonly y: number;
}

/** tests/fixtures/ball-digitised-by-hand: row 4 is picture 6, as its times and the ball both have it. */
const byHand: readonly ByHand[] = readFileSync(
  resolve(import.meta.dirname, '..', 'fixtures', 'ball-digitised-by-hand', 'path.csv'),
  'utf8',
)
  .trim()
  .split('\n')
  .slice(1)
  .map((line, row) => {
    const [t = NaN, x = NaN, y = NaN] = line.split(',').map(Number);
    return { frame: row + 2, t, x, y };
  })
  .slice(4);

/** The path by hand on the picture: turned, scaled and moved as a whole, by least squares of a general matrix package. */
function handOn(places: readonly Place[], later = 0) {
  const both = byHand.flatMap((one) => {
    const place = places[one.frame + later];
    return place === undefined ? [] : [{ ...one, place }];
  });
  const terms = new Matrix(
    both.flatMap(({ x, y }) => [
      [x, y, 1, 0],
      [-y, x, 0, 1],
    ]),
  );
  const wanted = Matrix.columnVector(both.flatMap(({ place }) => [place.x, place.y]));
  const c = solve(terms, wanted, true);
  const off = terms.mmul(c).sub(wanted).to1DArray();
  return {
    pxPerM: Math.hypot(c.get(0, 0), c.get(1, 0)),
    apart: both.map((_one, i) => ({ x: off[2 * i] ?? NaN, y: off[2 * i + 1] ?? NaN })),
  };
}

const rmsOf = (apart: readonly Place[]) =>
  Math.sqrt(apart.reduce((sum, { x, y }) => sum + x * x + y * y, 0) / apart.length);

/** Each with the four before and the four after it: what a hand scatters from click to click goes, where it errs stays. */
function evened(apart: readonly Place[]): Place[] {
  return apart.map((_one, i) => {
    const near = apart.slice(Math.max(0, i - 4), i + 5);
    const mean = (of: (place: Place) => number) => near.reduce((sum, place) => sum + of(place), 0) / near.length;
    return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
  });
}

/** Gravity of a parabola through heights by least squares of a general matrix package. */
function parabola(heights: readonly number[]) {
  const times = heights.map((_y, i) => i / RATE_HZ);
  const terms = new Matrix(times.map((t) => [1, t, t * t]));
  const c = solve(terms, Matrix.columnVector([...heights]), true);
  const left = heights.map((y, i) => y - terms.getRow(i).reduce((sum, term, k) => sum + term * c.get(k, 0), 0));
  return { g: -2 * c.get(2, 0), rms: Math.sqrt(left.reduce((sum, d) => sum + d * d, 0) / left.length) };
}

// Nothing in the film is of known length, and its SOURCE.md says that the ball also moves in depth and that 9.81 is not to
// be expected of it. Its makers' own path by hand has their scale.
describeOpenData(
  'projectile-lab-video',
  'a real ball, filmed at 120 Hz (SOURCE.md: Duarte & Watanabe, CC BY 4.0)',
  (data) => {
    describe.skipIf(!hasFfmpeg)('(skipped without ffmpeg)', () => {
      const spots: Place[] = [];
      const tracked: Place[] = [];
      beforeAll(async () => {
        let tracker: ReturnType<typeof pointTracker> | null = null;
        for await (const picture of picturesOf(data.path('ball_throw_120fps.mp4'), WIDTH, HEIGHT)) {
          const spot = brightSpot(picture);
          spots.push(spot);
          if (tracker === null) {
            // Put down once, on a whole pixel as a click is.
            const click = { x: Math.round(spot.x), y: Math.round(spot.y) };
            tracker = pointTracker(picture, click, { ...TRACK_OPTIONS, halfPx: 16 });
            tracked.push(click);
          } else {
            const found = tracker.next(picture);
            if ('lost' in found) break;
            tracked.push(found);
          }
        }
      }, 120_000);

      test('tracked from one click to the last of 138 pictures: within 2 px RMS of the bright spot in each', () => {
        const apart = tracked.map(({ x, y }, i) => Math.hypot(x - (spots[i]?.x ?? 0), y - (spots[i]?.y ?? 0)));
        const rms = Math.sqrt(apart.reduce((sum, d) => sum + d * d, 0) / apart.length);
        console.info(
          `tracked in ${tracked.length} pictures; ${rms.toFixed(2)} px RMS, ${Math.max(...apart).toFixed(2)} at most`,
        );
        expect(tracked).toHaveLength(138);
        expect(rms).toBeLessThan(2);
        // A click on a whole pixel is wrong by up to 0.7 px, and nothing drifts from there.
        expect(Math.max(...apart)).toBeLessThan(1);
      });

      test('within 2 px RMS of the path its makers digitised by hand, in the 122 pictures both have', () => {
        const { apart } = handOn(tracked);
        // Third differences of a smooth path are nearly nothing, of independent clicks √20 times their scatter.
        const scatter = rmsOf(
          apart.slice(3).map((_one, i) => {
            const third = (of: (place: Place) => number) => {
              const [a = 0, b = 0, c = 0, d = 0] = apart.slice(i, i + 4).map(of);
              return (d - 3 * c + 3 * b - a) / Math.sqrt(20);
            };
            return { x: third(({ x }) => x), y: third(({ y }) => y) };
          }),
        );
        console.info(
          `${apart.length} pictures: ${rmsOf(apart).toFixed(2)} px RMS from each click, of which the hand scatters ${scatter.toFixed(2)} px from click to click; ${rmsOf(evened(apart)).toFixed(2)} px RMS with nine clicks evened`,
        );
        expect(apart).toHaveLength(122);
        expect(rmsOf(evened(apart))).toBeLessThan(2);
        // What is left is the hand's: from the bright spots it lies as far.
        expect(rmsOf(handOn(spots).apart)).toBeCloseTo(rmsOf(apart), 1);
        // It is this film, and these pictures of it: one earlier or later fits far worse.
        for (const later of [-1, 1]) expect(rmsOf(handOn(tracked, later).apart)).toBeGreaterThan(3 * rmsOf(apart));
      });

      test('gravity on the scale of its makers: as least squares through their clicks has it, within its stated u', () => {
        const { pxPerM } = handOn(tracked);
        const { gravity } = gravityCheck(
          byHand.map(({ frame }) => {
            const { x, y } = tracked[frame] ?? { x: NaN, y: NaN };
            return { t: frame / RATE_HZ, x: x / pxPerM, y: -y / pxPerM };
          }),
          0.3 / pxPerM,
        );
        const { g } = parabola(byHand.map(({ y }) => y));
        console.info(`gravity ${gravity.value.toFixed(2)} ± ${gravity.u?.toFixed(2)} m/s², by hand ${g.toFixed(2)}`);
        expect(Math.abs(gravity.value - g)).toBeLessThan(gravity.u ?? 0);
      });

      test.each([
        ['the whole flight', 0, 138],
        ['its first third, up', 2, 46],
        ['its last third, down', 92, 138],
      ])(
        'gravity in the picture of %s: as least squares through the bright spots has it, within its stated u',
        (_what, from, to) => {
          const samples = tracked.slice(from, to).map(({ x, y }, i) => ({ t: i / RATE_HZ, x: x / PX, y: -y / PX }));
          const { gravity } = gravityCheck(samples, 0.3 / PX);
          const { g } = parabola(spots.slice(from, to).map(({ y }) => -y / PX));
          expect(Math.abs(gravity.value - g)).toBeLessThan(gravity.u ?? 0);
        },
      );

      test('what SOURCE.md warns of shows: no one parabola fits the flight, and the stated u grows with what is left over', () => {
        const [all, up] = [tracked, tracked.slice(2, 46)].map((places) =>
          gravityCheck(
            places.map(({ x, y }, i) => ({ t: i / RATE_HZ, x: x / PX, y: -y / PX })),
            0.3 / PX,
          ),
        );
        expect(parabola(spots.map(({ y }) => -y)).rms).toBeGreaterThan(10);
        expect(parabola(spots.slice(2, 46).map(({ y }) => -y)).rms).toBeLessThan(1);
        // JCGM 100:2008, H.3: a parabola through 138 points of 0.3 px over 1.14 s would give g to 0.0006 of these metres.
        expect(all?.gravity.u).toBeGreaterThan(20 * 0.0006);
        expect(Math.abs((all?.gravity.value ?? 0) - (up?.gravity.value ?? 0))).toBeGreaterThan(
          5 * (up?.gravity.u ?? 0),
        );
      });
    });
  },
);
