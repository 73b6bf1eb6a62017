import type { ReactNode } from 'react';

export interface Column<Row> {
  readonly id: string;
  readonly head: ReactNode;
  readonly cell: (row: Row) => ReactNode;
  /** Numbers stand right-aligned in tabular figures. */
  readonly isNumber?: boolean;
}

/** A table with a caption, a head for each column and, in its first column, a head for each row. */
export function Table<Row>({
  caption,
  columns,
  rows,
  rowKey,
  isSelected,
  onSelect,
}: {
  caption: string;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row) => string;
  isSelected?: (row: Row) => boolean;
  /** Called for a click anywhere in a row. Give keyboards a control inside the row that does the same. */
  onSelect?: (row: Row) => void;
}) {
  return (
    <table className="table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map(({ id, head, isNumber }) => (
            <th key={id} scope="col" className={isNumber === true ? 'number' : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr
            key={rowKey(row)}
            className={isSelected?.(row) === true ? 'selected' : undefined}
            onClick={onSelect === undefined ? undefined : () => onSelect(row)}
          >
            {columns.map(({ id, cell, isNumber }, index) => {
              const Cell = index === 0 ? 'th' : 'td';
              return (
                <Cell
                  key={id}
                  scope={index === 0 ? 'row' : undefined}
                  className={isNumber === true ? 'number' : undefined}
                >
                  {cell(row)}
                </Cell>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
