import { DomainError } from '../../shared/errors.ts';
import type { Answer, Request } from '../../shared/contract/channels.ts';
import { blankAthlete, blankCase } from '../../shared/model/blank.ts';
import type { Athlete } from '../../shared/model/athlete.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { numberAfter } from '../../shared/ports/numberAfter.ts';
import type { ReadableCaseStore } from '../../shared/ports/caseStore.ts';
import { readRosterCsv } from '../exchange/rosterCsv.ts';
import { personName, samePerson } from '../exchange/samePerson.ts';
import type { Context, Handlers } from './context.ts';
import { judged } from './judged.ts';

export const runHandlers: Handlers<'roster.preview' | 'roster.import' | 'run.list'> = {
  'roster.preview': readRoster,
  'roster.import': async (context, { openedOn, ...file }) => {
    const { rows, problems } = await readRoster(context, file);
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
    );
    for (const { caseId, edits } of opened) if (edits !== null) await judged(context, caseId, edits.slice(-1));
    return { cases: opened.map(({ line, caseId, edits }) => ({ line, caseId, isNew: edits !== null })) };
  },
  'run.list': async ({ store }) => {
    const runs = new Map<string, Answer<'run.list'>['runs'][number]>();
    for (const { heldOn, batteryId, caseId } of await store.screenings()) {
      const key = `${heldOn} ${batteryId}`;
      const caseIds = runs.get(key)?.caseIds ?? [];
      runs.set(key, { heldOn, batteryId, caseIds: caseIds.includes(caseId) ? caseIds : [...caseIds, caseId] });
    }
    return { runs: [...runs.values()].toSorted((a, b) => (a.heldOn < b.heldOn ? 1 : -1)) };
  },
};

type Preview = Answer<'roster.preview'>;

/** The roster as read, each row with whoever it is on the shelf already. */
async function readRoster(
  { store, now }: Context,
  { text, mapping }: Omit<Request<'roster.preview'>, 'fileName'>,
): Promise<Preview> {
  const roster = readRosterCsv(text, { mapping, today: now().slice(0, 10) });
  const people = await peopleNamed(store, new Set(roster.rows.map(({ athlete }) => personName(athlete.name))));
  const problems = [...roster.problems];
  const rows = roster.rows.map((row): Preview['rows'][number] => {
    const same = people.filter(({ athlete }) => samePerson(athlete, row.athlete));
    const athleteIds = new Set(same.map(({ athlete }) => athlete.id));
    if (athleteIds.size > 1) {
      problems.push({
        path: `line ${row.line}`,
        words: `${athleteIds.size} people called ${row.athlete.name} are on the shelf. Add the date of birth that tells which is meant.`,
      });
    }
    return {
      ...row,
      athleteId: same[0]?.athlete.id ?? null,
      caseId: same.find(({ isOpenIntake }) => isOpenIntake)?.caseId ?? null,
    };
  });
  return { ...roster, rows, problems };
}

interface KnownPerson {
  readonly caseId: string;
  readonly athlete: Athlete;
  readonly isOpenIntake: boolean;
}

const PAGE = 500;

/** Everyone on the shelf with one of these names, archived cases included. */
async function peopleNamed(store: ReadableCaseStore, names: ReadonlySet<string>): Promise<KnownPerson[]> {
  const people: KnownPerson[] = [];
  for (const archived of [false, true]) {
    for (let offset = 0, total = 1; offset < total; offset += PAGE) {
      const page = await store.shelf({ search: '', archived, offset, limit: PAGE });
      total = page.total;
      for (const { caseId, athleteName, purpose } of page.rows) {
        if (!names.has(personName(athleteName)) || athleteName === '') continue;
        const { athlete } = await store.open(caseId);
        people.push({ caseId, athlete, isOpenIntake: purpose === 'intake' && !archived });
      }
    }
  }
  return people;
}
