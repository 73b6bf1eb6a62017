import { isDeepStrictEqual } from 'node:util';
import type { Answer, Request } from '../../shared/contract/channels.ts';
import { DomainError } from '../../shared/errors.ts';
import { analyseForceTrace } from '../../shared/kernel/jump/analyseForceTrace.ts';
import { toForceSummary } from '../../shared/kernel/jump/toForceSummary.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { type ForceReading, forceReading, type ForceSummary, type JumpTest } from '../../shared/model/jump.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { type ForceCsv, forceHeads } from '../exchange/forceCsv.ts';
import { readForceFile } from '../exchange/readForceFile.ts';
import { thinTrace } from '../exchange/thinTrace.ts';
import type { Context, Handlers } from './context.ts';
import { judged } from './judged.ts';
import { keepFile } from './keepFile.ts';
import { remember, remembered } from './remembered.ts';

type ForceFile = Request<'jump.previewForce'>['file'];

export const jumpHandlers: Handlers<'jump.previewForce' | 'jump.importForce' | 'jump.trace'> = {
  'jump.previewForce': async (context, { kind, file }) => {
    const { reading, kept } = await readingOf(context, file);
    const { csv, summaries } = read(file, reading, kind);
    const isRemembered = kept !== null && isDeepStrictEqual(kept, reading);
    return { available: csv.available, summaries, trace: thinned(csv), reading, isRemembered };
  },
  'jump.importForce': async (context, { caseId, testId, file, jumps }) => {
    const opened = await context.store.open(caseId);
    const test = findTest(opened, testId);
    if (test.method !== 'force-plate') {
      throw new DomainError(
        'not-comparable',
        'This test is not taken with a force plate. Change its method, or add a force-plate test, and import there.',
      );
    }
    const { reading } = await readingOf(context, file);
    const { csv, summaries } = read(file, reading, test.kind);
    const chosen = summaries.filter((_summary, i) => jumps?.includes(i) ?? true);
    if (chosen.length === 0) {
      throw new DomainError(
        'not-found',
        `${file.fileName} has ${summaries.length} jumps, and none of those asked for. Nothing was kept.`,
        'jumps',
      );
    }
    const kept = await keepFile(context, caseId, {
      fileName: file.fileName,
      mediaType: file.isBase64 === true ? 'application/octet-stream' : 'text/csv',
      bytes: bytesOf(file),
    });
    const before = opened.jumpTrials.filter((trial) => trial.testId === testId);
    const highest = Math.max(0, ...before.map(({ number }) => number));
    const ids = chosen.map(() => context.newId());
    const trials = chosen.map((force, i): Edit => {
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
        movementTrialId: null,
      };
      return { op: 'create', kind: 'jumpTrial', record };
    });
    const edits = await context.store.apply(caseId, [kept.edit, ...trials], context.now());
    await remember(context, 'force', csv.available, reading, isDecided(reading));
    await judged(context, caseId);
    return { jumpTrialId: ids[0] as string, edits };
  },
  'jump.trace': async ({ store, media }, { caseId, jumpTrialId }) => {
    const trial = (await store.open(caseId)).jumpTrials.find(({ id }) => id === jumpTrialId);
    const force = trial?.force ?? null;
    const sha256 = trial?.mediaSha256 ?? null;
    if (force === null || sha256 === null) throw new DomainError('not-found', 'This trial has no force record.');
    const { columns, rateHz, forceUnit = null } = force;
    return thinned(readForceFile(await media.read(sha256), { columns, rateHz, forceUnit }));
  },
};

/** How the file is to be read: as asked, else as files with its heads were read last. */
async function readingOf(
  context: Context,
  file: ForceFile,
): Promise<{ readonly reading: ForceReading; readonly kept: ForceReading | null }> {
  const { columns, rateHz, forceUnit = null } = file;
  const asked = { columns, rateHz, forceUnit };
  const heads = file.isBase64 === true ? [] : headsOf(file.text);
  const kept = heads.length === 0 ? null : await remembered(context, 'force', heads, forceReading);
  return { reading: isDecided(asked) || kept === null ? asked : kept, kept };
}

function isDecided({ columns, rateHz, forceUnit }: ForceReading): boolean {
  return columns.length > 0 || rateHz !== null || forceUnit !== null;
}

/** None for a file that cannot be read at all: whoever reads it next says why. */
function headsOf(text: string): string[] {
  try {
    return forceHeads(text);
  } catch {
    return [];
  }
}

/** Reads and analyses a force file: one summary for each jump in it, at least one. */
function read(
  file: ForceFile,
  reading: ForceReading,
  kind: JumpTest['kind'],
): { csv: ForceCsv; summaries: [ForceSummary, ...ForceSummary[]] } {
  const csv = readForceFile(bytesOf(file), reading);
  const { massKg, marks = [] } = file;
  const analysis = analyseForceTrace({ rateHz: csv.rateHz, plates: csv.plates, massKg, kind, marks });
  const [first, ...others] = analysis.jumps.map((jump) =>
    toForceSummary(jump, csv.rateHz, csv.columns, reading.forceUnit),
  );
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
