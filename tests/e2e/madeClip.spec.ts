import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { type ClipOptions, type ClipTruth, planClip, truthOf } from '../../main/clip/clip.ts';
import { writeClip } from '../../main/clip/writeClip.ts';
import { BALL } from '../../shared/model/trial.ts';
import { seededRandom } from '../../shared/kernel/uncertainty/seededRandom.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import {
  bringIn,
  followed,
  goTo,
  MOVEMENT,
  planeBy,
  type Read,
  readMeasures,
  scaleBy,
  takeEvents,
  takeRate,
} from './aMadeClip.ts';
import { expect, open, temporaryFolder, test } from './fixtures.ts';
import { codeOn, stage } from './theBench.ts';

/**
 * The whole way of a film as a person goes it, in the browser: a made clip of an invented jump throw, whose every number
 * is known exactly, brought in, scaled, digitised with the tracker, its events taken, its measures read on the screen.
 * Every run follows the ball of one clip alone. CLIPS=40 follows ball, heel and toe of so many clips; the first
 * CLIPS_IN_BROWSER of them wholly, minutes each. JUMPS=300 makes so many random jumps.
 */
const WHOLE_CLIPS = Number(process.env['CLIPS_IN_BROWSER'] ?? 0);
const CLIPS = Math.max(1, Number(process.env['CLIPS'] ?? 1), WHOLE_CLIPS);
const JUMPS = Number(process.env['JUMPS'] ?? 60);
const RATE_HZ = 60;
/** Of the body, what tells where the floor is. */
const FEET = ['heel-right', 'toe-right'];
/** Few clips say little of a share: each value within 3.5 u then. */
const FEW = 20;

test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');

/** In one worker one after another, for the last test sees them all; kept in a file, for a failure begins a new worker. */
test.describe.configure({ mode: CLIPS < FEW ? 'parallel' : 'default' });
const readings = path.join('out', 'made-clips.jsonl');

