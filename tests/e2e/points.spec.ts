import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import type { CaseFile } from '../../shared/model/records.ts';
import type { LandmarkTrack } from '../../shared/model/trial.ts';
import { aFilm } from './aFilm.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { expect, open, startHost, temporaryFolder, test } from './fixtures.ts';
import { ask, caseIdOf, clickAt, openBench, stage, storedCase, tracksOf } from './theBench.ts';

test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');

let folder: string;
let film: string;
test.beforeAll(() => {
  folder = temporaryFolder();
  film = path.join(folder, 'throw.mp4');
  aFilm(film, { frames: 120, rateHz: 60, gop: 30 });
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

test('points of one’s own, put down, moved and tracked by the keyboard; a tracked point set right by hand', async ({
  page,
  host,
}) => {
  await open(page, host);
  await openBench(page, film);
  await page.getByRole('button', { name: /60 frames a second are real/ }).click();
  await page.getByRole('button', { name: /3 Points/ }).click();

  await test.step('a name of one’s own', async () => {
    await page.getByLabel('A point of your own').fill('Stick tip');
    await page.getByRole('button', { name: 'Take it in hand' }).press('Enter');
    await expect(page.getByLabel('Point at hand')).toHaveValue('stick-tip');
  });

  await test.step('Enter puts it in the middle; arrows move it by 0.25 px, with Shift by 2', async () => {
    const bench = page.locator('.bench-stage');
    await bench.press('Enter');
    await bench.press('ArrowRight');
    await bench.press('ArrowRight');
    await bench.press('Shift+ArrowUp');
    expect((await tracksOf(page)).map(({ point, samples }) => [point, samples])).toEqual([
      ['stick-tip', [[0, 320.5, 178]]],
    ]);
    await bench.press('PageDown');
    await expect(stage(page)).toHaveAttribute('data-frame', '1');
    await bench.press('PageUp');
    await bench.press('Delete');
    await expect(page.getByText('Stick tip is in no frame yet.')).toBeVisible();
  });

  await test.step('after a click the next frame comes by itself', async () => {
    await page.getByLabel('Point at hand').selectOption('ball');
    await clickAt(page, 60, 100);
    await expect(stage(page)).toHaveAttribute('data-frame', '1');
    await page.getByRole('slider').fill('0');
    await expect(stage(page)).toHaveAttribute('data-frame', '0');
  });

  await test.step('a tracked point put down by hand is by hand from then on, and where the tracker stops next', async () => {
    await page.getByRole('button', { name: 'Track forward' }).click();
    await expect(page.getByText(/Ball tracked in \d+\sframes/)).toBeVisible({ timeout: 60_000 });
    await page.getByRole('slider').fill('20');
    await expect(stage(page)).toHaveAttribute('data-frame', '20');
    await page.locator('.bench-stage').press('ArrowRight');
    const tracks = await tracksOf(page);
    const at = (origin: string) =>
      tracks.find((track) => track.origin === origin)?.samples.map(([frame]) => frame) ?? [];
    expect(at('by-hand')).toEqual([0, 20]);
    expect(at('tracked')).not.toContain(20);
    await page.getByRole('slider').fill('0');
    await expect(stage(page)).toHaveAttribute('data-frame', '0');
    await page.getByRole('button', { name: 'Track forward' }).click();
    await expect(page.getByText('It came to frame 20, which a person placed.')).toBeVisible({ timeout: 60_000 });
  });

  await test.step('where the tracker says of itself that it is least sure is one press away', async () => {
    const tracked = (await tracksOf(page)).find(({ point, origin }) => point === 'ball' && origin === 'tracked');
    const [worst] = (tracked?.samples ?? []).toSorted(([, , , a = 0], [, , , b = 0]) => b - a);
    await page.getByRole('button', { name: /^Look at frame \d+, where the tracker is least sure/ }).click();
    await expect(stage(page)).toHaveAttribute('data-frame', String(worst?.[0]));
  });

  await test.step('a second point that follows the same mark is said to lie on the first', async () => {
    await page.getByRole('slider').fill('0');
    await expect(stage(page)).toHaveAttribute('data-frame', '0');
    await page.getByLabel('A point of your own').fill('Stick tip');
    await page.getByRole('button', { name: 'Take it in hand' }).press('Enter');
    await clickAt(page, 60, 100);
    await page.getByRole('slider').fill('0');
    await page.getByRole('button', { name: 'Track forward' }).click();
    await expect(page.getByText(/it lies on ball: look whether one follows the other’s mark/)).toBeVisible({
      timeout: 60_000,
    });
  });
});

test('three points put down twice, the first hidden: the person’s own error, in words', async ({ page, host }) => {
  await open(page, host);
  await openBench(page, film);
  await page.getByRole('button', { name: /3 Points/ }).click();
  for (const frame of [0, 1, 2]) {
    await expect(stage(page)).toHaveAttribute('data-frame', String(frame));
    await clickAt(page, 60 + 4 * frame, 100 + 2 * frame);
  }
  await page.getByRole('button', { name: 'Put ball down a second time' }).click();
  for (const frame of [0, 1, 2]) {
    await expect(stage(page)).toHaveAttribute('data-frame', String(frame));
    await expect(page.locator('.bench-point')).toHaveCount(0);
    await clickAt(page, 63 + 4 * frame, 100 + 2 * frame);
  }
  await expect(page.getByText(/the person’s own error, from 3\spoints put down twice/)).toBeVisible();
  const { pointRepeats, landmarkTracks } = await storedCase(page);
  expect(pointRepeats.map(({ frame }) => frame)).toEqual([0, 1, 2]);
  expect(landmarkTracks.map(({ samples }) => samples.length)).toEqual([3]);
});

test('a still with its caption, a contact sheet and a table of the measures', async ({ page, host }) => {
  await open(page, host);
  await openBench(page, film);
  await page.getByRole('button', { name: /60 frames a second are real/ }).click();
  await page.getByRole('button', { name: /3 Points/ }).click();
  await clickAt(page, 60, 100);
  await page.getByRole('button', { name: /4 Events/ }).click();
  await page.getByRole('button', { name: /5 Measures/ }).click();
  await page.getByRole('textbox', { name: 'Caption', exact: true }).fill('The ball in the hand');
  await page.getByRole('textbox', { name: 'What it shows' }).fill('A white marker on a grey ground');
  await page.getByRole('button', { name: 'Keep this frame as a figure' }).click();
  const picture = page.getByRole('img', { name: 'A white marker on a grey ground' });
  await expect(picture).toBeVisible();
  await expect
    .poll(() => picture.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight]))
    .toEqual([640, 360]);
  const file = await storedCase(page);
  expect(file.stills).toMatchObject([{ caption: 'The ball in the hand', timeS: 1 / 60 }]);
  expect(
    file.media.some(({ sha256, mediaType }) => sha256 === file.stills[0]?.mediaSha && mediaType === 'image/png'),
  ).toBe(true);

  await page.getByRole('button', { name: 'Make a table of the measures (CSV)' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: /^Save .*measures\.csv$/ }).click();
  const csv = fs.readFileSync(await (await download).path(), 'utf8');
  expect(csv.split('\r\n')[0]).toBe('phase,measure,label,side,value,unit,standard_uncertainty,reason,how');
  expect(csv.split('\r\n').length).toBeGreaterThan(2);

  await test.step('the contact sheet: two events, two pictures of 480 by 270 px with a line of words each', async () => {
    const trialId = file.movementTrials[0]?.id ?? '';
    const edits = ['take-off', 'release'].map((event, i) => ({
      op: 'create',
      kind: 'trialEvent',
      record: { id: crypto.randomUUID(), trialId, event, timeS: 0.5 + i / 4, uS: null, origin: 'by-hand' },
    }));
    await ask(page, 'case.edit', { caseId: caseIdOf(page), edits });
    await page.getByRole('button', { name: 'Make a contact sheet of the events' }).click();
    const sheet = page.waitForEvent('download');
    await page.getByRole('link', { name: /^Save .*phases\.png$/ }).click();
    const png = fs.readFileSync(await (await sheet).path());
    // Width and height stand at bytes 16 and 20 of a PNG (its specification, 11.2.1).
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([960, 314]);
  });

  await page.getByRole('button', { name: /Remove the still/ }).click();
  await expect(page.getByText('No frame of this trial is kept yet.')).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(picture).toBeVisible();
});

