import path from 'node:path';
import type { Page } from '@playwright/test';
import { openService } from '../../main/service.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { expectAccessibleInBoth } from './expectAccessible.ts';
import { expect, open, startHost, temporaryFolder, test } from './fixtures.ts';

const clause = (page: Page, title: string) => page.getByRole('region', { name: title, exact: true });

test('a rule for every case is written as a sentence, previewed, switched on, taken back', async ({ page }) => {
  test.setTimeout(120_000);
  const demo = await startHost(path.join(temporaryFolder(), 'demo'), '--demo');
  await open(page, demo);
  const caseUrl = page.url().replace(/[^/]*$/, 'findings');
  await page.goto(`${demo.origin}/#/`);
  await page.getByRole('link', { name: 'Rules' }).click();
  await expect(page.getByText('No rule of one’s own yet.')).toBeVisible();
  await expectAccessibleInBoth(page, 'no rules', 'rules');

  await test.step('from nothing: what is missing stands beside the part it is about', async () => {
    await page.getByRole('button', { name: 'Write a rule from nothing' }).click();
    await expect(clause(page, 'Then')).toContainText('it says nothing to the athlete');
    await expect(clause(page, 'Practise')).toContainText('it names no drill');
    await expect(clause(page, 'It asks')).toContainText('it says nothing for Hamstring');
    await expect(clause(page, 'Where').getByRole('listitem')).toHaveCount(0);
    await expectAccessibleInBoth(page, 'an unfinished rule', 'rules');
    await clause(page, 'Called').getByRole('textbox').fill('Not allowed!');
    await expect(clause(page, 'Called')).toContainText('must start with own/');
  });

  await test.step('from one of the program: sound at once, and counted over all cases', async () => {
    await page.getByLabel('Change a rule of the program').selectOption('any/rotation-and-arc-lost');
    const preview = page.getByRole('region', { name: 'Preview' });
    await expect(preview).toContainText(/It would fire in \d+ of 1[01] stored cases/);
    await expect(preview).not.toContainText('judges nothing yet');
    await page.getByRole('checkbox', { name: 'On: it judges every case' }).check();
    await expect(page.getByRole('button', { name: /own\/any-rotation-and-arc-lost on/ })).toBeVisible();
  });

  await test.step('it judges the demo case, and says that it is no rule of the program', async () => {
    await page.goto(caseUrl);
    await expect(page.getByText('A rule of one’s own, not one that comes with the program').first()).toBeVisible();
    await page.goBack();
  });

  await test.step('a change switches it off; undo brings back the rule as it was, by the keyboard', async () => {
    await page.getByRole('button', { name: /own\/any-rotation-and-arc-lost/ }).click();
    const limit = clause(page, 'If').getByRole('textbox').first();
    const before = await limit.inputValue();
    await limit.fill('33');
    await expect(page.getByRole('button', { name: /own\/any-rotation-and-arc-lost off/ })).toBeVisible();
    await page.getByRole('heading', { name: 'Own rules for every case' }).click();
    await page.keyboard.press('Control+z');
    await expect(limit).toHaveValue(before);
    await expect(page.getByRole('button', { name: /own\/any-rotation-and-arc-lost on/ })).toBeVisible();
  });

  await test.step('every part of the sentence is reached by Tab, in the order it is read', async () => {
    await clause(page, 'Called').getByRole('textbox').focus();
    const reached: string[] = [];
    for (let i = 0; i < 6; i++) {
      await page.keyboard.press('Tab');
      reached.push(await page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? ''));
    }
    expect(reached).toEqual(['Movement', 'Phase', 'Region', 'Measure', 'Compared how', 'Limit']);
  });
  await page.goto('about:blank');
  await demo.close();
});

test('newer rules of the program: shown on the shelf, looked through, accepted', async ({ page }) => {
  const folder = path.join(temporaryFolder(), 'older');
  // As a program that came without one of today's rules would have left the store.
  const rules = SHIPPED_RULES.filter(({ id }) => id !== 'any/external-rotators-weak');
  const earlier = await openService({
    folder,
    host: 'command line',
    rules: { digest: 'earlier', version: '0.0.9', rules },
  });
  const ask = async (channel: string, request: unknown) => {
    const answer = await earlier.dispatch(channel, request);
    if (!answer.ok) throw new Error(answer.error.message);
    return answer.value as { caseId: string };
  };
  const { caseId } = await ask('case.create', { purpose: 'study', athleteId: null, openedOn: '2026-11-25' });
  const record = {
    id: '00000000-0000-4000-8000-000000000300',
    caseId,
    trialId: null,
    measureId: 'shoulder.erIrRatio',
    phase: null,
    side: 'right',
    takenOn: '2026-11-25',
    valueSi: 0.6,
    uSi: null,
    flag: null,
    note: '',
  };
  await ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'enteredMeasure', record }] });
  await earlier.close();

  const host = await startHost(folder);
  await open(page, host);
  await page.goto(`${host.origin}/#/`);
  await expect(page.getByRole('complementary', { name: 'Newer rules' })).toContainText('1 open case');
  await expectAccessibleInBoth(page, 'the shelf with newer rules waiting', 'rules');
  await page.goto(`${host.origin}/#/case/${caseId}/findings`);
  await expect(page.getByText(/External rotators are weak/)).toHaveCount(0);
  await page.getByRole('link', { name: 'See what changes' }).click();
  const update = page.getByRole('region', { name: 'What the newer rules change' });
  await expect(update).toContainText('Appears');
  await expect(update).toContainText('External rotators are weak');
  await expectAccessibleInBoth(page, 'what newer rules change', 'rules');
  await update.getByRole('button', { name: 'Use the newer rules for every case' }).click();
  await expect(update).toHaveCount(0);
  await page.goto(`${host.origin}/#/case/${caseId}/findings`);
  await expect(page.getByText(/External rotators are weak/).first()).toBeVisible();
  await page.goto('about:blank');
  await host.close();
});
