import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { planClip } from '../../main/clip/clip.ts';
import { writeClip } from '../../main/clip/writeClip.ts';
import { seededRandom } from '../../shared/kernel/uncertainty/seededRandom.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { aScene, ffmpeg, sentInCircles, timesIn } from '../main/media/films.ts';
import { aFilm } from './aFilm.ts';
import { expect, type Host, open, temporaryFolder, test } from './fixtures.ts';
import { chooseFilm, codeOn, openBench, openTrials, stage, storedCase } from './theBench.ts';

// The number drawn into each picture proves which one is shown; times are those of ffprobe's own reading.

test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to bring in');

let folder: string;
/** 120 pictures at 60 a second. */
let plain: string;
test.beforeAll(() => {
  folder = temporaryFolder();
  plain = at('plain.mp4');
  aFilm(plain, { frames: 120, rateHz: 60, gop: 30 });
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

const at = (name: string) => path.join(folder, name);

/** Everything the page says while a film comes in. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    new MutationObserver(() => {
      const said = document.querySelector('.trial-film .import-state')?.textContent ?? '';
      if (said !== '' && heard.at(-1) !== said) heard.push(said);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  return () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
}

/** How far a copy was each time the page said so. */
const progressIn = (said: readonly string[], why: string) =>
  said.flatMap((words) => {
    const [, done] = new RegExp(`Making a copy ${why}: (\\d+)`).exec(words) ?? [];
    return done === undefined ? [] : [Number(done)];
  });

/** Frames asked for at random of which another was shown. */
async function wrongOf(page: Page, jumps: number, last: number, numberOf: (frame: number) => number, isTurned = false) {
  const random = seededRandom(11);
  const wrong: string[] = [];
  for (let i = 0; i < jumps; i++) {
    const frame = i === 0 ? last : Math.floor(random() * (last + 1));
    await page.getByRole('slider').fill(String(frame));
    await expect(stage(page)).toHaveAttribute('data-frame', String(frame));
    const shown = await codeOn(stage(page), isTurned);
    if (shown !== numberOf(frame)) wrong.push(`asked ${frame}, shown ${shown} for ${numberOf(frame)}`);
  }
  return wrong;
}

const lying = (host: Host) =>
  fs
    .readdirSync(path.join(host.folder, 'media'), { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map(({ name }) => name);

test('our made clip in a codec that no browser decodes: a copy, made with progress, shows each frame as itself', async ({
  page,
  host,
}) => {
  const clip = planClip({
    movementId: 'countermovement-jump',
    captureRateHz: 30,
    seed: 3,
    slowMotion: 1,
    tiltDeg: 0,
    turnDeg: 0,
  });
  await writeClip(clip, at('made.mp4'));
  ffmpeg('-i', at('made.mp4'), '-c:v', 'mpeg4', '-q:v', '2', '-an', at('made.avi'));
  await open(page, host);
  await openTrials(page);
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  const heard = await listen(page);
  await page.getByLabel('Bring in the film of this trial').setInputFiles(at('made.avi'));
  await page.getByRole('link', { name: 'Open the trial bench' }).click({ timeout: 60_000 });
  await expect(stage(page)).toHaveAttribute('data-frame', '0');
  const progress = progressIn(await heard(), 'that can be shown here');
  expect(progress.length).toBeGreaterThan(1);
  expect(progress).toEqual(progress.toSorted((a, b) => a - b));
  await expect(page.getByRole('slider')).toHaveAttribute('max', String(clip.frames - 1));
  expect(await wrongOf(page, 40, clip.frames - 1, (frame) => frame)).toEqual([]);

  const { media, movementTrials } = await storedCase(page);
  expect(media.map(({ mediaType, proxyOf }) => [mediaType, proxyOf])).toEqual([
    ['video/x-msvideo', null],
    ['video/mp4', movementTrials[0]?.clipSha256],
  ]);
  const [original] = media;
  const kept = path.join(host.folder, 'media', original?.sha256.slice(0, 2) ?? '', original?.sha256 ?? '');
  expect(fs.readFileSync(kept).equals(fs.readFileSync(at('made.avi')))).toBe(true);
});

test('pictures that hang together in one long group get a copy that steps quickly, frame for frame', async ({
  page,
  host,
}) => {
  const film = at('long group.mp4');
  aFilm(film, { frames: 200, rateHz: 60, gop: 250 });
  await open(page, host);
  await openTrials(page);
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  const heard = await listen(page);
  await page.getByLabel('Bring in the film of this trial').setInputFiles(film);
  await page.getByRole('link', { name: 'Open the trial bench' }).click({ timeout: 60_000 });
  await expect(stage(page)).toHaveAttribute('data-frame', '0');
  expect(progressIn(await heard(), 'that steps quickly')).not.toEqual([]);
  expect(await wrongOf(page, 30, 199, (frame) => frame)).toEqual([]);
  const { media } = await storedCase(page);
  expect(media.map(({ proxyOf }) => proxyOf === null)).toEqual([true, false]);
});

test('a copy on its way is stopped when told to, and nothing of the film stays', async ({ page, host }) => {
  const film = at('long.avi');
  ffmpeg(...aScene(2000, 60, '640x360'), '-c:v', 'mpeg4', '-q:v', '4', film);
  await open(page, host);
  await chooseFilm(page, film);
  await expect(page.getByText(/Making a copy that can be shown here: [1-9]/)).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Stop, and keep nothing' }).click();
  await expect(page.getByText('Nothing was kept of it.')).toContainText('Stopped as asked.');
  expect(lying(host)).toEqual([]);
  await expect(page.getByLabel('Bring in the film of this trial')).toBeVisible();
});

test('turned by its metadata: upright on the stage, each frame as itself', async ({ page, host }) => {
  ffmpeg('-i', plain, '-c', 'copy', '-metadata:s:v', 'rotate=90', at('turned.mp4'));
  await open(page, host);
  await openBench(page, at('turned.mp4'));
  await expect(page.getByText(/120\sframes, 360 × 640 px, H\.264, turned by 270° as the file asks/)).toBeVisible();
  expect(await stage(page).evaluate((canvas: HTMLCanvasElement) => [canvas.width, canvas.height])).toEqual([360, 640]);
  expect(await wrongOf(page, 25, 119, (frame) => frame, true)).toEqual([]);

  // The whole picture as ffmpeg turns it, every 20th pixel; the two convert colours a little differently.
  await page.getByRole('slider').fill('40');
  await expect(stage(page)).toHaveAttribute('data-frame', '40');
  ffmpeg(
    '-i',
    at('turned.mp4'),
    '-vf',
    'select=eq(n\\,40),format=rgb24',
    '-frames:v',
    '1',
    '-f',
    'rawvideo',
    at('40.rgb'),
  );
  const truth = fs.readFileSync(at('40.rgb'));
  const shown = await stage(page).evaluate((canvas: HTMLCanvasElement) => [
    ...(canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? []),
  ]);
  const apart: number[] = [];
  for (let y = 10; y < 640; y += 20) {
    for (let x = 10; x < 360; x += 20) {
      const pixel = y * 360 + x;
      apart.push(Math.abs((truth[3 * pixel + 1] ?? 0) - (shown[4 * pixel + 1] ?? 0)));
    }
  }
  expect(apart.toSorted((a, b) => a - b)[Math.floor(0.95 * apart.length)]).toBeLessThan(12);
});

test('an edit list that hides the beginning: frame 0 is the first that a player shows, at time 0', async ({
  page,
  host,
}) => {
  ffmpeg('-ss', '0.53', '-i', plain, '-c', 'copy', at('cut.mp4'));
  const times = timesIn(at('cut.mp4'));
  const hidden = 120 - times.length;
  // 0.53 s at 60 a second, so the file still holds pictures that must not be shown.
  expect(hidden).toBe(32);
  await open(page, host);
  await openBench(page, at('cut.mp4'));
  await expect(page.getByText(`frame 0 of ${times.length - 1}, 0.0000 s`)).toBeVisible();
  expect(await wrongOf(page, 25, times.length - 1, (frame) => frame + hidden)).toEqual([]);
  await page.getByRole('slider').fill('30');
  await expect(page.getByText(`frame 30 of ${times.length - 1}, 0.5000 s`)).toBeVisible();
});

test('a variable frame rate: each frame as itself and at its own time, and the page says so', async ({
  page,
  host,
}) => {
  const uneven = ['-fps_mode', 'passthrough', '-enc_time_base', '1/90000', '-video_track_timescale', '90000'];
  const drop = ['-vf', "select='not(eq(mod(n,7),3))'", '-c:v', 'libx264', '-preset', 'veryfast', '-bf', '2'];
  ffmpeg('-i', plain, ...drop, ...uneven, at('uneven.mp4'));
  const numbers = Array.from({ length: 120 }, (_, n) => n).filter((n) => n % 7 !== 3);
  expect(timesIn(at('uneven.mp4')).map((t) => Math.round(60 * t))).toEqual(numbers);
  await open(page, host);
  await openBench(page, at('uneven.mp4'));
  await expect(page.getByText(/^Uneven: frames lie up to \d.*Each frame’s own time is used/)).toBeVisible();
  await expect(page.getByText(/mostly 60 frames a second/)).toBeVisible();
  await page.getByRole('button', { name: 'Not slowed: 60 frames a second are real' }).click();
  const times = timesIn(at('uneven.mp4'));
  for (const frame of [1, 3, 50, numbers.length - 1]) {
    await page.getByRole('slider').fill(String(frame));
    const s = ((times[frame] ?? 0) - (times[0] ?? 0)).toFixed(4);
    await expect(page.getByText(`frame ${frame} of ${numbers.length - 1}, ${s} s`)).toBeVisible();
  }
  expect(await wrongOf(page, 30, numbers.length - 1, (frame) => numbers[frame] ?? -1)).toEqual([]);
});

test('a film that sends its reader in circles is refused before the window opens it, and the window goes on', async ({
  page,
  host,
}) => {
  const film = at('circles.webm');
  ffmpeg(...aScene(16), '-c:v', 'libvpx-vp9', '-deadline', 'realtime', '-cpu-used', '8', film);
  fs.writeFileSync(film, sentInCircles(fs.readFileSync(film)));
  await open(page, host);
  await chooseFilm(page, film);
  await expect(page.getByText('Nothing was kept of it.')).toContainText('its pictures cannot be listed', {
    timeout: 20_000,
  });
  expect(lying(host)).toEqual([]);
});
