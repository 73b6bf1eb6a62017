import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type ClipTruth, planClip, truthOf } from '../../../main/clip/clip.ts';
import { writeClip } from '../../../main/clip/writeClip.ts';
import { sourceFor } from '../../../main/clip/sourceFor.ts';
import { checkCase } from '../../../shared/assess/checkCase.ts';
import { collectFacts } from '../../../shared/assess/collectFacts.ts';
import { gravityCheck } from '../../../shared/kernel/flight/gravityCheck.ts';
import { measureTrial } from '../../../shared/kernel/trial/measureTrial.ts';
import type { TrialInput } from '../../../shared/kernel/trial/scene.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { hasFfmpeg } from '../../e2e/aFilm.ts';
import { digitiseClip, type Samples } from '../../support/digitiseClip.ts';
import { planeCalibration, stickCalibration, trialOfClip } from '../../support/trialOfClip.ts';

/**
 * The whole way of a filmed trial but the clicking: a clip of an invented figure whose every number is known exactly, its
 * markers followed by the product's tracker, its events proposed and taken as they are, its measures computed. The truth
 * is the clip's own. CLIP_SEEDS=40 is the long run.
 */
const SEEDS = Number(process.env['CLIP_SEEDS'] ?? 2);
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-clips-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

interface Digitised {
  readonly truth: ClipTruth;
  readonly points: ReadonlyMap<string, Samples>;
  readonly byHand: number;
  readonly all: number;
}

async function digitised(options: {
  seed: number;
  captureRateHz: number;
  slowMotion?: number;
  tiltDeg?: number;
  turnDeg?: number;
}): Promise<Digitised> {
  const clip = planClip({ movementId: 'handball-jump-throw', slowMotion: 1, tiltDeg: 0, turnDeg: 0, ...options });
  const truth = truthOf(clip);
  const file = path.join(folder, 'clip.mp4');
  await writeClip(clip, file);
  const found = await digitiseClip(file, truth, sourceFor(options.seed, 'hand'));
  fs.rmSync(file);
  return { truth, ...found };
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

describe.skipIf(!hasFfmpeg)('made clips of a jump throw (truth: the clip’s own)', () => {
  test(
    `release, jump and phase times of ${SEEDS} clips lie within what they say of themselves`,
    async () => {
      const all: Compared[] = [];
      for (let seed = 1; seed <= SEEDS; seed += 1) {
        const { truth, points, byHand, all: samples } = await digitised({ seed, captureRateHz: 120 });
        // A person who put down half of it by hand would not be helped by a tracker.
        expect(byHand / samples).toBeLessThan(0.15);
        const random = sourceFor(seed, 'scale');
        const of = compared(trialOfClip(truth, points, stickCalibration(truth, random), 120), truth);
        if (SEEDS > 5)
          console.info(seed, of.map(({ name, error, u }) => `${name} ${(error / u).toFixed(2)}`).join(', '));
        all.push(...of);
      }
      const names = [...new Set(all.map(({ name }) => name))];
      const rows = names.map((name) => {
        const of = all.filter((one) => one.name === name);
        const inTwo = of.filter(({ error, u }) => Math.abs(error) <= 2 * u).length / of.length;
        const mean = of.reduce((sum, { error, u }) => sum + Math.abs(error) / u, 0) / of.length;
        const bias = of.reduce((sum, { error }) => sum + error, 0) / of.length;
        return { name, inTwo, mean, bias };
      });
      if (SEEDS > 5)
        console.info(
          rows
            .map(
              ({ name, inTwo, mean, bias }) =>
                `${name}: within 2u ${(100 * inTwo).toFixed(1)} %, mean |error|/u ${mean.toFixed(2)}, mean error ${bias.toPrecision(3)}`,
            )
            .join('\n'),
        );
      // Few clips say little of a share: three of them then, and every clip.
      if (SEEDS < 20)
        for (const { name, error, u } of all)
          expect([name, Math.abs(error) <= 3 * u, error, u]).toEqual([name, true, error, u]);
      else
        for (const { name, inTwo, mean } of rows) {
          expect([name, inTwo >= 0.95]).toEqual([name, true]);
          expect([name, mean > 0.1 && mean < 10]).toEqual([name, true]);
        }
    },
    60_000 + 180_000 * SEEDS,
  );
});
