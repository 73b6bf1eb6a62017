import { assessCase } from '../../shared/assess/assessCase.ts';
import { counted } from '../../shared/format/number.ts';
import type { Command } from './command.ts';
import { findCase } from './findCase.ts';

export const check: Command = {
  name: 'check',
  usage: 'CASE [--folder DIR]',
  does: 'the case checks: does the working of this case hold together?',
  words: 1,
  options: {},
  async run({ words: [name = ''], openStore }) {
    const { checks } = assessCase(await findCase(await openStore(), name));
    const questioned = checks.filter(({ verdict }) => verdict === 'questioned');
    return {
      json: { checks },
      lines: [
        `${counted(questioned.length, 'check')} of ${checks.length} questioned`,
        ...checks.map(({ verdict, sentence }) => `${verdict.padEnd(11)}  ${sentence}`),
      ],
    };
  },
};
