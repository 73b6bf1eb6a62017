import { canonicalJson } from '../canonicalJson.ts';
import { DomainError } from '../errors.ts';
import { changedLeaves } from './changedLeaves.ts';
import { emptyCaseFile, findRecord, isSingle } from '../model/caseLists.ts';
import type { Change, Edit } from '../model/edit.ts';
import { isKept, type RecordChange, recordChanges, recordCreated } from '../model/recordChanges.ts';
import type { CaseFile, RecordOf } from '../model/records.ts';
import { fieldWords, KIND_WORDS } from '../model/words.ts';

/** A stored change, without what all changes of its step share. */
export type StepChange = Pick<Change, 'kind' | 'recordId' | 'op' | 'before' | 'after'>;

/** `abandoned`: undone, then overtaken by a new edit, so that redo no longer reaches it. */
export type StepState = 'done' | 'undone' | 'abandoned';

/** One step of undo as stored. Steps of a case are numbered from 1; the first opened the case. */
export interface Step {
  readonly step: number;
  readonly at: string;
  readonly label: string;
  readonly state: StepState;
  readonly isUndoable: boolean;
  readonly changes: readonly StepChange[];
}

/** What a store has to write, worked out beforehand: it executes this in one transaction and decides nothing itself. */
export interface Plan {
  /** In the order to be written. Empty: the edits change nothing, and no step is added. */
  readonly changes: readonly RecordChange[];
  readonly label: string;
  readonly isUndoable: boolean;
  /** What the latest step's one change becomes, instead of a new step. */
  readonly amends: StepChange | null;
}

/** Typing one field with pauses shorter than this is one step of undo. Chosen for the house; no source. */
export const TYPING_PAUSE_MS = 3000;

/**
 * The first step of a case's history.
 * @param known the athlete with everything on file of theirs, if the edits do not create the athlete
 */
export function planCase(edits: readonly Edit[], known: (Pick<CaseFile, 'athlete'> & Partial<CaseFile>) | null): Plan {
  const singles = edits.filter((edit) => edit.op === 'create' && isSingle(edit.kind));
  const caseChange = singleCreated(singles, 'case');
  const athleteChange = known === null ? singleCreated(singles, 'athlete') : null;
  const athlete = known?.athlete ?? (athleteChange?.record as RecordOf<'athlete'>);
  const opened = caseChange.record as RecordOf<'case'>;
  if (opened.athleteId !== athlete.id || singles.length !== (known === null ? 2 : 1)) {
    throw new DomainError('input-malformed', 'A new case needs one case record and the one athlete it names.');
  }
  const file = { ...emptyCaseFile(opened, athlete), ...known };
  const rest = recordChanges(
    file,
    edits.filter((edit) => !singles.includes(edit)),
  );
  const changes = [athleteChange, caseChange, ...rest.changes].filter((change) => change !== null);
  return { changes, label: 'case opened', isUndoable: false, amends: null };
}

function singleCreated(edits: readonly Edit[], kind: 'case' | 'athlete'): RecordChange {
  const edit = edits.find((one) => one.kind === kind);
  if (edit?.op !== 'create') {
    throw new DomainError('input-missing', `A new case needs its ${KIND_WORDS[kind]} record, and none was given.`);
  }
  return recordCreated(kind, edit.record);
}

/**
 * @param latest the step with the highest number, whatever its state
 * @param continues whether these edits go on with work that the latest step began, and belong to it if they can
 */
export function planEdits(
  file: CaseFile,
  edits: readonly Edit[],
  latest: Step | null,
  at: string,
  continues: boolean,
): Plan {
  const { changes } = recordChanges(file, edits);
  const [change] = changes;
  if (latest !== null && change !== undefined && changes.length === 1) {
    const amends = continues ? grown(latest, change) : typedOn(latest, change, at);
    if (amends !== null) return { changes, label: latest.label, isUndoable: true, amends };
  }
  // What was printed or imported is never undone away, so a step of nothing else is none to undo.
  const isUndoable = changes.some((one) => !isKept(one.kind));
  return { changes, label: labelOf(edits), isUndoable, amends: null };
}

/** The latest step's one change grown by a patch of the same record that begins where it ended; otherwise null. */
function grown({ changes, state, isUndoable }: Step, change: RecordChange): StepChange | null {
  const [earlier] = changes;
  const { recordId, op, before, after } = change;
  if (changes.length !== 1 || earlier === undefined || state !== 'done' || !isUndoable || op !== 'patch') return null;
  const ended = earlier.after ?? {};
  const met = Object.fromEntries(Object.keys(before ?? {}).map((name) => [name, ended[name] ?? null]));
  // Also tells that no other case of the athlete wrote to it in between.
  const goesOn = earlier.recordId === recordId && canonicalJson(met) === canonicalJson(before);
  return goesOn ? { ...earlier, after: { ...ended, ...after } } : null;
}

/** The same, if both are typing in one field. */
function typedOn(latest: Step, change: RecordChange, at: string): StepChange | null {
  const pauseMs = Date.parse(at) - Date.parse(latest.at);
  const isSoon = pauseMs >= 0 && pauseMs <= TYPING_PAUSE_MS;
  const [earlier] = latest.changes;
  return isSoon && earlier?.op === 'patch' && isTyping(earlier, change) ? grown(latest, change) : null;
}