const byHand = (tracks: readonly LandmarkTrack[]) => tracks.filter(({ origin }) => origin === 'by-hand');
const samplesOf = (tracks: readonly LandmarkTrack[]) =>
  tracks.find(({ origin }) => origin === 'tracked')?.samples ?? [];

/** What the store holds at this moment: while it tracks there is always something more being saved. */
async function tracksHeld(page: Page): Promise<readonly LandmarkTrack[]> {
  const { file } = await ask<{ file: CaseFile }>(page, 'case.open', { caseId: caseIdOf(page) });
  return file.landmarkTracks;
}

test.describe('a film long enough to be ended in its middle', () => {
  const FRAMES = 2400;
  const TURNS = 120;
  /** Where the marker is in a frame. */
  const placeIn = (frame: number) => {
    const gone = TURNS - Math.abs((frame % (2 * TURNS)) - TURNS);
    return { x: 60 + 4 * gone, y: 100 + 2 * gone };
  };
  let long: string;
  test.beforeAll(() => {
    long = path.join(folder, 'long.mp4');
    aFilm(long, { frames: FRAMES, rateHz: 60, gop: 30, turns: TURNS });
  });

  /** The ball by hand in frame 0, and the tracker on its way with some of it stored. */
  async function trackSome(page: Page): Promise<void> {
    await openBench(page, long);
    await page.getByRole('button', { name: /3 Points/ }).click();
    await page.getByLabel('After a click, go on to the next frame').uncheck();
    await clickAt(page, 60, 100);
    await page.getByRole('button', { name: 'Track forward' }).click();
    await expect(page.getByText(/Ball: .*frames? tracked/)).toBeVisible({ timeout: 30_000 });
    await expect(page.getByText(/Tracking ball/)).toBeVisible();
  }

  test('killed while it tracks: what was put down by hand and what was tracked so far is there, and nothing half', async ({
    browser,
  }) => {
    const store = temporaryFolder();
    const first = await startHost(store);
    const context = await browser.newContext();
    const page = await context.newPage();
    await open(page, first);
    await trackSome(page);
    // Acknowledged, so never lost; the tracker is on its way to more.
    const acknowledged = await tracksHeld(page);
    await expect(page.getByText(/Tracking ball/)).toBeVisible();
    await first.kill();
    await context.close();

    const second = await startHost(store);
    const again = await (await browser.newContext()).newPage();
    await open(again, second);
    const shelf = { search: '', archived: false, offset: 0, limit: 1 };
    const { rows } = await ask<{ rows: { caseId: string }[] }>(again, 'shelf.list', shelf);
    const { file } = await ask<{ file: CaseFile }>(again, 'case.open', { caseId: rows[0]?.caseId });
    expect(byHand(file.landmarkTracks)).toEqual(byHand(acknowledged));
    const kept = samplesOf(file.landmarkTracks);
    expect(kept.slice(0, samplesOf(acknowledged).length)).toEqual(samplesOf(acknowledged));
    expect(kept.length).toBeGreaterThan(10);
    expect(kept.length).toBeLessThan(FRAMES - 1);
    expect(kept.map(([frame]) => frame)).toEqual(kept.map((_sample, i) => i + 1));
    // A click is no better than a pixel of the screen.
    expect(Math.max(...kept.map(([at, x, y]) => Math.hypot(x - placeIn(at).x, y - placeIn(at).y)))).toBeLessThan(1.5);
    expect(await ask(again, 'store.verify', {})).toEqual({ problems: [] });
    await again.context().close();
    await second.close();
    fs.rmSync(store, { recursive: true, force: true });
  });

  test('stored in parts, taken back as one: by undo while it tracks, which ends it, and after it was stopped', async ({
    page,
    host,
  }) => {
    await open(page, host);
    await trackSome(page);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(page.getByText('because what it had tracked was taken back')).toBeVisible();
    await expect(page.getByText('Ball: 1 frame by hand.')).toBeVisible();
    expect((await tracksOf(page)).map(({ origin }) => origin)).toEqual(['by-hand']);

    await page.getByRole('slider').fill('0');
    await expect(stage(page)).toHaveAttribute('data-frame', '0');
    await page.getByRole('button', { name: 'Track forward' }).click();
    // Two parts at least.
    const held = async () => samplesOf(await tracksHeld(page)).length;
    await expect.poll(held, { timeout: 30_000 }).toBeGreaterThan(0);
    const first = await held();
    await expect.poll(held, { timeout: 30_000 }).toBeGreaterThan(first);
    await page.getByRole('button', { name: 'Stop, and keep what was tracked' }).click();
    await expect(page.getByText('Stopped as asked.')).toBeVisible();
    const tracked = await tracksOf(page);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(page.getByText('Ball: 1 frame by hand.')).toBeVisible();
    await page.getByRole('button', { name: /^Redo/ }).click();
    await expect(page.getByText(/frames tracked/)).toBeVisible();
    expect(await tracksOf(page)).toEqual(tracked);
  });
});
