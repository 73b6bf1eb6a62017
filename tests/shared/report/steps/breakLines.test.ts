import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { FontMetrics } from '../../../../shared/report/metrics.ts';
import { plain } from '../../../../shared/report/runs.ts';
import { STYLES, type TypeStyle } from '../../../../shared/report/sheet.ts';
import { breakLines, widestWord, widthOf } from '../../../../shared/report/steps/breakLines.ts';

/** Every letter as wide as the type is high; everything but Hebrew is there, and the box only in sans. */
const square: FontMetrics = {
  width: (text, _face, size) => Array.from(text).length * size,
  ascent: (_face, size) => size * 0.8,
  descent: (_face, size) => size * 0.2,
  covers: (codePoint, face) => (codePoint < 0x590 || codePoint > 0x5ff) && (codePoint !== 0x25a1 || face === 'sans'),
};
const ten: TypeStyle = { family: 'sans', isBold: false, size: 10, leading: 12, ink: 'ink' };
const lines = (text: string, width: number) =>
  breakLines(plain(text), ten, width, square).map((line) => line.marks.map((mark) => mark.text).join(''));

test('words of 3, 3 and 3 letters of 10 into 70 → two lines; the space at the end of a line does not count', () => {
  expect(lines('abc def ghi', 70)).toEqual(['abc def ', 'ghi']);
});

test('a word of 7 letters of 10 into 30 → broken where it must be (3 + 3 + 1)', () => {
  expect(lines('abcdefg', 30)).toEqual(['abc', 'def', 'g']);
});

test('a line may end after a hyphen between letters, not inside a case number', () => {
  expect(lines('back-court', 60)).toEqual(['back-', 'court']);
  expect(lines('ab 2026-014', 80)).toEqual(['ab ', '2026-014']);
});

test('a no-break space holds value and unit together, and is written as a plain space', () => {
  expect(lines('at 41\u00a0cm now', 60)).toEqual(['at ', '41 cm ', 'now']);
});

test('a line feed starts a new line, also an empty one', () => {
  expect(lines('a\n\nb', 100)).toEqual(['a', '', 'b']);
});

test('one setting inside a word does not part it: value, small ± and unit stay on one line', () => {
  const runs = [{ text: 'x 41' }, { text: '\u00a0±\u00a01', scale: 0.5 }, { text: '\u00a0cm' }];
  const set = breakLines(runs, ten, 80, square).map((line) => line.marks.map((mark) => mark.text).join(''));
  expect(set).toEqual(['x ', '41 ± 1 cm']);
});

test('letters that no face has become boxes that carry what is meant', () => {
  const [line] = breakLines(plain('שלום ok'), ten, 200, square);
  expect(line?.marks.map((mark) => [mark.text, mark.actual])).toEqual([
    ['□□□□', 'שלום'],
    [' ok', undefined],
  ]);
});

test('law: for any text no line is wider than the column, no letter is lost, and broken text is as wide as its widest line', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 200, unit: fc.constantFrom(...Array.from('abc defghi-j–/.0123')) }),
      fc.integer({ min: 10, max: 300 }),
      (text, width) => {
        const set = breakLines(plain(text), STYLES.body, width, square);
        for (const line of set) expect(line.width).toBeLessThanOrEqual(width + 1e-9);
        expect(set.map((line) => line.marks.map((mark) => mark.text).join('')).join('')).toBe(text);
        expect(widestWord(plain(text), STYLES.body, square)).toBeLessThanOrEqual(
          widthOf(plain(text), STYLES.body, square) + 1e-9,
        );
      },
    ),
  );
});
