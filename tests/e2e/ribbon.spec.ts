import fs from 'node:fs';
import path from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { LANDMARKS } from '../../shared/model/trial.ts';
import { aFilm, hasFfmpeg } from './aFilm.ts';
import { expect, open, temporaryFolder, test } from './fixtures.ts';

const FRAMES = 2000;
const RATE_HZ = 500;
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

let folder: string;
test.beforeAll(() => {
  folder = temporaryFolder();
});
test.afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

/** Twenty landmarks and a ball over 2 000 frames, metres; the ball flies with g from 1 s on, on a clock that is right. */
function longTrial(): unknown {
  const path = (i: number) =>
    Array.from({ length: FRAMES }, (_, frame): [number, number, number] => {
      const t = frame / RATE_HZ;
      return [frame, 0.3 * Math.cos(i + 2 * t), 1 + i / 20 + 0.2 * Math.sin(3 * t + i)];
    });
  const flight = Array.from({ length: 300 }, (_, k): [number, number, number] => {
    const t = k / RATE_HZ;
    return [500 + k, 8 * t, 2 + 4 * t - (9.80665 * t * t) / 2 + 0.001 * Math.sin(k * 2.4)];
  });
  return {
    format: 'caseframe-trial',
    version: 1,
    movement: 'handball-jump-throw',
    label: 'long',
    filmedOn: '2026-11-20',
    side: 'right',
    captureRateHz: RATE_HZ,
    playbackRateHz: null,
    calibration: { kind: 'metres', pointUM: 0.001 },
    ball: null,
    target: null,
    painNrs: null,
    points: { ...Object.fromEntries(LANDMARKS.map((name, i) => [name, path(i)])), ball: flight },
    events: [
      { event: 'plant', timeS: 0.5, uS: null },
      { event: 'take-off', timeS: 0.8, uS: null },
      { event: 'release', timeS: 1, uS: null },
      { event: 'landing', timeS: 2, uS: null },
    ],
    measures: [],
    note: '',
  };
}

async function openTrials(page: Page): Promise<void> {
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

async function openLong(page: Page): Promise<void> {
  await openTrials(page);
  const file = path.join(folder, 'long.json');
  fs.writeFileSync(file, JSON.stringify(longTrial()));
  await page.getByLabel('Take in a trial file').setInputFiles(file);
  await expect(page.getByText('long.json is taken in.')).toBeVisible({ timeout: 30_000 });
}

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

const sheet = (page: Page) => page.getByRole('main');

test('an event is dragged along the ribbon and lands on a frame; the arrow keys move it by one; undo takes both back', async ({
  page,
  host,
}) => {
  await open(page, host);
  await openLong(page);
  const hold = sheet(page).getByRole('slider', { name: /^Release, move/ });
  const release = async () => Number.parseFloat((await hold.getAttribute('aria-valuetext')) ?? '');
  await hold.scrollIntoViewIfNeeded();
  const box = await hold.locator('.ribbon-name').boundingBox();
  if (box === null) throw new Error('the event is not on screen');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2, { steps: 6 });
  await page.mouse.up();
  await expect(page.getByText('All saved')).toBeVisible();
  const stored = (await fileOf(page)).trialEvents.find(({ event }) => event === 'release');
  expect(stored).toMatchObject({ origin: 'by-hand', uS: null });
  const dragged = stored?.timeS ?? -1;
  expect(dragged).toBeGreaterThan(1.05);
  expect(Math.abs(dragged * RATE_HZ - Math.round(dragged * RATE_HZ))).toBeLessThan(1e-6);

  await hold.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowLeft');
  await expect.poll(async () => Math.round((await release()) * RATE_HZ)).toBe(Math.round(dragged * RATE_HZ) - 9);

  // Keys pressed one after the other may be one step of undo or two.
  const undone = async () => {
    const at = await release();
    if (at !== 1) await page.getByRole('button', { name: /^Undo/ }).click();
    return at;
  };
  await expect.poll(undone).toBe(1);
});

/** How long each of 40 steps of the playhead, or changes of the zoom, takes to be on its way to the screen, ms, sorted. */
async function timesOf(page: Page, act: 'step' | 'zoom'): Promise<number[]> {
  return page.evaluate(async (what) => {
    const input = document.querySelector<HTMLInputElement>('.stage input[type=range]');
    const closer = [...document.querySelectorAll('button')].find((one) => one.textContent === 'Closer');
    const wider = [...document.querySelectorAll('button')].find((one) => one.textContent === 'Wider');
    const taken: number[] = [];
    for (let i = 0; i < 40; i += 1) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
      const start = performance.now();
      if (what === 'step' && input !== null) {
        // As a key pressed on it would: set without React knowing, then heard as input.
        input.stepUp();
        input.dispatchEvent(new Event('input', { bubbles: true }));
      } else (i % 2 === 0 ? closer : wider)?.click();
      // From the change to the picture after it is on its way to the screen.
      await new Promise((resolve) => requestAnimationFrame(resolve));
      await new Promise((resolve) => setTimeout(resolve, 0));
      taken.push(performance.now() - start);
    }
    return taken.toSorted((a, b) => a - b);
  }, act);
}

