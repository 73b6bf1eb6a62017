import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, expect, test } from 'vitest';
import { writeBattery } from '../../../shared/exchange/batteryFile.ts';
import { aCopy, anItem, OWN_ID } from '../../support/ownBattery.ts';
import { caseframe } from './caseframe.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
const inStore = ['--folder', path.join(folder, 'store'), '--json'];
const write = (name: string, content: unknown) => {
  const file = path.join(folder, name);
  fs.writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  return file;
};
afterAll(() => fs.rmSync(folder, { recursive: true }));

test('a battery of one’s own: its schema published, taken in, listed, shown, used for a table, written out again', () => {
  const schema = caseframe('battery', 'show', '--schema', '--json').json;
  const isValid = new Ajv2020({ formats: { uuid: /^[0-9a-f-]{36}$/ } }).compile(schema);
  const general = caseframe('battery', 'show', 'general', ...inStore);
  expect([general.code, isValid(general.json)]).toEqual([0, true]);

  const own = writeBattery({ ...aCopy(), items: [...aCopy().items, anItem()] });
  expect(isValid(own)).toBe(true);
  expect(isValid({ ...own, items: [{ ...own.items[0], kind: 'guessed' }] })).toBe(false);
  expect(caseframe('battery', 'import', write('own.json', own), ...inStore).json).toMatchObject({ id: OWN_ID });
  expect(caseframe('battery', 'list', ...inStore).json['batteries']).toMatchObject([
    { id: 'general', isOwn: false },
    { id: OWN_ID, isOwn: true, items: 12, sessions: 0 },
  ]);

  const { number, caseId } = caseframe('case', 'new', ...inStore).json as { number: string; caseId: string };
  const table = write('results.csv', 'item,side,result,pain\nplank-hold,,95,0\nWeight-bearing lunge,left,10.5,0\n');
  const screened = caseframe('screen', 'import', number, table, '--battery', `${OWN_ID}/1`, ...inStore);
  expect([screened.code, screened.err]).toEqual([0, '']);
  const shown = caseframe('case', 'show', caseId, ...inStore).json;
  expect(shown['screeningSessions']).toMatchObject([
    { batteryId: OWN_ID, batteryVersion: '1', battery: { id: OWN_ID } },
  ]);

  const out = path.join(folder, 'out.json');
  expect(caseframe('battery', 'export', OWN_ID, '--out', out, ...inStore).code).toBe(0);
  expect(JSON.parse(fs.readFileSync(out, 'utf8'))).toEqual(own);
}, 60_000);

test('a battery at fault is refused with its place and code 3, and none of it is stored', () => {
  const bad = writeBattery({ ...aCopy(), items: [anItem({ label: '' })] });
  const refused = caseframe(
    'battery',
    'import',
    write('bad.json', bad),
    '--folder',
    path.join(folder, 'empty'),
    '--json',
  );
  expect(refused.code).toBe(3);
  expect(refused.err).toContain('items.0.label');
  expect(caseframe('battery', 'show', OWN_ID, '--folder', path.join(folder, 'empty'), '--json').code).toBe(3);
}, 60_000);
