import { canonicalJson } from '../../shared/canonicalJson.ts';
import { DomainError } from '../../shared/errors.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import {
  compareRuns,
  isOfRun,
  type RunEntry,
  runFile,
  type RunFile,
  type RunOf,
  sessionOfRun,
  toRunFile,
} from '../../shared/exchange/runFile.ts';
import { batteryOf } from '../../shared/knowledge/screening/index.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { parseInput } from '../../shared/model/parseInput.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { checkRun } from '../exchange/checkRun.ts';
import { parseJson } from '../exchange/parseJson.ts';
import { peopleOf } from '../exchange/samePerson.ts';
import type { Context, Handlers } from './context.ts';
import { judgeAll } from './judged.ts';

export const mergeHandlers: Handlers<'run.export' | 'run.compare' | 'run.merge'> = {
  'run.export': async (context, run) => ({
    fileName: `intake-run-${run.heldOn}-${run.batteryId.replaceAll(/[^\w-]+/g, '-')}.json`,
    text: `${JSON.stringify(toRunFile(run, await casesOf(context, run)), null, 1)}\n`,
  }),
  'run.compare': async (context, { fileName, text }) => {
    const theirs = readRun(text, fileName);
    const compared = await compare(context, theirs);
    return {
      heldOn: theirs.heldOn,
      batteryId: theirs.batteryId,
      batteryVersion: theirs.batteryVersion,
      athletes: compared.map(({ file, name, reason, added, alike, conflicts }) => ({
        name,
        caseId: file?.case.id ?? null,
        reason,
        added: [...added],
        alike,
        conflicts: conflicts.map((conflict) => ({ ...conflict })),
      })),
    };
  },
  'run.merge': async (context, { fileName, text, choices }) => {
    const compared = await compare(context, readRun(text, fileName));
    const planned = compared.flatMap(({ file, sessionId, name, added, conflicts }) => {
      if (file === null || sessionId === null) return [];
      const replaced = conflicts.filter(({ itemId, side }) => {
        const choice = choices.find((one) => one.caseId === file.case.id && one.itemId === itemId && one.side === side);
        if (choice !== undefined) return choice.take === 'theirs';
        throw new DomainError(
          'conflict',
          `run.merge needs a choice for every conflict, and has none for ${name}, ${itemId}, ${side}. Nothing was stored.`,
          `${file.case.id} ${itemId} ${side}`,
        );
      });
      return [{ file, sessionId, added, replaced }];
    });
    const changed = planned.flatMap(({ file, sessionId, added, replaced }) => {
      if (added.length + replaced.length === 0) return [];
      const edits = [
        ...added.map(
          (record): Edit => ({
            op: 'create',
            kind: 'screeningResult',
            record: { ...record, id: context.newId(), sessionId },
          }),
        ),
        ...replaced.map(({ itemId, side, theirs }): Edit => {
          const { itemId: _item, side: _side, ...fields } = theirs;
          const held = file.screeningResults.find(
            (one) => one.sessionId === sessionId && one.itemId === itemId && one.side === side,
          );
          return { op: 'patch', kind: 'screeningResult', id: held?.id ?? '', fields };
        }),
      ];
      return [{ caseId: file.case.id, edits }];
    });
    // The whole squad or nobody: half a merge would look like a finished one.
    await context.store.applyAll(changed, context.now());
    const caseIds = changed.map(({ caseId }) => caseId);
    await judgeAll(context, caseIds);
    const sum = (of: (one: (typeof planned)[number]) => number) => planned.reduce((total, one) => total + of(one), 0);
    return { caseIds, added: sum(({ added }) => added.length), replaced: sum(({ replaced }) => replaced.length) };
  },
};

/** @throws DomainError 'input-malformed', 'not-comparable' for a battery this program does not know, and as checkRun */
function readRun(text: string, fileName: string): RunFile {
  const run = parseInput(runFile, parseJson(text, fileName), `the run ${fileName}`);
  const battery = batteryOf(run);
  if (battery === null) {
    throw new DomainError(
      'not-comparable',
      `${fileName} was taken with the battery ${run.batteryId}, version ${run.batteryVersion}, which is not known here. Nothing was stored.`,
    );
  }
  if (battery.id !== run.batteryId || battery.version !== run.batteryVersion) {
    throw new DomainError(
      'input-malformed',
      `${fileName} names another battery than the one that it holds. Nothing was stored.`,
      'battery',
    );
  }
  checkRun(run, battery, fileName);
  return run;
}

async function casesOf({ store }: Context, run: RunOf): Promise<CaseFile[]> {
  const sessions = await store.screenings();
  const ids = new Set(sessions.flatMap((one) => (isOfRun(run, one) ? [one.caseId] : [])));
  return Promise.all([...ids].map((caseId) => store.open(caseId)));
}

interface Compared {
  readonly name: string;
  readonly file: CaseFile | null;
  readonly sessionId: string | null;
  readonly reason: string | null;
  readonly added: readonly RunEntry[];
  readonly alike: number;
  readonly conflicts: Answer<'run.compare'>['athletes'][number]['conflicts'];
}

/** Each athlete of the file beside the one case of this run that is theirs. */
async function compare(context: Context, theirs: RunFile): Promise<Compared[]> {
  // Whatever the version, so that whoever was tested with another one is said to be.
  const { heldOn, batteryId } = theirs;
  const people = peopleOf(await casesOf(context, { heldOn, batteryId }), ({ athlete }) => athlete);
  return theirs.athletes.map(({ name, birthDate, results }) => {
    const same = people.same({ name, birthDate });
    const [file] = same;
    const session =
      file === undefined ? null : (sessionOfRun(file, theirs) ?? sessionOfRun(file, { heldOn, batteryId }));
    const reason =
      file === undefined
        ? 'not in this run here: add the athlete to the run, then merge again'
        : same.length > 1
          ? `${same.length} athletes of this run have the name; a date of birth tells which is meant`
          : session?.batteryVersion !== theirs.batteryVersion
            ? `tested here with version ${session?.batteryVersion} of the battery, there with ${theirs.batteryVersion}`
            : canonicalJson(session.battery) !== canonicalJson(theirs.battery)
              ? `version ${theirs.batteryVersion} of the battery says something else there than here`
              : null;
    if (file === undefined || reason !== null)
      return { name, file: null, sessionId: null, reason, added: [], alike: 0, conflicts: [] };
    const ours = file.screeningResults.filter(({ sessionId }) => sessionId === session?.id);
    const { added, alike, conflicts } = compareRuns(ours, results);
    return { name, file, sessionId: session?.id ?? null, reason, added, alike, conflicts: [...conflicts] };
  });
}
