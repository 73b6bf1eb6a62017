import fs from 'node:fs';
import path from 'node:path';
import { seededRandom } from '../../shared/kernel/uncertainty/seededRandom.ts';
import { aFilm } from './aFilm.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { expect, open, temporaryFolder, test } from './fixtures.ts';
import { clickAt, codeOn, openBench, stage } from './theBench.ts';

test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');

const FRAMES = 120;
const RATE_HZ = 60;

let folder: string;
let film: string;
test.beforeAll(() => {
  folder = temporaryFolder();
  film = path.join(folder, 'throw.mp4');
  aFilm(film, { frames: FRAMES, rateHz: RATE_HZ, gop: 30 });
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

test('the frame asked for is the frame shown: 60 random jumps, 40 steps on, 40 back, none wrong', async ({
  page,
  host,
}) => {
  await open(page, host);
  await openBench(page, film);
  const random = seededRandom(4);
  const wrong: string[] = [];
  const check = async (frame: number) => {
    await expect(stage(page)).toHaveAttribute('data-frame', String(frame));
    const code = await codeOn(stage(page));
    if (code !== frame) wrong.push(`asked ${frame}, shown ${code}`);
  };
  const slider = page.getByRole('slider');
  for (let i = 0; i < 60; i++) {
    const frame = Math.floor(random() * FRAMES);
    await slider.fill(String(frame));
    await check(frame);
  }
  await slider.fill('50');
  await check(50);
  for (let i = 1; i <= 40; i++) {
    await page.getByRole('button', { name: 'One frame on' }).click();
    await check(50 + i);
  }
  for (let i = 1; i <= 40; i++) {
    await page.getByRole('button', { name: 'One frame back' }).click();
    await check(90 - i);
  }
  expect(wrong).toEqual([]);
});

test('a marker is put down by hand, tracked in a worker, calibrated, undone', async ({ page, host }) => {
  await open(page, host);
  await openBench(page, film);
  await page.getByRole('button', { name: /60 frames a second are real/ }).click();

  await test.step('a length: two clicks, then its true length', async () => {
    await page.getByRole('button', { name: /Plane/ }).click();
    await clickAt(page, 100, 200);
    await clickAt(page, 300, 200);
    await page.getByLabel('True length', { exact: true }).fill('1');
    await page.getByRole('textbox', { name: 'Standard uncertainty of the length' }).fill('2');
    await expect(page.getByRole('button', { name: /2 Plane has what it needs/ })).toBeVisible();
  });

  await test.step('the ball by a click, then the tracker to the end', async () => {
    await page.getByRole('button', { name: /Points/ }).click();
    await page.getByLabel('After a click, go on to the next frame').uncheck();
    await clickAt(page, 60, 100);
    await expect(page.getByText('Ball: 1 frame by hand.')).toBeVisible();
    await page.getByRole('button', { name: 'Track forward' }).click();
    await expect(page.getByText(/Ball tracked in \d+\sframes/)).toBeVisible({ timeout: 60_000 });
    await expect(page.getByText('All saved')).toBeVisible();
  });

  await test.step('known motion, 4 px to the right and 2 px down a frame: within half a pixel throughout', async () => {
    const caseId = page.url().split('/').at(-3) ?? '';
    const answer = await page.evaluate(async (id) => {
      const response = await fetch('/api/case.open', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ caseId: id }),
      });
      return response.json() as Promise<{
        value: { file: { landmarkTracks: { origin: string; samples: number[][] }[] } };
      }>;
    }, caseId);
    const tracks = answer.value.file.landmarkTracks;
    expect(tracks.map(({ origin }) => origin).toSorted()).toEqual(['by-hand', 'tracked']);
    const byHand = tracks.find(({ origin }) => origin === 'by-hand')?.samples[0] ?? [];
    const tracked = tracks.find(({ origin }) => origin === 'tracked')?.samples ?? [];
    // One pixel of the screen is nearly one of the film: a click is no better than that.
    expect(Math.hypot((byHand[1] ?? 0) - 60, (byHand[2] ?? 0) - 100)).toBeLessThan(1);
    expect(tracked.length).toBeGreaterThan(80);
    // Each tracked point is stored with an uncertainty of its own, and the bench says so.
    expect(tracked.every(({ length, 3: u = -1 }) => length === 4 && u >= 0 && u < 1)).toBe(true);
    await expect(page.getByText(/tracked by template matching, u = 0\.\d\d px a coordinate/)).toBeVisible();
    const errors = tracked.map(([frame = 0, x = 0, y = 0]) =>
      Math.hypot(x - (byHand[1] ?? 0) - 4 * frame, y - (byHand[2] ?? 0) - 2 * frame),
    );
    expect(Math.max(...errors)).toBeLessThan(0.5);
  });

  await test.step('undo takes the tracking back as one step, then the point', async () => {
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(page.getByText('Ball: 1 frame by hand.')).toBeVisible();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(page.getByText('Ball is in no frame yet.')).toBeVisible();
  });
});

test('what is no film is refused in words and leaves nothing behind', async ({ page, host }) => {
  await open(page, host);
  const broken = path.join(folder, 'broken.mp4');
  fs.writeFileSync(broken, fs.readFileSync(film).subarray(0, 9000));
  const notes = path.join(folder, 'notes.mp4');
  fs.writeFileSync(notes, 'The third throw was the best.');
  await page.getByRole('button', { name: 'New case' }).first().click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Case study/ })
    .click();
  await page
    .getByRole('navigation', { name: 'Sections' })
    .getByRole('link', { name: /^Trials/ })
    .click();
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  for (const file of [notes, broken]) {
    await page.getByLabel('Bring in the film of this trial').setInputFiles(file);
    await expect(page.getByText('Nothing was kept of it.')).toContainText(path.basename(file));
  }
  expect(fs.readdirSync(path.join(host.folder, 'media'))).toEqual([]);
});
