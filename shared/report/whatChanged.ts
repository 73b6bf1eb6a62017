import { canonicalJson } from '../canonicalJson.ts';
import { sentenceCase } from '../format/letterCase.ts';
import { counted } from '../format/number.ts';
import { fieldWords, KIND_WORDS } from '../model/words.ts';
import { type CaseData, DATA_KINDS, dataOf, type Fields } from './caseData.ts';

/** How a case differs from what an earlier report was made from, a sentence for each kind of record. Empty: it does not. */
export function whatChanged(before: CaseData, now: CaseData): string[] {
  return DATA_KINDS.flatMap((kind) => {
    const [old, current] = [dataOf(before, kind), dataOf(now, kind)];
    const oldById = new Map(old.map((record) => [record.id, record]));
    const ids = new Set(current.map(({ id }) => id));
    const added = current.filter(({ id }) => !oldById.has(id)).length;
    const removed = old.filter(({ id }) => !ids.has(id)).length;
    const changed = current.flatMap((record) => {
      const was = oldById.get(record.id);
      const fields = was === undefined ? [] : changedFields(was, record);
      return fields.length === 0 ? [] : [fields];
    });
    const fields = [...new Set(changed.flat())].map(fieldWords);
    const label = KIND_WORDS[kind];
    const parts = [
      ...(added === 0 ? [] : [`${counted(added, label)} added`]),
      ...(removed === 0 ? [] : [`${counted(removed, label)} removed`]),
      ...(changed.length === 0
        ? []
        : [`${changed.length === 1 ? label : counted(changed.length, label)} changed (${fields.join(', ')})`]),
    ];
    return parts.length === 0 ? [] : [`${sentenceCase(parts.join(', '))}.`];
  });
}

function changedFields(was: Fields, is: Fields): string[] {
  return Object.keys(is).filter((field) => canonicalJson(was[field] ?? null) !== canonicalJson(is[field] ?? null));
}
