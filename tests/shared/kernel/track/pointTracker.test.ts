import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../../shared/kernel/uncertainty/seededRandom.ts';
import { correlation } from '../../../../shared/kernel/track/correlation.ts';
import { halve } from '../../../../shared/kernel/track/halve.ts';
import type { Luma, Place } from '../../../../shared/kernel/track/image.ts';
import {
  pointTracker,
  TRACK_OPTIONS,
  type Tracked,
  type TrackStep,
} from '../../../../shared/kernel/track/pointTracker.ts';
import { cutTemplate } from '../../../../shared/kernel/track/template.ts';

// The truth of these tests is made, not measured: pictures are sampled from a formula moved by known amounts.

const [WIDTH, HEIGHT] = [320, 240];

/** A marker: a dark disc with a bright ring, its edges smooth over about a pixel, as lenses make them. */
const ring = (r: number) => 90 * Math.exp(-((r / 3) ** 2)) * -1 + 80 * Math.exp(-(((r - 6) / 2) ** 2));
/** A ground with structure everywhere, standing still. */
const ground = (x: number, y: number) =>
  110 + 18 * Math.sin(x / 7 + Math.sin(y / 11)) + 14 * Math.sin(y / 5 - x / 17) + 8 * Math.sin((x + y) / 3.1);

interface Scene {
  readonly marker: Place | null;
  /** Another marker that looks the same. */
  readonly other?: Place;
  readonly brightness?: number;
  readonly noise?: () => number;
}

function picture({ marker, other, brightness = 1, noise = () => 0 }: Scene): Luma {
  const markers = [marker, other ?? null].filter((place) => place !== null);
  const data = new Uint8Array(WIDTH * HEIGHT);
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      const r = Math.min(...markers.map((place) => Math.hypot(x - place.x, y - place.y)), Infinity);
      const cover = Math.exp(-((r / 11) ** 6));
      const value = ground(x, y) * (1 - cover) + cover * (120 + ring(r));
      data[y * WIDTH + x] = Math.min(255, Math.max(0, Math.round(value * brightness + noise())));
    }
  }
  return { width: WIDTH, height: HEIGHT, stride: WIDTH, data };
}

const gaussian = (seed: number, sd: number) => {
  const random = seededRandom(seed);
  return () => sd * (random() + random() + random() + random() - 2) * Math.sqrt(3);
};

/** A throw across the picture: constant velocity to the right, falling. Whole-pixel steps are the exception. */
const path = (frame: number): Place => ({ x: 40.3 + 6.37 * frame, y: 150.6 - 7.21 * frame + 0.183 * frame ** 2 });
const FRAMES = 34;
const at = (frame: number): Place => ({ x: 280 + 7 * frame, y: 120 });
const code = (wanted: string): unknown => expect.objectContaining({ code: wanted });
const known = (step: TrackStep): Tracked => {
  if ('lost' in step) throw new Error(step.lost);
  return step;
};

describe('correlation', () => {
  const image = picture({ marker: { x: 100, y: 100 } });
  const template = cutTemplate(image, 100, 100, 14);

  test('law: a square compared with itself is 1, whatever brightness and contrast', () => {
    expect(correlation(image, template, 100, 100)).toBeCloseTo(1, 6);
    const dim = { ...image, data: image.data.map((value) => Math.round(value * 0.5 + 40)) };
    expect(correlation(dim, template, 100, 100)).toBeGreaterThan(0.999);
  });

  test('law: its negative is −1, an even surface 0, outside the picture nothing', () => {
    const negative = { ...image, data: image.data.map((value) => 255 - value) };
    expect(correlation(negative, template, 100, 100)).toBeCloseTo(-1, 6);
    expect(correlation({ ...image, data: new Uint8Array(image.data.length).fill(80) }, template, 100, 100)).toBe(0);
    expect(correlation(image, template, 13, 100)).toBeNull();
    expect(correlation(image, template, 100, HEIGHT - 14)).toBeNull();
  });

  test('Pearson’s correlation of 0 1 2 / 0 1 2 / 0 1 2 with itself moved by one column of a ramp is 1', () => {
    const ramp: Luma = { width: 5, height: 3, stride: 5, data: Uint8Array.from({ length: 15 }, (_, i) => i % 5) };
    expect(correlation(ramp, cutTemplate(ramp, 1, 1, 1), 3, 1)).toBeCloseTo(1, 6);
  });
});

test('law: half a picture keeps the mean of each two by two, and drops an odd edge', () => {
  const image = { width: 5, height: 2, stride: 6, data: Uint8Array.from([0, 4, 10, 20, 9, 99, 8, 12, 30, 40, 9, 99]) };
  expect(halve(image)).toEqual({ width: 2, height: 1, stride: 2, data: Uint8Array.from([6, 25]) });
  const large = picture({ marker: { x: 100, y: 100 } });
  const [whole, part] = [halve(large), halve(large, { x: 61.5, y: 230 }, 20)];
  part.data.forEach((value, i) => {
    const isNear = Math.abs(2 * (i % 160) - 61) < 20 && Math.abs(2 * Math.floor(i / 160) - 230) < 20;
    expect(isNear ? value : 0).toBe(isNear ? whole.data[i] : 0);
  });
});

