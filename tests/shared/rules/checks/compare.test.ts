import { expect, test } from 'vitest';
import { compare } from '../../../../shared/rules/checks/compare.ts';

test('dossier, evaluation order: "between" counts both ends in, "outside" is below the first or above the second', () => {
  expect(compare(48, 'between', [48, 56]).isMet).toBe(true);
  expect(compare(56, 'between', [48, 56]).isMet).toBe(true);
  expect(compare(48, 'outside', [48, 56]).isMet).toBe(false);
  expect(compare(47.9, 'outside', [48, 56]).isMet).toBe(true);
});

test('by definition: strict and weak comparisons differ only on the limit itself', () => {
  expect(compare(10, '<', [10]).isMet).toBe(false);
  expect(compare(10, '<=', [10]).isMet).toBe(true);
  expect(compare(10, '>', [10]).isMet).toBe(false);
  expect(compare(10, '>=', [10]).isMet).toBe(true);
});

test('by definition: the distance is to the nearest limit', () => {
  expect(compare(50, 'between', [48, 56]).distance).toBe(2);
  expect(compare(60, 'between', [48, 56]).distance).toBe(4);
});

test('refuses what is not a number, and limits that do not fit the comparison', () => {
  expect(() => compare(Number.NaN, '<', [1])).toThrow(/finite/);
  expect(() => compare(1, '<', [1, 2])).toThrow(/one limit/);
  expect(() => compare(1, 'between', [1])).toThrow(/two limits/);
});
