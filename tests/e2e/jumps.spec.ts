import { AxeBuilder } from '@axe-core/playwright';
import type { Edit } from '../../shared/model/edit.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { EXAMPLES, id } from '../conformance/examples.ts';
import { ask, expect, open, test } from './fixtures.ts';

test('a contact mat with its warm-up, and a jump taken from a filmed trial; law: height g T²/8, each with its uncertainty', async ({
  page,
  host,
}) => {
  await open(page, host);
  const { caseId } = await ask<{ caseId: string }>(page, 'case.create', {
    purpose: 'intake',
    athleteId: null,
    openedOn: '2026-11-25',
  });
  const trial = {
    ...EXAMPLES.movementTrial,
    id: id(801),
    caseId,
    movementId: 'countermovement-jump',
    label: 'jump two',
  };
  const event = (n: number, name: string, timeS: number): Edit => ({
    op: 'create',
    kind: 'trialEvent',
    record: { ...EXAMPLES.trialEvent, id: id(810 + n), trialId: trial.id, event: name, timeS, uS: 0.002 },
  });
  await ask(page, 'case.edit', {
    caseId,
    edits: [
      { op: 'create', kind: 'movementTrial', record: { ...trial, clipSha256: null } },
      event(1, 'take-off', 0.8),
      event(2, 'landing', 1.3),
    ],
  });
  await page.goto(`${host.origin}/#/case/${caseId}/jumps`);

  await page.getByRole('button', { name: 'Jump on a contact mat' }).click();
  await page.getByLabel('Warm-up').fill('five minutes easy, three jumps');
  await page.getByLabel('Samples a second of the mat').fill('500');
  await page.getByRole('button', { name: 'Enter the first trial' }).click();
  await page.getByRole('textbox', { name: 'Flight time, trial 1' }).fill('0.512');
  await page.keyboard.press('Tab');
  // 9.80665 × 0.512² / 8 m, and a quarter of g T times a sample over √6.
  await expect(page.getByRole('table', { name: /on a contact mat/ })).toContainText('32.13 ± 0.10 cm');

  await page.getByRole('button', { name: 'New test from a filmed trial' }).click();
  await page.getByRole('button', { name: /^Take jump two, filmed/ }).click();
  const taken = page.getByRole('table', { name: /from a filmed trial/ });
  // 9.80665 × 0.5² / 8 m; two events, 2 ms each.
  await expect(taken).toContainText('30.65 ± 0.35 cm');
  await expect(taken).toContainText('jump two');
  await expect(page.getByRole('button', { name: /^Take jump two/ })).toHaveCount(0);
  await page.screenshot({ path: 'out/e2e/jump-methods.png', fullPage: true });
  const { file } = await ask<{ file: CaseFile }>(page, 'case.open', { caseId });
  expect(file.jumpTests.map(({ method, warmUp }) => [method, warmUp])).toEqual([
    ['contact-mat', 'five minutes easy, three jumps'],
    ['filmed-trial', ''],
  ]);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze();
    expect(violations.map(({ id: rule }) => rule)).toEqual([]);
  }
});
