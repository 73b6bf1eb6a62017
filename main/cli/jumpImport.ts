import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { counted } from '../../shared/format/number.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { JUMP_KINDS, type JumpTest } from '../../shared/model/jump.ts';
import { isC3d } from '../exchange/c3d/readC3d.ts';
import { isJumpTable, readJumpsCsv } from '../exchange/jumpsCsv.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, optionalNumber, readBytes } from './command.ts';
import { findCase } from './findCase.ts';

export const jumpImport: Command = {
  name: 'jump import',
  usage: `CASE FILE.csv|FILE.c3d [--kind ${JUMP_KINDS.join('|')}] [--date DAY] [--standing-reach M] [--drop-height M] [--mat] [--fps HZ] [--rate HZ] [--folder DIR]`,
  does: 'a jump test from a table of flight times or reaches, or from a force-plate record',
  words: 2,
  options: {
    kind: { type: 'string' },
    date: { type: 'string' },
    'standing-reach': { type: 'string' },
    'drop-height': { type: 'string' },
    mat: { type: 'boolean' },
    fps: { type: 'string' },
    rate: { type: 'string' },
  },
  async run({ words: [name = '', fileName = ''], options, openStore }) {
    const bytes = readBytes(fileName);
    const isBase64 = isC3d(bytes);
    const text = bytes.toString(isBase64 ? 'base64' : 'utf8');
    const table = !isBase64 && isJumpTable(text) ? readJumpsCsv(text) : null;
    const kind = choiceFrom(options['kind'], '--kind', JUMP_KINDS, 'countermovement');
    const rateHz = optionalNumber(options['rate'], '--rate');
    const force = { fileName: path.basename(fileName), text, isBase64, columns: [], rateHz, massKg: null };
    const service = await openStore();
    // A file that cannot be analysed is refused before a test is made for it.
    if (table === null) await ask(service, 'jump.previewForce', { kind, file: force });
    const opened = await findCase(service, name);
    const caseId = opened.case.id;
    const test: JumpTest = {
      id: randomUUID(),
      caseId,
      heldOn: String(options['date'] ?? new Date().toISOString().slice(0, 10)),
      kind,
      method:
        options['mat'] === true && table?.method === 'flight-time' ? 'contact-mat' : (table?.method ?? 'force-plate'),
      arms: null,
      shoes: null,
      device: '',
      frameRateHz: optionalNumber(options['fps'], '--fps'),
      standingReachM: optionalNumber(options['standing-reach'], '--standing-reach'),
      dropHeightM: optionalNumber(options['drop-height'], '--drop-height'),
      note: '',
      warmUp: '',
    };
    const trials = (table?.jumps ?? []).map(
      (jump, i): Edit => ({
        op: 'create',
        kind: 'jumpTrial',
        record: {
          id: randomUUID(),
          testId: test.id,
          number: i + 1,
          force: null,
          mediaSha256: null,
          isSetAside: false,
          movementTrialId: null,
          ...jump,
        },
      }),
    );
    await ask(service, 'case.edit', { caseId, edits: [{ op: 'create', kind: 'jumpTest', record: test }, ...trials] });
    if (table === null) await ask(service, 'jump.importForce', { caseId, testId: test.id, file: force });
    const { file } = await ask(service, 'case.open', { caseId });
    const stored = file.jumpTrials.filter(({ testId }) => testId === test.id);
    return {
      json: { caseId, test, trials: stored },
      lines: [`${counted(stored.length, 'jump')} of ${test.heldOn} in case ${file.case.number}`],
    };
  },
};
