import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isJumpTable, readJumpsCsv } from '../../../main/exchange/jumpsCsv.ts';
import { readScreeningCsv } from '../../../main/exchange/screeningCsv.ts';
import { DomainError } from '../../../shared/errors.ts';
import { generalBattery } from '../../../shared/knowledge/screening/generalBattery.ts';

// Values are invented; how such tables are written is common practice, no source. Unit factors are exact by definition.

const screen = (text: string) => readScreeningCsv(text, generalBattery);
const place = (run: () => unknown) => {
  try {
    run();
  } catch (thrown) {
    if (thrown instanceof DomainError) return [thrown.code, thrown.path];
    throw thrown;
  }
  return expect.fail('was not refused');
};

test('screening: items by id or label, numbers, grades, answers and pain, in SI', () => {
  const text =
    '\uFEFFItem;Side;Result;Pain;Note\r\nweight-bearing-lunge;left;10,5;;taped\r\nWeight-bearing lunge;R;12;0;\r\n' +
    'overhead-squat;;met with compensation;;\r\npain-raising-arm;left;yes;4;\r\nclosed-chain-touches;;23;;\r\n';
  expect(screen(text)).toMatchObject([
    { itemId: 'weight-bearing-lunge', side: 'left', valueSi: 0.105, painNrs: null, note: 'taped' },
    { itemId: 'weight-bearing-lunge', side: 'right', valueSi: 0.12, painNrs: 0 },
    { itemId: 'overhead-squat', side: 'none', grade: 'met-with-compensation' },
    { itemId: 'pain-raising-arm', side: 'left', isPositive: true, painNrs: 4 },
    { itemId: 'closed-chain-touches', side: 'none', valueSi: 23 },
  ]);
});

describe('screening refused, with line and column', () => {
  test.each([
    ['an item nobody knows', 'item,side,result\nwall sit,,3', 'line 2, column item'],
    ['a side missing', 'item,side,result\nsingle-leg-hop,,143', 'line 2'],
    ['a side too many', 'item,side,result\noverhead-squat,left,met', 'line 2, column side'],
    ['a value that cannot be', 'item,side,result\nweight-bearing-lunge,left,105', 'line 2, column result'],
    ['pain as a word', 'item,side,result,pain\noverhead-squat,,met,some', 'line 2, column pain'],
    ['one result twice', 'item,side,result\noverhead-squat,,met\noverhead-squat,,not met', 'line 3'],
    ['a column nobody knows', 'item,side,result,score\noverhead-squat,,met,3', 'line 1, column score'],
    ['the wrong unit', 'item,side,result (m)\nweight-bearing-lunge,left,0.1', 'line 2'],
  ])('%s', (_what, text, path) => {
    expect(place(() => screen(text))[1]).toBe(path);
  });
});

test('jumps: flight times in ms or s, or reaches in cm, a row each', () => {
  expect(readJumpsCsv('Trial,Flight time (ms),Pain\n1,510,0\n2,523.5,\n')).toMatchObject({
    method: 'flight-time',
    jumps: [
      { flightTimeS: 0.51, painNrs: 0 },
      { flightTimeS: 0.5235, painNrs: null },
    ],
  });
  expect(readJumpsCsv('flight_time_s;contact_time_s\n0,51;0,21\n').jumps[0]).toMatchObject({
    flightTimeS: 0.51,
    contactTimeS: 0.21,
  });
  expect(readJumpsCsv('Reach [cm]\n285\n')).toMatchObject({ method: 'jump-and-reach', jumps: [{ jumpReachM: 2.85 }] });
  expect(isJumpTable('time_s,fz_N\n0,700\n')).toBe(false);
});

test.each([
  ['a time without a unit', 'Flight time\n510\n', 'line 2, column Flight time'],
  ['a flight of half a minute', 'Flight time (s)\n0.5\n30\n', 'line 3, column Flight time (s)'],
  ['an empty row', 'Trial,Flight time (s)\n1,0.5\n2,\n', 'line 3'],
  ['both methods at once', 'Flight time (s),Reach (m)\n0.5,2.8\n', null],
])('jumps refused: %s', (_what, text, path) => {
  expect(place(() => readJumpsCsv(text))[1]).toBe(path);
});

test.each([
  ['screening', 'item,side,result,pain\nsingle-leg-hop,left,143,0\noverhead-squat,,met,\n', screen],
  ['jumps', 'Trial,Flight time (ms),Pain\n1,510,0\n2,523.5,\n', readJumpsCsv],
] as const)('law: 10 000 mutated tables of %s are read or refused with a code', (_what, sample, read) => {
  const mutation = fc.tuple(fc.nat(sample.length), fc.nat(8), fc.string({ unit: 'binary', maxLength: 4 }));
  fc.assert(
    fc.property(fc.array(mutation, { minLength: 1, maxLength: 3 }), (mutations) => {
      const text = mutations.reduce<string>((so, [at, cut, put]) => so.slice(0, at) + put + so.slice(at + cut), sample);
      try {
        read(text);
      } catch (thrown) {
        expect(thrown).toBeInstanceOf(DomainError);
      }
    }),
    { numRuns: 10_000, seed: 3 },
  );
});

test('several trials of one side in one cell of a table', () => {
  const [row] = screen('item,side,result\nSingle-leg hop distance,left,130+142+138\n');
  expect(row).toMatchObject({ valueSi: 1.42, trialsSi: [1.3, 1.42, expect.closeTo(1.38, 12)] });
  expect(() => screen('item,side,result\nWeight-bearing lunge,left,9+10\n')).toThrow('takes no repeated trials');
});

test('device, position and shoes are read where their columns are there; what is neither yes nor no is refused', () => {
  const heads = 'item,side,result,device,position,shoes\n';
  const [row] = screen(`${heads}Weight-bearing lunge,left,9,tape,on the floor,no\n`);
  expect(row).toMatchObject({ valueSi: 0.09, device: 'tape', position: 'on the floor', shoes: false });
  expect(() => screen(`${heads}Weight-bearing lunge,left,9,tape,,perhaps\n`)).toThrow('write yes or no');
});
