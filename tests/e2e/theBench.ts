import type { Locator, Page } from '@playwright/test';
import type { CaseFile } from '../../shared/model/records.ts';
import type { LandmarkTrack } from '../../shared/model/trial.ts';
import { CELL, CELLS } from './aFilm.ts';
import { expect } from './fixtures.ts';

/** A case with one trial, its film brought in, and the bench open. */
export async function openBench(page: Page, film: string): Promise<void> {
  await chooseFilm(page, film);
  await page.getByRole('link', { name: 'Open the trial bench' }).click();
  await expect(stage(page)).toHaveAttribute('data-frame', '0');
}

/** A case with one trial, and this film on its way into it. */
export async function chooseFilm(page: Page, film: string): Promise<void> {
  await openTrials(page);
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  await page.getByLabel('Bring in the film of this trial').setInputFiles(film);
}

/** A new case at its trials. */
export async function openTrials(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'New case' }).first().click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Case study/ })
    .click();
  await page
    .getByRole('navigation', { name: 'Sections' })
    .getByRole('link', { name: /^Trials/ })
    .click();
}

export const stage = (page: Page) => page.locator('.bench-stage > canvas').first();

/**
 * The number in the bar code of the picture on screen; −1 if it cannot be read. The code stands in the corner that is top
 * left in the picture as filmed, with its first row along the left edge where that was turned anticlockwise by a quarter.
 */
export async function codeOn(canvas: Locator, isTurned = false): Promise<number> {
  return canvas.evaluate(
    (element, { cells, cell, turned }) => {
      const shown = element as HTMLCanvasElement;
      const context = shown.getContext('2d', { willReadFrequently: true });
      let number = 0;
      for (let i = 0; i < cells; i++) {
        const [on, off] = [0, 1].map((row) => {
          const [x, y] = [i * cell + cell / 2, row * cell + cell / 2];
          const [left, top] = turned ? [y, shown.height - 1 - x] : [x, y];
          return context?.getImageData(left, top, 1, 1).data[0] ?? 0;
        });
        if (Math.abs((on ?? 0) - (off ?? 0)) < 100) return -1;
        if ((on ?? 0) > (off ?? 0)) number += 2 ** i;
      }
      return number;
    },
    { cells: CELLS, cell: CELL, turned: isTurned },
  );
}

/** Clicks on a pixel of a film of this size. The picture lies in the middle of the stage, as large as it fits. */
export async function clickAt(page: Page, x: number, y: number, [width, height] = [640, 360]): Promise<void> {
  const box = await page.locator('.bench-drawing').boundingBox();
  if (box === null) throw new Error('the stage is not on screen');
  const scale = Math.min(box.width / width, box.height / height);
  await page.mouse.click(
    box.x + box.width / 2 + (x + 0.5 - width / 2) * scale,
    box.y + box.height / 2 + (y + 0.5 - height / 2) * scale,
  );
}

/** The case on the bench as it is stored. */
export async function storedCase(page: Page): Promise<CaseFile> {
  await expect(page.getByText('All saved')).toBeVisible();
  const { file } = await ask<{ file: CaseFile }>(page, 'case.open', { caseId: caseIdOf(page) });
  return file;
}

export function caseIdOf(page: Page): string {
  return page.url().split('/').at(-3) ?? '';
}

/** Asks a channel of the contract as the page does. */
export async function ask<T>(page: Page, channel: string, request: object): Promise<T> {
  return page.evaluate(
    async ([to, body]) => {
      const response = await fetch(`/api/${to}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      });
      return ((await response.json()) as { value: T }).value;
    },
    [channel, request] as const,
  );
}

export async function tracksOf(page: Page): Promise<LandmarkTrack[]> {
  return (await storedCase(page)).landmarkTracks;
}
