import { counted } from '../../shared/format/number.ts';
import { ROSTER_FIELD_WORDS } from '../../shared/exchange/roster.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import { ask } from './ask.ts';
import { type Command, readText } from './command.ts';

export const rosterImport: Command = {
  name: 'roster import',
  usage: 'FILE.csv [--dry-run] [--folder DIR]',
  does: 'an intake case for each athlete of a list; --dry-run only shows how it is read',
  words: 1,
  options: { 'dry-run': { type: 'boolean' } },
  async run({ words: [fileName = ''], options, openStore }) {
    const file = { fileName, text: readText(fileName), mapping: [] };
    const service = await openStore();
    const preview = await ask(service, 'roster.preview', file);
    const isDry = options['dry-run'] === true;
    if (isDry) {
      return {
        json: { dryRun: true, ...preview },
        lines: [...linesOf(preview), 'Nothing was stored.'],
        exitCode: preview.problems.length === 0 ? 0 : 3,
      };
    }
    const openedOn = new Date().toISOString().slice(0, 10);
    const { cases } = await ask(service, 'roster.import', { ...file, openedOn });
    const made = cases.filter(({ isNew }) => isNew).length;
    return {
      json: { dryRun: false, ...preview, cases },
      lines: [...linesOf(preview), `${counted(made, 'case')} opened, ${cases.length - made} on the shelf already.`],
    };
  },
};

function linesOf({ columns, rows, problems }: Answer<'roster.preview'>): string[] {
  return [
    ...columns.map(
      ({ column, field, reading }) =>
        `  ${column}: ${field === null ? 'not taken in' : ROSTER_FIELD_WORDS[field]}${reading === null ? '' : ` (${reading})`}`,
    ),
    ...rows.map(
      ({ line, athlete, caseId, athleteId, repeats }) =>
        `line ${line}  ${athlete.name}  ${repeats !== null ? `as line ${repeats}, left out` : caseId !== null ? 'has an intake case' : athleteId !== null ? 'on the shelf, new intake case' : 'new'}`,
    ),
    ...rows.flatMap(({ line, questions }) => questions.map((question) => `Look at line ${line}: ${question}`)),
    ...problems.map(({ path, words }) => `Not taken in: ${path} ${words}`),
  ];
}
