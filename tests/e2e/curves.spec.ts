import { expect, open, test } from './fixtures.ts';
import { openSixCurves, workFor } from './longTrial.ts';

const FRAMES = 2000;

test('2000 samples by 6 curves: moving the playhead draws no curve again; closer and along draw each line once', async ({
  page,
  host,
}) => {
  await open(page, host);
  await openSixCurves(page, FRAMES);
  const moved = await workFor(
    page,
    Array.from({ length: 40 }, (_, i) => 100 + 25 * i),
  );
  await expect(page.getByText(`frame ${100 + 25 * 39} of ${FRAMES - 1}, `)).toBeVisible();
  expect([moved.strokes, moved.changes]).toEqual([0, 0]);

  const acts = ['+', '+', ']', '[', '-', '-'];
  // Six lines filtered and six not.
  expect((await workFor(page, acts)).strokes).toBe(12 * acts.length);
  // However many samples: the lines are pictures, and what is drawn beside them are bands, levels and words.
  expect(await page.locator('.curve-strip svg *').count()).toBeLessThan(200);
});
