import { parse } from 'csv-parse/sync';
import { DomainError } from '../../shared/errors.ts';

export interface DelimitedRow {
  /** Line of the file on which the row ends, from 1. */
  readonly line: number;
  readonly cells: string[];
}

export const DECIMAL_COMMA = /^[+-]?\d*,\d+(e[+-]?\d+)?$/i;

/** Characters at the start of a file that show how it is divided. */
export const HEAD = 20_000;

/**
 * Splits comma, semicolon or tab separated text, with or without byte-order mark and quotes, into trimmed cells. Rows
 * without any text are left out.
 * @param reader names whoever asks, in refusals
 * @throws DomainError 'input-malformed' for a binary file or quotes that do not close
 */
export function readDelimited(
  text: string,
  reader: string,
): { readonly delimiter: string; readonly rows: DelimitedRow[] } {
  if (text.includes('\0')) {
    throw new DomainError('input-malformed', `${reader} needs a text table; this file is binary`);
  }
  const head = text.slice(0, HEAD).replace(/^\uFEFF/, '');
  const delimiter = delimiterOf(head.split(/\r\n|\n|\r/));
  return { delimiter, rows: cellsOf(text, delimiter, reader) };
}

/** Tab before semicolon before comma: where tab or semicolon divides, a comma is a decimal sign. */
function delimiterOf(lines: readonly string[]): string {
  const filled = lines.filter((line) => line.trim() !== '').slice(0, 50);
  const divides = (mark: string) => filled.filter((line) => line.includes(mark)).length > filled.length / 2;
  if (divides('\t')) return '\t';
  if (divides(';')) return ';';
  const isOneColumn = filled.slice(1).every((line) => DECIMAL_COMMA.test(line.trim())) && !filled[0]?.includes(',');
  return filled.length > 1 && isOneColumn ? ';' : ',';
}

function cellsOf(text: string, delimiter: string, reader: string): DelimitedRow[] {
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as { record: string[]; info: { lines: number } }[];
    return records
      .map(({ record, info }) => ({ line: info.lines, cells: record }))
      .filter(({ cells }) => cells.some((cell) => cell !== ''));
  } catch (error) {
    throw new DomainError(
      'input-malformed',
      `${reader} needs a delimited table: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}
