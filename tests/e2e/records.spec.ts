import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, type Host, open, startHost, test } from './fixtures.ts';

async function referral(page: Page, host: Host): Promise<void> {
  await open(page, host);
  await page.getByRole('button', { name: 'New case' }).first().click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Referral/ })
    .click();
  await expect(page.getByRole('heading', { name: 'Athlete', level: 2 })).toBeVisible();
}

const go = (page: Page, name: string) =>
  page
    .getByRole('navigation', { name: 'Sections' })
    .getByRole('link', { name: new RegExp(`^${name}`) })
    .click();

async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).focus();
  await page.keyboard.press('Enter');
}

async function typeInto(page: Page, name: string, text: string): Promise<void> {
  await page.getByLabel(name, { exact: true }).first().focus();
  await page.keyboard.type(text);
}

test('what a referral needs is typed, kept over a reload, and a mass measured again stays with its day', async ({
  page,
  host,
}) => {
  await referral(page, host);
  const typed: readonly (readonly [string, string])[] = [
    ['Medicines, with dose', 'none'],
    ['Allergies', 'latex'],
    ['How to reach the practitioner', 'by letter'],
    ['What has been tried', 'twelve weeks of exercise, kept to'],
    ['Referred to', 'a shoulder clinic'],
    ['Leg length, left', '89.5'],
    ['Body mass', '71.5'],
    ['Weighed on', '2026-01-05'],
  ];
  for (const [name, text] of typed) await typeInto(page, name, text);
  await page.reload();
  for (const [name, text] of typed.slice(0, -1)) await expect(page.getByLabel(name, { exact: true })).toHaveValue(text);
  await press(page, 'Weigh again');
  await expect(page.getByLabel('Body mass', { exact: true })).toHaveValue('');
  await expect(page.getByRole('row', { name: /^Body mass/ })).toContainText('71.5');
  await page.keyboard.press('Control+z');
  await expect(page.getByLabel('Body mass', { exact: true })).toHaveValue('71.5');
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`a shoulder record by keyboard: words from dates, no part-score, urgency, clinician only, axe, ${colorScheme}`, async ({
    page,
    host,
  }, info) => {
    test.setTimeout(90_000);
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await referral(page, host);
    await go(page, 'Injuries');
    await press(page, 'Add an injury');
    await press(page, 'Shoulder, left');
    await page.getByLabel('Condition').selectOption('anterior-shoulder-instability');
    await press(page, 'Open the fuller shoulder record');
    const record = page.getByRole('region', { name: 'Shoulder record' });
    await expect(record).toContainText('At least: Routine');
    await expect(record).toContainText(/Severity index\s*no total/);

    for (const [i, date] of ['2026-02-01', '2026-06-01'].entries()) {
      await press(page, 'Add an event');
      const event = record.getByRole('group', { name: `Event ${i + 1}`, exact: true });
      await event.getByLabel('When').focus();
      await page.keyboard.type(date);
      await event.getByRole('radio', { name: 'Fully out' }).check();
    }
    await expect(record).toContainText(/Frequency\s*occasional/);
    await expect(record).toContainText(/Severity\s*dislocation/);
    await expect(record).toContainText(/Direction\s*cannot tell/);

    // Folded parts open by keyboard; the examinations say who they are for.
    const folded = record.locator('details:not([open]) > summary');
    for (let left = await folded.count(); left > 0; left -= 1) {
      await folded.first().focus();
      await page.keyboard.press('Enter');
      await expect(folded).toHaveCount(left - 1);
    }
    await expect(record.getByText('clinician only')).toHaveCount(3);
    await record
      .getByRole('group', { name: /^Open wound/ })
      .getByRole('radio', { name: 'Yes' })
      .check();
    await expect(record).toContainText(/Urgency\s*Emergency, now/);
    await press(page, 'Record this test');
    await press(page, 'Add: after it was put back');

    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
    await page.screenshot({ fullPage: true, path: info.outputPath('shoulder.png') });
    await page.reload();
    await page.locator('.injury-toggle').click();
    await expect(page.getByRole('region', { name: 'Shoulder record' })).toContainText('Emergency, now');
  });
}

test('the history says what a field was, when and through what, and undo reaches it after a restart', async ({
  page,
  host,
}) => {
  await referral(page, host);
  await typeInto(page, 'Sport', 'handball');
  await page.getByRole('radio', { name: 'Right', exact: true }).check();
  await page.getByLabel('Sport', { exact: true }).focus();
  await page.getByRole('complementary', { name: 'Margin' }).getByText('History of this field').click();
  await expect(page.getByRole('complementary', { name: 'Margin' }).getByRole('row')).toContainText([
    /When/,
    /handball/,
  ]);
  await press(page, 'History');
  const dialog = page.getByRole('dialog', { name: 'History of this case' });
  await expect(dialog.getByRole('row', { name: /dominant side, athlete/ })).toContainText('right');
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
  await page.keyboard.press('Escape');

  const address = page.url().slice(host.origin.length);
  await page.goto('about:blank');
  await host.close();
  const again = await startHost(host.folder);
  await open(page, again);
  await page.goto(`${again.origin}${address}`);
  await expect(page.getByRole('radio', { name: 'Right', exact: true })).toBeChecked();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('radio', { name: 'Right', exact: true })).not.toBeChecked();
  await page.keyboard.press('Control+z');
  await expect(page.getByLabel('Sport', { exact: true })).toHaveValue('');
  await press(page, 'History');
  await expect(page.getByRole('row', { name: /sport, athlete/ })).toContainText('undone');
  await page.goto('about:blank');
  await again.close();
});
