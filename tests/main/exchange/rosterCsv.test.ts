import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRosterCsv } from '../../../main/exchange/rosterCsv.ts';
import { DomainError } from '../../../shared/errors.ts';
import type { RosterColumn } from '../../../shared/exchange/roster.ts';

// People and numbers here are invented. How rosters are written is common practice, no source.

const today = '2026-11-25';
const read = (text: string, mapping: RosterColumn[] = []) => readRosterCsv(text, { mapping, today });
const lines = (...rows: string[]) => rows.join('\n');
const dayOf = (i: number) => new Date(Date.UTC(1970, 0, 1 + i)).toISOString().slice(0, 10);
const many = (row: (i: number) => string) => Array.from({ length: 10_000 }, (_, i) => row(i));
const germanRow = (i: number) => `"Müller ${i}, ""Ä""";${(i % 28) + 1}.11.2003;${50 + (i % 50)},5`;
function refusal(text: string): DomainError {
  try {
    read(text);
  } catch (thrown) {
    if (thrown instanceof DomainError) return thrown;
    throw thrown;
  }
  return expect.fail('was not refused');
}

describe('what clubs export, read alike', () => {
  const expected = [
    {
      name: 'Änne Ó Brádaigh',
      isPseudonym: false,
      birthDate: '2003-11-25',
      referenceSex: 'female',
      massKg: 67.4,
      statureM: 1.76,
      dominantSide: 'right',
      sport: 'handball',
      position: 'left wing',
      level: 'second division',
    },
    {
      name: 'Bo Lind',
      isPseudonym: false,
      birthDate: '2001-02-03',
      referenceSex: 'male',
      massKg: 81,
      statureM: 1.9,
      dominantSide: 'left',
      sport: 'handball',
      position: 'goalkeeper',
      level: 'second division',
    },
  ];
  test.each([
    [
      'commas, decimal points, units in brackets',
      lines(
        'Name,Date of birth,Sex,Body mass (kg),Stature (cm),Dominant side,Sport,Position,Level',
        'Änne Ó Brádaigh,2003-11-25,female,67.4,176,right,handball,left wing,second division',
        'Bo Lind,2001-02-03,male,81,190,left,handball,goalkeeper,second division',
      ),
    ],
    [
      'semicolons, decimal commas, byte-order mark, CRLF, German heads',
      '\uFEFFName;Geburtsdatum;Geschlecht;Gewicht [kg];Größe in m;Hand;Sportart;Position;Level\r\n' +
        'Änne Ó Brádaigh;25.11.2003;w;67,4;1,76;R;handball;left wing;second division\r\n' +
        'Bo Lind;3.2.2001;m;81;1,90;L;handball;goalkeeper;second division\r\n',
    ],
    [
      'tabs, quotes, first and last name apart, pounds and inches',
      lines(
        '"First name"\t"Last name"\tDOB\tGender\tWeight (lb)\tHeight_in\tHand\tSport\tPosition\tLevel',
        '"Änne"\t"Ó Brádaigh"\t11/25/2003\tF\t148.591564732\t69.291338583\tright\thandball\t"left wing"\tsecond division',
        '"Bo"\tLind\t02/03/2001\tM\t178.574432470\t74.803149606\tleft\thandball\tgoalkeeper\tsecond division',
      ),
    ],
    [
      'quoted decimal commas, units in the cells, blank lines, a column nobody asked for',
      lines(
        'Athlete,Shirt,Born,Sex,Mass,Stature,Side,Sport,Position,Level',
        '',
        'Änne Ó Brádaigh,7,25 Nov 2003,f,"67,4 kg",176 cm,r,handball,left wing,second division',
        'Bo Lind,1,3 Feb 2001,m,81 kg,1.9 m,l,handball,goalkeeper,second division',
        '',
      ),
    ],
  ])('%s', (_what, text) => {
    const roster = read(text);
    expect(roster.problems).toEqual([]);
    expect(
      roster.rows.map(({ athlete }) => ({
        ...athlete,
        massKg: Number(athlete.massKg?.toFixed(4)),
        statureM: Number(athlete.statureM?.toFixed(4)),
      })),
    ).toEqual(expected);
  });

  test('NIST SP 811, appendix B: 1 lb is 0.45359237 kg and 1 in is 0.0254 m', () => {
    const [row] = read(lines('Name,Weight (lbs),Height (inches)', 'A,200,80')).rows;
    expect(row?.athlete).toMatchObject({ massKg: 90.718474, statureM: 2.032 });
  });

  test('a pseudonym stands for a name and says so', () => {
    const { rows } = read(lines('Code,Mass kg', 'Heron 7,70'));
    expect(rows[0]?.athlete).toMatchObject({ name: 'Heron 7', isPseudonym: true, massKg: 70 });
  });

  test('what is not given stays not given', () => {
    const { rows } = read(lines('Name,Sex,Mass (kg),Dominant side', 'A,,,'));
    expect(rows[0]?.athlete).toMatchObject({ referenceSex: null, massKg: null, dominantSide: null, birthDate: null });
  });

  test('columns not recognised can be named, and recognised ones left out', () => {
    const text = lines('Wer,kg,Position', 'A,70,wing');
    expect(read(text).problems[0]?.words).toContain('“Wer”');
    const { rows, problems } = read(text, [
      { column: 'Wer', field: 'name', reading: null },
      { column: 'kg', field: 'mass', reading: 'kg' },
      { column: 'Position', field: 'ignore', reading: null },
    ]);
    expect(problems).toEqual([]);
    expect(rows[0]?.athlete).toMatchObject({ name: 'A', massKg: 70, position: '' });
  });
});

