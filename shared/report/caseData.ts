import { LISTS } from '../model/caseLists.ts';
import { line, text } from '../model/parts.ts';
import { type CaseFile, type Kind, KINDS, RECORDS } from '../model/records.ts';
import type { Redaction } from './steps/redact.ts';
import { redactWithin } from './steps/redactWithin.ts';

/** What a report is made from: all of a case but the reports already made of it, their files and the count of edits. */
export type CaseData = Omit<CaseFile, 'reports' | 'media' | 'revision'>;

export function caseData({ reports: _made, media: _files, revision: _count, ...data }: CaseFile): CaseData {
  return data;
}

type DataKind = Exclude<Kind, 'report' | 'media'>;
/** Kinds of record that case data holds. */
export const DATA_KINDS: readonly DataKind[] = KINDS.filter((kind) => kind !== 'report' && kind !== 'media');

/** One record as its fields. */
export type Fields = { readonly id: string } & Readonly<Record<string, unknown>>;

/** The records of one kind. Data kept by an earlier version may lack a kind made since. */
export function dataOf(data: CaseData, kind: DataKind): readonly Fields[] {
  if (kind === 'athlete' || kind === 'case') return [data[kind]];
  const lists: Readonly<Record<string, unknown>> = data;
  return (lists[LISTS[kind]] ?? []) as readonly Fields[];
}

/** The same case with a redaction over every field that a person types in words. */
export function redactTyped<T extends CaseData>(data: T, redact: Redaction): T {
  const records = DATA_KINDS.map((kind) => {
    const clean = dataOf(data, kind).map((record) => {
      const typed = typedFields(kind).flatMap((field) => {
        const value = record[field];
        return typeof value === 'string' ? [[field, redact(value)]] : [];
      });
      return { ...record, ...Object.fromEntries(typed), ...redactWithin(kind, record, redact) };
    });
    return kind === 'athlete' || kind === 'case' ? [kind, clean[0]] : [LISTS[kind], clean];
  });
  return { ...data, ...Object.fromEntries(records) };
}

/** For data that leave the house: also without what tells who a person is by itself. */
export function withoutNames<T extends CaseData>(data: T, redact: Redaction): T {
  const clean = redactTyped(data, redact);
  const athlete = { ...clean.athlete, birthDate: null, identifier: '', guardianName: '', isPseudonym: true };
  return { ...clean, athlete };
}

/** Fields in words, typed by a person: not those that name something of the program. */
export function typedFields(kind: Kind): string[] {
  const shape: Readonly<Record<string, unknown>> = RECORDS[kind].schema.shape;
  return Object.entries(shape).flatMap(([field, schema]) =>
    (schema === line || schema === text) && !NAMES_OF_OURS.test(field) ? [field] : [],
  );
}

/** Everything typed in one record, field by field; what is typed deeper down, as in a battery of one's own, together. */
export function typedIn(kind: Kind, record: Fields): { readonly field: string; readonly text: string }[] {
  const fields = typedFields(kind).flatMap((field) => {
    const text = record[field];
    return typeof text === 'string' ? [{ field, text }] : [];
  });
  const words: string[] = [];
  const within = redactWithin(kind, record, (text) => {
    words.push(text);
    return text;
  });
  return words.length === 0 ? fields : [...fields, { field: Object.keys(within)[0] ?? '', text: words.join(' · ') }];
}

const NAMES_OF_OURS = /Id$|Key$|Version$|^decided|^event$|^point$|^mediaType$/;
