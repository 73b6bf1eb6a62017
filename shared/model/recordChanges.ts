import type { z } from 'zod';
import { canonicalJson } from '../canonicalJson.ts';
import { DomainError } from '../errors.ts';
import { findRecord, isSingle, recordsOf, withRecord } from './caseLists.ts';
import type { Change, Edit } from './edit.ts';
import { parseInput } from './parseInput.ts';
import { type AnyRecord, type CaseFile, type Kind, KINDS, RECORDS } from './records.ts';
import { KIND_WORDS } from './words.ts';

/** What one edit did to one record. `record` is the record as it is now, null once removed. */
export interface RecordChange extends Pick<Change, 'kind' | 'recordId' | 'op' | 'before' | 'after'> {
  readonly record: AnyRecord | null;
}

/** Fields that name another record, beside RECORDS.parent: removing that record removes this one too. */
const LINKS: { readonly [K in Kind]?: readonly [Kind, string] } = { enteredMeasure: ['movementTrial', 'trialId'] };

/** Made once and kept as they were: what was printed and what was imported can be neither changed nor removed. */
export function isKept(kind: Kind): boolean {
  return kind === 'report' || kind === 'media';
}

/**
 * Every change that edits make to a case file, record by record in the order they must be written, and the file after
 * them. The one set of rules for editing: screen, store and its in-memory twin all go through here.
 * @throws DomainError 'not-found' for a record (or the record it belongs to) that is not part of this case,
 *   'conflict' for an id already used or a record that cannot be changed so, 'input-malformed' for an invalid record
 */
export function recordChanges(
  file: CaseFile,
  edits: readonly Edit[],
): { readonly file: CaseFile; readonly changes: readonly RecordChange[] } {
  const changes: RecordChange[] = [];
  let next = file;
  for (const edit of edits) {
    for (const change of changesOf(next, edit)) {
      next = withRecord(next, change.kind, change.recordId, change.record);
      changes.push(change);
    }
  }
  return { file: { ...next, revision: file.revision + 1 }, changes };
}

function changesOf(file: CaseFile, edit: Edit): RecordChange[] {
  switch (edit.op) {
    case 'create':
      return [created(file, edit.kind, edit.record)];
    case 'patch':
      return patched(file, edit.kind, edit.id, edit.fields);
    case 'remove':
      return removed(file, edit.kind, edit.id);
  }
}

function created(file: CaseFile, kind: Kind, input: AnyRecord): RecordChange {
  if (isSingle(kind)) throw new DomainError('conflict', `A case has one ${KIND_WORDS[kind]} and already holds it.`);
  const change = recordCreated(kind, input);
  if (findRecord(file, kind, change.recordId) !== null) throw idInUse(kind, change.recordId);
  requireOwners(file, kind, change.record);
  return change;
}

/** @throws DomainError 'input-malformed' if the input is not a record of the kind */
export function recordCreated(kind: Kind, input: unknown): RecordChange & { readonly record: AnyRecord } {
  const record = parseRecord(kind, input);
  return { kind, recordId: record.id, op: 'create', before: null, after: asFields(record), record };
}

export function idInUse(kind: Kind, id: string): DomainError {
  return new DomainError('conflict', `The id ${id} is already used by another ${KIND_WORDS[kind]}.`, 'id');
}

function patched(file: CaseFile, kind: Kind, id: string, fields: object): RecordChange[] {
  const current = existing(file, kind, id);
  const before: Fields = asFields(current);
  const changed = Object.entries(fields).filter(
    ([field, value]) => canonicalJson(value) !== canonicalJson(before[field]),
  );
  if (changed.length === 0) return [];
  refuseIfKept(kind);
  refuseOtherBattery(kind, changed);
  const record = parseRecord(kind, { ...current, ...Object.fromEntries(changed) });
  requireOwners(file, kind, record);
  const names = changed.map(([field]) => field);
  return [{ kind, recordId: id, op: 'patch', before: pick(current, names), after: pick(record, names), record }];
}

function removed(file: CaseFile, kind: Kind, id: string): RecordChange[] {
  if (isSingle(kind)) {
    throw new DomainError('conflict', `The ${KIND_WORDS[kind]} of a case cannot be removed; a case can be archived.`);
  }
  refuseIfKept(kind);
  const record = existing(file, kind, id);
  // Children first, so that no written state ever holds a record whose owner is gone.
  const children = KINDS.flatMap((child) =>
    ownersOf(child)
      .filter(([owner]) => owner === kind)
      .flatMap(([, field]) => recordsOf(file, child).filter((one) => asFields(one)[field] === id))
      .flatMap((one) => removed(file, child, one.id)),
  );
  return [...children, { kind, recordId: id, op: 'remove', before: asFields(record), after: null, record: null }];
}

function existing(file: CaseFile, kind: Kind, id: string): AnyRecord {
  const record = findRecord(file, kind, id);
  if (record === null) {
    throw new DomainError('not-found', `There is no ${KIND_WORDS[kind]} with the id ${id} in this case.`, 'id');
  }
  return record;
}

function parseRecord(kind: Kind, input: unknown): AnyRecord {
  const schema: z.ZodType = RECORDS[kind].schema;
  const record = parseInput(schema, input, `the ${KIND_WORDS[kind]}`) as AnyRecord;
  if ('battery' in record && record.battery !== null) {
    const { battery, batteryId, batteryVersion } = record;
    if (battery.id !== batteryId || battery.version !== batteryVersion) {
      const words = 'The session names another battery, or another version of it, than the one that it holds.';
      throw new DomainError('input-malformed', words, 'battery');
    }
  }
  return record;
}

/** Results are read by the battery they were taken with, so a session never gets another. */
function refuseOtherBattery(kind: Kind, changed: readonly (readonly [string, unknown])[]): void {
  if (kind === 'screeningSession' && changed.some(([field]) => field.startsWith('battery'))) {
    const words = 'A session keeps the version of the battery that it was begun with. Begin another session.';
    throw new DomainError('conflict', words, 'battery');
  }
}

function refuseIfKept(kind: Kind): void {
  if (isKept(kind)) {
    throw new DomainError('conflict', `A ${KIND_WORDS[kind]} is kept as it was made and cannot be changed or removed.`);
  }
}

function ownersOf(kind: Kind): readonly (readonly [Kind, string])[] {
  return [RECORDS[kind].parent, LINKS[kind]].filter((owner) => owner !== null && owner !== undefined);
}

/** Keeps every record inside its case: whatever it names as its owner must be part of the same file. */
function requireOwners(file: CaseFile, kind: Kind, record: AnyRecord): void {
  for (const [owner, field] of ownersOf(kind)) {
    const ownerId = asFields(record)[field];
    if (typeof ownerId === 'string' && findRecord(file, owner, ownerId) === null) {
      throw new DomainError(
        'not-found',
        `The ${KIND_WORDS[kind]} belongs to something that is not part of this case: ${KIND_WORDS[owner]} ${ownerId}.`,
        field,
      );
    }
  }
}

type Fields = NonNullable<Change['before']>;

/** Records hold JSON values only, so each is its own set of fields. */
function asFields(record: AnyRecord): Fields {
  return record;
}

function pick(record: AnyRecord, names: readonly string[]): Fields {
  return Object.fromEntries(names.map((name) => [name, asFields(record)[name] ?? null]));
}
