import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from './fixtures.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What is on screen breaks WCAG 2.2 AA nowhere, as far as a program can tell; and nothing empty can be scrolled to. */
export async function expectAccessible(page: Page, where: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
  expect(found, where).toEqual([]);
  const [below, beside] = await page.evaluate(() => {
    const { scrollHeight, scrollWidth } = document.documentElement;
    const { height } = document.body.getBoundingClientRect();
    return [scrollHeight - Math.max(innerHeight, Math.ceil(height)), scrollWidth - innerWidth];
  });
  expect(below, `${where}: px below that can be scrolled to, with nothing there`).toBeLessThanOrEqual(0);
  expect(beside, `${where}: px wider than the window`).toBeLessThanOrEqual(0);
}

/** The same in both themes, with a picture of each for those who look. */
export async function expectAccessibleInBoth(page: Page, where: string, picture: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await expectAccessible(page, `${where}, ${colorScheme}`);
    const name = `${picture}-${where.replaceAll(/\W+/g, '-')}-${colorScheme}`;
    await page.screenshot({ path: `out/e2e/${name}.png`, fullPage: true });
  }
}
