import { counted } from '../../shared/format/number.ts';
import { ask } from './ask.ts';
import type { Command } from './command.ts';

export const rulesUpdate: Command = {
  name: 'rules update',
  usage: '[--accept] [--folder DIR]',
  does: 'what newer rules of the program would change in open cases; with --accept, uses them from now on',
  words: 0,
  options: { accept: { type: 'boolean' } },
  async run({ options: { accept }, openStore }) {
    const service = await openStore();
    const update = await ask(service, 'rules.update', {});
    const isAccepted = accept === true && update.waiting > 0;
    if (isAccepted) await ask(service, 'rules.acceptUpdate', {});
    return {
      json: { ...update, accepted: isAccepted },
      lines:
        update.waiting === 0
          ? [`Every case is judged by the rules ${update.to}.`]
          : [
              `${update.from.join(', ')} to ${update.to}: ${counted(update.waiting, 'case')} judged by the earlier rules.`,
              ...update.cases.flatMap(({ number, changes }) => [
                `${number}:`,
                ...changes.map(
                  ({ before, after, isInForce }) =>
                    `  ${sentence(before, after)}${isInForce ? ' (holds already)' : ''}`,
                ),
              ]),
              isAccepted
                ? 'Accepted: the newer rules judge every case.'
                : 'Nothing was changed: say --accept to use them.',
            ],
    };
  },
};

type Said = { readonly outcome: string; readonly text: string } | null;

function sentence(before: Said, after: Said): string {
  const first = (said: Said) => `${said?.outcome ?? ''}, ${said?.text.split('\n')[0] ?? ''}`;
  if (before === null) return `appears: ${first(after)}`;
  if (after === null) return `goes: ${first(before)}`;
  return `changes: ${first(before)} becomes ${first(after)}`;
}
