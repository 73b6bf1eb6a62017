import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { canonicalJson } from '../../shared/canonicalJson.ts';
import { movementById } from '../../shared/knowledge/movements/index.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { aFilm } from './aFilm.ts';
import { expect, open, temporaryFolder, test } from './fixtures.ts';
import { clickAt, openBench, stage, storedCase } from './theBench.ts';

test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');

const STEPS = 50;
const MARKED = 33;

let folder: string;
let film: string;
test.beforeAll(() => {
  folder = temporaryFolder();
  film = path.join(folder, 'throw.mp4');
  aFilm(film, { frames: 60, rateHz: 60, gop: 30 });
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

/** SHA-256 of everything the store holds of the case. The count of its changes goes on with every undo, as it should. */
async function digest(page: Page): Promise<string> {
  const { revision: _changes, ...held } = await storedCase(page);
  return createHash('sha256').update(canonicalJson(held)).digest('hex');
}

test(`${STEPS} steps on the bench taken back and made again: at each, the stored record is the very one it was`, async ({
  page,
  host,
}) => {
  test.setTimeout(300_000);
  await open(page, host);
  await openBench(page, film);
  const records = [await digest(page)];
  /** One step, waited for until the store holds it. */
  const step = async (act: () => Promise<unknown>) => {
    await act();
    await expect.poll(() => digest(page)).not.toBe(records.at(-1));
    records.push(await digest(page));
  };
  const typed = (name: string | RegExp, value: string) => async () => {
    const box = page.getByRole('textbox', { name, exact: typeof name === 'string' });
    await box.fill(value);
    await box.blur();
  };

  await step(() => page.getByRole('button', { name: /60 frames a second are real/ }).click());
  await step(typed('Label', 'third of five'));
  await step(() => page.getByLabel('Movement', { exact: true }).selectOption('overhead-throw'));
  await page.getByRole('button', { name: /3 Points/ }).click();
  for (let frame = 0; frame < MARKED; frame += 1) {
    await expect(stage(page)).toHaveAttribute('data-frame', String(frame));
    await step(() => clickAt(page, 60 + 4 * frame, 100 + 2 * frame));
  }
  await page.getByRole('slider', { name: 'Frame' }).fill('12');
  await expect(stage(page)).toHaveAttribute('data-frame', '12');
  for (const key of ['ArrowRight', 'Shift+ArrowUp', 'Delete'])
    await step(() => page.locator('.bench-stage').press(key));
  await page.getByRole('slider', { name: 'Frame' }).fill(String(MARKED - 1));
  await expect(stage(page)).toHaveAttribute('data-frame', String(MARKED - 1));
  await page.getByRole('button', { name: 'Track forward' }).click();
  await expect(page.getByText(/^Ball tracked in \d+/)).toBeVisible({ timeout: 60_000 });
  // Stored in parts maybe, and one step all the same.
  await step(() => Promise.resolve());
  await page.getByRole('button', { name: /4 Events and phases/ }).click();
  for (const [i, { label }] of (movementById('overhead-throw')?.events ?? []).entries()) {
    if (records.length <= STEPS) await step(typed(`Time of ${label.toLowerCase()}`, String(0.1 * (i + 1))));
  }
  // Words typed one after the other into one field are one step; a point moved is a step every time.
  await page.getByRole('button', { name: /3 Points/ }).click();
  while (records.length <= STEPS) await step(() => page.locator('.bench-stage').press('ArrowLeft'));
  expect(new Set(records).size).toBe(STEPS + 1);

  const turned = async (button: 'Undo' | 'Redo', to: number) => {
    await page.getByRole('button', { name: new RegExp(`^${button}`) }).click();
    await expect.poll(async () => records.indexOf(await digest(page)), { message: `${button} to ${to}` }).toBe(to);
  };
  for (let to = STEPS - 1; to >= 0; to -= 1) await turned('Undo', to);
  for (let to = 1; to <= STEPS; to += 1) await turned('Redo', to);
});
