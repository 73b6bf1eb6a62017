import fs from 'node:fs';
import path from 'node:path';
import { DomainError, toFailure } from '../../shared/errors.ts';
import { isOfRun } from '../../shared/exchange/runFile.ts';
import { counted } from '../../shared/format/number.ts';
import { PAPERS, REPORT_KINDS } from '../../shared/model/outcome.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, UsageError } from './command.ts';
import { writeReport } from './report.ts';

export const reportAll: Command = {
  name: 'report all',
  usage: `--run DAY[/BATTERY[/VERSION]] --out DIR [--kind ${REPORT_KINDS.join('|')}] [--paper ${PAPERS.join('|')}] [--folder DIR]`,
  does: 'a report of every case of an intake run, one file each; Ctrl+C stops after the one in hand',
  words: 0,
  options: { run: { type: 'string' }, out: { type: 'string' }, kind: { type: 'string' }, paper: { type: 'string' } },
  async run({ options, openStore }) {
    const { run, out } = options;
    if (typeof run !== 'string' || run === '')
      throw new UsageError('--run needs the day of a run, such as 2026-09-01.');
    if (typeof out !== 'string' || out === '') throw new UsageError('--out needs the folder to write into.');
    const kind = choiceFrom(options['kind'], '--kind', REPORT_KINDS, 'client');
    const paper = choiceFrom(options['paper'], '--paper', PAPERS, 'a4');
    const service = await openStore();
    const { runs } = await ask(service, 'run.list', {});
    const [heldOn = '', batteryId, batteryVersion] = run.split('/');
    const found = runs.filter((one) => isOfRun({ heldOn, batteryId: batteryId ?? one.batteryId, batteryVersion }, one));
    const [only] = found;
    if (only === undefined || found.length > 1) {
      const known = runs.map((one) => `${one.heldOn}/${one.batteryId}/${one.batteryVersion}`).join(', ');
      throw new DomainError(
        'not-found',
        `report all needs one run; ${run} names ${found.length}. The runs are: ${known || 'none'}.`,
      );
    }
    makeFolder(out);
    const isStopped = onInterrupt();
    const made: { caseId: string; number: string; file: string; pdfSha256: string }[] = [];
    const failed: { caseId: string; number: string; message: string }[] = [];
    for (const caseId of only.caseIds) {
      if (isStopped()) break;
      const { file } = await ask(service, 'case.open', { caseId });
      const { number } = file.case;
      const pdf = path.join(out, `${number}-${kind}.pdf`);
      try {
        const { pdfSha256 } = await writeReport(service, { caseId, kind, paper }, pdf);
        made.push({ caseId, number, file: pdf, pdfSha256 });
      } catch (thrown) {
        failed.push({ caseId, number, message: toFailure(thrown).message });
      }
      process.stderr.write(`${made.length + failed.length} of ${only.caseIds.length}: ${number}\n`);
    }
    const left = only.caseIds.length - made.length - failed.length;
    return {
      json: { run: only, made, failed, left },
      lines: [
        `${counted(made.length, 'report')} written to ${out}`,
        ...failed.map(({ number, message }) => `Not made: ${number}. ${message}`),
        ...(left > 0 ? [`Stopped before ${counted(left, 'more report')}; what is made stays.`] : []),
      ],
      exitCode: failed.length > 0 || left > 0 ? 3 : 0,
    };
  },
};

function makeFolder(folder: string): void {
  try {
    fs.mkdirSync(folder, { recursive: true });
  } catch (thrown) {
    const { code } = thrown as NodeJS.ErrnoException;
    throw new DomainError('store-unwritable', `Nothing was made: the folder ${folder} cannot be made (${code}).`);
  }
}

/** The first interruption is a wish to stop; a second ends the program as ever. */
function onInterrupt(): () => boolean {
  let isStopped = false;
  process.once('SIGINT', () => {
    isStopped = true;
  });
  return () => isStopped;
}
