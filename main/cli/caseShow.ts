import { formatDate } from '../../shared/format/number.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { CASE_FILE_SCHEMA } from '../../shared/exchange/caseFileSchema.ts';
import { type Command, UsageError } from './command.ts';
import { findCase } from './findCase.ts';

export const caseShow: Command = {
  name: 'case show',
  usage: 'CASE|--schema [--folder DIR]',
  does: 'everything in one case; CASE is its id or its number, 2026-014; --schema: JSON Schema of it',
  words: 0,
  mayFollow: 1,
  options: { schema: { type: 'boolean' } },
  async run({ words: [name], options, openStore }) {
    if (options['schema'] === true) {
      return { json: CASE_FILE_SCHEMA, lines: [JSON.stringify(CASE_FILE_SCHEMA, null, 2)] };
    }
    if (name === undefined) throw new UsageError('case show needs CASE, or --schema.');
    const file = await findCase(await openStore(), name);
    return { json: file, lines: linesOf(file) };
  },
};

function linesOf(file: CaseFile): string[] {
  const { sections, stops, missing } = assessCase(file);
  return [
    `${file.case.number}  ${file.athlete.name || 'No name yet'}  (${file.case.purpose}${file.case.isInvented ? ', invented' : ''})`,
    `Opened ${formatDate(file.case.openedOn)}, id ${file.case.id}, revision ${file.revision}`,
    ...sections.map(({ section, words }) => `  ${section.padEnd(10)}  ${words}`),
    ...stops.map(({ words }) => `Stop and be seen: ${words}`),
    ...(missing.length > 0 ? [`Still missing: ${missing.join('; ')}`] : []),
  ];
}
