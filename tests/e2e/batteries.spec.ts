import type { Page } from '@playwright/test';
import type { Answer } from '../../shared/contract/channels.ts';
import { expectAccessibleInBoth } from './expectAccessible.ts';
import { ask, expect, open, test } from './fixtures.ts';

const clause = (page: Page, title: string) => page.getByRole('region', { name: title, exact: true });
const batteries = async (page: Page) => (await ask<Answer<'battery.list'>>(page, 'battery.list', {})).batteries;

test('a battery of one’s own: copied, an item renamed and one changed in meaning, one added, saved, taken back', async ({
  page,
  host,
}) => {
  test.setTimeout(120_000);
  await open(page, host);
  await page.goto(`${host.origin}/#/batteries`);
  await expect(page.getByText('No battery of one’s own yet.')).toBeVisible();
  await expectAccessibleInBoth(page, 'none yet', 'batteries');

  await page.getByRole('button', { name: 'Copy it and change the copy' }).focus();
  await page.keyboard.press('Enter');
  await page.getByLabel('Name', { exact: true }).fill('Court battery');

  await test.step('a new name keeps the link to the item of the program', async () => {
    await page.getByRole('button', { name: /Weight-bearing lunge of the program/ }).click();
    await clause(page, 'Called').getByRole('textbox').fill('Knee to wall');
    await expect(page.getByText('As in the program, so its rules and its usual range hold.')).toBeVisible();
    await expect(clause(page, 'Caution')).toContainText('Stop if it hurts');
    // What the program leaves it out for cannot be unticked.
    await page.getByText('for bone stress injury').click();
    const fixed = clause(page, 'Left out').getByRole('checkbox', { name: /bone stress/i });
    await expect(fixed).toBeChecked();
    await expect(fixed).toBeDisabled();
    await clause(page, 'Left out')
      .getByRole('checkbox', { name: /concussion/i })
      .check();
  });

  await test.step('another way of combining trials cuts it, in words', async () => {
    await page.getByLabel('How trials become a result').selectOption('the mean of several trials');
    await expect(page.getByText('No longer the item of the program: its result was one value.')).toBeVisible();
    await page.getByLabel('How trials become a result').selectOption('one value');
    await expect(page.getByText('As in the program, so its rules')).toBeVisible();
  });

  await test.step('an item of one’s own: what it lacks stands beside it, and nothing is saved before', async () => {
    await page.getByRole('button', { name: 'Add an item of your own' }).click();
    await expect(clause(page, 'Done so')).toContainText('it does not say how it is done');
    await expect(page.getByRole('button', { name: 'Save as a new version' })).toBeDisabled();
    await expectAccessibleInBoth(page, 'an unfinished item', 'batteries');
    await clause(page, 'Called').getByRole('textbox').fill('Front plank, time held');
    await page.getByLabel('Unit').selectOption('s');
    await page.getByLabel('Instructions, one step a line').fill('Hold a straight line.\nStop when it sags.');
    await page.getByLabel('Least possible value').fill('0');
    await page.getByLabel('Greatest possible value').fill('900');
    await expect(page.getByText('can’t tell, no reference')).toBeVisible();
    await page.getByRole('button', { name: 'Front plank, time held earlier' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Drop Single-leg hop distance' }).click();
  });

  await page.getByRole('button', { name: 'Save as a new version' }).click();
  await expect(page.getByRole('button', { name: /Court battery version 1/ })).toBeVisible();
  const [saved] = await batteries(page);
  const [first] = saved?.versions ?? [];
  expect(saved).toMatchObject({ draft: null });
  expect(first?.items.map(({ label }) => label).slice(-2)).toEqual([
    'Groin pain on a five-second squeeze',
    'Front plank, time held',
  ]);
  expect(first?.items.find(({ id }) => id === 'weight-bearing-lunge')).toMatchObject({
    label: 'Knee to wall',
    skipFor: ['concussion'],
    trials: null,
  });

  await test.step('a session is begun with it; then it can be retired, not removed', async () => {
    const opened = { purpose: 'intake', athleteId: null, openedOn: '2026-11-18' };
    const { caseId } = await ask<{ caseId: string }>(page, 'case.create', opened);
    await page.goto(`${host.origin}/#/case/${caseId}/screening`);
    await page.getByRole('button', { name: 'Start a session with Court battery' }).click();
    await expect(page.getByRole('heading', { name: /Court battery/ })).toContainText('version 1');
    await expect(page.getByText('no reference', { exact: false }).first()).toBeVisible();
    await expectAccessibleInBoth(page, 'a session', 'batteries');
    await page.goto(`${host.origin}/#/batteries`);
    await page.getByRole('button', { name: /Court battery version/ }).click();
    await expect(page.getByRole('button', { name: 'Remove this battery' })).toBeDisabled();
    await page.getByRole('button', { name: 'Retire it' }).click();
    await expect(page.getByRole('button', { name: /Court battery version 1, retired/ })).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(page.getByRole('button', { name: /Court battery version 1$/ })).toBeVisible();
  });

  await test.step('a file at fault is refused in words with its place', async () => {
    const file = { format: 'caseframe-battery', formatVersion: 1, ...first, label: '' };
    const buffer = Buffer.from(JSON.stringify(file));
    await page
      .getByLabel('Take in a battery from a file')
      .setInputFiles({ name: 'b.json', mimeType: 'application/json', buffer });
    await expect(page.getByRole('alert')).toContainText('In “label” of b.json: the battery needs a name.');
  });
});
