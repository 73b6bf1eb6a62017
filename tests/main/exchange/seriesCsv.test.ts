import { describe, expect, test } from 'vitest';
import { readSeriesCsv } from '../../../main/exchange/seriesCsv.ts';

// RFC 4180 for commas; semicolon, tab and decimal comma as spreadsheets outside English write them (common practice, no
// source).
describe('a table of named columns', () => {
  test.each([
    ['commas', 't,x,y\n0,1,2\n0.5,3,4\n'],
    ['semicolons and decimal commas', 't;x;y\r\n0;1;2\r\n0,5;3;4\r\n'],
    ['tabs, quotes, a byte-order mark and remarks', '\uFEFF# made by hand\n"t"\tx\ty\n0\t1\t2\n0.5\t3\t4\n'],
  ])('divided by %s', (_how, text) => {
    expect(readSeriesCsv(text, ['Y', 't']).columns).toEqual([
      [2, 4],
      [0, 0.5],
    ]);
  });
  test('refuses with the line and the column', () => {
    expect(() => readSeriesCsv('t,x\n0,1\n1,\n', ['t', 'x'])).toThrow(
      expect.objectContaining({ code: 'input-malformed', path: 'line 3, column x' }),
    );
    expect(() => readSeriesCsv('t,x\n0,1\n', ['t', 'z'])).toThrow(/needs a column called z; the columns are “t”, “x”/);
    expect(() => readSeriesCsv('t,x\n', ['t'])).toThrow(/below the header there are none/);
    expect(() => readSeriesCsv('', ['t'])).toThrow(/the file is empty/);
    expect(() => readSeriesCsv('t,x\n0,1,5\n', ['t'])).toThrow(/decimal commas need another delimiter/);
  });
});
