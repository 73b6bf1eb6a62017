import { counted } from '../../shared/format/number.ts';
import { ask } from './ask.ts';
import type { Command } from './command.ts';

export const verify: Command = {
  name: 'verify',
  usage: '[--folder DIR]',
  does: 'checks everything stored; exit code 4 if something is wrong',
  words: 0,
  options: {},
  async run({ openStore }) {
    const { problems } = await ask(await openStore(), 'store.verify', {});
    return {
      json: { sound: problems.length === 0, problems },
      lines: problems.length === 0 ? ['The store is sound.'] : [`${counted(problems.length, 'problem')}:`, ...problems],
      exitCode: problems.length === 0 ? 0 : 4,
    };
  },
};
