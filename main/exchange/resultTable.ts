import { DomainError } from '../../shared/errors.ts';
import type { Typed } from '../../shared/format/typed.ts';
import { columnHead } from './columnHead.ts';
import { type DelimitedRow, readDelimited } from './delimited.ts';
import type { Unit } from '../../shared/units.ts';

/** A table of results: its rows, and its columns by what their heads say. */
export interface ResultTable<Name extends string> {
  readonly rows: readonly DelimitedRow[];
  readonly columns: Readonly<
    Partial<Record<Name, { readonly head: string; readonly index: number; readonly unit: Unit | null }>>
  >;
  /** One cell as a value. @throws DomainError 'input-malformed' with line and column if it is refused */
  read<T>(row: DelimitedRow, name: Name, parse: (cell: string, unit: Unit | null) => Typed<T>): T | null;
}

/**
 * Reads a delimited table whose columns are told by their heads.
 * @param known which head means which column, in lower case without unit
 * @throws DomainError 'input-malformed' for no table or a head that means nothing here, 'input-missing' for no rows
 */
export function readResultTable<Name extends string>(
  text: string,
  reader: string,
  known: Readonly<Record<Name, RegExp>>,
): ResultTable<Name> {
  const [head, ...rows] = readDelimited(text, reader).rows;
  if (head === undefined || rows.length === 0) {
    throw new DomainError('input-missing', `${reader} needs a row of column heads and at least one row below it.`);
  }
  const names = Object.keys(known) as Name[];
  const columns: Partial<Record<Name, { head: string; index: number; unit: Unit | null }>> = {};
  for (const [index, cell] of head.cells.entries()) {
    const { words, unit } = columnHead(cell);
    const name = names.find((one) => known[one].test(words));
    if (name === undefined || columns[name] !== undefined) {
      const what = name === undefined ? 'means nothing here' : 'stands for something another column holds already';
      throw new DomainError(
        'input-malformed',
        `The column “${cell.slice(0, 60)}” ${what}. ${reader} knows ${names.join(', ')}.`,
        `line ${head.line}, column ${cell.slice(0, 60)}`,
      );
    }
    columns[name] = { head: cell, index, unit };
  }
  const tooLong = rows.find(({ cells }) => cells.length > head.cells.length);
  if (tooLong !== undefined) {
    throw new DomainError(
      'input-malformed',
      `A row has ${tooLong.cells.length} cells and the head only ${head.cells.length}. Put a decimal comma into quotes, or divide by semicolons.`,
      `line ${tooLong.line}`,
    );
  }
  return {
    rows,
    columns,
    read(row, name, parse) {
      const column = columns[name];
      const cell = column === undefined ? '' : (row.cells[column.index] ?? '');
      if (column === undefined || cell === '') return null;
      const typed = parse(cell, column.unit);
      if ('value' in typed) return typed.value;
      throw new DomainError(
        'input-malformed',
        `“${cell.slice(0, 40)}” cannot stand for ${name}: ${typed.refusal}`,
        `line ${row.line}, column ${column.head}`,
      );
    },
  };
}

/** Pain as a cell of a table. */
export function parsePain(cell: string): Typed<number> {
  return /^(10|\d)$/.test(cell) ? { value: Number(cell) } : { refusal: 'pain is a whole number from 0 to 10.' };
}
