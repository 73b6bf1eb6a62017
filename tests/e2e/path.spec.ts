import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { expect, open, startHost, test } from './fixtures.ts';

/** A trial without film: events, and one angle measured elsewhere that a rule of the cocking phase looks at. */
const TRIAL_FILE = JSON.stringify({
  format: 'caseframe-trial',
  version: 1,
  movement: 'handball-jump-throw',
  label: 'Third of five',
  filmedOn: '2026-03-02',
  side: 'right',
  captureRateHz: 120,
  playbackRateHz: null,
  calibration: null,
  ball: null,
  target: null,
  painNrs: 0,
  points: {},
  events: [
    { event: 'approach-start', timeS: 0, uS: null },
    { event: 'plant', timeS: 0.6, uS: null },
    { event: 'take-off', timeS: 0.82, uS: null },
    { event: 'cocked', timeS: 0.96, uS: null },
    { event: 'release', timeS: 1.07, uS: null },
    { event: 'landing', timeS: 1.4, uS: null },
    { event: 'end', timeS: 1.6, uS: null },
  ],
  measures: [{ measure: 'arm.elevation', phase: 'cocking', side: 'right', value: 130, unit: 'deg', u: 2 }],
  note: 'Invented for a test.',
});

const section = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Sections' }).getByRole('link', { name: new RegExp(`^${name}`) });
const armFinding = (page: Page) => page.getByRole('article', { name: /upper arm is well off shoulder height/ });

test('a new user makes a case, sees findings change with an injury, exports the PDF and finds all as it was', async ({
  page,
  host,
}, info) => {
  test.setTimeout(120_000);
  await open(page, host);

  await test.step('an empty shelf asks one thing: what the case is for', async () => {
    await page.getByRole('button', { name: 'New case' }).first().click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Intake/ })
      .click();
    await expect(page.getByRole('heading', { name: 'Athlete', level: 2 })).toBeVisible();
  });

  await test.step('mass and stature; an impossible value is refused in words and stores nothing', async () => {
    await page.getByLabel('Name or pseudonym').fill('Player Heather');
    await page.getByLabel('Body mass', { exact: true }).fill('7200');
    await expect(page.getByText(/400/).first()).toBeVisible();
    await page.getByLabel('Body mass', { exact: true }).fill('72.4');
    await page.getByLabel('Stature', { exact: true }).fill('181');
    await page.getByRole('radio', { name: 'Male', exact: true }).check();
    await expect(page.getByText('All saved')).toBeVisible();
  });

  await test.step('a jump: 0.500 s in the air is 30.6 cm (h = g t²/8, closed form)', async () => {
    await section(page, 'Jumps').click();
    await page.getByRole('button', { name: 'Jump from flight time' }).click();
    await page.getByLabel('Frame rate of the video').fill('240');
    await page.getByRole('button', { name: 'Enter the first trial' }).click();
    await page.getByLabel(/^Flight time, /).fill('0.5');
    // ± 0.21 cm: two events of half a frame each at 240 frames a second, standard uncertainty.
    await expect(page.getByRole('table').getByText('30.65').first()).toBeVisible();
  });

  await test.step('a trial file; a broken one says where and changes nothing', async () => {
    await section(page, 'Trials').click();
    const input = page.locator('input[type=file]');
    await input.setInputFiles({
      name: 'broken.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"format":1}'),
    });
    await expect(page.getByRole('alert').first()).toBeVisible();
    await input.setInputFiles({ name: 'throw.json', mimeType: 'application/json', buffer: Buffer.from(TRIAL_FILE) });
    await expect(page.getByText('Third of five').first()).toBeVisible();
  });

  await test.step('a finding suggests something; with an injury on file it no longer does', async () => {
    await section(page, 'Findings').click();
    await expect(armFinding(page)).toContainText('Intervention');
    await expect(armFinding(page)).toContainText('Arm path at low speed');

    await section(page, 'Injuries').click();
    await page.getByRole('button', { name: 'Add an injury' }).click();
    await page.getByRole('button', { name: 'Shoulder, right' }).first().click();
    await page.getByLabel('Condition').selectOption({ label: 'Shoulder instability, anterior' });
    await expect(page.getByText('limits in force').first()).toBeVisible();

    await section(page, 'Findings').click();
    await expect(armFinding(page)).toContainText(/Replaced|Stopped/);
    await expect(armFinding(page)).toContainText('Held back, not advice');
    await expect(armFinding(page).locator('.advice', { hasText: 'Arm path at low speed' })).toHaveCount(0);
  });

  await test.step('a decision is kept', async () => {
    await armFinding(page).getByRole('button', { name: 'Accept' }).click();
    await expect(armFinding(page)).toContainText('accepted by the practitioner');
  });

  await test.step('the report: the very pages on screen, then as a file', async () => {
    await section(page, 'Report').click();
    // The thread has just begun: there is time to change one's mind, and nothing is kept.
    await page.getByRole('button', { name: 'Stop composing' }).click();
    await expect(page.getByText('Stopped before the pages were composed.')).toBeVisible();
    await page.getByRole('button', { name: 'Make the PDF' }).click();
    await page.getByRole('button', { name: 'Stop making it' }).click();
    await expect(page.getByText('Stopped as asked; no report was made.')).toBeVisible();
    await expect(page.getByRole('region', { name: 'Reports made' })).toContainText('None yet');
    await page.getByRole('button', { name: 'Compose the pages' }).click();
    await expect(page.getByRole('region', { name: 'Preview of the pages' })).toContainText('Player Heather');
    const written = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a text document' }).click();
    expect((await written).suggestedFilename()).toMatch(/-client\.docx$/);
    await page.getByRole('button', { name: 'Make the PDF' }).click();
    const download = page.waitForEvent('download');
    await page
      .getByRole('link', { name: /\.pdf|Save|Download/i })
      .first()
      .click();
    const file = info.outputPath('report.pdf');
    await (await download).saveAs(file);
    expect(fs.readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-');
    const text = execFileSync('pdftotext', ['-layout', file, '-']).toString();
    for (const words of ['Player Heather', 'Cocking', 'Shoulder instability, anterior', 'Screening is not diagnosis']) {
      expect(text).toContain(words);
    }
    expect(text).not.toContain('Arm path at low speed');
  });

  await test.step('after the power is cut, all is as it was', async () => {
    await expect(page.getByText('All saved')).toBeVisible();
    await page.goto('about:blank');
    await host.kill();
    const again = await startHost(host.folder);
    await open(page, again);
    await page.getByRole('link', { name: /Player Heather/ }).click();
    await expect(page.getByLabel('Body mass', { exact: true })).toHaveValue('72.4');
    await expect(page.getByLabel('Stature', { exact: true })).toHaveValue('181');
    await section(page, 'Jumps').click();
    await expect(page.getByLabel(/^Flight time, /)).toHaveValue(/^0\.50*$/);
    await section(page, 'Findings').click();
    await expect(armFinding(page)).toContainText('accepted by the practitioner');
    await section(page, 'Report').click();
    await expect(page.getByRole('link', { name: /\.pdf|Save|Download/i }).first()).toBeVisible();
    await page.goto('about:blank');
    await again.close();
  });
});