let folder: string;
test.beforeAll(() => {
  folder = temporaryFolder();
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

async function makeClip(options: Partial<ClipOptions>): Promise<{ truth: ClipTruth; film: string }> {
  const all = {
    movementId: MOVEMENT,
    seed: 1,
    captureRateHz: RATE_HZ,
    slowMotion: 1,
    tiltDeg: 0,
    turnDeg: 0,
    ...options,
  };
  const clip = planClip(all);
  const film = path.join(folder, `clip-${all.seed}-${all.captureRateHz}.mp4`);
  await writeClip(clip, film);
  return { truth: truthOf(clip), film };
}

/** The share of readings within two of their uncertainties of the truth, and the mean of |error|/u. */
function shareOf(some: readonly Read[]): { inTwo: number; mean: number } {
  const off = some.map(({ value, u, truth }) => Math.abs(value - truth) / u);
  return {
    inTwo: off.filter((one) => one <= 2).length / off.length,
    mean: off.reduce((sum, one) => sum + one, 0) / off.length,
  };
}

/** JCGM 100:2008, 6.2: what is stated expanded by 2 covers about 95 %; the mean of |error|/u of a normal error is 0.8. */
function expectHonest(all: readonly Read[]): void {
  for (const [name, some] of Map.groupBy(all, (one) => one.name)) {
    const { inTwo, mean } = shareOf(some);
    const said = `${name}: ${some.length} clips, within 2u ${(100 * inTwo).toFixed(0)} %, mean |error|/u ${mean.toFixed(2)}`;
    console.info(said);
    expect([said, mean > 0.08, mean < 8]).toEqual([said, true, true]);
  }
  expect(shareOf(all).inTwo).toBeGreaterThanOrEqual(0.95);
}

for (let nth = 1; nth <= CLIPS; nth += 1) {
  test(`made clip ${nth}: what is read on the screen is the truth within its uncertainty`, async ({ page, host }) => {
    const isWhole = nth <= WHOLE_CLIPS;
    test.setTimeout((isWhole ? 900_000 : 180_000) + 1000 * JUMPS);
    if (nth === 1) fs.rmSync(readings, { force: true });
    const { truth, film } = await makeClip({ seed: 500 + nth });
    await open(page, host);
    await bringIn(page, film);
    if (nth === 1) await test.step(`${JUMPS} random jumps, none wrong`, () => jumpAbout(page, truth.frames));
    await test.step('rate and scale', async () => {
      await takeRate(page, truth);
      await scaleBy(page, truth);
    });
    let byHand = 0;
    const points = isWhole ? Object.keys(truth.points) : CLIPS > 1 ? [BALL, ...FEET] : [BALL];
    for (const point of points) {
      byHand += await test.step(`${point} followed`, () => followed(page, truth, point));
    }
    // A person who put down much of it by hand would not be helped by a tracker.
    const all = points.reduce((sum, point) => sum + (truth.points[point]?.length ?? 0), 0);
    expect(byHand / all).toBeLessThan(isWhole ? 0.08 : 0.2);
    await test.step('events taken as proposed, the others put down', () =>
      takeEvents(page, truth, { hasBody: isWhole }));
    const read = await test.step('measures read', () =>
      readMeasures(page, truth, { floor: points.length > 1, body: isWhole }));
    const lines = read.map(({ name, value, u, truth: is }) => {
      const off = (value - is) / u;
      return `${name}: ${value} ± ${u}, truly ${is.toPrecision(5)}, off by ${off.toFixed(2)} u`;
    });
    console.info(`clip ${nth}, ${byHand} of ${all} by hand\n${lines.join('\n')}`);
    fs.appendFileSync(readings, read.map((one) => `${JSON.stringify(one)}\n`).join(''));
    if (CLIPS < FEW) for (const one of read) expectNear(one);
  });
}

// Fewer clips say little of a share.
if (CLIPS >= FEW)
  test('all made clips together: nearly all is within twice its uncertainty, which is neither far too wide nor too narrow', () => {
    const lines = fs.readFileSync(readings, 'utf8').trim().split('\n');
    expect(lines.length).toBeGreaterThanOrEqual(CLIPS * 5);
    expectHonest(lines.map((line) => JSON.parse(line) as Read));
  });

function expectNear({ name, value, u, truth }: Read): void {
  expect([name, Math.abs(value - truth) <= 3.5 * u, value, u, truth]).toEqual([name, true, value, u, truth]);
}

/** What of the measures comes from the ball in its flight, near the truth and not. */
const ofFlight = (read: readonly Read[]) => read.filter(({ name }) => name.startsWith('ball.'));

test('filmed at 240 frames a second, played at 30: the gravity check says so and proposes the factor; taken, the numbers are right', async ({
  page,
  host,
}) => {
  const { truth, film } = await makeClip({ seed: 11, captureRateHz: 240, slowMotion: 8 });
  await open(page, host);
  await bringIn(page, film);
  await page.getByRole('button', { name: 'Not known: begin with 30, let the free flight tell' }).click();
  await scaleBy(page, truth);
  await followed(page, truth, BALL, Math.ceil((truth.release?.timeS ?? 0) * 240));
  await takeEvents(page, truth, { takenHz: 30 });
  await page.getByRole('button', { name: /5 Measures/ }).click();
  const check = page.getByRole('region', { name: 'Gravity check, and others' });
  await expect(check.getByText(/^questioned/).first()).toBeVisible();
  await check.getByRole('button', { name: 'Take 240 Hz as the true capture rate, 8 times 30' }).click();
  await expect(check.getByRole('button', { name: /as the true capture rate/ })).toHaveCount(0);
  for (const one of await readMeasures(page, truth, { floor: false, body: false })) expectNear(one);
});

test('a camera that leans by 6° and is turned away by 10°: a length alone is questioned and wrong, the plane of its marks is right', async ({
  page,
  host,
}) => {
  const { truth, film } = await makeClip({ seed: 12, captureRateHz: 120, tiltDeg: 6, turnDeg: -10 });
  await open(page, host);
  await bringIn(page, film);
  await takeRate(page, truth);
  await scaleBy(page, truth);
  await expect(page.getByRole('list', { name: 'Advice about the plane' })).toContainText('which way is down');
  await followed(page, truth, BALL, Math.ceil((truth.release?.timeS ?? 0) * 120));
  await takeEvents(page, truth);
  const has = { floor: false, body: false };
  const byStick = ofFlight(await readMeasures(page, truth, has)).find(({ name }) => name === 'ball.releaseAngle');
  if (byStick === undefined) throw new Error('no release angle');
  expect(Math.abs(byStick.value - byStick.truth)).toBeGreaterThan(3.5 * byStick.u);
  await planeBy(page, truth);
  await expect(page.getByRole('list', { name: 'Advice about the plane' })).toContainText(
    'the camera does not face the plane squarely',
  );
  for (const one of await readMeasures(page, truth, { ...has, floor: true })) expectNear(one);
});

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
