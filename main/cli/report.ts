import fs from 'node:fs';
import { DomainError } from '../../shared/errors.ts';
import { PAPERS, REPORT_KINDS } from '../../shared/model/outcome.ts';
import type { Service } from '../service.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, UsageError } from './command.ts';
import { findCase } from './findCase.ts';

export const report: Command = {
  name: 'report',
  usage: `CASE --out FILE.pdf [--kind ${REPORT_KINDS.join('|')}] [--paper ${PAPERS.join('|')}] [--folder DIR]`,
  does: 'makes a report, keeps it with the case and writes it to a file',
  words: 1,
  options: { kind: { type: 'string' }, paper: { type: 'string' }, out: { type: 'string' } },
  async run({ words: [name = ''], options, openStore }) {
    const out = options['out'];
    if (typeof out !== 'string' || out === '')
      throw new UsageError('--out needs the file to write, such as report.pdf.');
    const kind = choiceFrom(options['kind'], '--kind', REPORT_KINDS, 'client');
    const paper = choiceFrom(options['paper'], '--paper', PAPERS, 'a4');
    const service = await openStore();
    const { case: record } = await findCase(service, name);
    const made = await writeReport(service, { caseId: record.id, kind, paper }, out);
    return { json: { ...made, file: out }, lines: [`Report ${kind} of case ${record.number} written to ${out}`] };
  },
};

/** @throws DomainError as the service refuses, or 'store-unwritable' if the file cannot be written */
export async function writeReport(
  service: Service,
  request: { caseId: string; kind: (typeof REPORT_KINDS)[number]; paper: (typeof PAPERS)[number] },
  out: string,
): Promise<{ reportId: string; pdfSha256: string }> {
  const { reportId, pdfSha256 } = await ask(service, 'report.make', request);
  const kept = service.mediaFile(pdfSha256);
  if (kept === null) throw new DomainError('store-corrupt', 'The report was made but is not in the media store.');
  try {
    fs.copyFileSync(kept, out);
  } catch (thrown) {
    const { code } = thrown as NodeJS.ErrnoException;
    throw new DomainError(
      'store-unwritable',
      `The report is kept with the case, but ${out} cannot be written (${code}).`,
    );
  }
  return { reportId, pdfSha256 };
}
