import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { measuresCsv } from '../../../shared/exchange/measuresCsv.ts';
import { sampleAssessment } from '../../support/sampleCase.ts';
import type { Fact } from '../../../shared/assess/assessment.ts';
import { measured } from '../../../shared/quantity.ts';

const fact = (label: string, value: Fact['value']): Fact => ({
  key: label,
  measure: 'knee.flexion',
  label,
  movement: null,
  phase: null,
  side: 'left',
  value,
  displayUnit: 'deg',
  height: null,
  takenOn: null,
  from: { kind: 'movementTrial', id: 'x' },
  provenance: 'digitised',
  takenAs: null,
});
const read = (facts: readonly Fact[]) => parse<Record<string, string>>(measuresCsv(facts, null), { columns: true });

test('RFC 4180: a general reader of such tables reads back every label, comma, quote and line feed in it', () => {
  const { facts } = sampleAssessment();
  expect(read(facts).map((row) => row['label'])).toEqual(facts.map(({ label }) => label));
  const odd = 'Flexion, "deep"\nsecond line';
  expect(read([fact(odd, { kind: 'flag', flag: true })])[0]).toMatchObject({ label: odd, value: 'yes' });
});

test('angles in degrees with their uncertainty (π/2 is 90°); what is not known has its reason and no number', () => {
  const reading = measured('φ', 'Flexion', Math.PI / 2, 'rad', Math.PI / 180);
  const [known, unknown] = read([
    fact('Knee flexion', { kind: 'number', reading }),
    fact('Knee flexion', { kind: 'number', reading: { unknown: 'no points there' } }),
  ]);
  expect(Number(known?.['value'])).toBeCloseTo(90, 10);
  expect(Number(known?.['standard_uncertainty'])).toBeCloseTo(1, 10);
  expect(known?.['unit']).toBe('deg');
  expect(unknown).toMatchObject({ value: '', reason: 'no points there' });
});

test('a label that a spreadsheet would run as a formula is text', () => {
  expect(measuresCsv([fact('=1+1', { kind: 'flag', flag: false })], null)).toContain(`'=1+1`);
});
