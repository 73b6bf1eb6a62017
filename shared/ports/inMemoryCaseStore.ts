import { emptyCaseFile, isSingle, LISTS, recordsOf, withRecord } from '../model/caseLists.ts';
import { idInUse, isKept, type RecordChange } from '../model/recordChanges.ts';
import type { Edit } from '../model/edit.ts';
import {
  type AnyRecord,
  type CaseFile,
  isOfAthlete,
  type Kind,
  KINDS,
  type RecordOf,
  RECORDS,
} from '../model/records.ts';
import type { CaseStore, CaseSummary, EditState, ShelfRow } from './caseStore.ts';
import { isOvertaken, type Plan, planCase, planEdits, planRedo, planUndo, type Step } from './editing.ts';
import { notInStore } from './notInStore.ts';
import { numberAfter } from './numberAfter.ts';
import { markedMatch } from './inMemorySearch.ts';
import { searchText, searchWords } from './searchText.ts';

interface Held {
  readonly revision: number;
  readonly touchedAt: string;
  readonly summary: CaseSummary;
  /** Whether the summary is of the case as it is now. */
  readonly isJudged: boolean;
  /** Oldest first. */
  readonly steps: readonly Step[];
}

/** The store's twin for tests and previews: same rules, same answers, nothing kept. */
export function inMemoryCaseStore(): CaseStore {
  const records = new Map(KINDS.map((kind) => [kind, new Map<string, AnyRecord>()]));
  const held = new Map<string, Held>();
  /** Order in which records were first made, so that one brought back by undo returns to its place. */
  const places = new Map<string, number>();

  /** Order in which steps were first made, over all cases: `case step`. */
  const made = new Map<string, number>();
  /** Which roster a case came from. */
  const rosterOf = new Map<string, { readonly id: string; readonly fileName: string; readonly at: string }>();
  const numbered = (caseId: string, steps: readonly Step[]) => {
    for (const { step } of steps) if (!made.has(`${caseId} ${step}`)) made.set(`${caseId} ${step}`, made.size);
    return steps;
  };
  /** Changes in force that other cases made after a step. */
  const changesSince = (caseId: string, step: Step | null) =>
    step === null
      ? []
      : [...held].flatMap(([other, { steps }]) =>
          other === caseId
            ? []
            : steps
                .filter(
                  (one) =>
                    one.state === 'done' &&
                    (made.get(`${other} ${one.step}`) ?? 0) > (made.get(`${caseId} ${step.step}`) ?? 0),
                )
                .flatMap(({ changes }) => changes),
        );

  const all = <K extends Kind>(kind: K) =>
    [...(records.get(kind)?.values() ?? [])].toSorted(
      (a, b) => (places.get(a.id) ?? 0) - (places.get(b.id) ?? 0),
    ) as RecordOf<K>[];
  const get = <K extends Kind>(kind: K, id: string) => (records.get(kind)?.get(id) ?? null) as RecordOf<K> | null;

  function heldCase(caseId: string): Held {
    const found = held.get(caseId);
    if (found === undefined) throw notInStore('case', caseId);
    return found;
  }

  function read(caseId: string): CaseFile {
    const { revision } = heldCase(caseId);
    const opened = get('case', caseId) as RecordOf<'case'>;
    const athlete = get('athlete', opened.athleteId) as RecordOf<'athlete'>;
    let file: CaseFile = { ...emptyCaseFile(opened, athlete), revision };
    for (const kind of KINDS) {
      for (const record of isSingle(kind) ? [] : all(kind)) {
        if (isPartOf(file, kind, record)) file = withRecord(file, kind, record.id, record);
      }
    }
    return file;
  }

  /** An athlete with everything on file of theirs, whatever the case. */
  function known(athleteId: string): Pick<CaseFile, 'athlete'> & Partial<CaseFile> {
    const athlete = get('athlete', athleteId);
    if (athlete === null) throw notInStore('athlete', athleteId);
    const lists: Partial<Record<Kind, readonly AnyRecord[]>> = { athlete: [athlete] };
    for (const kind of KINDS.filter(isOfAthlete)) {
      const parent = RECORDS[kind].parent;
      if (parent === null) continue;
      const owners = new Set(lists[parent[0]]?.map(({ id }) => id));
      lists[kind] = all(kind).filter((one) => owners.has(Object(one)[parent[1]]));
    }
    const named = KINDS.flatMap((kind) => (isSingle(kind) ? [] : [[LISTS[kind], lists[kind] ?? []]]));
    return { ...Object.fromEntries(named), athlete };
  }

  function write(changes: readonly RecordChange[]): void {
    // What one step makes, removes and makes again is there once.
    const isThere = new Map<string, boolean>();
    for (const { kind, recordId, op } of changes) {
      const place = `${kind} ${recordId}`;
      const isTaken = isThere.get(place) ?? get(kind, recordId) !== null;
      if (op === 'create' && isTaken) throw idInUse(kind, recordId);
      isThere.set(place, op !== 'remove');
    }
    for (const { kind, recordId, record } of changes) {
      if (record === null) records.get(kind)?.delete(recordId);
      else records.get(kind)?.set(recordId, record);
      if (!places.has(recordId)) places.set(recordId, places.size);
    }
  }

  /** Everything that follows a change: revisions of all cases that show it, this case's touch and history. */
  function settle(caseId: string, changes: readonly RecordChange[], at: string, steps: readonly Step[]): EditState {
    const current = heldCase(caseId);
    held.set(caseId, { ...current, revision: current.revision + 1, isJudged: false, touchedAt: at, steps });
    if (changes.some(({ kind }) => isOfAthlete(kind))) {
      for (const other of sameAthlete(caseId).filter((one) => one !== caseId)) {
        const theirs = heldCase(other);
        held.set(other, { ...theirs, revision: theirs.revision + 1, isJudged: false });
      }
    }
    return stateOf(caseId);
  }

  function stateOf(caseId: string): EditState {
    const { revision, steps } = heldCase(caseId);
    return { revision, undo: undoable(steps)?.label ?? null, redo: redoable(steps)?.label ?? null };
  }

  function sameAthlete(caseId: string): string[] {
    const athleteId = get('case', caseId)?.athleteId;
    return all('case')
      .filter((one) => one.athleteId === athleteId)
      .map((one) => one.id);
  }

  function rerun(caseId: string, step: Step | undefined, changes: readonly RecordChange[], at: string): EditState {
    if (step === undefined) return stateOf(caseId);
    write(changes);
    const state = step.state === 'done' ? 'undone' : 'done';
    const steps = heldCase(caseId).steps.map((one) => (one === step ? ({ ...one, state } as const) : one));
    return settle(caseId, changes, at, steps);
  }

  function openAll(cases: readonly (readonly Edit[])[], at: string): string[] {
    const plans = cases.map((edits) => {
      const opened = edits.find((edit) => edit.kind === 'case');
      const record = opened?.op === 'create' ? opened.record : null;
      const isKnown = opened !== undefined && !edits.some((edit) => edit.kind === 'athlete');
      return { caseId: record?.id ?? '', plan: planCase(edits, isKnown ? known(record?.athleteId ?? '') : null) };
    });
    write(plans.flatMap(({ plan }) => plan.changes));
    for (const { caseId, plan } of plans) {
      const summary = { missing: [], cautions: [] };
      held.set(caseId, {
        revision: 0,
        touchedAt: at,
        summary,
        isJudged: false,
        steps: numbered(caseId, stepsAfter([], plan, at)),
      });
    }
    return plans.map(({ caseId }) => caseId);
  }

  function edit(caseId: string, edits: readonly Edit[], at: string, continues: boolean): EditState {
    const { steps } = heldCase(caseId);
    const latest = steps.at(-1) ?? null;
    const isFree = latest !== null && !isOvertaken(latest, changesSince(caseId, latest));
    const plan = planEdits(read(caseId), edits, isFree ? latest : null, at, continues);
    write(plan.changes);
    return settle(caseId, plan.changes, at, numbered(caseId, stepsAfter(steps, plan, at)));
  }

  return {
    create: async (edits, at) => void openAll([edits], at),
    createAll: async (cases, at, roster) => {
      for (const caseId of openAll(cases, at)) rosterOf.set(caseId, { ...roster, at });
    },
    apply: async (caseId, edits, at, continues = false) => edit(caseId, edits, at, continues),
    applyAll: async (cases, at) => {
      const before = { records: new Map([...records].map(([kind, of]) => [kind, new Map(of)])), held: new Map(held) };
      try {
        for (const { caseId, edits } of cases) edit(caseId, edits, at, false);
      } catch (thrown) {
        for (const [kind, of] of before.records) records.set(kind, of);
        held.clear();
        for (const [caseId, one] of before.held) held.set(caseId, one);
        throw thrown;
      }
    },
    undo: async (caseId, at) => {
      const step = undoable(heldCase(caseId).steps);
      return rerun(
        caseId,
        step,
        step === undefined ? [] : planUndo(read(caseId), step, changesSince(caseId, step)),
        at,
      );
    },
    redo: async (caseId, at) => {
      const step = redoable(heldCase(caseId).steps);
      return rerun(
        caseId,
        step,
        step === undefined ? [] : planRedo(read(caseId), step, changesSince(caseId, step)),
        at,
      );
    },
    nextNumber: async (year) =>
      numberAfter(
        year,
        all('case').map((one) => one.number),
      ),
    erase: async (caseId) => {
      const caseIds = sameAthlete(heldCase(caseId) && caseId);
      const files = caseIds.map(read);
      for (const file of files) {
        for (const kind of KINDS) for (const { id } of recordsOf(file, kind)) records.get(kind)?.delete(id);
        held.delete(file.case.id);
      }
      const kept = new Set(all('media').map(({ sha256 }) => sha256));
      const theirs = new Set(files.flatMap(({ media }) => media.map(({ sha256 }) => sha256)));
      return { caseIds, files: [...theirs].filter((sha256) => !kept.has(sha256)) };
    },
    writeSummaries: async (summaries) => {
      for (const [caseId, summary] of summaries) held.set(caseId, { ...heldCase(caseId), summary, isJudged: true });
    },
    shelf: async ({ search, archived, offset, limit }) => {
      const rows: ShelfRow[] = [];
      const words = searchWords(search);
      for (const opened of all('case').filter((one) => (one.archivedOn !== null) === archived)) {
        const file = read(opened.id);
        const texts = KINDS.flatMap((kind) => recordsOf(file, kind).map((record: AnyRecord) => searchText(record)));
        const match = markedMatch(texts, words);
        if (words.length > 0 && match === null) continue;
        const { touchedAt, summary } = heldCase(opened.id);
        rows.push({
          caseId: opened.id,
          number: opened.number,
          athleteName: file.athlete.name,
          purpose: opened.purpose,
          touchedAt,
          isInvented: opened.isInvented,
          isArchived: archived,
          ...summary,
          match,
        });
      }
      rows.sort((a, b) =>
        a.touchedAt === b.touchedAt ? compare(b.number, a.number) : compare(b.touchedAt, a.touchedAt),
      );
      return { total: rows.length, rows: rows.slice(offset, offset + limit) };
    },
    open: async (caseId) => read(caseId),
    editState: async (caseId) => stateOf(caseId),
    history: async (caseId, limit) =>
      heldCase(caseId)
        .steps.flatMap(({ step, at, label, state, changes }) =>
          changes.map(({ kind, recordId, op, before, after }) => ({
            step,
            at,
            kind,
            recordId,
            op,
            before,
            after,
            isUndone: state !== 'done',
            label,
          })),
        )
        .toReversed()
        .slice(0, limit),
    lastEditAt: async (caseId) => {
      const shown = (owner: string) => (change: { kind: Kind }) =>
        !isKept(change.kind) && (owner === caseId || isOfAthlete(change.kind));
      return sameAthlete(heldCase(caseId) && caseId)
        .flatMap((owner) =>
          heldCase(owner).steps.filter((step) => step.state === 'done' && step.changes.some(shown(owner))),
        )
        .reduce((latest, step) => (step.at > latest ? step.at : latest), '');
    },
    casesOfSameAthlete: async (caseId) => sameAthlete(heldCase(caseId) && caseId),
    people: async () =>
      all('case').map(({ id, athleteId, purpose, archivedOn }) => {
        const { name, birthDate } = get('athlete', athleteId) as RecordOf<'athlete'>;
        return { caseId: id, athleteId, name, birthDate, isOpenIntake: purpose === 'intake' && archivedOn === null };
      }),
    rosters: async () => {
      const open = all('case').flatMap((one) => {
        const roster = rosterOf.get(one.id);
        return roster === undefined || one.archivedOn !== null ? [] : [{ ...one, roster }];
      });
      return [...Map.groupBy(open, ({ roster }) => roster.id)]
        .map(([rosterId, cases]) => ({
          rosterId,
          fileName: cases[0]?.roster.fileName ?? '',
          takenAt: cases[0]?.roster.at ?? '',
          cases: cases.map(({ id, athleteId }) => ({
            caseId: id,
            athleteName: get('athlete', athleteId)?.name ?? '',
            isWorkedOn: heldCase(id).revision > 0,
          })),
        }))
        .toSorted((a, b) => compare(b.takenAt, a.takenAt));
    },
    screenings: async () =>
      all('screeningSession')
        .filter(({ caseId }) => get('case', caseId)?.archivedOn === null)
        .map(({ caseId, heldOn, batteryId, batteryVersion, battery }) => ({
          caseId,
          heldOn,
          batteryId,
          batteryVersion,
          batteryLabel: battery?.label ?? null,
        })),
    unjudged: async () =>
      all('case')
        .map(({ id }) => id)
        .filter((id) => !heldCase(id).isJudged),
    keptFiles: async () => all('media'),
    verify: async () => [],
    close: async () => {},
  };
}

function undoable(steps: readonly Step[]): Step | undefined {
  return steps.findLast((step) => step.isUndoable && step.state === 'done');
}

function redoable(steps: readonly Step[]): Step | undefined {
  return steps.find((step) => step.state === 'undone');
}

function compare(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

/** KINDS lists owners before what they own, so the owner is already in the file if it is part of the case. */
function isPartOf(file: CaseFile, kind: Kind, record: AnyRecord): boolean {
  const parent = RECORDS[kind].parent;
  return parent !== null && recordsOf(file, parent[0]).some(({ id }) => id === Object(record)[parent[1]]);
}

function stepsAfter(steps: readonly Step[], plan: Plan, at: string): readonly Step[] {
  if (plan.changes.length === 0) return steps;
  const last = steps.at(-1)?.step ?? 0;
  const { label, isUndoable, amends } = plan;
  const changes = amends === null ? plan.changes : [amends];
  const made: Step = { step: amends === null ? last + 1 : last, at, label, state: 'done', isUndoable, changes };
  const kept = amends === null ? steps : steps.slice(0, -1);
  return [
    ...kept.map((one) => (isUndoable && one.state === 'undone' ? { ...one, state: 'abandoned' as const } : one)),
    made,
  ];
}
