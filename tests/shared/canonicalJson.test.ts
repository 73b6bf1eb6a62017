import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from '../../shared/canonicalJson.ts';

test('law: parsing gives the value back', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

test('law: the order in which keys were written does not show, that of a list does', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (record) => {
      const reversed = Object.fromEntries(Object.entries(record).toReversed());
      expect(canonicalJson(reversed)).toBe(canonicalJson(record));
    }),
  );
  expect(canonicalJson([1, 2])).not.toBe(canonicalJson([2, 1]));
});
