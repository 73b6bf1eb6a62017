import path from 'node:path';
import type { Page } from '@playwright/test';
import { jumpTraceCsv } from '../../main/demo/jumpTrace.ts';
import { randomSource } from '../../main/demo/randomSource.ts';
import { expect, type Host, open, startHost, temporaryFolder, test } from './fixtures.ts';

async function newCase(page: Page, host: Host): Promise<void> {
  await open(page, host);
  await page.getByRole('button', { name: 'New case' }).first().click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Intake/ })
    .click();
  await expect(page.getByRole('heading', { name: 'Athlete', level: 2 })).toBeVisible();
}

const go = (page: Page, name: string) =>
  page
    .getByRole('navigation', { name: 'Sections' })
    .getByRole('link', { name: new RegExp(`^${name}`) })
    .click();

const csv = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

test('quick typing loses no letter, in a note and in a number', async ({ page, host }) => {
  await newCase(page, host);
  await go(page, 'Screening');
  await page.getByRole('button', { name: /^Start a session/ }).click();
  const words = 'Warm-up ten minutes, shoes off; left ankle taped since Tuesday.';
  await page.getByLabel('Note', { exact: true }).focus();
  await page.keyboard.type(words);
  await expect(page.getByLabel('Note', { exact: true })).toHaveValue(words);
  // In the middle of what stands there already the caret must stay where it is put.
  await page.keyboard.press('Home');
  await page.keyboard.type('Tired. ');
  await expect(page.getByLabel('Note', { exact: true })).toHaveValue(`Tired. ${words}`);
  await page.getByLabel('Weight-bearing lunge, left', { exact: true }).focus();
  await page.keyboard.type('10.75');
  await page.reload();
  await expect(page.getByLabel('Note', { exact: true })).toHaveValue(`Tired. ${words}`);
  await expect(page.getByLabel('Weight-bearing lunge, left', { exact: true })).toHaveValue('10.75');
});

test('screening by keyboard: cells in reading order and down a column, pain says stop and be seen at once', async ({
  page,
  host,
}) => {
  await newCase(page, host);
  await go(page, 'Screening');
  await page.getByRole('button', { name: /^Start a session/ }).click();
  const cell = (name: string) => page.getByLabel(name, { exact: true });

  await cell('Single-leg squat, left').focus();
  await page.keyboard.type('not met');
  await page.keyboard.press('Tab');
  await expect(cell('Pain, Single-leg squat, left')).toBeFocused();
  await expect(page.getByText('Stop and be seen')).toHaveCount(0);
  await page.keyboard.type('6');
  await expect(page.getByText('Stop and be seen: pain 6 of 10 in single-leg squat, left').first()).toBeVisible();

  await cell('Weight-bearing lunge, right').focus();
  await page.keyboard.type('13');
  await page.keyboard.press('Enter');
  await expect(cell('Shoulder internal rotation at 90°, right')).toBeFocused();
  await page.keyboard.press('Shift+Enter');
  await expect(cell('Weight-bearing lunge, right')).toBeFocused();
  await cell('Weight-bearing lunge, left').fill('9.5');
  await expect(page.getByText('right larger by 3.5')).toBeVisible();
  await page.keyboard.press('ArrowRight');
  await expect(cell('Pain, Weight-bearing lunge, left')).toBeFocused();

  await page.keyboard.press('Control+z');
  await expect(cell('Weight-bearing lunge, left')).not.toHaveValue('9.5');
});

test('a force file is refused in words with the next step, or analysed, drawn and kept with its uncertainty', async ({
  page,
  host,
}) => {
  await newCase(page, host);
  await go(page, 'Jumps');
  await page.getByRole('button', { name: 'Jump on a force plate' }).click();
  const door = page.getByLabel('Add a jump from a force file');

  await door.setInputFiles(csv('knees.csv', 'time_s,knee_angle_deg\n0,12\n0.001,13\n0.002,15\n'));
  const refusal = page.getByRole('alert').filter({ hasText: 'knees.csv is not taken in' });
  await expect(refusal).toContainText('knee_angle_deg');
  await expect(refusal).toContainText('Nothing was changed');

  const takeoffVelocityMPerS = 2.6;
  const jump = { massKg: 70, takeoffVelocityMPerS, depthM: 0.3, leftShare: 0.5 };
  await door.setInputFiles(csv('jump.csv', jumpTraceCsv(jump, randomSource(7))));
  const preview = page.getByRole('region', { name: 'Preview of jump.csv' });
  await expect(preview.getByText('take-off', { exact: true })).toBeVisible();
  await expect(preview.getByText(/^body weight 68\d N$/)).toBeVisible();
  await preview.getByRole('button', { name: 'Keep this jump' }).click();

  // What left the plate at v rises v²/2g; the trace was made with that v.
  const height = page.getByRole('button', { name: /^Jump height, force plate: / }).first();
  await expect(height).toHaveText(/±/);
  const shown = Number(/[\d.]+/.exec((await height.locator('.reading-value').textContent()) ?? '')?.[0]);
  expect(shown).toBeGreaterThan((takeoffVelocityMPerS ** 2 / (2 * 9.80665)) * 100 - 1);
  expect(shown).toBeLessThan((takeoffVelocityMPerS ** 2 / (2 * 9.80665)) * 100 + 1);
  await height.click();
  await expect(page.getByRole('complementary', { name: 'Margin' })).toContainText('Jump height, force plate');
});

