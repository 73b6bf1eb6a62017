import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { type ClipTruth, planClip, truthOf } from '../../main/clip/clip.ts';
import { writeClip } from '../../main/clip/writeClip.ts';
import { measureById } from '../../shared/knowledge/measures/index.ts';
import { movementById } from '../../shared/knowledge/movements/index.ts';
import { BALL } from '../../shared/model/trial.ts';
import { seededRandom } from '../../shared/kernel/uncertainty/seededRandom.ts';
import { convert, type Unit } from '../../shared/units.ts';
import { pointLabel } from '../../app/bench/pointNames.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { expect, open, temporaryFolder, test } from './fixtures.ts';
import { clickAt, codeOn, openTrials, stage, tracksOf } from './theBench.ts';

/**
 * The whole way of a film as a person goes it, in the browser: a made clip of an invented jump throw, whose every number
 * is known exactly, brought in, scaled, digitised with the tracker, its events taken, its measures read on the screen.
 * Every run follows the ball alone; CLIPS_IN_BROWSER=40 follows every point of so many clips, minutes for each, and
 * JUMPS=300 makes so many random jumps.
 */
const FULL_CLIPS = Number(process.env['CLIPS_IN_BROWSER'] ?? 0);
const JUMPS = Number(process.env['JUMPS'] ?? 60);
const RATE_HZ = 60;
const MOVEMENT = 'handball-jump-throw';
/** How far off a click may be: half a pixel of the screen, each standing for nearly two of the film. */
const CLICK_PX = 0.6;
/** A person who steps through the clip notices a point that is this far off its mark. */
const NOTICED_PX = 3;

test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');

let folder: string;
test.beforeAll(() => {
  folder = temporaryFolder();
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

interface Read {
  readonly name: string;
  readonly value: number;
  readonly u: number;
  readonly truth: number;
}

for (let seed = 1; seed <= Math.max(1, FULL_CLIPS); seed += 1) {
  test(`made clip ${seed}: what is read on the screen is the truth within its uncertainty`, async ({ page, host }) => {
    test.setTimeout((FULL_CLIPS > 0 ? 900_000 : 120_000) + 1000 * JUMPS);
    const clip = planClip({
      movementId: MOVEMENT,
      seed: 500 + seed,
      captureRateHz: RATE_HZ,
      slowMotion: 1,
      tiltDeg: 0,
      turnDeg: 0,
    });
    const truth = truthOf(clip);
    const film = path.join(folder, `clip-${seed}.mp4`);
    await writeClip(clip, film);
    await open(page, host);
    await bringIn(page, film);
    if (seed === 1) await test.step(`${JUMPS} random jumps, none wrong`, () => jumpAbout(page, truth.frames));
    await test.step('rate and scale', () => scaleBy(page, truth));
    let byHand = 0;
    const points = FULL_CLIPS > 0 ? Object.keys(truth.points) : [BALL];
    for (const point of points) {
      byHand += await test.step(`${point} followed`, () => followed(page, truth, point));
    }
    // A person who put down much of it by hand would not be helped by a tracker.
    const all = points.reduce((sum, point) => sum + (truth.points[point]?.length ?? 0), 0);
    if (FULL_CLIPS > 0) expect(byHand / all).toBeLessThan(0.2);
    await test.step('events taken as proposed, the others put down', () => takeEvents(page, truth));
    const read = await test.step('measures read', () => readMeasures(page, truth));
    const lines = read.map(({ name, value, u, truth: is }) => {
      const off = (value - is) / u;
      return `${name}: ${value} ± ${u}, truly ${is.toPrecision(5)}, off by ${off.toFixed(2)} u`;
    });
    console.info(`clip ${seed}, ${byHand} of ${all} by hand\n${lines.join('\n')}`);
    // One clip says little of a share: each within 3.5 u. CLIPS_IN_BROWSER=40 is for reading the shares.
    for (const { name, value, u, truth: is } of read) {
      expect([name, Math.abs(value - is) <= 3.5 * u, value, u, is]).toEqual([name, true, value, u, is]);
    }
  });
}

async function bringIn(page: Page, film: string): Promise<void> {
  await openTrials(page);
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  await page.getByLabel('Movement', { exact: true }).selectOption(MOVEMENT);
  await page.getByLabel('Ball or implement').selectOption('handball-3');
  await page.getByLabel('Bring in the film of this trial').setInputFiles(film);
  await page.getByRole('link', { name: 'Open the trial bench' }).click();
  await expect(stage(page)).toHaveAttribute('data-frame', '0');
}

async function goTo(page: Page, frame: number): Promise<void> {
  await page.getByRole('slider', { name: 'Frame' }).fill(String(frame));
  await expect(stage(page)).toHaveAttribute('data-frame', String(frame));
}

async function jumpAbout(page: Page, frames: number): Promise<void> {
  const random = seededRandom(9);
  const wrong: string[] = [];
  for (let i = 0; i < JUMPS; i += 1) {
    const frame = Math.floor(random() * frames);
    await goTo(page, frame);
    const code = await codeOn(stage(page));
    if (code !== frame) wrong.push(`asked ${frame}, shown ${code}`);
  }
  expect(wrong).toEqual([]);
}

async function scaleBy(page: Page, { stick, widthPx, heightPx }: ClipTruth): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`${RATE_HZ} frames a second are real`) }).click();
  await page.getByRole('button', { name: /2 Plane/ }).click();
  await clickAt(page, ...stick.from, [widthPx, heightPx]);
  await clickAt(page, ...stick.to, [widthPx, heightPx]);
  await page.getByLabel('True length', { exact: true }).fill(String(stick.lengthM));
  await page.getByRole('textbox', { name: 'Standard uncertainty of the length' }).fill('1');
  await page.getByRole('textbox', { name: 'Standard uncertainty of one point' }).fill(String(CLICK_PX));
  await expect(page.getByRole('button', { name: /2 Plane has what it needs/ })).toBeVisible();
  await page.getByRole('button', { name: /3 Points/ }).click();
  await page.getByLabel('After a click, go on to the next frame').uncheck();
}

