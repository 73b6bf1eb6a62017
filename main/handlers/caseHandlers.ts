import { DomainError } from '../../shared/errors.ts';
import { blankAthlete, blankCase } from '../../shared/model/blank.ts';
import { readCaseDraft } from '../exchange/caseDraft.ts';
import { parseJson } from '../exchange/parseJson.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { isKept } from '../../shared/model/recordChanges.ts';
import { copiesOf } from '../store/copyBeforeMigration.ts';
import type { Handlers } from './context.ts';
import { judged } from './judged.ts';

type CaseChannel =
  | 'shelf.list'
  | 'case.create'
  | 'case.import'
  | 'case.open'
  | 'case.edit'
  | 'case.undo'
  | 'case.redo'
  | 'case.history'
  | 'athlete.erase';

export const caseHandlers: Handlers<CaseChannel> = {
  'shelf.list': async ({ store }, query) => {
    const { total, rows } = await store.shelf(query);
    return {
      total,
      rows: rows.map((row) => ({ ...row, missing: [...row.missing], cautions: [...row.cautions] })),
    };
  },
  'case.create': async (context, { purpose, athleteId, openedOn }) => {
    const caseId = context.newId();
    const athlete = athleteId === null ? blankAthlete(context.newId()) : null;
    const number = await context.store.nextNumber(Number(openedOn.slice(0, 4)));
    const ids = { id: caseId, athleteId: athlete?.id ?? athleteId ?? '' };
    const opened: Edit = { op: 'create', kind: 'case', record: blankCase(ids, number, purpose, openedOn) };
    const edits: Edit[] = athlete === null ? [opened] : [{ op: 'create', kind: 'athlete', record: athlete }, opened];
    await context.store.create(edits, context.now());
    await judged(context, caseId);
    return { caseId };
  },
  'case.import': async (context, { fileName, text, purpose, openedOn }) => {
    const draft = readCaseDraft(parseJson(text, fileName), context.newId);
    const ids = { id: context.newId(), athleteId: context.newId() };
    const openedDay = draft.case.openedOn ?? openedOn;
    const number = await context.store.nextNumber(Number(openedDay.slice(0, 4)));
    const opened = blankCase(ids, number, purpose ?? draft.case.purpose ?? 'intake', openedDay);
    const { purpose: _draftPurpose, ...fields } = draft.case;
    const edits: Edit[] = [
      { op: 'create', kind: 'athlete', record: { ...blankAthlete(ids.athleteId), ...draft.athlete } },
      { op: 'create', kind: 'case', record: { ...opened, ...fields } },
      ...draft.edits(ids.id, ids.athleteId),
    ];
    await context.store.create(edits, context.now());
    await judged(context, ids.id);
    return { caseId: ids.id, number };
  },
  'case.open': async ({ store }, { caseId }) => ({
    file: await store.open(caseId),
    edits: await store.editState(caseId),
  }),
  'case.edit': async (context, { caseId, edits, continues = false }) => {
    if (edits.some(({ kind }) => isKept(kind))) {
      throw new DomainError(
        'input-malformed',
        'Reports and files come into a case by being made or imported, not by an edit. Nothing was changed.',
        'edits',
      );
    }
    const state = await context.store.apply(caseId, edits, context.now(), continues);
    await judged(context, caseId, edits);
    return state;
  },
  'case.undo': async (context, { caseId }) => {
    const state = await context.store.undo(caseId, context.now());
    await judged(context, caseId);
    return state;
  },
  'case.redo': async (context, { caseId }) => {
    const state = await context.store.redo(caseId, context.now());
    await judged(context, caseId);
    return state;
  },
  'athlete.erase': async ({ store, media, folder }, { caseId, number }) => {
    const file = await store.open(caseId);
    if (file.case.number !== number) {
      throw new DomainError(
        'conflict',
        'The number typed is not the number of this case. Nothing was erased. Type it as it is written there.',
        'number',
      );
    }
    const { caseIds, files } = await store.erase(caseId);
    for (const erased of caseIds) await media.forget(erased);
    for (const sha256 of files) await media.remove(sha256);
    return { cases: caseIds.length, files: files.length, copies: copiesOf(folder) };
  },
  'case.history': async ({ store }, { caseId, limit }) => ({ changes: await store.history(caseId, limit) }),
};
