import { spawn } from 'node:child_process';
import { once } from 'node:events';
import type { ClipTruth } from '../../main/clip/clip.ts';
import type { RandomSource } from '../../main/demo/randomSource.ts';
import type { Luma, Place } from '../../shared/kernel/track/image.ts';
import { type PointTracker, pointTracker, TRACK_OPTIONS } from '../../shared/kernel/track/pointTracker.ts';
import { BALL } from '../../shared/model/trial.ts';

/** How far off a person puts a point, px, standard deviation of one coordinate. */
export const HAND_PX = 0.5;
/** A person looks at every so many-th frame, and puts right what is off its mark by more than this. */
const LOOKS_EVERY = 5;
const NOTICED_PX = 4;
/** Markers that stand for two. */
const COPIES = { 'shoulder-left': 'shoulder-right', 'hip-left': 'hip-right' } as const;

/** [frame, x, y], tracked ones with their own uncertainty. */
export type Samples = readonly (readonly [number, number, number, number?])[];

/**
 * What a careful person gets out of a made clip with the product's tracker: each point is put down by hand once, followed
 * through the pictures as ffmpeg decodes them, looked at every few frames, and put down again where it was lost.
 * @returns samples [frame, x, y] by point, and how many of all were put down by hand
 */
export async function digitiseClip(
  file: string,
  truth: ClipTruth,
  random: RandomSource,
): Promise<{ readonly points: ReadonlyMap<string, Samples>; readonly byHand: number; readonly all: number }> {
  const followed = Object.keys(truth.points)
    .filter((name) => !(name in COPIES))
    .map((name) => new Followed(name, truth, random));
  await eachPicture(file, truth.widthPx, truth.heightPx, (picture, frame) => {
    for (const point of followed) point.see(picture, frame);
  });
  const points = new Map<string, Samples>(followed.map(({ name, samples }) => [name, samples]));
  for (const [copy, from] of Object.entries(COPIES)) points.set(copy, points.get(from) ?? []);
  return {
    points,
    byHand: followed.reduce((sum, one) => sum + one.byHand, 0),
    all: followed.reduce((sum, one) => sum + one.samples.length, 0),
  };
}

/** The same without pictures: every point put down by hand in every frame. */
export function clickedPoints(truth: ClipTruth, random: RandomSource): ReadonlyMap<string, Samples> {
  const clicked = (at: number) => at + random.normal(HAND_PX);
  return new Map(
    Object.entries(truth.points).map(([name, samples]) => [
      name,
      samples.map(([frame, x, y]) => [frame, clicked(x), clicked(y)] as const),
    ]),
  );
}

class Followed {
  readonly samples: [number, number, number, number?][] = [];
  byHand = 0;
  readonly name: string;
  readonly #random: RandomSource;
  readonly #places: ReadonlyMap<number, Place>;
  readonly #halfPx: number;
  #tracker: PointTracker | null = null;
  #unseen: number[] = [];

  constructor(name: string, truth: ClipTruth, random: RandomSource) {
    this.name = name;
    this.#random = random;
    this.#places = new Map(truth.points[name]?.map(([frame, x, y]) => [frame, { x, y }]));
    this.#halfPx = name === BALL ? 14 : TRACK_OPTIONS.halfPx;
  }

  see(picture: Luma, frame: number): void {
    const place = this.#places.get(frame);
    if (place === undefined || !this.#fits(picture, place)) {
      this.#tracker = null;
      return;
    }
    const step = this.#tracker?.next(picture) ?? { lost: 'not begun' };
    if ('lost' in step) {
      const last = this.samples.at(-1);
      if (last !== undefined) this.#look(place, last);
      this.#put(picture, frame, place);
      return;
    }
    this.samples.push([frame, step.x, step.y, step.uPx]);
    this.#unseen.push(this.samples.length - 1);
    if (frame % LOOKS_EVERY === 0 && this.#look(place, [frame, step.x, step.y])) {
      this.samples.pop();
      this.#put(picture, frame, place);
    }
  }

  /** Looks at the latest sample. Where it is off, what was followed since the last look is done again by hand. */
  #look(here: Place, [frame, x, y]: Samples[number]): boolean {
    const place = this.#places.get(frame) ?? here;
    const isOff = Math.hypot(x - place.x, y - place.y) > NOTICED_PX;
    for (const i of isOff ? this.#unseen : []) {
      const at = this.samples[i]?.[0] ?? frame;
      const again = this.#byHand(this.#places.get(at) ?? place);
      this.samples[i] = [at, again.x, again.y];
    }
    this.#unseen = [];
    return isOff;
  }

  #put(picture: Luma, frame: number, place: Place): void {
    this.#unseen = [];
    const here = this.#byHand(place);
    const past = this.#before(frame);
    this.samples.push([frame, here.x, here.y]);
    this.#tracker = pointTracker(picture, here, { ...TRACK_OPTIONS, halfPx: this.#halfPx }, past);
  }

  /** Where it was in the three frames before, as the bench tells the tracker. */
  #before(frame: number): Place[] {
    const places = this.samples.slice(-3).toReversed();
    return places.filter(([at], i) => at === frame - 1 - i).map(([, x, y]) => ({ x, y }));
  }

  #byHand(place: Place): Place {
    this.byHand += 1;
    return { x: place.x + this.#random.normal(HAND_PX), y: place.y + this.#random.normal(HAND_PX) };
  }

  #fits({ width, height }: Luma, { x, y }: Place): boolean {
    const edge = this.#halfPx + 4;
    return x > edge && y > edge && x < width - 1 - edge && y < height - 1 - edge;
  }
}

/** Every picture of a film in order, as brightness. */
export async function eachPicture(
  file: string,
  width: number,
  height: number,
  take: (picture: Luma, frame: number) => void,
): Promise<void> {
  const ffmpeg = spawn(
    'ffmpeg',
    ['-v', 'error', '-i', file, '-fps_mode', 'passthrough', '-f', 'rawvideo', '-pix_fmt', 'gray', '-'],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  const closed = once(ffmpeg, 'close');
  let data = new Uint8Array(width * height);
  let [filled, frame] = [0, 0];
  for await (const chunk of ffmpeg.stdout as AsyncIterable<Buffer>) {
    for (let from = 0; from < chunk.length; ) {
      const part = chunk.subarray(from, from + data.length - filled);
      data.set(part, filled);
      filled += part.length;
      from += part.length;
      if (filled === data.length) {
        take({ width, height, stride: width, data }, frame);
        data = new Uint8Array(width * height);
        filled = 0;
        frame += 1;
      }
    }
  }
  await closed;
}