/** Put down by hand where it is first seen, tracked, and put down again where it was lost. Returns how often by hand. */
async function followed(page: Page, truth: ClipTruth, point: string): Promise<number> {
  const places = new Map(truth.points[point]?.map(([frame, x, y]) => [frame, [x, y] as const]));
  const [first, last] = [Math.min(...places.keys()), Math.max(...places.keys())];
  await page.getByLabel('Point at hand', { exact: true }).selectOption(point);
  await page.getByLabel('Disc the tracker recognises').selectOption(point === BALL ? '14' : '10');
  let at = first;
  for (let put = 1; ; put += 1) {
    const place = places.get(at);
    if (place === undefined) throw new Error(`${point} is not in the picture of frame ${at}`);
    await goTo(page, at);
    await clickAt(page, ...place, [truth.widthPx, truth.heightPx]);
    await expect(page.getByText(new RegExp(`^${pointLabel(point)}: .*by hand`))).toBeVisible();
    await page.getByRole('button', { name: 'Track forward' }).click();
    await expect(page.getByText(new RegExp(`^${pointLabel(point)} tracked in \\d+`))).toBeVisible({ timeout: 120_000 });
    const held = (await tracksOf(page)).filter((track) => track.point === point).flatMap(({ samples }) => samples);
    const off = held
      .filter(([frame, x, y]) => {
        const [tx, ty] = places.get(frame) ?? [x, y];
        return frame > at && Math.hypot(x - tx, y - ty) > NOTICED_PX;
      })
      .map(([frame]) => frame);
    const reached = Math.max(...held.map(([frame]) => frame));
    const next = Math.min(...off, reached < last - 1 ? reached + 1 : Infinity);
    if (!Number.isFinite(next) || !places.has(next)) return put;
    at = next;
  }
}

async function takeEvents(page: Page, truth: ClipTruth): Promise<void> {
  await page.getByRole('button', { name: /4 Events and phases/ }).click();
  // Without the body nothing is proposed.
  if (FULL_CLIPS > 0) await page.getByRole('button', { name: /^Take all \d+ as they are/ }).click();
  for (const [event, timeS] of Object.entries(truth.events)) {
    const label = movementById(truth.movement)?.events.find(({ id }) => id === event)?.label ?? event;
    const time = page.getByRole('textbox', { name: `Time of ${label.toLowerCase()}`, exact: true });
    if ((await time.inputValue()) !== '') continue;
    await time.fill((Math.round(timeS * RATE_HZ) / RATE_HZ).toFixed(4));
    await time.blur();
  }
}

const PHASES = [
  ['take-off', 'plant', 'take-off'],
  ['cocking', 'take-off', 'cocked'],
  ['acceleration', 'cocked', 'release'],
] as const;

async function readMeasures(page: Page, truth: ClipTruth): Promise<Read[]> {
  await page.getByRole('button', { name: /5 Measures/ }).click();
  const { release, events } = truth;
  if (release === null || truth.jumpHeightM === null) throw new Error('this clip has no release');
  const phaseLabel = (id: string) => movementById(truth.movement)?.phases.find((one) => one.id === id)?.label ?? id;
  const wanted: readonly (readonly [measure: string, truth: number, phase: string | null])[] = [
    ['ball.releaseSpeed', release.speedMPerS, null],
    ['ball.releaseAngle', release.angleRad, null],
    // The floor and the centre of mass need the body.
    ...(FULL_CLIPS > 0
      ? [['ball.releaseHeight', release.heightM, null] as const, ['com.riseInSkill', truth.jumpHeightM, null] as const]
      : []),
    ...PHASES.map(([id, from, to]) => ['phase.duration', (events[to] ?? 0) - (events[from] ?? 0), id] as const),
  ];
  const found: Read[] = [];
  for (const [id, is, phase] of wanted) {
    const measure = measureById(id);
    if (measure === null || measure.unit === null) throw new Error(`no measure ${id}`);
    const table = phase === null ? page : page.getByRole('table').filter({ hasText: phaseLabel(phase) });
    const row = table
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name: measure.label }) })
      .first();
    const text = (await row.getByRole('cell').first().innerText())
      .replaceAll(/[\s\u00a0\u202f]+/g, ' ')
      .replaceAll('−', '-');
    const match = /(-?[\d.]+) ?± ?([\d.]+)/.exec(text);
    if (match === null) throw new Error(`${id} ${phase ?? ''} reads “${text}”`);
    const unit: Unit = measure.displayUnit ?? measure.unit;
    const shown = text.includes('°') ? 'deg' : text.includes(' ms') ? 'ms' : text.includes(' cm') ? 'cm' : unit;
    found.push({
      name: phase === null ? id : `${id}, ${phase}`,
      value: Number(match[1]),
      u: Number(match[2]),
      truth: convert(is, measure.unit, shown),
    });
  }
  return found;
}
