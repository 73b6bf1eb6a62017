import { DomainError } from '../../shared/errors.ts';
import {
  MOST_ATHLETES,
  ROSTER_FIELD_WORDS,
  ROSTER_READINGS,
  type Roster,
  type RosterAthlete,
  type RosterColumn,
  type RosterField,
  type RosterReading,
  type RosterRow,
  rosterAthlete,
} from '../../shared/exchange/roster.ts';
import { withUnit } from '../../shared/format/number.ts';
import { parseDay, parseNumber, type Typed } from '../../shared/format/typed.ts';
import { plausibleRangeSi, possibleRangeSi } from '../../shared/knowledge/measures/index.ts';
import { convert, type Unit, UNITS } from '../../shared/units.ts';
import { columnHead, unitNamed } from './columnHead.ts';
import { type DelimitedRow, readDelimited } from './delimited.ts';
import { peopleOf, personName } from './samePerson.ts';

export interface RosterOptions {
  /** Decisions about columns; columns not named here are recognised by their head. */
  readonly mapping: readonly RosterColumn[];
  /** Nobody is born after this day. */
  readonly today: string;
}

/** More would bury the first. */
const MOST_PROBLEMS = 50;
const MOST_COLUMNS = 100;

/** Heads in lower case without accents and units, in the languages that exported rosters tend to use. */
const HEADS: Readonly<Record<RosterField, RegExp>> = {
  'first-name': /^(first|given|fore) ?name$|^vorname$|^prenom$/,
  'last-name': /^(last|family|sur) ?name$|^nachname$|^nom( de famille)?$/,
  pseudonym: /^(pseudonym|alias|code|athlete ?(id|code)|id)$/,
  name: /^((athlete|player|full|client)('s)? ?)?name$|^(athlete|player|spieler(in)?|joueu(r|se))$/,
  'birth-date': /^(date of birth|birth ?(date|day)|dob|born( on)?|geburts(datum|tag)|date de naissance)$/,
  'reference-sex': /^(sex|gender|sex for reference( values)?|reference sex|geschlecht|sexe)$/,
  mass: /^(body ?)?(mass|weight)$|^(korper)?(masse|gewicht)$|^poids$/,
  stature: /^((standing|body) ?)?(stature|height)$|^(korper)?grosse$|^taille$/,
  'dominant-side': /^(dominan(t|ce)( ?(side|hand|arm))?|hand(edness)?|side)$/,
  sport: /^(sport|sportart|discipline)$/,
  position: /^(position|playing position|event|role|poste)$/,
  level: /^(level|league|division|niveau)$/,
};

/**
 * Reads a squad from delimited text: one row an athlete, the first row the heads. Takes commas, semicolons or tabs,
 * decimal points or commas, byte-order marks, quotes. A mass or a stature needs a unit, in its head or in the mapping;
 * nothing is guessed. Every fault is listed with its line and column; a roster with a fault is for showing only.
 *
 * @throws DomainError 'input-malformed' for something that is no table or not UTF-8, 'input-missing' for no rows,
 *   'input-out-of-range' for more than MOST_ATHLETES rows
 */
export function readRosterCsv(text: string, { mapping, today }: RosterOptions): Roster {
  const [head, ...lines] = readDelimited(text, 'The roster').rows;
  if (head === undefined || lines.length === 0) {
    throw new DomainError(
      'input-missing',
      `The roster needs a row of column heads and below it a row for each athlete; this file has ${head === undefined ? 'neither' : 'only one row'}.`,
    );
  }
  refuseBroken([head, ...lines]);
  if (lines.length > MOST_ATHLETES || head.cells.length > MOST_COLUMNS) {
    throw new DomainError(
      'input-out-of-range',
      `A roster holds at most ${MOST_ATHLETES} athletes in at most ${MOST_COLUMNS} columns; this file has ${lines.length} rows and ${head.cells.length} columns. Divide it and import the parts.`,
    );
  }
  const problems: Problem[] = [];
  const columns = chooseColumns(head, lines, mapping, problems);
  const rows = lines.flatMap((line) => {
    if (line.cells.length > head.cells.length) {
      problems.push({
        path: `line ${line.line}`,
        words: `has ${line.cells.length} cells and the head only ${head.cells.length}. Put text that holds the dividing sign into quotes.`,
      });
    }
    const row = readRow(line, columns, today, problems);
    return row === null ? [] : [row];
  });
  return {
    columns: columns.map(({ column, field, reading }) => ({ column, field, reading })),
    rows: withRepeats(rows, problems),
    problems: problems.slice(0, MOST_PROBLEMS),
  };
}

type Problem = Roster['problems'][number];
interface Column {
  readonly column: string;
  readonly index: number;
  readonly field: RosterField | null;
  readonly reading: RosterReading | null;
}

/** What a file saved in another encoding leaves where an accent was. */
function refuseBroken(rows: readonly DelimitedRow[]): void {
  const broken = rows.find(({ cells }) => cells.some((cell) => cell.includes('\uFFFD')));
  if (broken === undefined) return;
  throw new DomainError(
    'input-malformed',
    'The roster is not in UTF-8: some letters cannot be read. Save it as “CSV UTF-8” and import it again.',
    `line ${broken.line}, column ${broken.cells.findIndex((cell) => cell.includes('\uFFFD')) + 1}`,
  );
}

function chooseColumns(
  head: DelimitedRow,
  lines: readonly DelimitedRow[],
  mapping: readonly RosterColumn[],
  problems: Problem[],
): Column[] {
  const names = head.cells.map((cell, index) => (cell === '' ? `column ${index + 1}` : cell.slice(0, 300)));
  for (const { column } of mapping) {
    if (!names.includes(column)) {
      problems.push({ path: `column ${column}`, words: `is not in this file; it has ${list(names)}.` });
    }
  }
  const columns = names.map((column, index): Column => {
    const decided = mapping.find((one) => one.column === column);
    const { words, unit } = columnHead(column);
    const field = decided === undefined ? recognised(words) : decided.field === 'ignore' ? null : decided.field;
    if (field === null) return { column, index, field, reading: null };
    const cells = lines.map(({ cells }) => cells[index] ?? '');
    return { column, index, field, reading: readingOf(field, decided?.reading ?? unit, cells) };
  });
  for (const { column, field, reading, index } of columns) {
    if (field === null) continue;
    const where = `column ${column}`;
    const earlier = columns.find((one) => one.field === field && one.index < index);
    if (earlier !== undefined) {
      problems.push({
        path: where,
        words: `and column ${earlier.column} are both taken for the ${ROSTER_FIELD_WORDS[field]}. Leave one out.`,
      });
    } else if (reading === null && (field === 'mass' || field === 'stature') && lines.some(hasBareNumber(index))) {
      const units = ROSTER_READINGS[field].map((unit) => UNITS[unit].label).join(', ');
      problems.push({
        path: where,
        words: `needs a unit (${units}): choose it here, or write it into the head, “${column} (${UNITS[ROSTER_READINGS[field][0]].label})”.`,
      });
    } else if (reading === null && field === 'birth-date') {
      problems.push({
        path: where,
        words: 'has dates that may be day first or month first: choose which, or write them year first, 2003-11-25.',
      });
    }
  }
  if (!columns.some(({ field }) => isOfName(field))) {
    problems.push({
      path: `line ${head.line}`,
      words: `no column of names or pseudonyms is recognised among ${list(names)}. Choose it.`,
    });
  }
  return columns;
}

/** Whether a row holds a number here that does not say its own unit. */
function hasBareNumber(index: number) {
  return ({ cells }: DelimitedRow) => /\d$/.test(cells[index] ?? '');
}

function isOfName(field: RosterField | null): boolean {
  return field === 'name' || field === 'pseudonym' || field === 'last-name' || field === 'first-name';
}

function list(names: readonly string[]): string {
  const shown = names.slice(0, 12).map((name) => `“${name.slice(0, 40)}”`);
  return `${shown.join(', ')}${names.length > 12 ? ' and more' : ''}`;
}

function recognised(words: string): RosterField | null {
  const found = Object.entries(HEADS).find(([, pattern]) => pattern.test(words));
  return found === undefined ? null : (found[0] as RosterField);
}

const DAY_PARTS = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/;

/** The unit of a column of numbers; for dates, which part comes first, as far as the dates themselves show it. */
function readingOf(
  field: RosterField,
  given: RosterReading | Unit | null,
  cells: readonly string[],
): RosterReading | null {
  if (field !== 'mass' && field !== 'stature' && field !== 'birth-date') return null;
  const known = ROSTER_READINGS[field].find((one) => one === given);
  if (known !== undefined) return known;
  if (field !== 'birth-date') return null;
  const parts = cells.map((cell) => DAY_PARTS.exec(cell)).filter((found) => found !== null);
  if (parts.length === 0) return 'year-first';
  const canBeDay = parts.every((part) => Number(part[2]) <= 12);
  const canBeMonth = parts.every((part) => Number(part[1]) <= 12);
  return canBeDay === canBeMonth ? null : canBeDay ? 'day-first' : 'month-first';
}

function readRow(line: DelimitedRow, columns: readonly Column[], today: string, problems: Problem[]): Row | null {
  const before = problems.length;
  const questions: string[] = [];
  const take = <T>(field: RosterField, read: (cell: string, column: Column) => Typed<T | null>): T | null => {
    const column = columns.find((one) => one.field === field);
    const cell = column === undefined ? '' : (line.cells[column.index] ?? '');
    if (column === undefined || cell === '') return null;
    const typed = read(cell, column);
    if ('value' in typed) return typed.value;
    problems.push({
      path: `line ${line.line}, column ${column.column}`,
      words: `“${cell.slice(0, 40)}”: ${typed.refusal}`,
    });
    return null;
  };
  const words = (field: RosterField) =>
    take(
      field,
      (cell): Typed<string> => (cell.length > 300 ? { refusal: 'at most 300 characters fit.' } : { value: cell }),
    ) ?? '';
  const quantity = (field: 'mass' | 'stature', measure: string, unit: Unit) =>
    take(field, (cell, { reading }) => readQuantity(cell, reading as Unit | null, measure, unit, questions));

  const pseudonym = words('pseudonym');
  const given = words('name') || [words('first-name'), words('last-name')].filter((part) => part !== '').join(' ');
  const athlete: RosterAthlete = {
    name: given || pseudonym,
    isPseudonym: given === '' && pseudonym !== '',
    birthDate: take('birth-date', (cell, { reading }) => readBirthDate(cell, reading, today)),
    referenceSex: take('reference-sex', readSex),
    massKg: quantity('mass', 'body.mass', 'kg'),
    statureM: quantity('stature', 'body.stature', 'm'),
    dominantSide: take('dominant-side', readSide),
    sport: words('sport'),
    position: words('position'),
    level: words('level'),
  };
  if (athlete.name === '' && problems.length === before && columns.some(({ field }) => isOfName(field))) {
    problems.push({ path: `line ${line.line}`, words: 'has no name and no pseudonym.' });
  }
  if (problems.length > before) return null;
  const parsed = rosterAthlete.safeParse(athlete);
  if (parsed.success) return { line: line.line, athlete: parsed.data, questions };
  const issue = parsed.error.issues[0];
  problems.push({
    path: `line ${line.line}`,
    words: `${issue?.path.join('.')}: ${issue?.message ?? 'not understood'}.`,
  });
  return null;
}

type Row = Omit<RosterRow, 'repeats'>;

function readQuantity(
  cell: string,
  reading: Unit | null,
  measure: string,
  unit: Unit,
  questions: string[],
): Typed<number | null> {
  // `78 kg` in a cell says its own unit, which then must not contradict the column's.
  const parts = /^(.*?\d)\s*(\p{L}+)$/u.exec(cell);
  const own = unitNamed(parts?.[2] ?? '');
  if (parts !== null && (own === null || UNITS[own].dimension !== UNITS[unit].dimension)) {
    return { refusal: `“${parts[2]?.slice(0, 20)}” is not a unit that can stand here.` };
  }
  const typed = parseNumber(parts?.[1] ?? cell);
  const from = own ?? reading;
  // A column without a unit is one problem of the column, not one of every row.
  if ('refusal' in typed || typed.value === null || from === null) return 'refusal' in typed ? typed : { value: null };
  const value = Number(convert(typed.value, from, unit).toPrecision(12));
  const say = (si: number) => withUnit(String(Number(convert(si, unit, from).toPrecision(4))), UNITS[from].label);
  const possible = possibleRangeSi(measure);
  if (possible !== null && (value < possible[0] || value > possible[1])) {
    return { refusal: `must lie between ${say(possible[0])} and ${say(possible[1])}. Is the unit right?` };
  }
  const plausible = plausibleRangeSi(measure);
  if (plausible !== null && (value < plausible[0] || value > plausible[1])) {
    questions.push(
      `${say(value)} is unusual: most lie between ${say(plausible[0])} and ${say(plausible[1])}. Is it right?`,
    );
  }
  return { value };
}

function readBirthDate(cell: string, reading: RosterReading | null, today: string): Typed<string | null> {
  const parts = DAY_PARTS.exec(cell);
  if (parts !== null && reading === null) return { value: null };
  if (parts !== null && reading === 'year-first') return { refusal: 'write it year first, 2003-11-25.' };
  const [, first = '', second = '', year = ''] = parts ?? [];
  const ordered = reading === 'month-first' ? `${year}-${first}-${second}` : `${year}-${second}-${first}`;
  const typed = parseDay(parts === null ? cell : ordered);
  if ('value' in typed && typed.value !== null && typed.value > today) return { refusal: 'is after today.' };
  return typed;
}

function readSex(cell: string): Typed<RosterAthlete['referenceSex']> {
  const word = personName(cell);
  if (['f', 'female', 'w', 'woman', 'girl'].includes(word)) return { value: 'female' };
  if (['m', 'male', 'man', 'boy'].includes(word)) return { value: 'male' };
  if (['no reference', 'none', 'x', 'no-reference'].includes(word)) return { value: 'no-reference' };
  return { refusal: 'write female, male or no reference.' };
}

function readSide(cell: string): Typed<RosterAthlete['dominantSide']> {
  const word = personName(cell);
  if (['l', 'left'].includes(word)) return { value: 'left' };
  if (['r', 'right'].includes(word)) return { value: 'right' };
  if (['b', 'both'].includes(word)) return { value: 'both' };
  return { refusal: 'write left, right or both.' };
}

/** The same person twice is either the same row again, which is left out, or a contradiction that only a person can settle. */
function withRepeats(rows: readonly Row[], problems: Problem[]): RosterRow[] {
  const people = peopleOf<Row>([], ({ athlete }) => athlete);
  return rows.map((row) => {
    const [first] = people.same(row.athlete);
    people.add(row);
    if (first === undefined) return { ...row, repeats: null };
    if (JSON.stringify(first.athlete) !== JSON.stringify({ ...row.athlete, name: first.athlete.name })) {
      problems.push({
        path: `line ${row.line}`,
        words: `${row.athlete.name} stands in line ${first.line} too, with other entries. Make the two agree, or tell two people apart by their dates of birth.`,
      });
    }
    return { ...row, repeats: first.line };
  });
}
