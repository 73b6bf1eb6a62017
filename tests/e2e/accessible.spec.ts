import path from 'node:path';
import type { Page } from '@playwright/test';
import { SECTIONS } from '../../shared/assess/assessment.ts';
import { expectAccessible } from './expectAccessible.ts';
import { expect, open, startHost, temporaryFolder, test } from './fixtures.ts';

/** Every screen with nothing entered and with the demo case, which fills them all. */
for (const colorScheme of ['light', 'dark'] as const) {
  test(`no screen breaks WCAG 2.2 AA as far as a program can tell, ${colorScheme}`, async ({ page, host }) => {
    test.setTimeout(300_000);
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await open(page, host);
    await expectAccessible(page, 'empty shelf');
    await page.getByRole('button', { name: 'New case' }).first().click();
    await expectAccessible(page, 'new case');
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Referral/ })
      .click();
    await everySection(page, 'empty case');
    await page.goto('about:blank');

    const demo = await startHost(path.join(temporaryFolder(), 'demo'), '--demo');
    await open(page, demo);
    await everySection(page, 'demo case');
    await page.goto('about:blank');
    await demo.close();
  });
}

async function everySection(page: Page, what: string): Promise<void> {
  await expect(page.getByRole('navigation', { name: 'Sections' })).toBeVisible();
  const caseAddress = page.url().replace(/[^/]*$/, '');
  for (const section of SECTIONS) {
    await page.goto(`${caseAddress}${section}`);
    await expect(page.getByRole('heading', { level: 2 }).first()).toBeVisible();
    if (section === 'report')
      await expect(page.getByRole('region', { name: 'Preview of the pages' })).toContainText('Page 1');
    for (const title of section === 'trials' ? ['Angles and speeds at each event', 'Loads, by models'] : []) {
      const details = page.locator('summary', { hasText: title });
      if ((await details.count()) === 0) continue;
      await details.first().click();
      await expect(page.getByRole('table').last()).toBeVisible();
    }
    await expectAccessible(page, `${what}, ${section}`);
  }
}
