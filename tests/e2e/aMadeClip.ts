import type { Page } from '@playwright/test';
import type { ClipTruth } from '../../main/clip/clip.ts';
import { measureById } from '../../shared/knowledge/measures/index.ts';
import { movementById } from '../../shared/knowledge/movements/index.ts';
import { BALL } from '../../shared/model/trial.ts';
import { convert, type Unit } from '../../shared/units.ts';
import { pointLabel } from '../../app/bench/pointNames.ts';
import { expect } from './fixtures.ts';
import { clickAt, openTrials, stage, tracksOf } from './theBench.ts';

/** A made clip of a jump throw digitised and measured in the browser, as a person does it. Truth: the clip's own. */
export const MOVEMENT = 'handball-jump-throw';
/** How far off a click may be: half a pixel of the screen, each standing for nearly two of the film. */
const CLICK_PX = 0.6;
/** A person who steps through the clip notices a point that is this far off its mark. */
const NOTICED_PX = 3;

export interface Read {
  readonly name: string;
  readonly value: number;
  readonly u: number;
  readonly truth: number;
}

export async function bringIn(page: Page, film: string): Promise<void> {
  await openTrials(page);
  await page.getByRole('button', { name: 'Add a trial by hand' }).click();
  await page.getByLabel('Movement', { exact: true }).selectOption(MOVEMENT);
  await page.getByLabel('Ball or implement').selectOption('handball-3');
  await page.getByLabel('Bring in the film of this trial').setInputFiles(film);
  await page.getByRole('link', { name: 'Open the trial bench' }).click();
  await expect(stage(page)).toHaveAttribute('data-frame', '0');
}

export async function goTo(page: Page, frame: number): Promise<void> {
  await page.getByRole('slider', { name: 'Frame' }).fill(String(frame));
  await expect(stage(page)).toHaveAttribute('data-frame', String(frame));
}

export async function takeRate(page: Page, { captureRateHz }: ClipTruth): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`${captureRateHz} frames a second are real`) }).click();
}

export async function scaleBy(page: Page, { stick, widthPx, heightPx }: ClipTruth): Promise<void> {
  await page.getByRole('button', { name: /2 Plane/ }).click();
  await clickAt(page, ...stick.from, [widthPx, heightPx]);
  await clickAt(page, ...stick.to, [widthPx, heightPx]);
  await page.getByLabel('True length', { exact: true }).fill(String(stick.lengthM));
  await page.getByRole('textbox', { name: 'Standard uncertainty of the length' }).fill('1');
  await page.getByRole('textbox', { name: 'Standard uncertainty of one point' }).fill(String(CLICK_PX));
  await expect(page.getByRole('button', { name: /2 Plane has what it needs/ })).toBeVisible();
}

/** By its marks that are in the picture, whose places are known. */
export async function planeBy(page: Page, { plane, widthPx, heightPx }: ClipTruth): Promise<void> {
  await page.getByRole('button', { name: /2 Plane/ }).click();
  await page.getByLabel('Points of a plane').check();
  const margin = 12;
  const inPicture = plane.filter(
    ({ px: [x, y] }) => x > margin && y > margin && x < widthPx - margin && y < heightPx - margin,
  );
  for (const [i, { px, m }] of inPicture.entries()) {
    if ((await page.getByLabel(`Point ${i + 1}, across`, { exact: true }).count()) === 0)
      await page.getByRole('button', { name: 'Add a point' }).click();
    await page.getByRole('button', { name: `Click point ${i + 1} in the picture` }).click();
    await clickAt(page, ...px, [widthPx, heightPx]);
    await page.getByLabel(`Point ${i + 1}, across`, { exact: true }).fill(String(m[0]));
    await page.getByLabel(`Point ${i + 1}, up`, { exact: true }).fill(String(m[1]));
  }
  await page.getByRole('textbox', { name: 'Standard uncertainty of one point' }).fill(String(CLICK_PX));
  await page.getByRole('textbox', { name: 'Standard uncertainty of one point' }).blur();
  await expect(page.getByRole('button', { name: /2 Plane has what it needs/ })).toBeVisible();
}

/**
 * Put down by hand where it is first seen, tracked, and put down again where it was lost.
 * @param from the first frame that is wanted
 * @returns how often by hand
 */
