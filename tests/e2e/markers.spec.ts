import { AxeBuilder } from '@axe-core/playwright';
import type { CaseFile } from '../../shared/model/records.ts';
import { writeC3d } from '../main/exchange/c3d/writeC3d.ts';
import { ask, expect, open, test } from './fixtures.ts';
import { openTrials } from './theBench.ts';

/** Walking along y, z up: shoulder, knee and a marker whose label says nothing; the file does not say its unit. */
const walk = (fourth: number) =>
  Buffer.from(
    writeC3d({
      order: 'intel',
      isReal: true,
      points: 3,
      channels: 0,
      samplesPerFrame: 0,
      scale: 1,
      frames: Array.from({ length: 60 }, (_, i) => [
        0,
        20 * i,
        1500,
        fourth,
        8,
        20 * i,
        500,
        fourth,
        0,
        20 * i,
        30,
        fourth,
      ]),
      parameters: [
        ['POINT', 'RATE', 'real', [], [120]],
        ['POINT', 'LABELS', 'text', [4, 3], ['LSHO', 'LKNE', 'M3']],
      ],
    }),
  );
const file = (name: string, fourth = 0) => ({ name, mimeType: 'application/octet-stream', buffer: walk(fourth) });

test('markers of a C3D file: looked over, put right, taken in without a calibration; the next file is read alike until that is forgotten', async ({
  page,
  host,
}) => {
  await open(page, host);
  await openTrials(page);
  const door = page.getByLabel('Take in a trial file');
  await door.setInputFiles(file('walk.c3d'));
  const panel = page.getByRole('region', { name: 'Markers of walk.c3d' });
  await expect(panel).toContainText('3 markers in 60 frames at 120 Hz, unit not said');
  await expect(panel.getByRole('button', { name: 'Take in as a trial' })).toBeDisabled();
  await expect(panel).toContainText('the unit of length, which the file does not say');
  await panel.getByLabel('Unit of length in the file').selectOption('mm');
  await panel.getByLabel('Movement of the markers').selectOption({ label: 'Countermovement jump' });
  await expect(panel.getByLabel('Point of LSHO, marker 1')).toHaveValue('shoulder-left');
  await panel.getByLabel('Point of M3, marker 3').selectOption({ label: 'Heel, left' });
  // Forward onto the axis that is up: the two change places, and back.
  await panel.getByLabel('Axis that points forward').selectOption('+z');
  await expect(panel.getByLabel('Axis that points up')).not.toHaveValue('+z');
  await panel.getByLabel('Axis that points up').selectOption('+z');
  await panel.getByLabel('Axis that points forward').selectOption('+y');
  await expect(panel.getByRole('list', { name: 'What is done with the markers' })).toContainText(
    'what is along x is left out',
  );
  await expect(panel).toContainText('1.18 m along the plane');
  const { violations } = await new AxeBuilder({ page }).include('.marker-import').analyze();
  expect(violations).toEqual([]);
  await panel.getByRole('button', { name: 'Take in as a trial' }).click();
  await expect(panel).toBeHidden();
  await expect(page.getByText('The markers of walk.c3d are taken in.')).toBeVisible();
  await expect(page.getByRole('article', { name: /walk\.c3d/ })).toBeVisible();

  const caseId = /case\/([0-9a-f-]{36})/.exec(page.url())?.[1] ?? '';
  const stored = (await ask<{ file: CaseFile }>(page, 'case.open', { caseId })).file;
  expect(stored.movementTrials).toMatchObject([
    { captureRateHz: 120, calibration: { kind: 'metres', pointUM: null }, movementId: 'countermovement-jump' },
  ]);
  expect(stored.landmarkTracks.map(({ point, samples }) => [point, samples[10]])).toEqual([
    ['shoulder-left', [10, 0.2, 1.5]],
    ['knee-left', [10, 0.2, 0.5]],
    ['heel-left', [10, 0.2, 0.03]],
  ]);

  await door.setInputFiles(file('again.c3d'));
  const again = page.getByRole('region', { name: 'Markers of again.c3d' });
  await expect(again).toContainText('those kept from the last file with these markers');
  await expect(again.getByLabel('Point of M3, marker 3')).toHaveValue('heel-left');
  await again.getByRole('button', { name: 'Leave it' }).click();

  await page.getByText('Remembered for later files').click();
  await expect(page.getByText('3 of 3 markers taken; +y forward, +z up, in mm')).toBeVisible();
  await page.getByRole('button', { name: 'Forget how files with LSHO, LKNE, M3 are read' }).click();
  await expect(page.getByText('Forgotten: files with LSHO, LKNE, M3 are recognised anew.')).toBeVisible();
  await page.getByRole('button', { name: 'Remember it again' }).click();
  await expect(page.getByText('3 of 3 markers taken; +y forward, +z up, in mm')).toBeVisible();
  await page.getByRole('button', { name: 'Forget how files with LSHO, LKNE, M3 are read' }).click();
  await door.setInputFiles(file('third.c3d'));
  await expect(page.getByLabel('Point of M3, marker 3')).toHaveValue('');
});

test('a C3D with every place marked invalid is refused in words, and the door stays open', async ({ page, host }) => {
  await open(page, host);
  await openTrials(page);
  await page.getByLabel('Take in a trial file').setInputFiles(file('invalid.c3d', -1));
  await expect(page.getByRole('alert')).toContainText('invalid.c3d is not taken in.');
  await expect(page.getByRole('alert')).toContainText('as not seen, so there is nothing to take in');
  await page.getByRole('button', { name: 'Close this notice' }).click();
  await expect(page.getByRole('alert')).toBeHidden();
  await expect(page.getByText('No trials yet.')).toBeVisible();
});
