import { DomainError } from '../../shared/errors.ts';
import { spacing } from '../../shared/kernel/signal/spacing.ts';
import type { FORCE_UNITS, ForceReading } from '../../shared/model/jump.ts';
import { UNITS } from '../../shared/units.ts';
import { DECIMAL_COMMA, type DelimitedRow as Row, HEAD, readDelimited } from './delimited.ts';

/** Columns to take as plates are named; empty: recognise them. */
export type ForceCsvOptions = Omit<ForceReading, 'forceUnit'> & Partial<Pick<ForceReading, 'forceUnit'>>;

export interface ForceCsv {
  readonly available: string[];
  readonly columns: string[];
  readonly rateHz: number;
  /** N, one array a column. */
  readonly plates: number[][];
  readonly warnings: string[];
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const UNIT_CELL = /^[[(]?(s|sec|ms|k?n|newtons?|kgf?|kp|g|lbs?|lbf|m?v|volts?|bw|mm|cm|m|hz|#)?[\])]?$/i;
const TIME_NAME = /^(time|t|zeit|temps|tiempo|seconds?|secs?|ms)([^a-z]|$)/i;
const FORCE_NAME = /(^|[^a-z])(fz\d*|v?grf|force|kraft|vertical)([^a-z]|$)/i;
const OTHER_AXIS = /(^|[^a-z])(fx\d*|fy\d*|x|y|ap|ml|anterior|medial|cop|moment)([^a-z]|$)/i;
const TOTAL_NAME = /(^|[^a-z])(total|sum|combined|both)([^a-z]|$)/i;
/** Units that files carry over forces, or over the voltage of a plate that was not scaled. `v` may mean vertical. */
const NOT_NEWTONS = /^(kg|kgf|kp|g|lbs?|lbf|mv|volts?|bw)$/;
const MOST_PLATES = 4;
const NEWTONS: Readonly<Record<(typeof FORCE_UNITS)[number], number>> = {
  N: 1,
  kN: 1000,
  kgf: UNITS.kgf.toSi,
  lbf: UNITS['[lbf_av]'].toSi,
};

/**
 * Reads vertical force records from delimited text: comma, semicolon or tab, decimal point or comma, with or without
 * byte-order mark, lines above the header and a row of units. Forces in N or kN, times in s or ms, by the name or the
 * unit row, or forces in the unit that `options` give, whatever the file says. Nothing is filtered or filled in.
 *
 * @throws DomainError with the line and column in `path`: 'input-malformed' for something that is no table, no number,
 *   or times that do not rise evenly; 'input-missing' where no force column, no rows or no rate can be found;
 *   'unit-mismatch' for a force in another unit
 */
export function readForceCsv(text: string, options: ForceCsvOptions): ForceCsv {
  const warnings: string[] = [];
  const { forceUnit = null } = options;
  const { names, units, rows, isDecimalComma } = readTable(text);
  const chosen = chooseColumns(names, options.columns);
  const number = (row: Row, column: number) => toNumber(row, column, names, isDecimalComma);

  const plates = chosen.map((column) => {
    if (forceUnit === null) requireNewtons(names, units, column);
    const scale = NEWTONS[forceUnit ?? (unitOf(names, units, column) === 'kn' ? 'kN' : 'N')];
    return rows.map((row) => number(row, column) * scale);
  });
  const timeColumn = names.findIndex((name, column) => TIME_NAME.test(name) && !chosen.includes(column));
  let rateHz = options.rateHz;
  if (timeColumn >= 0) {
    const scale = unitOf(names, units, timeColumn) === 'ms' ? 0.001 : 1;
    const fromTimes = rateOf(rows, names[timeColumn] as string, (row) => number(row, timeColumn) * scale, warnings);
    if (rateHz !== null && fromTimes !== null && Math.abs(rateHz / fromTimes - 1) > 0.01) {
      warnings.push(
        `The time column says ${fromTimes.toFixed(1)} samples a second, the rate given is ${rateHz}; the rate given was used.`,
      );
    }
    rateHz ??= fromTimes;
  }
  if (rateHz === null) {
    throw new DomainError(
      'input-missing',
      `readForceCsv needs a time column or the sampling rate; the columns are ${list(names)}`,
    );
  }
  if (!(Number.isFinite(rateHz) && rateHz > 0)) {
    throw new DomainError('input-out-of-range', `readForceCsv needs a sampling rate above 0 Hz, got ${rateHz}`);
  }
  return { available: names, columns: chosen.map((column) => names[column] as string), rateHz, plates, warnings };
}

/** The names of the columns of a force file: by them its reading is remembered. */
export function forceHeads(text: string): string[] {
  const beginning = text.length <= HEAD ? text : text.slice(0, text.lastIndexOf('\n', HEAD));
  return readTable(beginning).names;
}

interface Table {
  readonly names: string[];
  readonly units: string[] | null;
  readonly rows: Row[];
  readonly isDecimalComma: boolean;
}

function readTable(text: string): Table {
  const { delimiter, rows: all } = readDelimited(text, 'readForceCsv');
  const isNumeric = (cell: string) => NUMBER.test(cell) || (delimiter !== ',' && DECIMAL_COMMA.test(cell));
  const start = all.findIndex(
    ({ cells }) => cells.some(isNumeric) && cells.every((cell) => cell === '' || isNumeric(cell)),
  );
  if (start < 0) {
    const header = all.at(-1)?.cells.filter((cell) => cell !== '') ?? [];
    throw new DomainError(
      'input-missing',
      header.length === 0
        ? 'readForceCsv needs a table of numbers; the file is empty'
        : `readForceCsv needs rows of numbers; below the header ${list(header)} there are none`,
    );
  }
  const rows = all.slice(start);
  const width = rows[0]?.cells.length ?? 0;
  const above = all.slice(0, start).filter(({ cells }) => cells.length === width);
  const last = above.at(-1);
  const hasUnits = above.length > 1 && last !== undefined && last.cells.every((cell) => UNIT_CELL.test(cell));
  const header = above.at(hasUnits ? -2 : -1);
  return {
    names: Array.from({ length: width }, (_, k) => header?.cells[k] || `column ${k + 1}`),
    units: hasUnits ? last.cells : null,
    rows,
    isDecimalComma: delimiter !== ',' && rows.some(({ cells }) => cells.some((cell) => DECIMAL_COMMA.test(cell))),
  };
}

function chooseColumns(names: readonly string[], wanted: readonly string[]): number[] {
  if (wanted.length > 0) {
    return wanted.map((name) => {
      const column = names.findIndex((candidate) => candidate.toLowerCase() === name.trim().toLowerCase());
      if (column >= 0) return column;
      throw new DomainError(
        'input-missing',
        `readForceCsv finds no column called ${name}; the columns are ${list(names)}`,
        `column ${name}`,
      );
    });
  }
  const found = names.flatMap((name, column) => (isForce(name) ? [column] : []));
  const isTotal = (column: number) => TOTAL_NAME.test(spaced(names[column] as string));
  // A column of sums beside the plates would count every newton twice.
  const single = found.filter((column) => !isTotal(column));
  const chosen = single.length > 0 ? single : found.slice(0, 1);
  if (chosen.length === 0) {
    throw new DomainError(
      'input-missing',
      `readForceCsv finds no column of vertical force (a name with fz, grf or force); the columns are ${list(names)}. Name the columns to use`,
    );
  }
  if (chosen.length > MOST_PLATES) {
    throw new DomainError(
      'input-malformed',
      `readForceCsv takes up to ${MOST_PLATES} plates, found ${list(chosen.map((column) => names[column] as string))}. Name the columns to use`,
    );
  }
  return chosen;
}

function toNumber(row: Row, column: number, names: readonly string[], isDecimalComma: boolean): number {
  const cell = row.cells[column] ?? '';
  const written = isDecimalComma ? cell.replace(',', '.') : cell;
  if (NUMBER.test(written)) return Number(written);
  throw new DomainError(
    'input-malformed',
    cell === ''
      ? `readForceCsv needs a number in every row, found an empty cell`
      : `readForceCsv needs numbers, found “${cell.slice(0, 40)}”`,
    `line ${row.line}, column ${names[column]}`,
  );
}

function rateOf(rows: readonly Row[], name: string, timeOf: (row: Row) => number, warnings: string[]): number | null {
  if (rows.length < 2) return null;
  const at = (k: number) => `line ${rows[k]?.line}, column ${name}`;
  const found = spacing(rows.map(timeOf), 'readForceCsv', at);
  if (found.kind === 'uneven') {
    throw new DomainError(
      'input-malformed',
      `readForceCsv needs evenly spaced samples; most are ${found.medianS.toPrecision(4)} s apart, here ${found.oddS.toPrecision(4)} s`,
      at(found.after + 1),
    );
  }
  if (found.kind === 'rounded') {
    warnings.push(
      `Times are written to ${found.resolutionS.toPrecision(1)} s only; the rate of ${found.rateHz.toFixed(1)} Hz is from the first and the last.`,
    );
  }
  return found.rateHz;
}

/** Unit of a column in lower case, from the row of units or the end of the name: `fz_N`, `Force [kN]`, `time (ms)`. */
function unitOf(names: readonly string[], units: readonly string[] | null, column: number): string {
  const cell = units?.[column] ?? /[\s_[(]([a-z]+)[\])]?$/i.exec(names[column] as string)?.[1] ?? '';
  return cell.replaceAll(/[[\]()]/g, '').toLowerCase();
}

function requireNewtons(names: readonly string[], units: readonly string[] | null, column: number): void {
  const unit = unitOf(names, units, column);
  if (NOT_NEWTONS.test(unit)) {
    throw new DomainError(
      'unit-mismatch',
      `readForceCsv needs forces in N or kN; the column ${list([names[column] as string])} is in ${unit}. Say its unit, or export it in newtons`,
      `column ${names[column]}`,
    );
  }
}

function isForce(name: string): boolean {
  return FORCE_NAME.test(spaced(name)) && !OTHER_AXIS.test(spaced(name)) && !TIME_NAME.test(name);
}

/** `fz_left_N` and `FzLeft` read as separate words. */
function spaced(name: string): string {
  return name.replaceAll(/[_\-.]/g, ' ').replaceAll(/([a-z])([A-Z])/g, '$1 $2');
}

function list(names: readonly string[]): string {
  return names.map((name) => `“${name}”`).join(', ');
}
