import fs from 'node:fs';
import { counted } from '../../shared/format/number.ts';
import { ask } from './ask.ts';
import { type Command, readText, UsageError, writing } from './command.ts';

export const rulesExport: Command = {
  name: 'rules export',
  usage: '--out PACK.json [--name NAME] [--folder DIR]',
  does: 'your own rules for every case that are on, as one file with the SHA-256 of its content',
  words: 0,
  options: { out: { type: 'string' }, name: { type: 'string' } },
  async run({ options: { out, name }, openStore }) {
    if (typeof out !== 'string' || out === '') throw new UsageError('--out needs the file to write.');
    const title = typeof name === 'string' && name.trim() !== '' ? name : 'Own rules';
    const { text, sha256 } = await ask(await openStore(), 'rules.export', { caseId: null, name: title });
    writing(out, () => fs.writeFileSync(out, text));
    return {
      json: { file: out, name: title, sha256 },
      lines: [`Written to ${out}`, `SHA-256 of the content: ${sha256}`],
    };
  },
};

export const rulesImport: Command = {
  name: 'rules import',
  usage: 'PACK.json [--folder DIR]',
  does: 'the rules of a pack as your own for every case; one that was changed since it was written is refused',
  words: 1,
  options: {},
  async run({ words: [fileName = ''], openStore }) {
    const text = readText(fileName);
    const { rules, sha256 } = await ask(await openStore(), 'rules.import', { caseId: null, fileName, text });
    return {
      json: { rules, sha256 },
      lines: [
        `${counted(rules, 'rule')} taken in, on for every case.`,
        sha256 === null ? 'The file carries no SHA-256: nothing shows whether it was changed.' : `SHA-256: ${sha256}`,
      ],
    };
  },
};
