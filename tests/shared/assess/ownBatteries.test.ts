import { describe, expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import { progress } from '../../../shared/assess/progress.ts';
import type { BatteryBody } from '../../../shared/model/battery.ts';
import { UNSAID } from '../../../shared/model/blank.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import type { ScreeningResult } from '../../../shared/model/screening.ts';
import { placeReport } from '../../../shared/report/compose.ts';
import { aCopy, anItem, copyWith, OWN_ID } from '../../support/ownBattery.ts';
import { textOfReport } from '../../support/readPages.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleCase, sampleId } from '../../support/sampleCase.ts';
import { squareMetrics } from '../report/squareMetrics.ts';

// Every result is read by the version it was taken with (reference/screening.md, section 1: an error figure is valid only
// for the same test version, device, position and rater).

type Result = Pick<ScreeningResult, 'itemId' | 'side'> & Partial<ScreeningResult>;

/** A case with one session a battery, on successive days. */
function taken(...sessions: readonly (readonly [BatteryBody, readonly Result[]])[]): CaseFile {
  const whole = sampleCase();
  return {
    ...whole,
    injuries: [],
    shoulderRecords: [],
    jumpTests: [],
    jumpTrials: [],
    movementTrials: [],
    trialEvents: [],
    landmarkTracks: [],
    enteredMeasures: [],
    findingDecisions: [],
    screeningSessions: sessions.map(([battery], i) => ({
      id: sampleId(710 + i),
      caseId: whole.case.id,
      heldOn: `2026-11-${String(10 + i)}`,
      rater: 'R. Example',
      batteryId: battery.id,
      batteryVersion: battery.version,
      note: '',
      battery,
    })),
    screeningResults: sessions.flatMap(([, results], i) =>
      results.map((one, j) => ({
        id: sampleId(720 + 20 * i + j),
        sessionId: sampleId(710 + i),
        valueSi: null,
        grade: null,
        isPositive: null,
        painNrs: 0,
        note: '',
        ...UNSAID,
        ...one,
      })),
    ),
  };
}
const lunges: readonly Result[] = [
  { itemId: 'weight-bearing-lunge', side: 'left', valueSi: 0.07 },
  { itemId: 'weight-bearing-lunge', side: 'right', valueSi: 0.12 },
];
const numbersOf = (file: CaseFile) =>
  assessCase(file).facts.flatMap(({ measure, side, value }) =>
    value.kind === 'number' && 'value' in value.reading ? [[measure, side, value.reading.value]] : [],
  );
const rulesOf = (file: CaseFile) =>
  assessCase(file)
    .findings.filter(({ outcome }) => outcome !== 'not-assessed')
    .map(({ ruleId }) => ruleId);

const printed = (file: CaseFile) =>
  textOfReport(
    placeReport({
      file,
      assessment: assessCase(file),
      kind: 'study',
      paper: 'a4',
      metrics: squareMetrics,
      createdAt: SAMPLE_CREATED_AT,
      caseSha256: SAMPLE_SHA256,
    }),
  );

test('an edited copy leaves what was taken before it as it was: in facts, findings and report', () => {
  const first = aCopy();
  const before = taken([first, lunges]);
  // The next version calls the same id something else, in another unit, without sides.
  const next = { ...copyWith('weight-bearing-lunge', { label: 'Lean', unit: 'deg', possible: [0, 90] }), version: '2' };
  const after = taken([first, lunges], [next, [{ itemId: 'weight-bearing-lunge', side: 'left', valueSi: 0.6 }]]);
  expect(numbersOf(after)).toEqual(expect.arrayContaining(numbersOf(before)));
  expect(rulesOf(after)).toEqual(expect.arrayContaining(rulesOf(before)));
  expect(rulesOf(before)).toContain('any/lunge-short-on-one-side');
  expect(printed(after)).toContain('Weight-bearing lunge');
  expect(printed(after)).toContain('Lean');
  // And nothing is compared across the two.
  expect(progress(assessCase(after).facts).filter(({ label }) => /lunge|Lean/i.test(label))).toEqual([]);
});

test('a copied item is judged by the rules of the program, one whose link is cut is not', () => {
  const judged = rulesOf(taken([aCopy(), lunges]));
  expect(judged).toContain('any/lunge-short-on-one-side');
  const cut = copyWith('weight-bearing-lunge', { trials: { most: 3, combine: 'mean' }, possible: [0, 35] });
  expect(rulesOf(taken([cut, lunges]))).not.toContain('any/lunge-short-on-one-side');
});

describe('pain anywhere stays stop and be seen', () => {
  test.each(['neck', 'elbow', 'lumbosacral', 'foot', 'whole-body'] as const)(
    'in an item of one’s own, %s',
    (region) => {
      const battery = { ...aCopy(), items: [anItem({ region })] };
      const { stops } = assessCase(taken([battery, [{ itemId: 'plank-hold', side: 'none', painNrs: 1 }]]));
      expect(stops.map(({ words }) => words)).toEqual([
        expect.stringContaining('pain 1 of 10 in front plank, time held'),
      ]);
    },
  );

  test('a positive clearing test of one’s own', () => {
    const clearing = anItem({ kind: 'clearing', unit: null, possible: null });
    const battery = { ...aCopy(), items: [clearing] };
    const file = taken([battery, [{ itemId: 'plank-hold', side: 'none', isPositive: true }]]);
    expect(assessCase(file).stops).toHaveLength(1);
  });
});

test('an item of one’s own is shown with its value, and nothing is said of it', () => {
  const battery = { ...aCopy(), items: [anItem()] };
  const file = taken([battery, [{ itemId: 'plank-hold', side: 'none', valueSi: 95 }]]);
  expect(numbersOf(file)).toContainEqual([`own/${OWN_ID}/plank-hold`, 'none', 95]);
  expect(rulesOf(file)).toEqual([]);
});

describe('a later result is compared only if it was taken alike', () => {
  const lunge = (fields: Partial<Result>): readonly Result[] => [
    { itemId: 'weight-bearing-lunge', side: 'left', valueSi: 0.07, device: 'tape', ...fields },
  ];
  const verdict = (again: Partial<Result>, battery = aCopy()) =>
    progress(assessCase(taken([aCopy(), lunge({})], [battery, lunge({ valueSi: 0.12, ...again })])).facts)[0]?.verdict;
  test('alike', () => expect(verdict({})).toBe('real change'));
  test.each<[string, Partial<Result>]>([
    ['another device', { device: 'laser' }],
    ['another position', { position: 'on a step' }],
    ['other shoes', { shoes: true }],
  ])('%s: cannot say', (_what, again) => expect(verdict(again)).toBe('cannot say'));
  test('other instructions: cannot say', () => {
    expect(verdict({}, copyWith('weight-bearing-lunge', { instructions: ['On a step.'] }))).toBe('cannot say');
  });
});

test('the working of a result of several trials shows each of them and how they became one', () => {
  const trialsSi = [1.3, 1.42, 1.38];
  const file = taken([aCopy(), [{ itemId: 'single-leg-hop', side: 'left', valueSi: 1.42, trialsSi }]]);
  const hop = assessCase(file).facts.find(({ measure }) => measure === 'hop.distance');
  const reading = hop?.value.kind === 'number' && 'value' in hop.value.reading ? hop.value.reading : null;
  expect(reading).toMatchObject({ value: 1.42, working: { formula: 'x = max(x_1, x_2, x_3)' } });
  expect(reading?.working.inputs.map(({ quantity }) => quantity.value)).toEqual(trialsSi);
  expect(printed(file)).toContain('trials 130, 142, 138');
});

describe('a hop over the leg length', () => {
  const hop = taken([aCopy(), [{ itemId: 'single-leg-hop', side: 'left', valueSi: 1.6902 }]]);
  const shareOf = (legLengthLeftM: number | null) =>
    assessCase({ ...hop, athlete: { ...hop.athlete, legLengthLeftM } }).facts.find(
      ({ measure }) => measure === 'hop.legLengths',
    )?.value;

  test('with its working: 1.690 m over 0.90 m is 187.8 % (J Athl Train 2018;53:35, mean of boys; quotient by hand)', () => {
    expect(shareOf(0.9)).toMatchObject({
      kind: 'number',
      reading: { value: expect.closeTo(1.878, 9), working: { formula: 'r = d / L' } },
    });
  });

  test('with no length on file: cannot tell, and why', () => {
    expect(shareOf(null)).toEqual({ kind: 'unknown', reason: 'leg length, left, is not recorded' });
  });

  test('an item of one’s own over the arm length, on the side it was taken', () => {
    const reach = anItem({ id: 'reach', unit: 'cm', hasSides: true, possible: [0, 200], dividedBy: 'arm-length' });
    const file = taken([{ ...aCopy(), items: [reach] }, [{ itemId: 'reach', side: 'right', valueSi: 0.6 }]]);
    const { facts } = assessCase({ ...file, athlete: { ...file.athlete, armLengthRightM: 0.75, armLengthLeftM: 0.5 } });
    const share = facts.find(({ measure }) => measure.endsWith('/over-arm-length'));
    expect(share).toMatchObject({ displayUnit: '%', value: { reading: { value: expect.closeTo(0.8, 12) } } });
  });
});
