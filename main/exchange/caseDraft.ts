import type { z } from 'zod';
import { DomainError } from '../../shared/errors.ts';
import type { Athlete } from '../../shared/model/athlete.ts';
import { LISTS } from '../../shared/model/caseLists.ts';
import type { CaseRecord } from '../../shared/model/case.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { parseInput } from '../../shared/model/parseInput.ts';
import { RECORDS } from '../../shared/model/records.ts';

/** Kinds a draft may hold. Decisions and reports belong to the case they were made in; media are files. */
const KINDS = [
  'injury',
  'bodyMeasurement',
  'shoulderRecord',
  'instabilityEvent',
  'neurovascularCheck',
  'provocationTest',
  'questionnaireTotal',
  'screeningSession',
  'screeningResult',
  'jumpTest',
  'jumpTrial',
  'ownMovement',
  'ownRule',
  'movementTrial',
  'landmarkTrack',
  'pointRepeat',
  'trialEvent',
  'enteredMeasure',
] as const;
/** Part of a whole case file, as case show --json writes it, and left out here. A still is nothing without its picture. */
const LEFT_OUT = ['revision', 'judgedBy', 'stills', 'findingDecisions', 'reports', 'media'];

export interface CaseDraft {
  readonly athlete: Partial<Omit<Athlete, 'id'>>;
  readonly case: Partial<Omit<CaseRecord, 'id' | 'athleteId' | 'number'>>;
  /** The records as edits of a case, under new ids. */
  edits(caseId: string, athleteId: string): Edit[];
}

type Loose = Readonly<Record<string, unknown>>;

/**
 * Reads a case from JSON: a case file, or as much of one as someone wrote by hand. Ids may be any words that tell records
 * apart; fields left out are taken as not entered.
 * @throws DomainError 'input-malformed' with the path of the first fault
 */
export function readCaseDraft(data: unknown, newId: () => string): CaseDraft {
  const draft = object(data, 'the case');
  const known = ['athlete', 'case', ...KINDS.map((kind) => LISTS[kind]), ...LEFT_OUT];
  const stranger = Object.keys(draft).find((key) => !known.includes(key));
  if (stranger !== undefined) {
    throw new DomainError(
      'input-malformed',
      `A case knows nothing called “${stranger}”; it has ${known.join(', ')}.`,
      stranger,
    );
  }
  const listed = KINDS.flatMap((kind) =>
    list(draft[LISTS[kind]], LISTS[kind]).map((entry, i) => {
      const path = `${LISTS[kind]}.${i}`;
      const given = object(entry, path);
      return { kind, path, given, id: newId(), label: given['id'] };
    }),
  );
  const ids = new Map(listed.map(({ label, id }) => [label, id]));

  const edits = (caseId: string, athleteId: string): Edit[] =>
    listed.map(({ kind, path, given, id }) => {
      const [parentKind, field] = RECORDS[kind].parent;
      const outer: Loose = { athlete: { [field]: athleteId }, case: { [field]: caseId } }[parentKind as string] ?? {};
      const references = Object.entries(given)
        .filter(([key, value]) => key.endsWith('Id') && ids.has(value))
        .map(([key, value]) => [key, ids.get(value)]);
      const { schema } = RECORDS[kind];
      // The file a force trace was read from, and the film, stay where they were.
      const media = ['mediaSha256', 'clipSha256'].filter((field) => field in schema.shape);
      const withoutMedia = Object.fromEntries(media.map((field) => [field, null]));
      const record = { ...blanks(schema), ...given, ...Object.fromEntries(references), ...outer, ...withoutMedia, id };
      // The compiler cannot follow a kind to its schema; the schema is that kind's, so the cast holds.
      return { op: 'create', kind, record: parseInput<unknown>(schema, record, path) } as Edit;
    });
  const checked = {
    athlete: parseInput(
      RECORDS.athlete.schema.omit({ id: true }).partial(),
      without(draft['athlete'], ['id']),
      'athlete',
    ),
    case: parseInput(
      RECORDS.case.schema.omit({ id: true, athleteId: true, number: true }).partial(),
      without(draft['case'], ['id', 'athleteId', 'number']),
      'case',
    ),
  };
  // Every record is judged now, before anything is stored.
  edits(newId(), newId());
  return { ...checked, edits } as CaseDraft;
}

/** What a form shows before anything is entered: nothing known, no text, no side. */
function blanks(schema: z.ZodObject): Loose {
  return Object.fromEntries(
    Object.entries(schema.shape).flatMap(([key, field]) => {
      const blank = [null, '', 'none', false, []].find((value) => (field as z.ZodType).safeParse(value).success);
      return blank === undefined ? [] : [[key, blank]];
    }),
  );
}

function object(value: unknown, path: string): Loose {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Loose;
  throw new DomainError('input-malformed', `${path} must be a record of named fields.`, path);
}

function list(value: unknown, path: string): readonly unknown[] {
  if (value === undefined) return [];
  if (Array.isArray(value)) return value;
  throw new DomainError('input-malformed', `${path} must be a list.`, path);
}

function without(value: unknown, keys: readonly string[]): Loose {
  if (value === undefined) return {};
  return Object.fromEntries(Object.entries(object(value, 'the record')).filter(([key]) => !keys.includes(key)));
}
