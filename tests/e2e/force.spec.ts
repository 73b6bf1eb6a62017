import fs from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { jumpTraceCsv } from '../../main/demo/jumpTrace.ts';
import { randomSource } from '../../main/demo/randomSource.ts';
import { openData } from '../support/openData.ts';
import { expect, type Host, open, test } from './fixtures.ts';

const G = 9.80665;

async function openDoor(page: Page, host: Host) {
  await open(page, host);
  await page.getByRole('button', { name: 'New case' }).first().click();
  const purposes = page.getByRole('dialog');
  await purposes.getByRole('button', { name: /^Intake/ }).click();
  await page
    .getByRole('navigation', { name: 'Sections' })
    .getByRole('link', { name: /^Jumps/ })
    .click();
  await page.getByRole('button', { name: 'Jump on a force plate' }).click();
  return page.getByLabel('Add a jump from a force file');
}

const centimetres = (text: string, before: string) => Number(new RegExp(`${before} (-?[\\d.]+)`).exec(text)?.[1]);

test('law: a mark moved by key or pointer moves the flight time, g T²/8, and is said and kept with the jump', async ({
  page,
  host,
}) => {
  const door = await openDoor(page, host);
  const jump = { massKg: 70, takeoffVelocityMPerS: 2.6, depthM: 0.3, leftShare: 0.5 };
  await door.setInputFiles({
    name: 'jump.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(jumpTraceCsv(jump, randomSource(7))),
  });
  const preview = page.getByRole('region', { name: 'Preview of jump.csv' });
  const mark = (name: string) => preview.getByRole('slider', { name });
  const at = async (name: string) => Number(await mark(name).getAttribute('aria-valuenow'));
  const words = preview.getByText('Jump height by take-off velocity');
  const heightCm = async () => centimetres((await words.textContent()) ?? '', 'by flight time');
  const ofMarksCm = async () => ((G * ((await at('Landing')) - (await at('Take-off'))) ** 2) / 8) * 100;
  await expect(mark('Landing')).toBeVisible();
  const before = await heightCm();
  const landing = await at('Landing');

  await mark('Landing').focus();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => at('Landing')).toBeCloseTo(landing + 11 / 1000, 6);
  await expect(mark('Landing')).toBeFocused();
  // Both presses are worked out one after the other, off the page: what is shown in between is of the first alone.
  await expect.poll(async () => Math.abs((await heightCm()) - (await ofMarksCm()))).toBeLessThan(0.06);
  expect(await heightCm()).toBeGreaterThan(before);
  await expect(preview.getByText(/^Placed by hand in the jump at .*: landing\./)).toBeVisible();

  await preview.scrollIntoViewIfNeeded();
  await mark('Take-off').scrollIntoViewIfNeeded();
  const box = await mark('Take-off').locator('line').boundingBox();
  if (box === null) throw new Error('the take-off is not drawn');
  const takeoff = await at('Take-off');
  await page.mouse.move(box.x, box.y + 60);
  await page.mouse.down();
  await page.mouse.move(box.x - 12, box.y + 60, { steps: 4 });
  await page.mouse.up();
  await expect.poll(() => at('Take-off')).toBeLessThan(takeoff);
  await expect(preview.getByText(/^Placed by hand in the jump at .*: take-off, landing\./)).toBeVisible();
  await expect.poll(async () => Math.abs((await heightCm()) - (await ofMarksCm()))).toBeLessThan(0.06);

  await preview.getByRole('button', { name: 'Keep this jump' }).click();
  await page.getByRole('button', { name: 'Show the trace and all measures of trial 1' }).click();
  await expect(page.getByText(/^Placed by hand in the jump at .*: take-off, landing\./)).toBeVisible();
});

