import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeBattery } from '../../../shared/exchange/batteryFile.ts';
import type { BatteryBody } from '../../../shared/model/battery.ts';
import { UNSAID } from '../../../shared/model/blank.ts';
import { aCopy, anItem, copyWith, OWN_ID } from '../../support/ownBattery.ts';
import { sampleId } from '../../support/sampleCase.ts';
import { type Asked, aService, TODAY } from './aService.ts';

let made: Asked;
beforeEach(async () => {
  made = await aService();
});
afterEach(() => made.dispose());

const put = (draft: BatteryBody | null, isRetired = false) =>
  made.ask('battery.edit', { id: OWN_ID, draft, isRetired });
const save = () => made.ask('battery.save', { id: OWN_ID });
const versions = async () =>
  (await made.ask('battery.list', {})).batteries.flatMap((one) =>
    one.versions.map(({ version, label }) => [version, label]),
  );

/** A case with one session of a battery, and the lunge on the left. */
async function useOf(battery: BatteryBody): Promise<string> {
  const { caseId } = await made.ask('case.create', { purpose: 'intake', athleteId: null, openedOn: TODAY });
  const session = { id: sampleId(800), caseId, heldOn: TODAY, rater: 'R', note: '', battery };
  const result = { id: sampleId(801), sessionId: session.id, itemId: 'weight-bearing-lunge', side: 'left' } as const;
  await made.ask('case.edit', {
    caseId,
    edits: [
      {
        op: 'create',
        kind: 'screeningSession',
        record: { ...session, batteryId: battery.id, batteryVersion: battery.version },
      },
      {
        op: 'create',
        kind: 'screeningResult',
        record: { ...result, valueSi: 0.09, grade: null, isPositive: null, painNrs: 0, note: '', ...UNSAID },
      },
    ],
  });
  return caseId;
}

test('written, saved as versions that never change, and every step of it undone and done again', async () => {
  await put({ ...aCopy(), label: '' });
  expect(await made.refusal('battery.save', { id: OWN_ID })).toMatchObject({ path: 'label' });
  await put(aCopy());
  await save();
  const renamed = copyWith('single-leg-hop', { label: 'One-leg jump for distance' });
  await put({ ...renamed, label: 'Evening battery' });
  expect(await versions()).toEqual([['1', 'Afternoon battery']]);
  await save();
  expect(await versions()).toEqual([
    ['1', 'Afternoon battery'],
    ['2', 'Evening battery'],
  ]);
  expect(await made.refusal('battery.save', { id: OWN_ID })).toMatchObject({ code: 'not-found' });

  await made.ask('battery.undo', {});
  expect(await versions()).toEqual([['1', 'Afternoon battery']]);
  // A number that was given once is not given again: a file with it may be on another laptop.
  await save();
  expect((await versions()).at(-1)).toEqual(['3', 'Evening battery']);
  for (const _ of [1, 2, 3, 4, 5, 6, 7]) await made.ask('battery.undo', {});
  expect(await versions()).toEqual([]);
  await made.ask('battery.redo', {});
  expect((await made.ask('battery.list', {})).batteries).toHaveLength(1);
  expect((await made.ask('store.verify', {})).problems).toEqual([]);
});

