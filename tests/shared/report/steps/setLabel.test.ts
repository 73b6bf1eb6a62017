import { expect, test } from 'vitest';
import { loadFontMetrics } from '../../../../main/report/fontMetrics.ts';
import { setLabel } from '../../../../shared/report/steps/setLabel.ts';

const metrics = loadFontMetrics();

test('the typefaces’ own tables: a label keeps its face where that shows it, takes that of its script where only that does', () => {
  expect(setLabel('Take-off\u00a01', 'sansBold', metrics)).toEqual({ text: 'Take-off 1', face: 'sansBold' });
  expect(setLabel('ניתור', 'sansBold', metrics)).toEqual({ text: 'ניתור', face: 'hebrewBold', rightToLeft: true });
  expect(setLabel('قفزة ٢', 'sans', metrics)).toEqual({ text: 'قفزة ٢', face: 'arabic', rightToLeft: true });
});

test('what no typeface has becomes a box a letter, what is meant beside it', () => {
  expect(setLabel('跳 2', 'serif', metrics)).toEqual({ text: '□ 2', face: 'sans', actual: '跳 2' });
});
