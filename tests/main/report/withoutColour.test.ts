import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ask } from '../../../main/cli/ask.ts';
import { invent } from '../../../main/demo/demoStore.ts';
import { loadFontMetrics } from '../../../main/report/fontMetrics.ts';
import { loadEvidence } from '../../../main/report/loadEvidence.ts';
import { requestFor } from '../../../main/report/makeReport.ts';
import type { Block } from '../../../shared/report/blocks/block.ts';
import { composeReport } from '../../../shared/report/compose.ts';
import { bodyOutline } from '../../../shared/report/figures/bodyOutline.ts';
import { trialDots } from '../../../shared/report/figures/trialDots.ts';
import type { Mark } from '../../../shared/report/page.ts';
import { SAMPLE_CREATED_AT } from '../../support/sampleCase.ts';

/** WCAG 2.2, 1.4.1: what belongs to whom is told by dash, hatch, shape or words, never by colour alone. */
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-colour-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));
const metrics = loadFontMetrics();
const WIDTH = 470;
let blocks: readonly Block[] = [];

beforeAll(async () => {
  const { service, cases } = await invent(path.join(folder, 'store'), 'command line');
  const { file } = await ask(service, 'case.open', { caseId: cases.handball });
  const read = (sha256: string) => Promise.resolve(fs.readFileSync(service.mediaFile(sha256) ?? ''));
  const evidence = await loadEvidence({ read }, file);
  ({ blocks } = composeReport(requestFor(file, SAMPLE_CREATED_AT, { kind: 'study', paper: 'a4', evidence })));
  await service.close();
}, 60_000);

const flat = (some: readonly Block[]): Block[] =>
  some.flatMap((block) => (block.block === 'beside' ? flat(block.body) : [block]));

/** The marks of the one figure whose caption begins so, every ink taken away but that of the paper. */
function marksOf(caption: string): Mark[] {
  const found = flat(blocks).find((block) => block.block === 'figure' && block.caption?.startsWith(caption));
  if (found?.block !== 'figure') throw new Error(`no figure “${caption}”`);
  return found.draw(WIDTH, metrics).marks.map(withoutInk);
}

function withoutInk(mark: Mark): Mark {
  switch (mark.mark) {
    case 'image':
      return mark;
    case 'text':
    case 'line':
      return { ...mark, ink: 'ink' };
    default: {
      const grey = (ink: typeof mark.fill) => (ink === null || ink === 'paper' || ink === 'tint' ? ink : 'ink');
      return { ...mark, fill: grey(mark.fill), stroke: grey(mark.stroke) };
    }
  }
}

const wordsIn = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.mark === 'text' ? [mark] : []));
const dashed = (mark: Mark) => (mark.mark === 'path' || mark.mark === 'line') && mark.dash !== undefined;

test('curves: of two sides in one row one is dashed and one is not, and each is named at its end', () => {
  const marks = marksOf('Left dashed, right solid');
  const lines = marks.filter((mark) => mark.mark === 'path');
  const sides = wordsIn(marks).filter(({ text }) => text === 'left' || text === 'right');
  expect(sides.length).toBeGreaterThan(3);
  expect(lines.filter(dashed)).toHaveLength(sides.filter(({ text }) => text === 'left').length);
  expect(lines.filter((mark) => !dashed(mark)).length).toBeGreaterThanOrEqual(
    sides.filter(({ text }) => text === 'right').length,
  );
});

test('sides of a test: each bar has its letter in front and its number behind, on its own line', () => {
  const marks = marksOf('Left and right on');
  const bars = marks.flatMap((mark) => (mark.mark === 'line' && mark.weight > 2 ? [mark] : []));
  expect(bars.length).toBeGreaterThan(3);
  for (const { y1 } of bars) {
    const beside = wordsIn(marks).filter(({ baseline }) => Math.abs(baseline - y1 - 2.8) < 0.01);
    expect(beside.map(({ text }) => text)).toEqual([expect.stringMatching(/^[LR]$/), expect.stringMatching(/\d/)]);
  }
});

test('the path of a ball and the path that might be: solid and dashed, both named', () => {
  const marks = marksOf('Path of the ball');
  const curves = marks.filter((mark) => mark.mark === 'path' && mark.fill === null && !mark.d.endsWith('Z'));
  expect(new Set(curves.map(dashed))).toEqual(new Set([false, true]));
  expect(wordsIn(marks).map(({ text }) => text)).toEqual(expect.arrayContaining(['as thrown', '10 cm higher']));
});

test('phases: a band is hatched where its neighbour is shaded, and every band and event is named', () => {
  const marks = marksOf('Phases and events on one time axis');
  const shaded = marks.flatMap((mark) => (mark.mark === 'rect' && mark.fill === 'tint' ? [mark] : []));
  const bands = marks.flatMap((mark) => (mark.mark === 'rect' && mark.fill === null ? [mark] : []));
  expect(bands.length).toBeGreaterThan(3);
  const isShaded = bands.map(({ x }) => shaded.some((one) => one.x === x));
  isShaded.slice(1).forEach((is, i) => expect(is).not.toBe(isShaded[i]));
  expect(wordsIn(marks).length).toBeGreaterThanOrEqual(2 * bands.length);
});

test('a force record: the push is shaded, the flight hatched, body weight dashed, each phase named', () => {
  const marks = marksOf('Trial 1: force under the feet');
  expect(marks.filter((mark) => mark.mark === 'rect' && mark.fill === 'tint')).toHaveLength(1);
  expect(marks.filter((mark) => mark.mark === 'line' && mark.weight === 0.45).length).toBeGreaterThan(10);
  expect(marks.filter(dashed)).toHaveLength(1);
  const words = wordsIn(marks).map(({ text }) => text);
  expect(words).toEqual(expect.arrayContaining(['standing', 'getting ready and pushing off', 'in the air', 'landing']));
});

test('poses: limbs of the left are dashed, those of the right are not', () => {
  const limbs = marksOf('The body at each event').filter((mark) => mark.mark === 'line' && mark.weight === 1.1);
  const left = limbs.filter(dashed).length;
  expect(left).toBeGreaterThan(10);
  expect(limbs.length).toBeGreaterThan(1.9 * left);
});

test('what is resolved or set aside is hollow, all else filled', () => {
  const mark = { region: 'knee', side: 'left', label: 'Knee' } as const;
  const body = bodyOutline([
    { ...mark, isActive: true },
    { ...mark, label: 'Other knee', isActive: false },
  ]);
  const row = { label: 'Trial 1', quantity: { value: 1, unit: 'm', u: 0.1 } } as const;
  const dots = trialDots(
    'Height',
    [
      { ...row, isSetAside: false },
      { ...row, label: 'Trial 2', isSetAside: true },
    ],
    'm',
  );
  for (const drawn of [body, dots]) {
    const discs = drawn
      ?.draw(WIDTH, metrics)
      .marks.flatMap((one) => (one.mark === 'path' && one.stroke === 'ink' ? [one.fill] : []));
    expect(discs).toEqual(['ink', 'paper']);
  }
});
