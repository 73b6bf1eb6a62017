import { randomUUID } from 'node:crypto';
import { counted } from '../../shared/format/number.ts';
import { readBatteryFile } from '../../shared/exchange/batteryFile.ts';
import { readBattery } from '../../shared/knowledge/screening/readBattery.ts';
import { BATTERIES } from '../../shared/knowledge/screening/shipped.ts';
import type { BatteryBody } from '../../shared/model/battery.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { readScreeningCsv } from '../exchange/screeningCsv.ts';
import type { Service } from '../service.ts';
import { parseJson } from '../exchange/parseJson.ts';
import { ask } from './ask.ts';
import { type Command, readText } from './command.ts';
import { findCase } from './findCase.ts';

export const screenImport: Command = {
  name: 'screen import',
  usage: `CASE FILE.csv [--date DAY] [--rater NAME] [--battery ID[/VERSION]] [--folder DIR]`,
  does: 'a screening session from a table with the columns item, side, result, pain, note, device, position, shoes',
  words: 2,
  options: { date: { type: 'string' }, rater: { type: 'string' }, battery: { type: 'string' } },
  async run({ words: [name = '', file = ''], options, openStore }) {
    const text = readText(file);
    const service = await openStore();
    const [id = '', version = null] = String(options['battery'] ?? 'general').split('/');
    const shipped = BATTERIES.find((one) => one.id === id && (version ?? one.version) === one.version);
    const own = shipped === undefined ? await ownBattery(service, id, version) : null;
    const battery = own === null ? shipped : readBattery(own);
    if (battery === undefined) throw new TypeError('neither a battery of the program nor one of one’s own');
    const rows = readScreeningCsv(text, battery);
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
      battery: own,
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

/** A saved version, null for the newest. @throws DomainError 'not-found' */
async function ownBattery(service: Service, id: string, version: string | null): Promise<BatteryBody> {
  const { text } = await ask(service, 'battery.export', { id, version });
  return readBatteryFile(parseJson(text, id), id);
}