test('columns and unit said once are kept for the next file with these heads, shown and forgotten; two jumps in it, each with its marks', async ({
  page,
  host,
}) => {
  const door = await openDoor(page, host);
  const jump = { massKg: 70, takeoffVelocityMPerS: 2.6, depthM: 0.3, leftShare: 0.5 };
  const rows = jumpTraceCsv(jump, randomSource(7)).trim().split('\n').slice(1);
  // One plate's halves in kilogram-force under heads that say nothing; 1 kgf is 9.80665 N by definition.
  const untold = [...rows, ...rows].map((row, i) => {
    const [, left, right] = row.split(',').map((cell) => Number(cell) / G);
    return `${(i / 1000).toFixed(3)},${left?.toFixed(4)},${right?.toFixed(4)}`;
  });
  const buffer = Buffer.from(['time_s,a,b', ...untold].join('\n'));
  await door.setInputFiles({ name: 'first.csv', mimeType: 'text/csv', buffer });
  await expect(page.locator('.import-problem')).toContainText('first.csv is not taken in');
  await page.getByLabel('Force columns, by name').fill('a, b');
  await page.getByLabel('Unit of the forces').selectOption('kgf');
  await page.getByRole('button', { name: 'Look again with these' }).click();
  const first = page.getByRole('region', { name: 'Preview of first.csv' });
  await expect(first.getByRole('checkbox', { name: /^Jump 2/ })).toBeChecked();
  await first.getByRole('checkbox', { name: /^Jump 2/ }).uncheck();
  await first.getByRole('button', { name: 'Keep 1 jump' }).click();
  await expect(page.getByText('Kept, with the file')).toBeVisible();

  await door.setInputFiles({ name: 'second.csv', mimeType: 'text/csv', buffer });
  const second = page.getByRole('region', { name: 'Preview of second.csv' });
  await expect(page.getByText('are those kept from the last file with these heads')).toBeVisible();
  await expect(page.getByLabel('Unit of the forces')).toHaveValue('kgf');
  await second.getByRole('radio', { name: /^Jump 2/ }).check();
  const landing = second.getByRole('slider', { name: 'Landing' });
  const at = async () => Number(await landing.getAttribute('aria-valuenow'));
  const before = await at();
  expect(before).toBeGreaterThan(rows.length / 1000);
  await landing.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(at).toBeCloseTo(before + 0.01, 6);
  await second.screenshot({ path: 'out/e2e/two-jumps.png' });
  await second.getByRole('button', { name: 'Keep 2 jumps' }).click();
  await expect(page.getByRole('button', { name: /^Show the trace and all measures of trial/ })).toHaveCount(3);

  await door.setInputFiles({ name: 'third.csv', mimeType: 'text/csv', buffer });
  await page.getByRole('button', { name: 'Forget them' }).click();
  await expect(page.locator('.import-problem')).toContainText('third.csv is not taken in');
});

const traces = openData('jump-force-cmj-sj-dj');
const samples = openData('c3d-samples');

test('an open force record through the screen: heights and weight of the numpy answers (expected.json)', async ({
  page,
  host,
}) => {
  test.skip(traces === null, 'open data jump-force-cmj-sj-dj is not on this machine');
  const folder = traces ?? '';
  const name = 'cmj_dual_plate_1000hz.csv';
  const answers = (
    JSON.parse(fs.readFileSync(join(folder, 'expected.json'), 'utf8')) as {
      trials: Record<string, Record<string, number>>;
    }
  ).trials[name];
  const door = await openDoor(page, host);
  await door.setInputFiles(join(folder, name));
  const preview = page.getByRole('region', { name: `Preview of ${name}` });
  const text = (await preview.getByText('Jump height by take-off velocity').textContent()) ?? '';
  // The tolerances of expected.json: 10 mm by impulse, 0.3 % of the weight; by flight time two samples.
  const impulseM = answers?.['jump_height_impulse_m__from_onset'] ?? Number.NaN;
  const flightM = answers?.['jump_height_flight_time_m'] ?? Number.NaN;
  const weightN = answers?.['body_weight_N'] ?? Number.NaN;
  expect(Math.abs(centimetres(text, 'take-off velocity') / 100 - impulseM)).toBeLessThanOrEqual(0.0105);
  expect(Math.abs(centimetres(text, 'by flight time') / 100 - flightM)).toBeLessThanOrEqual(0.0045);
  expect(Math.abs(centimetres(text, 'body weight') / weightN - 1)).toBeLessThanOrEqual(0.004);
});

test('an open C3D through the same door: plates to choose from, flight time of the numpy answer, no trust in the impulse', async ({
  page,
  host,
}) => {
  test.skip(samples === null, 'open data c3d-samples is not on this machine');
  const folder = samples ?? '';
  const { extra } = JSON.parse(fs.readFileSync(join(folder, 'expected.json'), 'utf8')) as {
    extra: Record<string, number>;
  };
  const name = 'jump_51markers_2plates_type4_real_le.c3d';
  const door = await openDoor(page, host);
  await door.setInputFiles(join(folder, name));
  const preview = page.getByRole('region', { name: `Preview of ${name}` });
  const text = (await preview.getByText('Jump height by take-off velocity').textContent()) ?? '';
  // The reference took another threshold on plates that are not zeroed: 10 ms of flight are 6 mm of height here.
  expect(Math.abs(centimetres(text, 'by flight time') / 100 - (extra['jump_height_flight_time_m'] ?? 0))).toBeLessThan(
    0.012,
  );
  await expect(page.getByRole('checkbox', { name: 'plate 2' })).toBeChecked();
  await expect(preview.getByText(/^No still stance before the jump/)).toBeVisible();
  await preview.getByRole('button', { name: 'Keep this jump' }).click();
  // Megabytes are written and synced: long on a busy disk.
  await expect(page.getByText('Kept, with the file')).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Show the trace and all measures of trial 1' }).click();
  await expect(page.getByText('take-off', { exact: true }).first()).toBeVisible();
});
