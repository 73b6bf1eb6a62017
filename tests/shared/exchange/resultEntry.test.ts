import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readEntry, readPain, readResult, writeResult, writeSides } from '../../../shared/exchange/resultEntry.ts';
import type { BatteryItem } from '../../../shared/knowledge/screening/battery.ts';
import { generalBattery } from '../../../shared/knowledge/screening/generalBattery.ts';

// What the keys mean is this program's own convention; the factors are exact by definition (SI Brochure 9).

const item = (id: string) => generalBattery.items.find((one) => one.id === id) as BatteryItem;
const values = (id: string, text: string) =>
  readEntry(item(id), text).sides.map(({ side, value }) => [side, value?.valueSi ?? null]);

const pain = (text: string) => readPain(item('single-leg-squat'), text).sides.map(({ value }) => value);
const grades = (text: string) =>
  readEntry(item('single-leg-squat'), text).sides.map(({ value }) => value?.grade ?? null);

describe('two sides in one entry', () => {
  test.each([
    ['41.5 43', 0.415, 0.43],
    ['41,5 43', 0.415, 0.43],
    ['  41.5   43 ', 0.415, 0.43],
    ['41.5/43', 0.415, 0.43],
    ['41.5', 0.415, null],
    ['- 43', null, 0.43],
    ['r43', null, 0.43],
    ['r 43', null, 0.43],
    ['r43 l41.5', 0.415, 0.43],
    ['-4 -6.5', -0.04, -0.065],
    ['', null, null],
    ['-', null, null],
  ])('“%s”', (text, left, right) => {
    const [l, r] = values('hands-behind-back', text);
    for (const [got, want] of [
      [l?.[1], left],
      [r?.[1], right],
    ] as const) {
      if (want === null) expect(got).toBeNull();
      else expect(got).toBeCloseTo(want, 12);
    }
  });

  test('three entries, or one side twice, are refused whole; what cannot be is refused on its side alone', () => {
    for (const text of ['1 2 3', 'l1 l2']) {
      const entry = readEntry(item('weight-bearing-lunge'), text);
      expect(entry.refusal).not.toBeNull();
      expect(entry.sides.every(({ value }) => value === null)).toBe(true);
    }
    const [left, right] = readEntry(item('weight-bearing-lunge'), '12 300').sides;
    expect(left?.value?.valueSi).toBeCloseTo(0.12, 12);
    expect([right?.value, right?.refusal]).toEqual([null, 'must lie between 0 and 35\u00a0cm.']);
  });

  test('an unusual value is kept and questioned with the battery’s own range', () => {
    const [left] = readEntry(item('weight-bearing-lunge'), '30').sides;
    expect(left?.value?.valueSi).toBeCloseTo(0.3, 12);
    expect(left?.question).toContain('between 2 and 22\u00a0cm');
  });
});

test('grades and answers are one letter, sides with or without a space; words do as well', () => {
  expect(grades('mn')).toEqual(['met', 'not-met']);
  expect(grades('c m')).toEqual(['met-with-compensation', 'met']);
  expect(grades('- n')).toEqual([null, 'not-met']);
  expect(readResult(item('overhead-squat'), 'met with compensation')).toMatchObject({
    value: { grade: 'met-with-compensation' },
  });
  expect(readResult(item('overhead-squat'), '2')).toHaveProperty('refusal');
  expect(readResult(item('pain-raising-arm'), 'yes')).toMatchObject({ value: { isPositive: true } });
  expect(readResult(item('closed-chain-touches'), '21.5')).toHaveProperty('refusal');
});

test('pain is whole, 0 to 10, and never a result', () => {
  expect(pain('0 10')).toEqual([0, 10]);
  expect(pain('- 6')).toEqual([null, 6]);
  expect(pain('11')).toEqual([null, null]);
  expect(pain('2.5')).toEqual([null, null]);
});