export async function followed(page: Page, truth: ClipTruth, point: string, from = 0): Promise<number> {
  const seen = truth.points[point]?.filter(([frame]) => frame >= from) ?? [];
  const places = new Map(seen.map(([frame, x, y]) => [frame, [x, y] as const]));
  await page.getByRole('button', { name: /3 Points/ }).click();
  await page.getByLabel('After a click, go on to the next frame').uncheck();
  const [first, last] = [Math.min(...places.keys()), Math.max(...places.keys())];
  await page.getByLabel('Point at hand', { exact: true }).selectOption(point);
  await page.getByLabel('Disc the tracker recognises').selectOption(point === BALL ? '14' : '10');
  let at = first;
  for (let put = 1; ; put += 1) {
    const place = places.get(at);
    if (place === undefined) throw new Error(`${point} is not in the picture of frame ${at}`);
    await goTo(page, at);
    await clickAt(page, ...place, [truth.widthPx, truth.heightPx]);
    await expect(page.getByText(new RegExp(`^${pointLabel(point)}: .*by hand`))).toBeVisible();
    await page.getByRole('button', { name: 'Track forward' }).click();
    await expect(page.getByText(new RegExp(`^${pointLabel(point)} tracked in \\d+`))).toBeVisible({ timeout: 120_000 });
    const held = (await tracksOf(page)).filter((track) => track.point === point).flatMap(({ samples }) => samples);
    const off = held
      .filter(([frame, x, y]) => {
        const [tx, ty] = places.get(frame) ?? [x, y];
        return frame > at && Math.hypot(x - tx, y - ty) > NOTICED_PX;
      })
      .map(([frame]) => frame);
    const reached = Math.max(...held.map(([frame]) => frame));
    const next = Math.min(...off, reached < last - 1 ? reached + 1 : Infinity);
    if (!Number.isFinite(next) || !places.has(next)) return put;
    at = next;
  }
}

/**
 * Events as they are proposed, where the whole body is there to propose them from; the others put down on their frames, at
 * the rate the clip is taken to have.
 */
export async function takeEvents(
  page: Page,
  truth: ClipTruth,
  { hasBody = false, takenHz = truth.captureRateHz } = {},
): Promise<void> {
  await page.getByRole('button', { name: /4 Events and phases/ }).click();
  if (hasBody) await page.getByRole('button', { name: /^Take all \d+ as they are/ }).click();
  for (const [event, timeS] of Object.entries(truth.events)) {
    const label = movementById(truth.movement)?.events.find(({ id }) => id === event)?.label ?? event;
    const time = page.getByRole('textbox', { name: `Time of ${label.toLowerCase()}`, exact: true });
    if ((await time.inputValue()) !== '') continue;
    await time.fill((Math.round(timeS * truth.captureRateHz) / takenHz).toFixed(4));
    await time.blur();
  }
}

const PHASES = [
  ['take-off', 'plant', 'take-off'],
  ['cocking', 'take-off', 'cocked'],
  ['acceleration', 'cocked', 'release'],
] as const;

/** Measures as they read on the screen, each beside the truth. What rests on the body is left out where it is not there. */
export async function readMeasures(
  page: Page,
  truth: ClipTruth,
  has: { floor: boolean; body: boolean },
): Promise<Read[]> {
  await page.getByRole('button', { name: /5 Measures/ }).click();
  const { release, events } = truth;
  if (release === null || truth.jumpHeightM === null) throw new Error('this clip has no release');
  const phaseLabel = (id: string) => movementById(truth.movement)?.phases.find((one) => one.id === id)?.label ?? id;
  const wanted: readonly (readonly [measure: string, truth: number, phase: string | null])[] = [
    ['ball.releaseSpeed', release.speedMPerS, null],
    ['ball.releaseAngle', release.angleRad, null],
    ...(has.floor ? [['ball.releaseHeight', release.heightM, null] as const] : []),
    ...(has.body ? [['com.riseInSkill', truth.jumpHeightM, null] as const] : []),
    ...PHASES.map(([id, from, to]) => ['phase.duration', (events[to] ?? 0) - (events[from] ?? 0), id] as const),
  ];
  const found: Read[] = [];
  for (const [id, is, phase] of wanted) {
    const measure = measureById(id);
    if (measure === null || measure.unit === null) throw new Error(`no measure ${id}`);
    const table = phase === null ? page : page.getByRole('table').filter({ hasText: phaseLabel(phase) });
    const row = table
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name: measure.label }) })
      .first();
    const text = (await row.getByRole('cell').first().innerText())
      .replaceAll(/[\s\u00a0\u202f]+/g, ' ')
      .replaceAll('−', '-');
    const match = /(-?[\d.]+) ?± ?([\d.]+)/.exec(text);
    if (match === null) throw new Error(`${id} ${phase ?? ''} reads “${text}”`);
    const unit: Unit = measure.displayUnit ?? measure.unit;
    const shown = text.includes('°') ? 'deg' : text.includes(' ms') ? 'ms' : text.includes(' cm') ? 'cm' : unit;
    found.push({
      name: phase === null ? id : `${id}, ${phase}`,
      value: Number(match[1]),
      u: Number(match[2]),
      truth: convert(is, measure.unit, shown),
    });
  }
  return found;
}
