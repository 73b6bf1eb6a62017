import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readForceCsv } from '../../../main/exchange/forceCsv.ts';
import { DomainError } from '../../../shared/errors.ts';

const auto = { columns: [], rateHz: null };
const lines = (...rows: string[]) => rows.join('\n');
/** A refusal with the code, and a message and place to look for. */
function refusal(text: string, options: Parameters<typeof readForceCsv>[1] = auto): DomainError {
  try {
    readForceCsv(text, options);
  } catch (error) {
    if (error instanceof DomainError) return error;
  }
  return expect.fail('was not refused');
}

describe('what laboratories write, read alike', () => {
  const expected = { rateHz: 1000, plates: [[633.21, 628.46, 630]] };
  test.each([
    ['comma, decimal point', lines('time_s,fz_N', '0,633.21', '0.001,628.46', '0.002,630')],
    ['semicolon, decimal comma', lines('time_s;fz_N', '0;633,21', '0,001;628,46', '0,002;630')],
    ['tab', lines('time_s\tfz_N', '0\t633.21', '0.001\t628.46', '0.002\t630')],
    ['tab, decimal comma', lines('time_s\tfz_N', '0\t633,21', '0,001\t628,46', '0,002\t630')],
    ['byte-order mark and CRLF', `\uFEFFtime_s,fz_N\r\n0,633.21\r\n0.001,628.46\r\n0.002,630\r\n`],
    ['quoted cells', lines('"time_s","fz_N"', '"0","633.21"', '"0.001","628.46"', '"0.002","630"')],
    ['blank lines and spaces', lines('time_s , fz_N', '', '0 , 633.21', '0.001 , 628.46', '', '0.002 , 630', '')],
    ['a row of units', lines('Time,Fz', 's,N', '0,633.21', '0.001,628.46', '0.002,630')],
    ['units in brackets', lines('Time,Fz', '[s],[N]', '0,633.21', '0.001,628.46', '0.002,630')],
    [
      'lines above the header',
      lines('Jump 3', 'Recorded 2026', 'Time (s),Fz (N)', '0,633.21', '0.001,628.46', '0.002,630'),
    ],
    ['kilonewtons and milliseconds', lines('time [ms],fz [kN]', '0,0.63321', '1,0.62846', '2,0.630')],
    ['exponents', lines('time_s,fz_N', '0,6.3321e2', '1e-3,6.2846E+2', '2e-3,630')],
  ])('%s', (_what, text) => {
    const read = readForceCsv(text, auto);
    expect(read.rateHz).toBeCloseTo(expected.rateHz, 6);
    expect(read.plates[0]?.map((value) => Number(value.toFixed(6)))).toEqual(expected.plates[0]);
    expect(read.warnings).toEqual([]);
  });

  test('one column and no time: the rate must be given', () => {
    const text = lines('fz', '633.21', '628.46');
    expect(readForceCsv(text, { columns: [], rateHz: 600 })).toMatchObject({ rateHz: 600, plates: [[633.21, 628.46]] });
    expect(refusal(text).code).toBe('input-missing');
  });
  test('one column with decimal commas', () => {
    expect(readForceCsv(lines('fz', '633,21', '628,46'), { columns: [], rateHz: 600 }).plates).toEqual([
      [633.21, 628.46],
    ]);
  });
  test('no header: columns are numbered and must be named', () => {
    const text = lines('0,633.21', '0.001,628.46');
    expect(refusal(text).message).toContain('“column 1”, “column 2”');
    expect(readForceCsv(text, { columns: ['column 2'], rateHz: 1000 }).plates).toEqual([[633.21, 628.46]]);
  });
});

const row = (n: number, time: string) => [time, ...Array.from({ length: n - 1 }, (_, k) => String(100 + k))].join(',');

describe('columns', () => {
  test.each([
    [['time', 'Fz'], ['Fz']],
    [
      ['t', 'fz_left_N', 'fz_right_N'],
      ['fz_left_N', 'fz_right_N'],
    ],
    [
      ['Time', 'FzLeft', 'FzRight'],
      ['FzLeft', 'FzRight'],
    ],
    [
      ['time', 'Fx1', 'Fy1', 'Fz1', 'Mx1', 'Fx2', 'Fy2', 'Fz2'],
      ['Fz1', 'Fz2'],
    ],
    [['time', 'vGRF'], ['vGRF']],
    [['time', 'force_x', 'force_y', 'force_z'], ['force_z']],
    // Sums beside the plates would count every newton twice.
    [
      ['time', 'Fz left', 'Fz right', 'Fz total'],
      ['Fz left', 'Fz right'],
    ],
    [['time', 'Force total'], ['Force total']],
  ])('common practice, no source: of %j it takes %j', (header, columns) => {
    const text = lines(header.join(','), row(header.length, '0'), row(header.length, '0.001'));
    const read = readForceCsv(text, auto);
    expect(read.columns).toEqual(columns);
    expect(read.available).toEqual(header);
  });
  test('named ones win, whatever they are called, in any case', () => {
    const text = lines('time_s,a,b', '0,1,2', '0.01,3,4');
    expect(readForceCsv(text, { columns: ['B', 'a'], rateHz: null }).plates).toEqual([
      [2, 4],
      [1, 3],
    ]);
  });
  test('a name that is not there is answered with those that are', () => {
    const error = refusal(lines('time_s,a', '0,1', '1,2'), { columns: ['fz'], rateHz: null });
    expect(error).toMatchObject({ code: 'input-missing', path: 'column fz' });
    expect(error.message).toContain('“time_s”, “a”');
  });
});

