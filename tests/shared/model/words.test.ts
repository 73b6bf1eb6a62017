import { expect, test } from 'vitest';
import { KINDS, RECORDS } from '../../../shared/model/records.ts';
import { fieldWords } from '../../../shared/model/words.ts';

test.each([
  ['flightTimeS', 'flight time'],
  ['massKg', 'body mass'],
  ['captureRateHz', 'capture rate'],
  ['targetHeightM', 'target height'],
  ['ballId', 'ball'],
  ['painNrs', 'pain'],
])('%s is %s', (field, words) => {
  expect(fieldWords(field)).toBe(words);
});

test('every field that can be edited is called by words, without a unit, an abbreviation or a dangling preposition', () => {
  const edited = KINDS.filter((kind) => kind !== 'report' && kind !== 'media');
  const fields = new Set(edited.flatMap((kind) => Object.keys(RECORDS[kind].schema.shape)));
  for (const made of ['id', 'mediaSha256']) fields.delete(made);
  for (const field of fields) {
    expect(fieldWords(field)).toMatch(/^[a-z ]+$/);
    expect(fieldWords(field)).not.toMatch(/\b(on|by|is|has|had|kg|hz|nrs|si|id|[sm])$/);
  }
});
