import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { type ClipTruth, planClip, truthOf } from '../../../main/clip/clip.ts';
import { writeClip } from '../../../main/clip/writeClip.ts';
import { sourceFor } from '../../../main/clip/sourceFor.ts';
import type { RandomSource } from '../../../main/demo/randomSource.ts';
import { usualRateHz } from '../../../shared/kernel/event/frameClock.ts';
import { measureTrial } from '../../../shared/kernel/trial/measureTrial.ts';
import type { TrialInput } from '../../../shared/kernel/trial/scene.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { hasFfmpeg } from '../../support/hasFfmpeg.ts';
import { clickedPoints, digitiseClip, type Samples } from '../../support/digitiseClip.ts';
import { stickCalibration, trialOfClip } from '../../support/trialOfClip.ts';

/**
 * The whole way of a filmed trial but the clicking: a clip of an invented figure whose every number is known exactly, its
 * markers followed by the product's tracker, its events proposed and taken as they are, its measures computed. The truth
 * is the clip's own. CLIP_SEEDS=40 is the long run.
 */
const SEEDS = Number(process.env['CLIP_SEEDS'] ?? 1);
/** The same, every point put down by hand on the place itself: many clips for little time. */
const CLICKED_SEEDS = Number(process.env['CLICKED_SEEDS'] ?? 12);
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-clips-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

interface Digitised {
  readonly truth: ClipTruth;
  readonly points: ReadonlyMap<string, Samples>;
  readonly byHand: number;
  readonly all: number;
}

const OPTIONS = { movementId: 'handball-jump-throw', slowMotion: 1, tiltDeg: 0, turnDeg: 0 };

async function digitised(options: { readonly seed: number; readonly captureRateHz: number }): Promise<Digitised> {
  const clip = planClip({ ...OPTIONS, ...options });
  const truth = truthOf(clip);
  const file = path.join(folder, 'clip.mp4');
  await writeClip(clip, file);
  const found = await digitiseClip(file, truth, sourceFor(options.seed, 'hand'));
  fs.rmSync(file);
  return { truth, ...found };
}

/**
 * Of a clip taken very fast, the frames that a phone at 120 a second would have kept: each up to a quarter of a frame early
 * or late, one in seven left out, and each with its own time.
 */
function asAPhoneTakesIt(truth: ClipTruth, random: RandomSource): { truth: ClipTruth; frameTimesS: number[] } {
  const each = truth.captureRateHz / 120;
  const kept: number[] = [];
  for (let at = 0; at < truth.frames; at += each) {
    const frame = Math.round(at + each * (random.uniform() - 0.5) * 0.5);
    if (at === 0 || (random.uniform() > 1 / 7 && frame < truth.frames)) kept.push(at === 0 ? 0 : frame);
  }
  const places = Object.entries(truth.points).map(([name, samples]) => {
    const byFrame = new Map(samples.map((sample) => [sample[0], sample]));
    const there = kept.flatMap((frame, i) => {
      const sample = byFrame.get(frame);
      return sample === undefined ? [] : [[i, sample[1], sample[2]] as const];
    });
    return [name, there] as const;
  });
  return {
    truth: { ...truth, points: Object.fromEntries(places) },
    frameTimesS: kept.map((frame) => frame / truth.captureRateHz),
  };
}

interface Compared {
  readonly name: string;
  readonly error: number;
  readonly u: number;
}

/** Phases whose both ends the clip knows; the throw's end is when the knees stop bending, and this figure's stay bent. */
const PHASES = [
  ['take-off', 'plant', 'take-off'],
  ['cocking', 'take-off', 'cocked'],
  ['acceleration', 'cocked', 'release'],
] as const;

function compared(input: TrialInput, truth: ClipTruth): Compared[] {
  const { measures } = measureTrial(input);
  const { release, events } = truth;
  const known: Readonly<Record<string, number>> = {
    'ball.releaseSpeed': release?.speedMPerS ?? Number.NaN,
    'ball.releaseAngle': release?.angleRad ?? Number.NaN,
    'ball.releaseHeight': release?.heightM ?? Number.NaN,
    'com.riseInSkill': truth.jumpHeightM ?? Number.NaN,
    'ball.gravityFound': truth.gravityMPerS2,
    ...Object.fromEntries(
      PHASES.map(([phase, from, to]) => [`${phase} phase.duration`, (events[to] ?? 0) - (events[from] ?? 0)]),
    ),
  };
  return Object.entries(known).map(([name, value]) => {
    const [measure, phase] = name.split(' ').toReversed() as [string, string | undefined];
    const found = measures.find((one) => one.measure === measure && (phase === undefined || one.phase === phase));
    if (found === undefined || !isKnown(found.reading)) {
      throw new Error(
        `${name} of seed ${truth.seed} is not known: ${found === undefined ? 'absent' : JSON.stringify(found.reading)}`,
      );
    }
    if (typeof found.reading.u !== 'number') throw new Error(`${name} states no uncertainty`);
    return { name, error: found.reading.value - value, u: found.reading.u };
  });
}

const TRACKED = 'tracked';

/** What tracking itself adds to the error of each coordinate, beside that of the place put down by hand before it. */
function ownErrors(points: ReadonlyMap<string, Samples>, truth: ClipTruth): Compared[] {
  return [...points].flatMap(([name, samples]) => {
    // The markers of left hip and shoulder are not drawn; those of the right ones stand for them.
    if (name === 'hip-left' || name === 'shoulder-left') return [];
    const places = new Map(truth.points[name]?.map(([frame, x, y]) => [frame, { x, y }]));
    let hand = { x: 0, y: 0 };
    return samples.flatMap(([frame, x, y, u]) => {
      const place = places.get(frame);
      if (place === undefined) throw new Error(`${name} is not in frame ${frame}`);
      const off = { x: x - place.x, y: y - place.y };
      if (u === undefined) hand = off;
      return u === undefined ? [] : [off.x - hand.x, off.y - hand.y].map((error) => ({ name: TRACKED, error, u }));
    });
  });
}

