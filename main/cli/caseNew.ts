import path from 'node:path';
import { PURPOSES } from '../../shared/model/case.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, readText } from './command.ts';

export const caseNew: Command = {
  name: 'case new',
  usage: `[--purpose ${PURPOSES.join('|')}] [--from FILE.json] [--folder DIR]`,
  does: 'opens a case, empty or from a JSON file',
  words: 0,
  options: { purpose: { type: 'string' }, from: { type: 'string' } },
  async run({ options, openStore }) {
    const { from } = options;
    const given = options['purpose'] === undefined ? null : choiceFrom(options['purpose'], '--purpose', PURPOSES);
    const text = typeof from === 'string' ? readText(from) : '{}';
    const fileName = typeof from === 'string' ? path.basename(from) : 'nothing';
    const openedOn = new Date().toISOString().slice(0, 10);
    const service = await openStore();
    const opened = await ask(service, 'case.import', { fileName, text, purpose: given, openedOn });
    return { json: opened, lines: [`Case ${opened.number} opened, id ${opened.caseId}`] };
  },
};
