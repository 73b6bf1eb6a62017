import { randomUUID } from 'node:crypto';
import { PURPOSES } from '../../shared/model/case.ts';
import { readCaseDraft } from '../exchange/caseDraft.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, readJson } from './command.ts';

export const caseNew: Command = {
  name: 'case new',
  usage: `[--purpose ${PURPOSES.join('|')}] [--from FILE.json] [--folder DIR]`,
  does: 'opens a case, empty or from a JSON file',
  words: 0,
  options: { purpose: { type: 'string' }, from: { type: 'string' } },
  async run({ options, openStore }) {
    const from = options['from'];
    const draft = typeof from === 'string' ? readCaseDraft(readJson(from), randomUUID) : null;
    const purpose = choiceFrom(options['purpose'], '--purpose', PURPOSES, draft?.case.purpose ?? 'intake');
    const service = await openStore();
    const openedOn = draft?.case.openedOn ?? new Date().toISOString().slice(0, 10);
    const { caseId } = await ask(service, 'case.create', { purpose, athleteId: null, openedOn });
    const { file } = await ask(service, 'case.open', { caseId });
    if (draft !== null) {
      await ask(service, 'case.edit', {
        caseId,
        edits: [
          { op: 'patch', kind: 'athlete', id: file.athlete.id, fields: draft.athlete },
          { op: 'patch', kind: 'case', id: caseId, fields: { ...draft.case, purpose } },
          ...draft.edits(caseId, file.athlete.id),
        ],
      });
    }
    const { number } = file.case;
    return { json: { caseId, number }, lines: [`Case ${number} opened, id ${caseId}`] };
  },
};
