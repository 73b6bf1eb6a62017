import fs from 'node:fs';
import path from 'node:path';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { aScene, ffmpeg, sentInCircles } from '../main/media/films.ts';
import { expect, open, temporaryFolder, test } from './fixtures.ts';
import { openTrials } from './theBench.ts';

test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to bring in');

let folder: string;
test.beforeAll(() => {
  folder = temporaryFolder();
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

test('a film that sends its reader in circles is refused before the window opens it, and the window goes on', async ({
  page,
  host,
}) => {
  const film = path.join(folder, 'circles.webm');
  ffmpeg(...aScene(16), '-c:v', 'libvpx-vp9', '-deadline', 'realtime', '-cpu-used', '8', film);
  fs.writeFileSync(film, sentInCircles(fs.readFileSync(film)));
  await open(page, host);
  await openTrials(page);
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  await page.getByLabel('Bring in the film of this trial').setInputFiles(film);
  await expect(page.getByText('Nothing was kept of it.')).toContainText('its pictures cannot be listed', {
    timeout: 20_000,
  });
  expect(fs.readdirSync(path.join(host.folder, 'media'))).toEqual([]);
});
