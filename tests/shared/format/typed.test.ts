import { assert, double, integer, nat, property } from 'fast-check';
import { expect, test } from 'vitest';
import { mayBecomeNumber, parseDay, parseNumber, parseRoughDate, valueOf } from '../../../shared/format/typed.ts';

test.each([
  ['72', 72],
  ['72.5', 72.5],
  ['72,5', 72.5],
  [' 72. ', 72],
  ['.5', 0.5],
  ['-3', -3],
  ['\u22123', -3],
  ['', null],
])('a number as people write it, common practice, no source: “%s”', (text, value) => {
  expect(parseNumber(text)).toEqual({ value });
});

test.each(['7 2', '1,800.5', '1.800.5', '72kg', '5\'11"', '1e3', 'Infinity', 'NaN', '--1', '.'])(
  'refuses what could be read two ways: “%s”',
  (text) => {
    expect(parseNumber(text)).toHaveProperty('refusal');
    expect(valueOf(parseNumber(text))).toBeNull();
  },
);

test('law: a number written out in decimals is read back as itself', () => {
  assert(
    property(integer({ min: -1e9, max: 1e9 }), integer({ min: 0, max: 6 }), (digits, places) => {
      const value = digits / 10 ** places;
      expect(valueOf(parseNumber(value.toFixed(places)))).toBe(Number(value.toFixed(places)));
    }),
  );
});

test('law: whatever begins a number may still become one', () => {
  assert(
    property(double({ noNaN: true, min: -1e6, max: 1e6 }), nat(), (value, cut) => {
      const text = value.toFixed(3);
      expect(mayBecomeNumber(text.slice(0, cut % (text.length + 1)))).toBe(true);
    }),
  );
});

test.each([
  ['2024', '2024'],
  ['2024-3', '2024-03'],
  ['2024/03/09', '2024-03-09'],
  ['9 March 2024', '2024-03-09'],
  ['9 mar 2024', '2024-03-09'],
  ['March 2024', '2024-03'],
  ['29 Feb 2024', '2024-02-29'],
])('a date as precisely as it is given, calendar of ISO 8601: “%s”', (text, date) => {
  expect(parseRoughDate(text)).toEqual({ value: date });
});

test.each(['03/04/2026', '2024-13', '2023-02-29', '31 April 2024', '9 Marx 2024', '24', '1824', '2024-03-09-1'])(
  'refuses a date that does not exist or has two readings: “%s”',
  (text) => {
    expect(parseRoughDate(text)).toHaveProperty('refusal');
  },
);

test('a day needs its day', () => {
  expect(parseDay('2024-03')).toHaveProperty('refusal');
  expect(parseDay('2024-03-09')).toEqual({ value: '2024-03-09' });
  expect(parseDay('')).toEqual({ value: null });
});
