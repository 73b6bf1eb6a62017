import { expect, test } from 'vitest';
import { sequenceOf } from '../../../shared/film/sequenceOf.ts';

// What counts as a sequence is our own convention; no source.

const named = (...names: string[]) => sequenceOf(names.map((name) => ({ name })));

test('our convention: the last number in the name orders the pictures, as a number', () => {
  const { inOrder, fileName, pictures } = named('2024_10.png', '2024_9.png', '2024_11.png');
  expect(inOrder.map(({ name }) => name)).toEqual(['2024_9.png', '2024_10.png', '2024_11.png']);
  expect([fileName, pictures]).toEqual(['2024_9.png to 2024_11.png', 3]);
});

test('our convention: one file is a film, unless it is a picture', () => {
  expect(named('throw.mp4').pictures).toBeNull();
  expect(named('throw.jpg').pictures).toBe(1);
});

test.each([
  [['a1.png', 'a3.png'], 'After picture a1.png comes a3.png'],
  [['a1.png', 'a1.PNG'], 'one is there twice'],
  [['a1.png', 'b2.png'], 'b2.png does not fit'],
  [['a1.png', 'a2.jpg'], 'a2.jpg does not fit'],
  [['a.png', 'b.png'], 'does not fit'],
  [['one.mp4', 'two.mp4'], 'Bring in one film at a time'],
  [[], 'There is no film'],
])('our convention: %j is refused, saying why', (names, words) => {
  expect(() => named(...names)).toThrow(words);
});