test('undo goes back across a restart', async ({ page, host }) => {
  await open(page, host);
  await page.getByRole('button', { name: 'New case' }).first().click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Case study/ })
    .click();
  await page.getByRole('textbox', { name: 'Sport', exact: true }).fill('Rowing');
  await expect(page.getByText('All saved')).toBeVisible();
  const address = new URL(page.url());
  await page.goto('about:blank');
  await host.close();
  const again = await startHost(host.folder);
  await open(page, again);
  await page.goto(`${again.origin}/${address.hash}`);
  await expect(page.getByRole('textbox', { name: 'Sport', exact: true })).toHaveValue('Rowing');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByRole('textbox', { name: 'Sport', exact: true })).toHaveValue('');
  await page.getByRole('button', { name: /^Redo/ }).click();
  await expect(page.getByRole('textbox', { name: 'Sport', exact: true })).toHaveValue('Rowing');
  await page.goto('about:blank');
  await again.close();
});

test('a second program on the same store is told who has it', async ({ host }) => {
  const tsx = path.resolve('main/cli/main.ts');
  const run = () => execFileSync(process.execPath, [tsx, 'verify', '--folder', host.folder], { stdio: 'pipe' });
  let said = '';
  let status = 0;
  try {
    run();
  } catch (thrown) {
    const failed = thrown as { status: number; stderr: Buffer };
    said = failed.stderr.toString();
    status = failed.status;
  }
  expect(status).toBe(4);
  expect(said).toContain('already open');
});
