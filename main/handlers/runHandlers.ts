import { isDeepStrictEqual } from 'node:util';
import { z } from 'zod';
import { DomainError } from '../../shared/errors.ts';
import type { Answer, Request } from '../../shared/contract/channels.ts';
import { type RosterColumn, rosterColumn } from '../../shared/exchange/roster.ts';
import { blankAthlete, blankCase } from '../../shared/model/blank.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { numberAfter } from '../../shared/ports/numberAfter.ts';
import { readRosterCsv } from '../exchange/rosterCsv.ts';
import { peopleOf } from '../exchange/samePerson.ts';
import type { Context, Handlers } from './context.ts';
import { judgeAll } from './judged.ts';
import { remember, remembered } from './remembered.ts';

/** Named of those that were worked on; the others are counted. */
const MOST_NAMES = 8;

export const runHandlers: Handlers<
  'roster.preview' | 'roster.import' | 'roster.list' | 'roster.takeBack' | 'run.list'
> = {
  'roster.preview': async (context, file) => {
    const { mapping: _mapping, ...preview } = await readRoster(context, file);
    return preview;
  },
  'roster.import': async (context, { openedOn, ...file }) => {
    const { rows, problems, columns, mapping } = await readRoster(context, file);
    const [first] = problems;
    if (first !== undefined) {
      const others = problems.length === 1 ? '' : ` ${problems.length - 1} more like this; the preview lists them.`;
      throw new DomainError(
        'input-malformed',
        `Nothing of ${file.fileName} was imported: ${first.path} ${first.words}${others}`,
        first.path,
      );
    }
    const athletes = rows.filter(({ repeats }) => repeats === null);
    const year = Number(openedOn.slice(0, 4));
    let number = await context.store.nextNumber(year);
    const opened = athletes.map((row) => {
      if (row.caseId !== null) return { line: row.line, caseId: row.caseId, edits: null };
      const caseId = context.newId();
      const athleteId = row.athleteId ?? context.newId();
      const record = blankCase({ id: caseId, athleteId }, number, 'intake', openedOn);
      number = numberAfter(year, [number]);
      const edits: Edit[] = [{ op: 'create', kind: 'case', record }];
      if (row.athleteId === null) {
        edits.unshift({ op: 'create', kind: 'athlete', record: { ...blankAthlete(athleteId), ...row.athlete } });
      }
      return { line: row.line, caseId, edits };
    });
    await context.store.createAll(
      opened.flatMap(({ edits }) => (edits === null ? [] : [edits])),
      context.now(),
      { id: context.newId(), fileName: file.fileName },
    );
    const heads = columns.map(({ column }) => column);
    await remember(context, 'roster', heads, mapping, mapping.length > 0);
    await judgeAll(
      context,
      opened.flatMap(({ caseId, edits }) => (edits === null ? [] : [caseId])),
    );
    return { cases: opened.map(({ line, caseId, edits }) => ({ line, caseId, isNew: edits !== null })) };
  },
  'roster.list': async ({ store }) => ({
    rosters: (await store.rosters()).map(({ cases, ...roster }) => {
      const workedOn = cases.filter(({ isWorkedOn }) => isWorkedOn);
      return {
        ...roster,
        untouched: cases.length - workedOn.length,
        workedOn: workedOn.length,
        names: workedOn.slice(0, MOST_NAMES).map(({ athleteName }) => athleteName),
      };
    }),
  }),
  'roster.takeBack': async (context, { rosterId, archivedOn, leaveWorkedOn }) => {
    const cases = (await context.store.rosters()).find((one) => one.rosterId === rosterId)?.cases;
    if (cases === undefined) throw new DomainError('not-found', 'Nothing of this list is on the shelf any more.');
    const workedOn = cases.filter(({ isWorkedOn }) => isWorkedOn);
    if (workedOn.length > 0 && !leaveWorkedOn) {
      const names = workedOn.slice(0, MOST_NAMES).map(({ athleteName }) => athleteName);
      const more = workedOn.length > names.length ? ` and ${workedOn.length - names.length} more` : '';
      throw new DomainError(
        'conflict',
        `Not taken back: something was entered since for ${names.join(', ')}${more}. Leave them and take back the others, or archive them one by one.`,
      );
    }
    const taken = cases.filter(({ isWorkedOn }) => !isWorkedOn).map(({ caseId }) => caseId);
    const archived = (caseId: string): Edit => ({ op: 'patch', kind: 'case', id: caseId, fields: { archivedOn } });
    await context.store.applyAll(
      taken.map((caseId) => ({ caseId, edits: [archived(caseId)] })),
      context.now(),
    );
    await judgeAll(context, taken);
    return { caseIds: taken, left: workedOn.length };
  },
  'run.list': async ({ store }) => {
    const runs = new Map<string, Answer<'run.list'>['runs'][number]>();
    for (const { caseId, ...run } of await store.screenings()) {
      const key = `${run.heldOn} ${run.batteryId} ${run.batteryVersion}`;
      const caseIds = runs.get(key)?.caseIds ?? [];
      runs.set(key, { ...run, caseIds: caseIds.includes(caseId) ? caseIds : [...caseIds, caseId] });
    }
    return { runs: [...runs.values()].toSorted((a, b) => (a.heldOn < b.heldOn ? 1 : -1)) };
  },
};

type Preview = Answer<'roster.preview'>;

/** The roster as read, each row with whoever it is on the shelf already, and the decisions it was read by. */
async function readRoster(
  context: Context,
  { text, mapping: decided }: Omit<Request<'roster.preview'>, 'fileName'>,
): Promise<Preview & { readonly mapping: readonly RosterColumn[] }> {
  const { store, now } = context;
  const read = (mapping: readonly RosterColumn[]) => readRosterCsv(text, { mapping, today: now().slice(0, 10) });
  const recognised = read(decided);
  const heads = recognised.columns.map(({ column }) => column);
  const kept = await remembered(context, 'roster', heads, z.array(rosterColumn));
  const mapping = decided.length === 0 && kept !== null ? kept : decided;
  const roster = mapping === decided ? recognised : read(mapping);
  const people = peopleOf(await store.people(), (person) => person);
  const problems = [...roster.problems];
  const rows = roster.rows.map((row): Preview['rows'][number] => {
    const same = people.same(row.athlete);
    const athleteIds = new Set(same.map(({ athleteId }) => athleteId));
    if (athleteIds.size > 1) {
      problems.push({
        path: `line ${row.line}`,
        words: `${athleteIds.size} people called ${row.athlete.name} are on the shelf. Add the date of birth that tells which is meant.`,
      });
    }
    return {
      ...row,
      athleteId: same[0]?.athleteId ?? null,
      caseId: same.find(({ isOpenIntake }) => isOpenIntake)?.caseId ?? null,
    };
  });
  return { ...roster, rows, problems, mapping, isRemembered: kept !== null && isDeepStrictEqual(mapping, kept) };
}
