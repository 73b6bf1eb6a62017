import { expect, test } from 'vitest';
import { usualRange } from '../../../shared/assess/usualRange.ts';
import { generalBattery } from '../../../shared/knowledge/screening/generalBattery.ts';

const item = generalBattery.items.find(({ reference }) => reference !== null);
if (!item?.reference) throw new Error('no item has a usual range');
const adult = { birthDate: '1996-01-01', ageBand: null, referenceSex: 'male' } as const;
const on = '2026-11-18';

test.each([
  ['a man of 30', adult, true],
  ['a boy of 15', { ...adult, birthDate: '2011-01-01' }, false],
  ['a man of 70', { ...adult, birthDate: '1956-01-01' }, false],
])('common practice, no source: values of adults are not held against the young and the old: %s', (_, who, has) => {
  expect(usualRange({ ...item, reference: { ...item.reference, sex: null } }, who, on) !== null).toBe(has);
});

test('values taken from men are none for a woman, nor for whom no values are chosen', () => {
  const ofMen = { ...item, reference: { ...item.reference, sex: 'male' as const } };
  expect(usualRange(ofMen, adult, on)).not.toBeNull();
  expect(usualRange(ofMen, { ...adult, referenceSex: 'female' }, on)).toBeNull();
  expect(usualRange(ofMen, { ...adult, referenceSex: 'no-reference' }, on)).toBeNull();
});
