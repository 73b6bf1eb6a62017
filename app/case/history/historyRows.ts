import type { Change } from '../../../shared/model/edit.ts';
import type { Kind } from '../../../shared/model/records.ts';
import { fieldWords, KIND_WORDS } from '../../../shared/model/words.ts';

/** One field that one step changed. */
export interface HistoryRow {
  readonly key: string;
  readonly at: string;
  readonly what: string;
  readonly before: string;
  readonly after: string;
  /** The step it came from, in words. */
  readonly from: string;
  readonly isUndone: boolean;
}

/** Whose history: a field of a record, or everything. */
export interface HistoryOf {
  readonly kind: Kind;
  readonly recordId: string;
  readonly field: string;
}

/** The changes of a case field by field, newest first as given. What was made or removed whole is one row. */
export function historyRows(changes: readonly Change[], of: HistoryOf | null): HistoryRow[] {
  return changes.flatMap((change, i) => {
    const { kind, recordId, op, at, label, isUndone } = change;
    if (of !== null && (kind !== of.kind || recordId !== of.recordId)) return [];
    const row = (field: string | null): HistoryRow => ({
      key: `${i} ${field ?? ''}`,
      at,
      what: field === null ? KIND_WORDS[kind] : `${fieldWords(field)}, ${KIND_WORDS[kind]}`,
      before: op === 'create' ? '' : field === null ? 'there' : valueWords(change.before?.[field]),
      after: op === 'remove' ? 'removed' : field === null ? 'added' : valueWords(change.after?.[field]),
      from: label,
      isUndone,
    });
    if (of !== null) return of.field in { ...change.before, ...change.after } ? [row(of.field)] : [];
    return op === 'patch' ? Object.keys(change.after ?? {}).map(row) : [row(null)];
  });
}

function valueWords(value: unknown): string {
  if (value === null || value === undefined || value === '') return 'empty';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  const text = JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 79)}…` : text;
}