test('what a session was taken with stays: in the session, and in the list until nothing uses it', async () => {
  await put(aCopy());
  await save();
  const caseId = await useOf(aCopy());
  expect((await made.ask('battery.list', {})).batteries[0]?.uses).toEqual([{ version: '1', sessions: 1 }]);
  const refused = await made.refusal('battery.remove', { id: OWN_ID, version: null });
  expect(refused).toMatchObject({ code: 'conflict' });
  expect(refused.message).toContain('Retire the battery instead');
  expect((await put(null, true)).batteries[0]?.isRetired).toBe(true);

  // A session never gets another battery.
  const other = { ...aCopy(), version: '2' };
  for (const fields of [{ battery: null }, { batteryVersion: '2' }, { battery: other, batteryVersion: '2' }]) {
    const edit = { op: 'patch' as const, kind: 'screeningSession' as const, id: sampleId(800), fields };
    expect(await made.refusal('case.edit', { caseId, edits: [edit] })).toMatchObject({ code: 'conflict' });
  }
  const { file } = await made.ask('case.open', { caseId });
  expect(file.screeningSessions[0]?.battery).toEqual(aCopy());

  await made.ask('case.undo', { caseId });
  expect((await made.ask('battery.remove', { id: OWN_ID, version: null })).batteries).toEqual([]);
  await made.ask('battery.undo', {});
  expect(await versions()).toEqual([['1', 'Afternoon battery']]);
});

test('a case carries its batteries into another store, where the battery itself was never heard of', async () => {
  const battery = { ...aCopy(), items: [...aCopy().items, anItem()] };
  const caseId = await useOf(battery);
  const { file } = await made.ask('case.open', { caseId });
  const there = await aService();
  const text = JSON.stringify(file);
  const taken = await there.ask('case.import', { fileName: 'case.json', text, purpose: null, openedOn: TODAY });
  const opened = (await there.ask('case.open', { caseId: taken.caseId })).file;
  expect(opened.screeningSessions[0]?.battery).toEqual(battery);
  expect((await there.ask('battery.list', {})).batteries).toEqual([]);
  await there.dispose();
});

test('a session that names one battery and holds another, or holds one at fault, is refused at the door', async () => {
  const { file } = await made.ask('case.open', { caseId: await useOf(aCopy()) });
  const [session] = file.screeningSessions;
  const importing = (fields: object) => ({
    fileName: 'case.json',
    text: JSON.stringify({ ...file, screeningSessions: [{ ...session, ...fields }] }),
    purpose: null,
    openedOn: TODAY,
  });
  expect(await made.refusal('case.import', importing({ batteryVersion: '7' }))).toMatchObject({ path: 'battery' });
  const { items } = copyWith('single-leg-hop', { unit: null });
  expect(await made.refusal('case.import', importing({ battery: { ...aCopy(), items } }))).toMatchObject({
    code: 'input-malformed',
    path: 'battery.items.10.unit',
  });
});

test('a battery goes out as a file and comes in again; one at fault, or another under the same version, does not', async () => {
  await put(aCopy());
  await save();
  const { fileName, text } = await made.ask('battery.export', { id: OWN_ID, version: null });
  expect(fileName).toBe('afternoon-battery-1.battery.json');
  const there = await aService();
  expect(await there.ask('battery.import', { fileName, text })).toMatchObject({
    id: OWN_ID,
    version: '1',
    isNew: true,
  });
  expect(await there.ask('battery.import', { fileName, text })).toMatchObject({ isNew: false });
  const other = JSON.stringify(writeBattery({ ...aCopy(), label: 'Another' }));
  expect(await there.refusal('battery.import', { fileName, text: other })).toMatchObject({ code: 'conflict' });
  const bad = JSON.stringify(writeBattery(copyWith('single-leg-hop', { plausible: [30, 2800] })));
  const refused = await there.refusal('battery.import', { fileName, text: bad });
  expect(refused).toMatchObject({ code: 'input-malformed', path: 'items.10.plausible' });
  expect(refused.message).toContain('within what is possible');
  expect((await there.ask('battery.list', {})).batteries).toHaveLength(1);
  await there.dispose();
});

test('the battery of the program goes out as a copy of it begins', async () => {
  const { text } = await made.ask('battery.export', { id: 'general', version: null });
  const {
    format: _format,
    formatVersion: _version,
    id,
    ...rest
  } = JSON.parse(text) as BatteryBody & Record<string, unknown>;
  const { id: _id, ...copy } = aCopy();
  expect(rest).toEqual({ ...copy, label: 'General battery' });
  expect(id).not.toBe('general');
});
