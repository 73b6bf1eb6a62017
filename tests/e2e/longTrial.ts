import type { Page } from '@playwright/test';
import { LANDMARKS } from '../../shared/model/trial.ts';
import { expect } from './fixtures.ts';
import { openTrials } from './theBench.ts';

/** Curves of every group, six together. */
const SIX = [
  ['angles', 'Knee flexion, left'],
  ['angles', 'Elbow flexion, right'],
  ['turning', 'Angular velocity, knee flexion, right'],
  ['heights', 'Height, ball'],
  ['heights', 'Height, centre of mass'],
  ['speeds', 'Speed, wrist, right'],
] as const;

/** A trial file of so many frames in which every point goes its own way, as no body does. */
export function longTrial(frames: number): string {
  const samples = (k: number) =>
    Array.from({ length: frames }, (_, i) => {
      const [x, y] = [Math.sin(i / (20 + k)), Math.cos(i / (13 + 2 * k))];
      return [i, Number((0.2 * x + k * 0.03).toFixed(4)), Number((1 + 0.3 * y + k * 0.05).toFixed(4))];
    });
  return JSON.stringify({
    format: 'caseframe-trial',
    version: 1,
    movement: 'handball-jump-throw',
    filmedOn: '2026-11-01',
    side: 'right',
    captureRateHz: 240,
    calibration: { kind: 'metres', pointUM: 0.003 },
    points: Object.fromEntries([...LANDMARKS, 'ball'].map((point, k) => [point, samples(k)])),
    events: [
      { event: 'plant', timeS: 1 },
      { event: 'take-off', timeS: 1.2 },
      { event: 'release', timeS: 1.5 },
      { event: 'landing', timeS: 1.8 },
    ],
  });
}

/** A case with that trial open, six curves under its ribbon, filtered and not. */
export async function openSixCurves(page: Page, frames: number): Promise<void> {
  await openTrials(page);
  const buffer = Buffer.from(longTrial(frames));
  await page
    .getByLabel('Take in a trial file')
    .setInputFiles({ name: 'long.json', mimeType: 'application/json', buffer });
  for (const [group, label] of SIX) {
    await page.getByLabel(`Curve below the ribbon, ${group}`).selectOption({ label });
  }
  await page.getByLabel('Unfiltered too, thin').check();
  await expect(page.locator('.curve-strip')).toHaveCount(SIX.length);
}

export interface Work {
  /** From what is done to the next picture but one, which has it, ms, rising. */
  readonly ms: readonly number[];
  /** Lines drawn on canvases, and changes to the drawings beside them. */
  readonly strokes: number;
  readonly changes: number;
}

/** What the page does for each of these in turn: the playhead moved to a frame, or a key pressed on the ribbon. */
export function workFor(page: Page, acts: readonly (number | string)[]): Promise<Work> {
  return page.evaluate(async (all) => {
    const slider = document.querySelector<HTMLInputElement>('.stage input[type=range]');
    const ribbon = document.querySelector('.ribbon-whole');
    if (slider === null || ribbon === null) throw new Error('no ribbon on screen');
    // Past React's own setter, so that it hears of the change.
    const value = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
    let [strokes, changes] = [0, 0];
    const context = CanvasRenderingContext2D.prototype;
    // Called on the context it was called on, and put back as it was.
    // oxlint-disable-next-line typescript/unbound-method
    const plain = context.stroke;
    context.stroke = new Proxy(plain, {
      apply(draw, on, given) {
        strokes += 1;
        Reflect.apply(draw, on, given);
      },
    });
    const observer = new MutationObserver((records) => (changes += records.length));
    for (const drawing of document.querySelectorAll('.curve-strip svg')) {
      observer.observe(drawing, { subtree: true, childList: true, attributes: true, characterData: true });
    }
    const ms: number[] = [];
    for (const act of all) {
      const before = performance.now();
      if (typeof act === 'number') {
        value?.set?.call(slider, String(act));
        slider.dispatchEvent(new Event('input', { bubbles: true }));
      } else {
        ribbon.dispatchEvent(new KeyboardEvent('keydown', { key: act, bubbles: true }));
      }
      await new Promise<void>((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
      });
      ms.push(performance.now() - before);
    }
    observer.disconnect();
    context.stroke = plain;
    return { ms: ms.toSorted((a, b) => a - b), strokes, changes };
  }, acts);
}