/** Of one measure over many clips: the share of errors within 2 u, the mean of |error|/u, and the mean error. */
function summed(all: readonly Compared[], name: string) {
  const of = all.filter((one) => one.name === name);
  const meanOf = (value: (one: Compared) => number) => of.reduce((sum, one) => sum + value(one), 0) / of.length;
  const inTwo = meanOf(({ error, u }) => Number(Math.abs(error) <= 2 * u));
  return { name, inTwo, mean: meanOf(({ error, u }) => Math.abs(error) / u), bias: meanOf(({ error }) => error) };
}

/** Few clips say little of a share: each error within 3.5 u then. */
const FEW = 20;

function expectHonest(all: readonly Compared[], clips: number): void {
  const rows = [...new Set(all.map(({ name }) => name))].map((name) => summed(all, name));
  const say = ({ name, inTwo, mean, bias }: (typeof rows)[number]) =>
    `${name}: within 2u ${(100 * inTwo).toFixed(1)} %, mean |error|/u ${mean.toFixed(2)}, mean error ${bias.toPrecision(3)}`;
  if (clips >= FEW) console.info(rows.map(say).join('\n'));
  for (const row of rows) {
    // Neither tenfold too wide nor too narrow; the mean of |error|/u of a normal error is 0.8.
    expect([say(row), row.mean < 8, clips < FEW || row.mean > 0.08]).toEqual([say(row), true, true]);
    if (clips >= FEW) expect([say(row), row.inTwo >= 0.95]).toEqual([say(row), true]);
  }
  if (clips >= FEW) return;
  for (const { name, error, u } of all)
    expect([name, Math.abs(error) <= 3.5 * u, error, u]).toEqual([name, true, error, u]);
}

describe('made clips of a jump throw: release, jump and phase times lie within what they say of themselves (truth: the clip’s own)', () => {
  test.skipIf(!hasFfmpeg)(
    `${SEEDS} followed through their pictures`,
    async () => {
      const all: Compared[] = [];
      const tracked: Compared[] = [];
      for (let seed = 1; seed <= SEEDS; seed += 1) {
        const { truth, points, byHand, all: samples } = await digitised({ seed, captureRateHz: 120 });
        // A person who put down much of it by hand would not be helped by a tracker.
        expect(byHand / samples).toBeLessThan(0.05);
        tracked.push(...ownErrors(points, truth));
        all.push(
          ...compared(trialOfClip(truth, points, stickCalibration(truth, sourceFor(seed, 'scale')), 120), truth),
        );
      }
      expectHonest(all, SEEDS);
      // The errors of one clip's points go together, so a share over thousands of samples is still that of few clips.
      const { inTwo, mean } = summed(tracked, TRACKED);
      const said = `${tracked.length} tracked coordinates: within 2u ${(100 * inTwo).toFixed(1)} %, mean |error|/u ${mean.toFixed(2)}`;
      console.info(said);
      expect([said, inTwo > 0.9, mean > 0.3, mean < 1.5]).toEqual([said, true, true, true]);
    },
    60_000 + 180_000 * SEEDS,
  );

  test(
    `${CLICKED_SEEDS} put down by hand`,
    () => {
      const all: Compared[] = [];
      for (let seed = 101; seed <= 100 + CLICKED_SEEDS; seed += 1) {
        const truth = truthOf(planClip({ ...OPTIONS, seed, captureRateHz: seed % 2 === 0 ? 120 : 240 }));
        const points = clickedPoints(truth, sourceFor(seed, 'hand'));
        const calibration = stickCalibration(truth, sourceFor(seed, 'scale'));
        all.push(...compared(trialOfClip(truth, points, calibration, truth.captureRateHz), truth));
      }
      expectHonest(all, CLICKED_SEEDS);
    },
    60_000 + 10_000 * CLICKED_SEEDS,
  );

  test(
    `${CLICKED_SEEDS} put down by hand in films with frames late or left out; read at a constant rate, the same points are far off`,
    () => {
      const all: Compared[] = [];
      const constant: Compared[] = [];
      for (let seed = 201; seed <= 200 + CLICKED_SEEDS; seed += 1) {
        const even = truthOf(planClip({ ...OPTIONS, seed, captureRateHz: 960 }));
        const { truth, frameTimesS } = asAPhoneTakesIt(even, sourceFor(seed, 'picture'));
        const points = clickedPoints(truth, sourceFor(seed, 'hand'));
        const calibration = stickCalibration(truth, sourceFor(seed, 'scale'));
        const rateHz = usualRateHz(frameTimesS);
        all.push(...compared(trialOfClip(truth, points, calibration, rateHz, frameTimesS), truth));
        constant.push(...compared(trialOfClip(truth, points, calibration, rateHz), truth));
      }
      expectHonest(all, CLICKED_SEEDS);
      for (const name of ['ball.releaseSpeed', 'ball.gravityFound', 'take-off phase.duration']) {
        const rms = (of: readonly Compared[]) =>
          Math.hypot(...of.filter((one) => one.name === name).map(({ error }) => error)) / Math.sqrt(CLICKED_SEEDS);
        if (CLICKED_SEEDS >= FEW) console.info(name, 'rms error', rms(all), 'at a constant rate', rms(constant));
        expect([name, rms(constant) > 2 * rms(all)]).toEqual([name, true]);
      }
    },
    60_000 + 10_000 * CLICKED_SEEDS,
  );
});
