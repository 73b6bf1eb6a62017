import { DomainError } from '../../shared/errors.ts';
import { parseNumber, type Typed } from '../../shared/format/typed.ts';
import type { JumpTrial } from '../../shared/model/jump.ts';
import { convert, type Unit, UNITS } from '../../shared/units.ts';
import { columnHead } from './columnHead.ts';
import { readDelimited } from './delimited.ts';
import { parsePain, readResultTable } from './resultTable.ts';

export type JumpRow = Pick<JumpTrial, 'flightTimeS' | 'contactTimeS' | 'jumpReachM' | 'painNrs' | 'note'>;

const COLUMNS = {
  trial: /^(trial|jump|number|no)$/,
  flightTime: /^(flight time|time in the air)$/,
  contactTime: /^(ground )?contact( time)?$/,
  reach: /^(jump )?reach$/,
  pain: /^pain$/,
  note: /^note$/,
};

/** Whether a file is a table of jumps rather than a force record: a column of flight times or of reaches. */
export function isJumpTable(text: string): boolean {
  const head = readDelimited(text, 'A file of jumps').rows[0]?.cells ?? [];
  return head.some((cell) => [COLUMNS.flightTime, COLUMNS.reach].some((known) => known.test(columnHead(cell).words)));
}

/**
 * Jumps of one test from a table, a row each: flight time or reach, with contact time, pain and note if wanted. Times
 * and lengths need a unit in their head, `Flight time (ms)`.
 * @throws DomainError with line and column at the first fault; then nothing is read
 */
export function readJumpsCsv(text: string): {
  readonly method: 'flight-time' | 'jump-and-reach';
  readonly jumps: JumpRow[];
} {
  const table = readResultTable(text, 'A table of jumps', COLUMNS);
  const { flightTime, reach } = table.columns;
  if ((flightTime === undefined) === (reach === undefined)) {
    throw new DomainError(
      'input-missing',
      'A table of jumps needs a column of flight times or one of reaches, and not both.',
    );
  }
  const method = flightTime === undefined ? 'jump-and-reach' : 'flight-time';
  const jumps = table.rows.map((row): JumpRow => {
    const jump = {
      flightTimeS: table.read(row, 'flightTime', inUnit('s', 1.5)),
      contactTimeS: table.read(row, 'contactTime', inUnit('s', 5)),
      jumpReachM: table.read(row, 'reach', inUnit('m', 5)),
      painNrs: table.read(row, 'pain', parsePain),
      note: table.read(row, 'note', (cell) => ({ value: cell })) ?? '',
    };
    if (jump.flightTimeS === null && jump.jumpReachM === null) {
      throw new DomainError('input-missing', 'The row holds no jump.', `line ${row.line}`);
    }
    return jump;
  });
  return { method, jumps };
}

function inUnit(si: Unit, most: number) {
  return (cell: string, unit: Unit | null): Typed<number | null> => {
    if (unit === null || UNITS[unit].dimension !== UNITS[si].dimension) {
      return { refusal: `the head of the column must give the unit, as in (${si}) or (${si === 's' ? 'ms' : 'cm'}).` };
    }
    const typed = parseNumber(cell);
    if ('refusal' in typed || typed.value === null) return typed;
    const value = Number(convert(typed.value, unit, si).toPrecision(12));
    return value > 0 && value <= most ? { value } : { refusal: `must be more than 0 and at most ${most} ${si}.` };
  };
}
