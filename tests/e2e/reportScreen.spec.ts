import path from 'node:path';
import type { Locator } from '@playwright/test';
import { expect, open, startHost, temporaryFolder, test } from './fixtures.ts';

test('a long report: its pages are chosen from a list, and a button that waits can still be read', async ({ page }) => {
  test.setTimeout(120_000);
  // A colour on its way to another is not one that anybody has to read.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const demo = await startHost(path.join(temporaryFolder(), 'demo'), '--demo');
  await open(page, demo);
  await expect(page.getByRole('navigation', { name: 'Sections' })).toBeVisible();
  await page.goto(page.url().replace(/[^/]*$/, 'report'));
  const preview = page.getByRole('region', { name: 'Preview of the pages' });
  await expect(preview).toContainText('Page 1 of', { timeout: 30_000 });
  const list = preview.getByRole('combobox', { name: 'Page' });
  const last = await list.locator('option').count();
  expect(last).toBeGreaterThan(15);
  await expect(preview.getByRole('button', { name: /Show page/ })).toHaveCount(0);
  const drawn = preview.getByText(`Page ${last} of ${last}`);
  await expect(drawn).not.toBeInViewport();
  await list.selectOption(String(last));
  await expect(drawn).toBeInViewport();

  const make = page.getByRole('button', { name: 'Make the PDF' });
  await make.click();
  await expect(make).toBeDisabled();
  // WCAG 2.2, 1.4.3 asks nothing of what waits; 3 : 1 is its figure for large text.
  await expect.poll(() => contrastOf(make)).toBeGreaterThan(3);
  await expect(page.getByText('The report is made and kept.')).toBeVisible();
  await expect(make).toBeEnabled();
  await page.goto('about:blank');
  await demo.close();
});

/** Contrast ratio of words and ground (WCAG 2.2, relative luminance of sRGB). */
async function contrastOf(button: Locator): Promise<number> {
  const colours = await button.evaluate((element) => {
    const style = getComputedStyle(element);
    return [style.color, style.backgroundColor];
  });
  const [darker = 0, lighter = 0] = colours.map(luminance).toSorted((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
    const share = Number(part) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
