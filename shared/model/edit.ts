import { z } from 'zod';
import { id, instant, line } from './parts.ts';
import { KINDS, type Kind, RECORDS, type RecordOf } from './records.ts';

/** One change to one record. Several in one request are one step of undo and are stored together or not at all. */
export type Edit = {
  [K in Kind]:
    | { readonly op: 'create'; readonly kind: K; readonly record: RecordOf<K> }
    | { readonly op: 'patch'; readonly kind: K; readonly id: string; readonly fields: Partial<Omit<RecordOf<K>, 'id'>> }
    | { readonly op: 'remove'; readonly kind: K; readonly id: string };
}[Kind];

const edits = KINDS.map((kind) => {
  const schema: z.ZodObject = RECORDS[kind].schema;
  const named = { kind: z.literal(kind) };
  return z.discriminatedUnion('op', [
    z.strictObject({ op: z.literal('create'), ...named, record: schema }),
    z.strictObject({ op: z.literal('patch'), ...named, id, fields: schema.omit({ id: true }).partial() }),
    z.strictObject({ op: z.literal('remove'), ...named, id }),
  ]);
});

/**
 * Parses unknown data into an edit. Built from the record list, so its static type is stated, not inferred. Told apart
 * by kind, then op, so that a mistake is reported at the field that holds it.
 */
export const edit = z.discriminatedUnion('kind', edits as [(typeof edits)[0]]) as unknown as z.ZodType<Edit>;

/** One field-level entry of a case's history. */
export const change = z.strictObject({
  step: z.int(),
  at: instant,
  kind: z.enum(KINDS),
  recordId: id,
  op: z.enum(['create', 'patch', 'remove']),
  /** Values of the changed fields before and after; null where the record did not exist. */
  before: z.record(z.string(), z.json()).nullable(),
  after: z.record(z.string(), z.json()).nullable(),
  isUndone: z.boolean(),
  label: line,
});
export type Change = z.infer<typeof change>;
