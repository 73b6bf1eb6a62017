import { expect, test } from 'vitest';
import { drawPdf } from '../../../main/report/drawPdf.ts';
import { layOut, openFont } from '../../../main/report/openFonts.ts';
import type { PlacedReport } from '../../../shared/report/page.ts';
import { SAMPLE_CREATED_AT } from '../../support/sampleCase.ts';

const saying = (text: string): PlacedReport => ({
  title: 'Letters',
  language: 'en-GB',
  author: '',
  subject: '',
  keywords: '',
  createdAt: SAMPLE_CREATED_AT,
  pages: [
    {
      number: 1,
      width: 595,
      height: 842,
      content: [
        {
          role: 'P',
          id: 'p',
          children: [],
          marks: [{ mark: 'text', x: 72, baseline: 72, text, face: 'sans', size: 10, ink: 'ink', width: 50 }],
        },
      ],
    },
  ],
});
const drawn = async (text: string) => Buffer.from(await drawPdf(saying(text))).toString('latin1');

test('Unicode: micro sign and mu, ohm and omega share a glyph; what a document says of its letters does not hang on the document before', async () => {
  const first = { sign: await drawn('\u00b5 \u2126'), letter: await drawn('\u03bc \u03a9') };
  const again = { letter: await drawn('\u03bc \u03a9'), sign: await drawn('\u00b5 \u2126') };
  expect(again).toEqual(first);
  expect(first.sign).not.toBe(first.letter);
});

const glyphs = (text: string) => layOut(openFont('arabic'), text).glyphs.map(({ name }) => name);

test('Unicode, Arabic Presentation Forms-B: letters join as their names say, from right to left; figures are not turned round', () => {
  // SEEN initial FEB3, LAM WITH ALEF final FEFC, MEEM isolated; BEH initial FE91, NOON final FEE6.
  expect(glyphs('سلام')).toEqual(['uni0645', 'uniFEFC', 'uniFEB3']);
  expect(glyphs('بن')).toEqual(['uniFEE6', 'uniFE91']);
  // ARABIC-INDIC DIGIT TWO 0662, FOUR 0664.
  expect(glyphs('٢٤')).toEqual(['uni0662', 'uni0664']);
});
