import type { Kind, RecordOf } from '../../shared/model/records.ts';
import { useSelect } from './selection.ts';
import { patch, useEdit } from './useEdit.ts';

/** What a field of app/parts needs to show and change one field of a record. */
export interface BoundField<T> {
  readonly value: T;
  readonly onChange: (value: T) => void;
  readonly onFocus: () => void;
}

/**
 * Ties the fields of one record to the parts: `<TextField label="Sport" {...field('sport')} />`. Each change is an edit
 * of its own; entering the field selects it for the margin.
 */
export function useFields<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
): <F extends keyof RecordOf<K> & string>(name: F) => BoundField<RecordOf<K>[F]> {
  const edit = useEdit();
  const select = useSelect();
  const { id } = record;
  return (name) => ({
    value: record[name],
    onChange: (value) => edit([patch(kind, id, { [name]: value } as unknown as Partial<RecordOf<K>>)]),
    onFocus: () => select({ kind: 'record', recordKind: kind, id, field: name }),
  });
}