describe('refusals', () => {
  test('no force column', () => {
    expect(refusal(lines('time_s,emg', '0,1', '0.001,2'))).toMatchObject({ code: 'input-missing' });
  });
  test('a header but no rows', () => {
    expect(refusal('time_s,fz_N\n').message).toContain('below the header “time_s”, “fz_N” there are none');
  });
  test('an empty file', () => expect(refusal('').message).toContain('empty'));
  test('a binary file', () => {
    expect(refusal('PK\u0003\u0004\0\0')).toMatchObject({ code: 'input-malformed' });
  });
  test('a word among numbers: line and column', () => {
    expect(refusal(lines('time_s,fz_N', '0,633', '0.001,n/a', '0.002,630'))).toMatchObject({
      code: 'input-malformed',
      path: 'line 3, column fz_N',
    });
  });
  test('an empty cell: line and column', () => {
    expect(refusal(lines('time_s,fz_N', '0,633', '', '0.001,', '0.002,630')).path).toBe('line 4, column fz_N');
  });
  test('times that fall', () => {
    expect(refusal(lines('time_s,fz_N', '0,1', '0.002,1', '0.001,1')).path).toBe('line 4, column time_s');
  });
  test('a gap in the samples', () => {
    const rows = Array.from({ length: 50 }, (_, k) => `${(k < 30 ? k : k + 5) / 1000},600`);
    const error = refusal(lines('time_s,fz_N', ...rows));
    expect(error).toMatchObject({ code: 'input-malformed', path: 'line 32, column time_s' });
    expect(error.message).toContain('evenly spaced');
  });
  test('a rate of zero', () => {
    expect(refusal(lines('fz', '1', '2'), { columns: [], rateHz: 0 }).code).toBe('input-out-of-range');
  });
  test('more plates than a laboratory has', () => {
    const text = lines('fz1,fz2,fz3,fz4,fz5', '1,1,1,1,1', '1,1,1,1,1');
    expect(refusal(text, { columns: [], rateHz: 1000 }).message).toContain('Name the columns');
  });
});

describe('times', () => {
  test('450 Hz written to a microsecond', () => {
    const rows = Array.from({ length: 4500 }, (_, k) => `${(k / 450).toFixed(6)},600`);
    expect(readForceCsv(lines('time_s,fz_N', ...rows), auto).rateHz).toBeCloseTo(450, 3);
  });
  test('600 Hz written to a millisecond: the rate comes from both ends, and it says so', () => {
    const rows = Array.from({ length: 1200 }, (_, k) => `${(k / 600).toFixed(3)},600`);
    const read = readForceCsv(lines('time_s,fz_N', ...rows), auto);
    expect(read.rateHz).toBeCloseTo(600, 0);
    expect(read.warnings[0]).toContain('only');
  });
  test('a rate given against another in the file: used, but said', () => {
    const read = readForceCsv(lines('time_s,fz_N', '0,1', '0.001,1', '0.002,1'), { columns: [], rateHz: 500 });
    expect(read.rateHz).toBe(500);
    expect(read.warnings[0]).toContain('1000.0');
  });
});

test('law: what is written is read back, in any of three dialects', () => {
  const dialect = fc.constantFrom([',', '.'], [';', ','], ['\t', ',']);
  fc.assert(
    fc.property(
      dialect,
      fc.array(fc.double({ min: -5000, max: 5000, noNaN: true }), { minLength: 2, maxLength: 40 }),
      ([delimiter = ',', mark = '.'], forces) => {
        const rows = forces.map((force, k) =>
          [k / 1000, force].map((n) => n.toFixed(3).replace('.', mark)).join(delimiter),
        );
        const read = readForceCsv(lines(`time_s${delimiter}fz_N`, ...rows), auto);
        expect(read.plates[0]).toEqual(forces.map((force) => Number(force.toFixed(3))));
      },
    ),
  );
});