test('six curves of 2 000 samples, raw and filtered: the playhead and a zoom keep up; a press on a curve goes there', async ({
  page,
  host,
}) => {
  test.setTimeout(120_000);
  await open(page, host);
  await openLong(page);
  const bare = (await timesOf(page, 'step'))[20] ?? NaN;
  const pick = (group: string, label: string) =>
    sheet(page).getByLabel(`Curve below the ribbon, ${group}`).selectOption({ label });
  await pick('angles', 'Knee flexion, left');
  await pick('angles', 'Elbow flexion, right');
  await pick('angles', 'Trunk lean');
  await pick('heights', 'Height, centre of mass');
  await pick('speeds', 'Speed, wrist, right');
  await pick('speeds', 'Speed, ankle, left');
  await sheet(page).getByLabel('Unfiltered too, thin').check();
  await expect(sheet(page).locator('.curve-strip')).toHaveCount(6);
  await expect(sheet(page).locator('.curve-strip canvas')).toHaveCount(6);

  const slider = sheet(page).getByRole('slider', { name: 'Frame' });
  await sheet(page).getByRole('button', { name: 'Closer' }).scrollIntoViewIfNeeded();
  for (const act of ['step', 'zoom'] as const) {
    const sorted = await timesOf(page, act);
    const [median, p95] = [sorted[20] ?? NaN, sorted[38] ?? NaN];
    console.log(
      `six curves, ${act}: median ${median.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms; without: ${bare.toFixed(1)} ms`,
    );
    // Beside the sheet without curves, because the machine may be busy. A zoom draws every line anew.
    expect(median, act).toBeLessThan((act === 'step' ? 2.5 : 6) * bare + 17);
  }

  await sheet(page).getByRole('button', { name: 'All of it' }).click();
  const strip = await sheet(page).locator('.curve-strip').nth(1).boundingBox();
  if (strip === null) throw new Error('no curve on screen');
  await page.mouse.click(strip.x + strip.width / 2, strip.y + strip.height / 2);
  // The middle of the axis is the middle of 0 to 1 999 frames.
  expect(Math.abs(Number(await slider.inputValue()) - 999.5)).toBeLessThan(8);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the ribbon with curves breaks nothing of WCAG 2.2 AA that a program can tell, ${colorScheme}`, async ({
    page,
    host,
  }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await open(page, host);
    await openLong(page);
    await sheet(page).getByLabel('Curve below the ribbon, angles').selectOption({ label: 'Trunk lean' });
    await sheet(page).getByText('Another angle').click();
    await page.getByRole('button', { name: 'Build a movement' }).click();
    await page.getByLabel('Add an instant the program knows').selectOption({ label: 'Take-off' });
    const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`),
    ).toEqual([]);
    await page.screenshot({ path: `out/look/ribbon-${colorScheme}.png`, fullPage: true });
  });
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

async function openBench(page: Page): Promise<void> {
  const film = path.join(folder, 'ribbon.mp4');
  if (!fs.existsSync(film)) aFilm(film, { frames: 60, rateHz: 60, gop: 12 });
  await openTrials(page);
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  await page.getByLabel('Bring in the film of this trial').setInputFiles(film);
  await page.getByRole('link', { name: 'Open the trial bench' }).click();
  await expect(page.locator('.bench-stage > canvas').first()).toHaveAttribute('data-frame', '0');
}

async function clickAt(page: Page, x: number, y: number): Promise<void> {
  const box = await page.locator('.bench-drawing').boundingBox();
  if (box === null) throw new Error('the stage is not on screen');
  const scale = Math.min(box.width / 640, box.height / 360);
  await page.mouse.click(
    box.x + box.width / 2 + (x + 0.5 - 320) * scale,
    box.y + box.height / 2 + (y + 0.5 - 180) * scale,
  );
}

test.describe('on the bench', () => {
  test.skip(!hasFfmpeg, 'ffmpeg is not on this machine, so there is no film to open');

  test('a plane by four points, each step kept; a fifth shows residuals; points in a line are refused; undo goes back', async ({
    page,
    host,
  }) => {
    await open(page, host);
    await openBench(page);
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
