import fs from 'node:fs';
import path from 'node:path';
import type { Request } from '../../shared/contract/channels.ts';
import { DomainError } from '../../shared/errors.ts';
import { PAPERS, REPORT_KINDS } from '../../shared/model/outcome.ts';
import type { Service } from '../service.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, UsageError, writing } from './command.ts';
import { findCase } from './findCase.ts';

const FORMATS = ['pdf', 'docx', 'md'] as const;

export const report: Command = {
  name: 'report',
  usage: `CASE --out FILE [--kind ${REPORT_KINDS.join('|')}] [--as ${FORMATS.join('|')}] [--paper ${PAPERS.join('|')}] [--deidentify | --with-names] [--attach-case] [--final] [--folder DIR]`,
  does: 'makes a report and writes it to a file; a PDF is also kept with the case, Markdown puts its figures beside it',
  words: 1,
  options: {
    kind: { type: 'string' },
    as: { type: 'string' },
    paper: { type: 'string' },
    out: { type: 'string' },
    deidentify: { type: 'boolean' },
    'with-names': { type: 'boolean' },
    'attach-case': { type: 'boolean' },
    final: { type: 'boolean' },
  },
  async run({ words: [name = ''], options, openStore }) {
    const out = options['out'];
    if (typeof out !== 'string' || out === '')
      throw new UsageError('--out needs the file to write, such as report.pdf.');
    const kind = choiceFrom(options['kind'], '--kind', REPORT_KINDS, 'client');
    const paper = choiceFrom(options['paper'], '--paper', PAPERS, 'a4');
    const as = choiceFrom(options['as'], '--as', FORMATS, formatOf(out));
    if (options['deidentify'] === true && options['with-names'] === true)
      throw new UsageError('--deidentify and --with-names cannot both hold.');
    if (as !== 'pdf' && (options['final'] === true || options['attach-case'] === true))
      throw new UsageError('--final and --attach-case are for a PDF: a text that can be edited is never final.');
    const service = await openStore();
    const { case: record } = await findCase(service, name);
    const request = {
      caseId: record.id,
      kind,
      paper,
      ...(options['deidentify'] === true ? { deidentify: true } : {}),
      ...(options['with-names'] === true ? { deidentify: false } : {}),
      ...(options['final'] === true ? { isFinal: true } : {}),
      ...(options['attach-case'] === true ? { attachCase: true } : {}),
    };
    const made =
      as === 'pdf' ? await writeReport(service, request, out) : await writeText(service, { ...request, as }, out);
    return { json: { ...made, file: out }, lines: [`Report ${kind} of case ${record.number} written to ${out}`] };
  },
};

/** Where nothing is said, the ending of the file decides. */
function formatOf(out: string): (typeof FORMATS)[number] {
  return FORMATS.find((format) => path.extname(out).toLowerCase() === `.${format}`) ?? 'pdf';
}

/** @throws DomainError as the service refuses, or 'store-unwritable' if the file cannot be written */
export async function writeReport(
  service: Service,
  request: Request<'report.make'>,
  out: string,
): Promise<{ reportId: string; pdfSha256: string }> {
  const { reportId, pdfSha256 } = await ask(service, 'report.make', request);
  const kept = service.mediaFile(pdfSha256);
  if (kept === null) throw new DomainError('store-corrupt', 'The report was made but is not in the media store.');
  writing(out, () => fs.copyFileSync(kept, out), 'The report is kept with the case, but ');
  return { reportId, pdfSha256 };
}

/** The text where it was asked for, its figures in a folder beside it. */
async function writeText(
  service: Service,
  request: Request<'report.text'>,
  out: string,
): Promise<{ figures: readonly string[] }> {
  const { files } = await ask(service, 'report.text', request);
  const [text, ...figures] = files.map(({ name, base64 }) => ({ name, bytes: Buffer.from(base64, 'base64') }));
  const folder = path.dirname(out);
  const write = () => {
    for (const { name, bytes } of figures) {
      fs.mkdirSync(path.join(folder, path.dirname(name)), { recursive: true });
      fs.writeFileSync(path.join(folder, name), bytes);
    }
    fs.writeFileSync(out, text?.bytes ?? '');
  };
  writing(out, write, 'Nothing was written: ');
  return { figures: figures.map(({ name }) => path.join(folder, name)) };
}