describe('nothing is guessed', () => {
  test('a mass without a unit asks for one, which the mapping gives', () => {
    const text = lines('Name,Weight', 'A,154');
    expect(read(text).problems).toMatchObject([{ path: 'column Weight' }]);
    const [row] = read(text, [{ column: 'Weight', field: 'mass', reading: '[lb_av]' }]).rows;
    expect(row?.athlete.massKg).toBeCloseTo(69.853, 3);
  });
  test('dates that read both ways are asked about; one that reads one way decides for its column', () => {
    expect(read(lines('Name,DOB', 'A,03/04/2003')).problems).toMatchObject([{ path: 'column DOB' }]);
    const born = (text: string) => read(text).rows.map(({ athlete }) => athlete.birthDate);
    expect(born(lines('Name,DOB', 'A,03/04/2003', 'B,25/04/2003'))).toEqual(['2003-04-03', '2003-04-25']);
    expect(born(lines('Name,DOB', 'A,03/04/2003', 'B,04/25/2003'))).toEqual(['2003-03-04', '2003-04-25']);
  });
});

describe('faults, with line and column', () => {
  test.each([
    ['a word for a mass', lines('Name,Mass (kg)', 'A,70', 'B,heavy'), 'line 3, column Mass (kg)'],
    ['a stature in the wrong unit', lines('Name,Stature (m)', 'A,176'), 'line 2, column Stature (m)'],
    ['a day that is none', lines('Name,DOB', 'A,2003-02-30'), 'line 2, column DOB'],
    ['a birth after today', lines('Name,DOB', 'A,2026-11-26'), 'line 2, column DOB'],
    ['a sex not understood', lines('Name,Sex', 'A,7'), 'line 2, column Sex'],
    ['a row without a name', lines('Name,Sex', 'A,f', ',f'), 'line 3'],
    ['an unquoted decimal comma', lines('Name,Mass (kg)', 'A,70,5'), 'line 2'],
    ['two columns for one thing', lines('Name,Athlete,Sex', 'A,B,f'), 'column Athlete'],
    ['a name too long', lines('Name,Sex', `${'A'.repeat(301)},f`), 'line 2, column Name'],
    [
      'one person with two masses',
      lines('Name,DOB,Mass (kg)', 'Åsa Ek,2003-01-01,60', 'asa  ek,2003-01-01,61'),
      'line 3',
    ],
  ])('%s', (_what, text, path) => {
    expect(read(text).problems.map((problem) => problem.path)).toEqual([path]);
  });

  test('the same row again is noticed and no fault; two dates of birth are two people', () => {
    const { rows, problems } = read(
      lines('Name,DOB', 'Åsa Ek,2003-01-01', 'Bo,2001-01-01', 'ÅSA EK,2003-01-01', 'Bo,2002-01-01'),
    );
    expect(problems).toEqual([]);
    expect(rows.map(({ repeats }) => repeats)).toEqual([null, null, 2, null]);
  });

  test.each([
    ['a picture renamed', `\u0089PNG\r\n\0\0`, 'input-malformed'],
    ['another encoding', 'Name,Sex\nM\uFFFDller,f', 'input-malformed'],
    ['nothing', '', 'input-missing'],
    ['heads alone', 'Name,Sex\n', 'input-missing'],
    ['a quote that never closes', 'Name,Sex\n"A,f\nB,m', 'input-malformed'],
    ['more than 10 000 rows', `Name\n${'x\n'.repeat(10_001)}`, 'input-out-of-range'],
  ])('%s is refused', (_what, text, code) => {
    expect(refusal(text).code).toBe(code);
  });

  test('10 000 rows are read: byte-order mark, semicolons, decimal commas, CRLF, quotes, accents', () => {
    const text = `\uFEFFName;Geburtsdatum;Mass (kg)\r\n${many(germanRow).join('\r\n')}\r\n`;
    const { rows, problems } = read(text);
    expect([rows.length, problems]).toEqual([10_000, []]);
    expect(rows[9999]).toMatchObject({
      line: 10_001,
      athlete: { name: 'Müller 9999, "Ä"', birthDate: '2003-11-04', massKg: 99.5 },
    });
  });

  test('a fault in the last of 10 000 rows is found with its line and column, a repeated row with the line it repeats', () => {
    const text = lines('Name,Mass (kg)', ...many((i) => `Athlete ${i},${i === 9999 ? 'heavy' : 70}`));
    expect(read(text).problems.map(({ path }) => path)).toEqual(['line 10001, column Mass (kg)']);
    const repeated = lines('Name,Mass (kg)', ...many((i) => `Athlete ${i === 9999 ? 0 : i},70`));
    expect(read(repeated).rows[9999]).toMatchObject({ line: 10_001, repeats: 2 });
  });

  test('10 000 people of one name, told apart by their dates of birth, are read in seconds', () => {
    const { rows, problems } = read(lines('Name,DOB', ...many((i) => `Bo Lind,${dayOf(i)}`)));
    expect([rows.length, problems.length, rows.filter(({ repeats }) => repeats !== null).length]).toEqual([
      10_000, 0, 0,
    ]);
  }, 20_000);
});

test('law: 10 000 mutated files are read or refused with a code, never anything else', () => {
  const sample =
    '\uFEFFName;Geburtsdatum;Sex;Mass (kg);Stature [cm]\r\n"Müller, Änne";25.11.2003;f;67,4;176\r\nBo;3.2.2001;m;81;190\r\n';
  const mutation = fc.record({
    at: fc.nat(sample.length),
    cut: fc.nat(12),
    put: fc.oneof(
      fc.string({ unit: 'binary', maxLength: 6 }),
      fc.constantFrom('"', ';', ',', '\n', '\0', '\t', '-', '1e9'),
    ),
  });
  fc.assert(
    fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (mutations) => {
      const text = mutations.reduce((made, { at, cut, put }) => made.slice(0, at) + put + made.slice(at + cut), sample);
      try {
        const { rows, problems } = read(text);
        for (const { athlete } of rows) expect(athlete.name === '' && problems.length === 0).toBe(false);
      } catch (thrown) {
        expect(thrown).toBeInstanceOf(DomainError);
      }
    }),
    { numRuns: 10_000, seed: 7 },
  );
});
