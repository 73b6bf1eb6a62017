import { expect, test } from 'vitest';
import { drawPdf } from '../../../main/report/drawPdf.ts';
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
