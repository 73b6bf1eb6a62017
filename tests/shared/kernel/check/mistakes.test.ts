import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { MISTAKES } from '../../../../shared/kernel/check/mistakes.ts';

const folder = join(import.meta.dirname, '..', '..', '..', '..', 'shared', 'kernel', 'check');
const functions = readdirSync(folder)
  .map((file) => file.replace(/\.ts$/, ''))
  .filter((name) => !['answer', 'mistakes'].includes(name));

test('the list of 36 student mistakes (mechanics dossier, section 6): every number has its check, in order', () => {
  const numbers = MISTAKES.map(({ number }) => number);
  expect([...new Set(numbers)]).toEqual(Array.from({ length: 36 }, (_, i) => i + 1));
  expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
});

test('every check in the folder is on the list once', () => {
  expect(MISTAKES.map(({ check }) => check.name).toSorted()).toEqual(functions.toSorted());
});
