import { DomainError } from '../../shared/errors.ts';
import { DECIMAL_COMMA, readDelimited } from './delimited.ts';

export interface SeriesCsv {
  /** One array a column asked for, in that order. */
  readonly columns: number[][];
  /** Where a row stands, for refusals. */
  readonly placeOf: (row: number, column: string) => string;
}

/**
 * Reads named columns of numbers from delimited text: comma, semicolon or tab, decimal point or, where commas do not
 * divide, comma. The first row names the columns; lines that begin with # are left out. Nothing is converted or filled in.
 *
 * @param names columns to read, in any case
 * @throws DomainError with the line and column in `path`: 'input-missing' for a column or rows that are not there;
 *   'input-malformed' for something that is no number
 */
export function readSeriesCsv(text: string, names: readonly string[]): SeriesCsv {
  const { delimiter, rows } = readDelimited(text, 'readSeriesCsv');
  const [header, ...body] = rows.filter(({ cells }) => cells[0]?.startsWith('#') !== true);
  if (header === undefined) throw new DomainError('input-missing', 'readSeriesCsv needs a table; the file is empty');
  const chosen = names.map((name) => {
    const column = header.cells.findIndex((title) => title.toLowerCase() === name.trim().toLowerCase());
    if (column >= 0) return column;
    throw new DomainError(
      'input-missing',
      `readSeriesCsv needs a column called ${name}; the columns are ${header.cells.map((title) => `“${title}”`).join(', ')}`,
      `column ${name}`,
    );
  });
  if (body.length === 0) {
    throw new DomainError('input-missing', 'readSeriesCsv needs rows of numbers; below the header there are none');
  }
  const placeOf = (row: number, column: string) => `line ${body[row]?.line}, column ${column}`;
  const columns = chosen.map((column, k) =>
    body.map(({ cells }, row) => {
      const cell = cells[column] ?? '';
      const written = delimiter !== ',' && DECIMAL_COMMA.test(cell) ? cell.replace(',', '.') : cell;
      const value = written === '' ? Number.NaN : Number(written);
      if (Number.isFinite(value)) return value;
      throw new DomainError(
        'input-malformed',
        cell === ''
          ? 'readSeriesCsv needs a number in every row, found an empty cell'
          : `readSeriesCsv needs numbers, found “${cell.slice(0, 40)}”`,
        placeOf(row, names[k] ?? ''),
      );
    }),
  );
  // A decimal comma in a table divided by commas makes rows longer than their header: every value would be wrong.
  const long = body.findIndex(({ cells }) => cells.length > header.cells.length);
  if (long >= 0) {
    throw new DomainError(
      'input-malformed',
      `readSeriesCsv needs as many cells in a row as the header has, ${header.cells.length}, found ${body[long]?.cells.length}: decimal commas need another delimiter`,
      `line ${body[long]?.line}`,
    );
  }
  return { columns, placeOf };
}
