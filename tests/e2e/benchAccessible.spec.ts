import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { aFilm } from './aFilm.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { expect, open, test } from './fixtures.ts';
import { openBench } from './theBench.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

for (const theme of ['light', 'dark'] as const) {
  test(`no step of the trial bench breaks WCAG 2.2 AA as far as a program can tell, nor is wider than its place, ${theme}`, async ({
    page,
    host,
  }) => {
    test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');
    test.setTimeout(150_000);
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-film-'));
    const film = path.join(folder, 'film.mp4');
    aFilm(film, { frames: 60, rateHz: 60, gop: 12 });
    await page.emulateMedia({ colorScheme: theme });
    await page.setViewportSize({ width: 1360, height: 900 });
    await open(page, host);
    await openBench(page, film);
    const steps = page.getByRole('button', { name: /^[1-5] / });
    await expect(steps).toHaveCount(5);
    for (const step of await steps.all()) {
      await step.click();
      await expect(step).toHaveAttribute('aria-expanded', 'true');
      const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
      const spill = await page.locator('.bench-steps').evaluate((place) => place.scrollWidth - place.clientWidth);
      expect([await step.textContent(), spill]).toEqual([await step.textContent(), 0]);
    }
    fs.rmSync(folder, { recursive: true });
  });
}