test('what is accepted stands in the plan, and leaves it when taken back', async ({ page, host }) => {
  await newCase(page, host);
  await go(page, 'Screening');
  await page.getByRole('button', { name: /^Start a session/ }).click();
  await page.getByLabel('Single-leg squat, left', { exact: true }).selectOption('not-met');
  await go(page, 'Findings');

  const plan = page.getByRole('region', { name: 'Plan' });
  await expect(plan).toContainText('Nothing is accepted yet.');
  const finding = page.getByRole('article', { name: /single-leg squat/ }).first();
  await finding.getByRole('button', { name: 'Accept' }).click();
  await expect(plan.getByRole('listitem')).toHaveCount(1);
  await expect(plan.getByRole('button', { name: /^Because: / })).toBeVisible();
  await finding.getByRole('button', { name: 'Take back' }).click();
  await expect(plan).toContainText('Nothing is accepted yet.');
});

test('findings by keyboard: set aside with a reason, why, take back; the report follows', async ({ page, host }) => {
  await newCase(page, host);
  await go(page, 'Screening');
  await page.getByRole('button', { name: /^Start a session/ }).click();
  await page.getByLabel('Single-leg squat, left', { exact: true }).selectOption('not-met');
  await go(page, 'Findings');

  const finding = page.getByRole('article', { name: /single-leg squat/ }).first();
  await finding
    .getByRole('button', { name: /single-leg squat/ })
    .first()
    .focus();
  await page.keyboard.press('y');
  await expect(finding.getByRole('group').first()).toHaveAttribute('open', '');
  await page.keyboard.press('s');
  await expect(finding.getByLabel('Reason for setting it aside')).toBeFocused();
  await page.keyboard.type('Seen again on a second day: clean.');
  await expect(finding.getByText('set aside by the practitioner')).toBeVisible();

  // Decisions and their reasons are the study's; the client report leaves them out.
  await go(page, 'Report');
  await page.getByRole('combobox', { name: /^Kind/ }).selectOption({ label: 'Case study' });
  await expect(page.getByText('Seen again on a second day: clean.')).toBeVisible();
  await go(page, 'Findings');
  await finding
    .getByRole('button', { name: /single-leg squat/ })
    .first()
    .focus();
  await page.keyboard.press('t');
  await expect(finding.getByText('to decide', { exact: true })).toBeVisible();
});

test('an athlete is erased only once the number of the case is typed, and is gone from the shelf', async ({
  page,
  host,
}) => {
  await newCase(page, host);
  await page.getByLabel('Name or pseudonym').fill('Quillmarsh');
  await page.getByRole('button', { name: 'Erase this athlete…' }).click();
  const dialog = page.getByRole('dialog');
  const number = /\d{4}-\d{3}/.exec((await dialog.textContent()) ?? '')?.[0] ?? '';
  const go = dialog.getByRole('button', { name: 'Erase for good' });
  await expect(go).toBeDisabled();
  await dialog.getByRole('textbox').fill(number);
  await go.click();
  await expect(dialog.getByText('1 case and 0 files are gone from this store.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(page.getByText('The shelf is empty.')).toBeVisible();
});

test('an event dragged on the ribbon is where it was after one undo, by button and by key, every time', async ({
  page,
}) => {
  const demo = await startHost(path.join(temporaryFolder(), 'demo'), '--demo');
  await open(page, demo);
  await go(page, 'Trials');
  const event = page.getByRole('slider', { name: 'Plant, move' });
  await event.scrollIntoViewIfNeeded();
  const at = await event.getAttribute('aria-valuenow');
  for (let i = 0; i < 4; i += 1) {
    const box = await event.boundingBox();
    if (box === null) throw new Error('the event is not on the page');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 8 + i, y, { steps: 2 + (i % 3) });
    await page.mouse.move(x + 24 + i, y, { steps: 3 });
    await page.mouse.up();
    await expect(event).not.toHaveAttribute('aria-valuenow', at ?? '');
    if (i % 2 === 0) await page.getByRole('button', { name: /^Undo/ }).click();
    else await page.keyboard.press('ControlOrMeta+z');
    await expect(event).toHaveAttribute('aria-valuenow', at ?? '');
  }
  await page.goto('about:blank');
  await demo.close();
});

test('in a filmed throw: a ball by its own figures is kept; the same target from higher is worked out and opens', async ({
  page,
}) => {
  const demo = await startHost(path.join(temporaryFolder(), 'demo'), '--demo');
  await open(page, demo);
  await go(page, 'Trials');
  const details = page.locator('details', { hasText: 'The same target from higher, or later' }).first();
  await details.locator('summary').first().click();
  const least = details.getByRole('row', { name: /^Least speed that gets there/ });
  const before = (await least.innerText()).replaceAll(/\s+/g, ' ');
  expect(before).toMatch(/\d/);
  await details.getByLabel('Higher by', { exact: true }).fill('40');
  await details.getByLabel('Higher by', { exact: true }).blur();
  await expect.poll(async () => (await least.innerText()).replaceAll(/\s+/g, ' ')).not.toBe(before);
  const height = details.getByRole('row', { name: /^Release height/ });
  await height.locator('summary').first().click();
  await expect(height.locator('.working-formula').first()).toBeVisible();
  await page.getByLabel('Ball or implement').first().selectOption({ label: 'Another, by its own figures' });
  await page.getByLabel('Mass of the ball', { exact: true }).fill('0.6');
  await page.getByLabel('Diameter of the ball', { exact: true }).fill('18');
  await expect(page.getByText('Counts once all three are entered.')).toBeVisible();
  await page.getByLabel('Drag coefficient of the ball', { exact: true }).fill('0.5');
  await page.getByLabel('Drag coefficient of the ball', { exact: true }).blur();
  await expect(page.getByText('Counts once all three are entered.')).toHaveCount(0);
  await page.reload();
  await expect(page.getByLabel('Mass of the ball', { exact: true })).toHaveValue('0.6');
  await expect(page.getByLabel('Drag coefficient of the ball', { exact: true })).toHaveValue('0.5');
  await page.goto('about:blank');
  await demo.close();
});
