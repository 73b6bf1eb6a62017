import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatDate, formatQuantity, quantityText, toDecimals } from '../../../shared/format/number.ts';

const q = (value: number, unit: Parameters<typeof formatQuantity>[0]['unit'], u: number | null) => ({ value, unit, u });

test('JCGM 100:2008, 7.2.2: a mass standard of 100.02147 g with u = 0.35 mg reads 100.02147 and 0.00035', () => {
  expect(formatQuantity(q(100.02147, 'g', 0.00035))).toEqual({ value: '100.02147', u: '0.00035', unit: 'g' });
});

test('JCGM 100:2008, 7.2.6: 10.05762 ohm with u = 27 mohm is rounded to 10.058 (here in metres)', () => {
  expect(formatQuantity(q(10.05762, 'm', 0.027))).toEqual({ value: '10.058', u: '0.027', unit: 'm' });
});

test('JCGM 100:2008, 7.2.6: u of 28.05 keeps two digits, 28', () => {
  expect(formatQuantity(q(1000.4, 'N', 28.05))).toEqual({ value: '1000', u: '28', unit: 'N' });
});

test('arithmetic: 0.412 m ± 0.013 m shown in cm is 41.2 ± 1.3', () => {
  expect(formatQuantity(q(0.412, 'm', 0.013), 'cm')).toEqual({ value: '41.2', u: '1.3', unit: 'cm' });
});

test('arithmetic: an uncertainty that rounds up to the next power keeps two digits (0.0996 → 0.10)', () => {
  expect(formatQuantity(q(1.2345, 's', 0.0996))).toEqual({ value: '1.23', u: '0.10', unit: 's' });
});

test('arithmetic: an uncertainty in the hundreds rounds the value to tens', () => {
  expect(formatQuantity(q(15234, 'N/s', 1234))).toEqual({ value: '15200', u: '1200', unit: 'N/s' });
});

test('3rd CGPM 1901: the exact 9.80665 m/s² keeps all its digits', () => {
  expect(formatQuantity(q(9.80665, 'm/s2', 0))).toEqual({ value: '9.80665', u: null, unit: 'm/s²' });
});

test('common practice, no source: what was computed and taken as exact keeps the usual decimals, and three digits at least', () => {
  const taken = (value: number, unit: 'm/s' | 'm' | '1') =>
    formatQuantity({ ...q(value, unit, 0), working: { source: null } }).value;
  expect([taken(-2.20784, 'm/s'), taken(0.00403044, 'm'), taken(69, '1')]).toEqual(['\u22122.21', '0.00403', '69']);
  expect(formatQuantity({ ...q(9.80665, 'm/s2', 0), working: { source: {} } }).value).toBe('9.80665');
});

test('a negative number carries U+2212, never a hyphen, and zero has no sign', () => {
  expect(toDecimals(-8.25, 1)).toMatch(/^\u22128\.[23]$/);
  expect(toDecimals(-0.001, 2)).toBe('0.00');
});

test('SI Brochure 9, 5.4.3: no space before the degree sign, a space before every other unit', () => {
  expect(quantityText(q(8.2, 'deg', null))).toBe('8.2°');
  expect(quantityText(q(450, 'deg/s', null))).toBe('450\u00a0°/s');
  expect(quantityText(q(0.412, 'm', 0.013), 'cm')).toBe('41.2\u00a0±\u00a01.3\u00a0cm');
});

const decimals = (text: string | null) => (text?.split('.')[1] ?? '').length;

test('law: value and uncertainty always stop at the same place, and the text is within half a place of the number', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e5, max: 1e5, noNaN: true }),
      fc.double({ min: 1e-6, max: 1e4, noNaN: true }),
      (value, u) => {
        const shown = formatQuantity(q(value, 'N', u));
        expect(decimals(shown.value)).toBe(decimals(shown.u));
        expect(shown.u?.replace('.', '').replace(/^0+/, '').replace(/0+$/, '').length).toBeLessThanOrEqual(2);
        const read = Number(shown.value.replace('\u2212', '-'));
        expect(Math.abs(read - value)).toBeLessThanOrEqual(0.0501 * u + 1e-9 * Math.abs(value));
      },
    ),
  );
});

test('dates are written as precisely as they are known', () => {
  expect(formatDate('2026-11-25')).toBe('25\u00a0November\u00a02026');
  expect(formatDate('2024-03')).toBe('March\u00a02024');
  expect(formatDate('2024')).toBe('2024');
  expect(formatDate('2026-01-02T23:59:59.000Z')).toBe('2\u00a0January\u00a02026');
});
