import type { Answer, Request } from '../../shared/contract/channels.ts';
import { DomainError } from '../../shared/errors.ts';
import { analyseForceTrace } from '../../shared/kernel/jump/analyseForceTrace.ts';
import { toForceSummary } from '../../shared/kernel/jump/toForceSummary.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { ForceSummary, JumpTest } from '../../shared/model/jump.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { ForceCsv } from '../exchange/forceCsv.ts';
import { readForceFile } from '../exchange/readForceFile.ts';
import { thinTrace } from '../exchange/thinTrace.ts';
import type { Handlers } from './context.ts';
import { judged } from './judged.ts';
import { keepFile } from './keepFile.ts';

type ForceFile = Request<'jump.previewForce'>['file'];

export const jumpHandlers: Handlers<'jump.previewForce' | 'jump.importForce' | 'jump.trace'> = {
  'jump.previewForce': async (_context, { kind, file }) => {
    const { csv, summaries } = read(file, kind);
    return { available: csv.available, summary: summaries[0], trace: thinned(csv) };
  },
  'jump.importForce': async (context, { caseId, testId, file }) => {
    const opened = await context.store.open(caseId);
    const test = findTest(opened, testId);
    if (test.method !== 'force-plate') {
      throw new DomainError(
        'not-comparable',
        'This test is not taken with a force plate. Change its method, or add a force-plate test, and import there.',
      );
    }
    const { summaries } = read(file, test.kind);
    const kept = await keepFile(context, caseId, {
      fileName: file.fileName,
      mediaType: file.isBase64 === true ? 'application/octet-stream' : 'text/csv',
      bytes: bytesOf(file),
    });
    const before = opened.jumpTrials.filter((trial) => trial.testId === testId);
    const highest = Math.max(0, ...before.map(({ number }) => number));
    const ids = summaries.map(() => context.newId());
    const trials = summaries.map((force, i): Edit => {
      const record = {
        id: ids[i] as string,
        testId,
        number: highest + 1 + i,
        flightTimeS: null,
        contactTimeS: null,
        jumpReachM: null,
        force,
        mediaSha256: kept.sha256,
        painNrs: null,
        isSetAside: false,
        note: '',
      };
      return { op: 'create', kind: 'jumpTrial', record };
    });
    const edits = await context.store.apply(caseId, [kept.edit, ...trials], context.now());
    await judged(context, caseId);
    return { jumpTrialId: ids[0] as string, edits };
  },
  'jump.trace': async ({ store, media }, { caseId, jumpTrialId }) => {
    const trial = (await store.open(caseId)).jumpTrials.find(({ id }) => id === jumpTrialId);
    const force = trial?.force ?? null;
    const sha256 = trial?.mediaSha256 ?? null;
    if (force === null || sha256 === null) throw new DomainError('not-found', 'This trial has no force record.');
    return thinned(readForceFile(await media.read(sha256), { columns: force.columns, rateHz: force.rateHz }));
  },
};

/** Reads and analyses a force file: one summary for each jump in it, at least one. */
function read(
  file: ForceFile,
  kind: JumpTest['kind'],
): { csv: ForceCsv; summaries: [ForceSummary, ...ForceSummary[]] } {
  const csv = readForceFile(bytesOf(file), { columns: file.columns, rateHz: file.rateHz });
  const { massKg, marks = null } = file;
  const analysis = analyseForceTrace({ rateHz: csv.rateHz, plates: csv.plates, massKg, kind, marks });
  const [first, ...others] = analysis.jumps.map((jump) => toForceSummary(jump, csv.rateHz, csv.columns));
  if (first === undefined) {
    throw new DomainError(
      'not-enough-data',
      `No jump can be analysed in ${file.fileName}. ${analysis.warnings.join(' ')}`,
    );
  }
  const about = [...csv.warnings, ...analysis.warnings];
  return { csv, summaries: [{ ...first, warnings: [...new Set([...about, ...first.warnings])] }, ...others] };
}

function bytesOf({ text, isBase64 = false }: ForceFile): Uint8Array {
  return isBase64 ? Buffer.from(text, 'base64') : new TextEncoder().encode(text);
}

function findTest(file: CaseFile, testId: string): JumpTest {
  const test = file.jumpTests.find(({ id }) => id === testId);
  if (test === undefined) throw new DomainError('not-found', 'The jump test is not part of this case.');
  return test;
}

function thinned({ rateHz, columns, plates }: ForceCsv): Answer<'jump.trace'> {
  return { rateHz, columns, ...thinTrace(plates, rateHz) };
}
