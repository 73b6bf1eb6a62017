import fs from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { aFilm } from './aFilm.ts';
import { hasFfmpeg } from '../support/hasFfmpeg.ts';
import { expect, open, temporaryFolder, test } from './fixtures.ts';
import { clickAt, openBench, openTrials } from './theBench.ts';

let folder: string;
test.beforeAll(() => {
  folder = temporaryFolder();
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

async function fileOf(page: Page) {
  const caseId = /case\/([0-9a-f-]{36})/.exec(page.url())?.[1] ?? '';
  return page.evaluate(async (id) => {
    const response = await fetch('/api/case.open', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ caseId: id }),
    });
    type Event = { event: string; timeS: number; uS: number | null; origin: string };
    type Trial = {
      calibration: { kind: string; points?: unknown[] } | null;
      captureRateHz: number | null;
      calibrationDraft: unknown;
      movementId: string;
    };
    const answer = (await response.json()) as {
      value: { file: { trialEvents: Event[]; movementTrials: Trial[]; ownMovements: { id: string; label: string }[] } };
    };
    return answer.value.file;
  }, caseId);
}

test('a movement of one’s own is built, used for a trial, undone and kept', async ({ page, host }) => {
  await open(page, host);
  await openTrials(page);
  await page.getByRole('button', { name: 'Build a movement' }).click();
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Turn and push');
  for (const label of ['Take-off', 'Landing'])
    await page.getByLabel('Add an instant the program knows').selectOption({ label });
  await page.getByRole('textbox', { name: 'Or one of your own' }).fill('Push begins');
  await page.getByRole('button', { name: 'Add the instant' }).click();
  await page.getByRole('button', { name: 'A phase between each two instants' }).click();
  await page.getByLabel('Measure in Take-off to landing').selectOption({ label: 'Trunk lean from the vertical' });
  await expect(page.getByText('can be used')).toBeVisible();

  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  await page.getByLabel('Movement', { exact: true }).selectOption({ label: 'Turn and push' });
  await expect(page.getByRole('textbox', { name: 'Time of push begins' })).toBeVisible();
  await expect(page.getByText(/There are no rules for this movement \(Turn and push\)/).first()).toBeVisible();
  await page
    .getByRole('button', { name: /^Turn and push/ })
    .last()
    .click();
  await expect(page.getByRole('button', { name: 'Remove this movement' })).toBeDisabled();
  await expect(page.getByText('All saved')).toBeVisible();
  const { movementTrials, ownMovements } = await fileOf(page);
  expect(movementTrials[0]?.movementId).toBe(ownMovements[0]?.id);
});

/** The bench with a film of a second on it. */
async function openRibbon(page: Page): Promise<void> {
  const film = path.join(folder, 'ribbon.mp4');
  if (!fs.existsSync(film)) aFilm(film, { frames: 60, rateHz: 60, gop: 12 });
  await openBench(page, film);
}

test.describe('on the bench', () => {
  test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');

  test('a plane by four points, each step kept; a fifth shows residuals; points in a line are refused; undo goes back', async ({
    page,
    host,
  }) => {
    await open(page, host);
    await openRibbon(page);
    await page.getByRole('button', { name: /60 frames a second are real/ }).click();
    await page.getByRole('button', { name: /^2 Plane/ }).click();
    await page.getByRole('radio', { name: 'Points of a plane' }).check();
    const corners = [
      [100, 300, 0, 0],
      [500, 300, 4, 0],
      [500, 100, 4, 2],
      [100, 100, 0, 2],
    ] as const;
    for (const [i, [x, y, across, up]] of corners.entries()) {
      await clickAt(page, x, y);
      await page.getByRole('textbox', { name: `Point ${i + 1}, across` }).fill(String(across));
      if (i === 1) {
        await expect(page.getByText('All saved')).toBeVisible();
        expect((await fileOf(page)).movementTrials[0]).toMatchObject({
          calibration: null,
          calibrationDraft: { kind: 'plane' },
        });
      }
      await page.getByRole('textbox', { name: `Point ${i + 1}, up` }).fill(String(up));
    }
    await expect(page.getByRole('button', { name: /2 Plane has what it needs/ })).toBeVisible();
    await expect(page.getByText(/Four points fit a plane exactly/)).toBeVisible();

    await page.getByRole('button', { name: 'Add a point' }).click();
    await clickAt(page, 300, 212);
    await page.getByRole('textbox', { name: 'Point 5, across' }).fill('2');
    await page.getByRole('textbox', { name: 'Point 5, up' }).fill('1');
    await expect(page.locator('.bench-residual')).toHaveCount(5);
    await expect(page.getByText(/mm off the plane/).first()).toBeVisible();
    await page.screenshot({ path: 'out/look/bench-plane.png' });

    const points = async () => (await fileOf(page)).movementTrials[0]?.calibration?.points?.length;
    await expect.poll(points).toBe(5);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(points).toBe(4);

    await page.getByRole('button', { name: 'Remove point 5' }).click();
    await page.getByRole('textbox', { name: 'Point 3, y (down)' }).fill('300');
    await expect(page.getByRole('alert').filter({ hasText: 'Refused' })).toContainText('move one of them off the line');
  });
});