describe('a marker moved by known parts of a pixel', () => {
  test.each([
    ['still light', 0, 0.15],
    ['noise of 4 grey levels and a light that fades by a third', 4, 0.25],
  ])('in %s (noise %d) is followed within %d px RMS', (_how, sd, limitPx) => {
    const frames = Array.from({ length: FRAMES }, (_, i) =>
      picture({
        marker: path(i),
        brightness: sd === 0 ? 1 : 1 - i / (3 * FRAMES),
        noise: sd === 0 ? () => 0 : gaussian(i + 1, sd),
      }),
    );
    const [first, ...others] = frames;
    const tracker = pointTracker(first as Luma, path(0));
    const errors = others.map((image, i) => {
      const found = known(tracker.next(image));
      return Math.hypot(found.x - path(i + 1).x, found.y - path(i + 1).y);
    });
    const rms = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
    expect(rms).toBeLessThan(limitPx);
    // No drift: the last step is no worse than the stated limit by much.
    expect(Math.max(...errors)).toBeLessThan(3 * limitPx);
  });

  test('law: followed backwards it comes to where it started', () => {
    const frames = Array.from({ length: 12 }, (_, i) => picture({ marker: path(i) }));
    const there = pointTracker(frames[0] as Luma, path(0));
    let last: Place = path(0);
    for (const image of frames.slice(1)) last = known(there.next(image));
    const back = pointTracker(frames.at(-1) as Luma, last);
    for (const image of frames.slice(0, -1).toReversed()) last = known(back.next(image));
    expect(Math.hypot(last.x - path(0).x, last.y - path(0).y)).toBeLessThan(0.2);
  });
});

/** 60 px a frame and falling: a throw at 60 frames a second, beyond the reach if its motion is not known. */
const thrown = (frame: number): Place => ({ x: 30 + 60.4 * frame, y: 60 + 8 * frame + 2.5 * frame ** 2 });

describe('motion is taken up where the point is put down again', () => {
  test('the three places before it tell where it is next', () => {
    const [here, next] = [3, 4].map((frame) => picture({ marker: thrown(frame) }));
    const tracker = pointTracker(here as Luma, thrown(3), TRACK_OPTIONS, [thrown(2), thrown(1), thrown(0)]);
    const found = known(tracker.next(next as Luma));
    expect(Math.hypot(found.x - thrown(4).x, found.y - thrown(4).y)).toBeLessThan(0.15);
  });

  test('a marker alike that stands close to the path is not taken for one that is hidden', () => {
    const here = { x: 150, y: 120 };
    const there = { x: 168, y: 132 };
    const both = picture({ marker: here, other: there });
    const step = pointTracker(both, here).next(picture({ marker: null, other: there }));
    expect(step).toHaveProperty('lost');
  });
});

/** Stated uncertainties along a path in noise; each error, by the truth of the pictures, within four of its own. */
function uncertaintiesIn(sd: number): number[] {
  const [first, ...others] = Array.from({ length: 8 }, (_, i) =>
    picture({ marker: path(i), noise: gaussian(i + 50, sd) }),
  );
  const tracker = pointTracker(first as Luma, path(0));
  return others.map((image, i) => {
    const { x, y, uPx } = known(tracker.next(image));
    expect(Math.hypot(x - path(i + 1).x, y - path(i + 1).y)).toBeLessThan(4 * uPx);
    return uPx;
  });
}

test('law: the uncertainty is larger in more noise', () => {
  expect(Math.max(...uncertaintiesIn(2))).toBeLessThan(Math.min(...uncertaintiesIn(12)));
});

describe('stops by itself, and says why', () => {
  test('when the point is hidden', () => {
    const tracker = pointTracker(picture({ marker: path(0) }), path(0));
    known(tracker.next(picture({ marker: path(1) })));
    expect(tracker.next(picture({ marker: null }))).toHaveProperty('lost');
  });

  test('at the edge of the picture', () => {
    const tracker = pointTracker(picture({ marker: at(0) }), at(0));
    const steps = Array.from({ length: 8 }, (_, i) => tracker.next(picture({ marker: at(i + 1) })));
    const followed = steps.findIndex((step) => 'lost' in step);
    expect(followed).toBeGreaterThanOrEqual(2);
    steps.slice(0, followed).forEach((step, i) => expect(known(step).x).toBeCloseTo(at(i + 1).x, 0));
  });

  test('faster than its reach: lost, not taken for something else', () => {
    const tracker = pointTracker(picture({ marker: { x: 60, y: 60 } }), { x: 60, y: 60 });
    expect(tracker.next(picture({ marker: { x: 240, y: 180 } }))).toHaveProperty('lost');
  });
});

test('refuses a point at the edge, an even surface and pictures of two sizes', () => {
  const image = picture({ marker: path(0) });
  expect(() => pointTracker(image, { x: 3, y: 100 })).toThrow(code('input-out-of-range'));
  const even = { ...image, data: new Uint8Array(image.data.length).fill(90) };
  expect(() => pointTracker(even, { x: 100, y: 100 })).toThrow(code('not-enough-data'));
  const other = { width: 100, height: 100, stride: 100, data: new Uint8Array(10_000) };
  expect(() => pointTracker(image, path(0)).next(other)).toThrow(code('not-comparable'));
});
