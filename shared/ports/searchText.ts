import type { AnyRecord } from '../model/records.ts';

const UUID = /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/;
const SHA256 = /^[0-9a-f]{64}$/;
const DAY_OR_INSTANT = /^\d{4}-\d{2}-\d{2}(T[\d:.]+Z)?$/;

/** All words of a record that a search should find: names, numbers, free text and choices, without ids, hashes and dates. */
export function searchText(record: AnyRecord): string {
  return Object.values(record)
    .filter((value) => typeof value === 'string')
    .filter((value) => value !== '' && !UUID.test(value) && !SHA256.test(value) && !DAY_OR_INSTANT.test(value))
    .join(' · ');
}

/**
 * The words a case must all contain, each perhaps in another of its records; each may be only the beginning of a word
 * there. Empty where nothing can be searched for.
 */
export function searchWords(search: string): string[] {
  // A NUL divides words too: to SQLite it ends the text.
  return search.split(/[\s\0]+/).filter((word) => /[\p{L}\p{N}]/u.test(word));
}