/**
 * Typing changes one value, and copies of it that bear the same name. A place on a picture is two, across and down: putting
 * it down is a step of its own, however quickly the next follows, and so is what is typed beside it.
 */
function isTyping(earlier: StepChange, change: StepChange): boolean {
  // A nudged point changes one coordinate, and long tracks would take long to compare.
  if ('samples' in (change.after ?? {})) return false;
  const [first, then] = [changedLeaves(earlier.before, earlier.after), changedLeaves(change.before, change.after)];
  const names = new Set([...first, ...then].map((leaf) => leaf.slice(leaf.lastIndexOf('.') + 1)));
  return names.size === 1 && then.some((leaf) => first.includes(leaf));
}

/**
 * Whether other cases of the athlete wrote to the same fields after a step did. Their value may be the same again by now;
 * history would still end with theirs.
 * @param later changes in force of other cases that were made after the step's
 */
export function isOvertaken(step: Step, later: readonly StepChange[]): boolean {
  const fieldsOf = ({ before, after }: StepChange) => Object.keys({ ...before, ...after });
  return step.changes.some((own) => {
    const fields = fieldsOf(own);
    return later.some(
      (other) => other.recordId === own.recordId && fieldsOf(other).some((name) => fields.includes(name)),
    );
  });
}

/**
 * What undoing a step writes. Records that are kept once made stay.
 * @param later as of `isOvertaken`
 */
export function planUndo(file: CaseFile, step: Step, later: readonly StepChange[]): readonly RecordChange[] {
  refuseOvertaken(step, later);
  return rerun(
    file,
    step.changes
      .filter((change) => !isKept(change.kind))
      .map(inverse)
      .toReversed(),
  );
}

/** What doing an undone step again writes. */
export function planRedo(file: CaseFile, step: Step, later: readonly StepChange[]): readonly RecordChange[] {
  refuseOvertaken(step, later);
  return rerun(
    file,
    step.changes.filter((change) => !isKept(change.kind)),
  );
}

const INVERSE = { create: 'remove', patch: 'patch', remove: 'create' } as const;

function inverse(change: StepChange): StepChange {
  return { ...change, op: INVERSE[change.op], before: change.after, after: change.before };
}

function rerun(file: CaseFile, changes: readonly StepChange[]): readonly RecordChange[] {
  const made: RecordChange[] = [];
  let next = file;
  for (const change of changes) {
    requireUnchanged(next, change);
    const one = recordChanges(next, [editOf(change)]);
    next = one.file;
    made.push(...one.changes);
  }
  return made;
}

/** What describes the athlete is shared between cases: nothing that another case wrote since may be overwritten. */
function requireUnchanged(file: CaseFile, change: StepChange): void {
  const current = findRecord(file, change.kind, change.recordId) as StepChange['before'];
  const names = Object.keys(change.before ?? {});
  const now = Object.fromEntries(names.map((name) => [name, current?.[name] ?? null]));
  if ((current === null) !== (change.before === null) || canonicalJson(now) !== canonicalJson(change.before ?? {})) {
    throw changedElsewhere(change, names);
  }
}

function refuseOvertaken(step: Step, later: readonly StepChange[]): void {
  const change = step.changes.find((one) => isOvertaken({ ...step, changes: [one] }, later));
  if (change !== undefined) throw changedElsewhere(change, Object.keys(change.before ?? {}));
}

function changedElsewhere({ kind }: StepChange, names: readonly string[]): DomainError {
  const what = names.length === 1 ? `${fieldWords(names[0] ?? '')} of the ` : '';
  return new DomainError(
    'conflict',
    `The ${what}${KIND_WORDS[kind]} was changed since, through another case of this athlete. ` +
      'Nothing was undone; change it by hand if it should be different.',
  );
}

function editOf(change: StepChange): Edit {
  const { kind, op, recordId: id, after } = change;
  if (op === 'remove') return { op, kind, id };
  return (op === 'create' ? { op, kind, record: after } : { op, kind, id, fields: after }) as Edit;
}

/** A step in words: `body mass of the athlete`, `injury added`, `jump removed and 2 more changes`. */
function labelOf(edits: readonly Edit[]): string {
  // What a file brought along is not what the person did.
  const done = edits.filter((edit) => edit.kind !== 'media');
  const [first] = done.length === 0 ? edits : done;
  if (first === undefined) return '';
  // A record added with all its parts is one thing to a person.
  const others = done.every((edit) => edit.op === 'create') ? 0 : done.length - 1;
  return `${editWords(first)}${others === 0 ? '' : ` and ${others} more ${others === 1 ? 'change' : 'changes'}`}`;
}

function editWords(edit: Edit): string {
  if (edit.op === 'create') return `${KIND_WORDS[edit.kind]} added`;
  if (edit.op === 'remove') return `${KIND_WORDS[edit.kind]} removed`;
  const names = Object.keys(edit.fields);
  const fields = names.length > 3 ? `${names.length} fields` : names.map(fieldWords).join(', ');
  return `${fields} of the ${KIND_WORDS[edit.kind]}`;
}