test('law: what is written for two results reads as these results again', () => {
  fc.assert(
    fc.property(
      fc.option(fc.integer({ min: -400, max: 900 })),
      fc.option(fc.integer({ min: -400, max: 900 })),
      (l, r) => {
        const gap = item('hands-behind-back');
        const results = [l, r].map((mm) =>
          mm === null ? null : { valueSi: mm / 1000, grade: null, isPositive: null, trialsSi: null },
        );
        const text = writeSides(results.map((result) => writeResult(gap, result)));
        const read = readEntry(gap, text).sides.map(({ value }) => value?.valueSi ?? null);
        for (const [i, result] of results.entries()) {
          if (result === null) expect(read[i]).toBeNull();
          else expect(read[i]).toBeCloseTo(result.valueSi, 12);
        }
      },
    ),
  );
});

test('law: whatever is typed is read or refused, never thrown', () => {
  fc.assert(
    fc.property(fc.constantFrom(...generalBattery.items), fc.string({ unit: 'binary', maxLength: 20 }), (one, text) => {
      expect(readEntry(one, text).sides.length).toBe(one.hasSides ? 2 : 1);
      expect(readPain(one, text).sides.length).toBe(one.hasSides ? 2 : 1);
    }),
    { numRuns: 2000 },
  );
});

/** Of each side the result and its trials, SI. */
const trialsOf = (of: BatteryItem, text: string) =>
  readEntry(of, text).sides.map(({ value }) => [value?.valueSi ?? null, value?.trialsSi ?? null]);

describe('several trials of a side, with + between them; expected values worked out by hand', () => {
  const meanOf3 = { ...item('weight-bearing-lunge'), trials: { most: 3, combine: 'mean' } } as const;

  test('mean, highest and lowest, each trial kept, left and right', () => {
    expect(trialsOf(meanOf3, '9+10,5+12 11')).toEqual([
      [expect.closeTo(0.105, 12), [0.09, 0.105, 0.12]],
      [0.11, null],
    ]);
    expect(trialsOf(item('single-leg-hop'), '- 130+142+138')).toEqual([
      [null, null],
      [1.42, [1.3, 1.42, expect.closeTo(1.38, 12)]],
    ]);
    const lowest = { ...meanOf3, trials: { most: 2, combine: 'lowest' } } as const;
    expect(trialsOf(lowest, 'r12+9')).toEqual([
      [null, null],
      [0.09, [0.12, 0.09]],
    ]);
    expect(trialsOf(item('closed-chain-touches'), '20+23+22')).toEqual([[expect.closeTo(65 / 3, 12), [20, 23, 22]]]);
  });

  test('a plus at the end waits for its trial; one trial is a value; negative trials of a gap', () => {
    expect(trialsOf(meanOf3, '9+')).toEqual([
      [0.09, null],
      [null, null],
    ]);
    const gap = { ...item('hands-behind-back'), trials: { most: 3, combine: 'lowest' } } as const;
    expect(trialsOf(gap, '-2+-1.5')[0]).toEqual([-0.02, [-0.02, -0.015]]);
  });

  test.each([
    [item('weight-bearing-lunge'), '9+10', 'takes no repeated trials'],
    [meanOf3, '9+10+11+12', 'at most 3 trials'],
    [meanOf3, '9+300', 'must lie between 0 and 35'],
    [item('closed-chain-touches'), '20+20.5', 'a whole number'],
    [meanOf3, '9+x', 'not a number'],
  ])('refused in words: %#', (of, text, words) => {
    const [first] = readEntry(of, text).sides;
    expect(first?.refusal).toContain(words);
    expect(first?.value).toBeNull();
  });

  test('an unusual trial is asked about, though the mean is usual', () => {
    expect(readEntry(meanOf3, '1+12+13').sides[0]?.question).toContain('unusual');
  });

  test('law: what is written of trials is read back as the same', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 350 }), { minLength: 1, maxLength: 3 }), (tenths) => {
        const { value } = readEntry(meanOf3, tenths.map((one) => String(one / 10)).join('+')).sides[0] ?? {
          value: null,
        };
        expect(readEntry(meanOf3, writeResult(meanOf3, value)).sides[0]?.value).toEqual(value);
      }),
    );
  });
});
