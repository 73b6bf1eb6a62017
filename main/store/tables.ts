import { z } from 'zod';
import type { Change } from '../../shared/model/edit.ts';
import { type AnyRecord, type Kind, KINDS, RECORDS } from '../../shared/model/records.ts';
import type { StepChange } from '../../shared/ports/editing.ts';

/** What SQLite holds for a field: numbers and text as they are, a boolean as 0 or 1, a sub-structure as JSON text. */
type Cell = string | number | null;
export type Row = Readonly<Record<string, Cell>>;

interface Column {
  readonly field: string;
  readonly name: string;
  readonly encode: (value: unknown) => Cell;
  readonly decode: (cell: Cell) => unknown;
}

export interface Table {
  readonly kind: Kind;
  readonly name: string;
  readonly columns: readonly Column[];
}

/** The schemas are the description; here is only how a field and its type become a column. */
export const TABLES: { readonly [K in Kind]: Table } = Object.fromEntries(
  KINDS.map((kind) => {
    const shape: Readonly<Record<string, z.ZodType>> = RECORDS[kind].schema.shape;
    // `case` is a word of SQL.
    const table: Table = {
      kind,
      name: kind === 'case' ? 'case_record' : snakeCase(kind),
      columns: Object.entries(shape).map(([field, schema]) => ({ field, name: snakeCase(field), ...codecOf(schema) })),
    };
    return [kind, table];
  }),
) as { [K in Kind]: Table };

/** `flightTimeS` is flight_time_s. */
function snakeCase(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

function codecOf(schema: z.ZodType): Pick<Column, 'encode' | 'decode'> {
  const inner = schema instanceof z.ZodNullable ? schema.unwrap() : schema;
  if (inner instanceof z.ZodBoolean) {
    return {
      encode: (value) => (value === null ? null : Number(value)),
      decode: (cell) => (cell === null ? null : cell === 1),
    };
  }
  if (inner instanceof z.ZodObject || inner instanceof z.ZodArray || inner instanceof z.ZodDiscriminatedUnion) {
    return { encode: toJson, decode: fromJson };
  }
  return { encode: (value) => value as Cell, decode: (cell) => cell };
}

export function toJson(value: unknown): string | null {
  return value === null ? null : JSON.stringify(value);
}

/** Text that this store wrote itself. */
export function fromJson(cell: Cell): unknown {
  return cell === null ? null : JSON.parse(String(cell));
}

export function toRow({ columns }: Table, record: AnyRecord): Row {
  const fields = record as Readonly<Record<string, unknown>>;
  return Object.fromEntries(columns.map(({ field, name, encode }) => [name, encode(fields[field])]));
}

export function fromRow({ columns }: Table, row: Row): AnyRecord {
  return Object.fromEntries(columns.map(({ field, name, decode }) => [field, decode(row[name] ?? null)])) as AnyRecord;
}

export function stepChange(row: Row): StepChange {
  return {
    kind: row['kind'] as Kind,
    recordId: String(row['record_id']),
    op: row['op'] as Change['op'],
    before: fromJson(row['before'] ?? null) as Change['before'],
    after: fromJson(row['after'] ?? null) as Change['after'],
  };
}
