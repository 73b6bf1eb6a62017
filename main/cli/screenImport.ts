import { randomUUID } from 'node:crypto';
import { counted } from '../../shared/format/number.ts';
import { BATTERIES, batteryById } from '../../shared/knowledge/screening/index.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { readScreeningCsv } from '../exchange/screeningCsv.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, readText } from './command.ts';
import { findCase } from './findCase.ts';

const IDS = BATTERIES.map(({ id }) => id);

export const screenImport: Command = {
  name: 'screen import',
  usage: `CASE FILE.csv [--date DAY] [--rater NAME] [--battery ${IDS.join('|')}] [--folder DIR]`,
  does: 'a screening session from a table with the columns item, side, result, pain, note',
  words: 2,
  options: { date: { type: 'string' }, rater: { type: 'string' }, battery: { type: 'string' } },
  async run({ words: [name = '', file = ''], options, openStore }) {
    const battery = batteryById(choiceFrom(options['battery'], '--battery', IDS, IDS[0] ?? ''));
    if (battery === null) throw new TypeError('a battery just listed is not known');
    const rows = readScreeningCsv(readText(file), battery);
    const service = await openStore();
    const opened = await findCase(service, name);
    const caseId = opened.case.id;
    const sessionId = randomUUID();
    const session = {
      id: sessionId,
      caseId,
      heldOn: String(options['date'] ?? new Date().toISOString().slice(0, 10)),
      rater: String(options['rater'] ?? ''),
      batteryId: battery.id,
      batteryVersion: battery.version,
      note: '',
    };
    const edits: Edit[] = [
      { op: 'create', kind: 'screeningSession', record: session },
      ...rows.map(
        (row): Edit => ({ op: 'create', kind: 'screeningResult', record: { id: randomUUID(), sessionId, ...row } }),
      ),
    ];
    await ask(service, 'case.edit', { caseId, edits });
    return {
      json: { caseId, sessionId, results: rows },
      lines: [`${counted(rows.length, 'result')} of ${session.heldOn} in case ${opened.case.number}`],
    };
  },
};
