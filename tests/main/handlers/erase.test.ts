import fs from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { jumpTraceCsv } from '../../../main/demo/jumpTrace.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { type Asked, aService, TODAY } from './aService.ts';

let made: Asked;
let caseId: string;
let number: string;
let other: string;
beforeEach(async () => {
  made = await aService();
  ({ caseId } = await made.ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY }));
  const { athlete, case: opened } = (await made.ask('case.open', { caseId })).file;
  ({ number } = opened);
  await type(athlete.id, { name: 'Quillmarsh', goals: 'Brackwater again by spring.' });
  await type(athlete.id, { goals: 'Sorrelgate instead.' });
  const jumpTest = { ...EXAMPLES.jumpTest, caseId, method: 'force-plate' as const };
  await made.ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'jumpTest', record: jumpTest }] });
  const trace = { massKg: 70, takeoffVelocityMPerS: 2.5, depthM: 0.3, leftShare: 0.5 };
  const text = jumpTraceCsv(trace, randomSource(1));
  const file = { fileName: 'thistleford.csv', text, columns: [], rateHz: null, massKg: null };
  await made.ask('jump.importForce', { caseId, testId: jumpTest.id, file });
  await made.ask('report.make', { caseId, kind: 'client', paper: 'a4' });
  ({ caseId: other } = await made.ask('case.create', { purpose: 'intake', athleteId: null, openedOn: TODAY }));
});
afterEach(() => made.dispose());

async function type(athleteId: string, fields: object): Promise<void> {
  const edit = { op: 'patch', kind: 'athlete', id: athleteId, fields } as Edit;
  await made.ask('case.edit', { caseId, edits: [edit] });
}

/** Files of the store in which a word can be read, letter for letter. */
function holding(word: string): string[] {
  const names = fs.readdirSync(made.folder, { recursive: true, encoding: 'utf8' });
  const files = names.map((name) => path.join(made.folder, name)).filter((file) => fs.statSync(file).isFile());
  return files.filter((file) => fs.readFileSync(file).toString('latin1').toLowerCase().includes(word.toLowerCase()));
}
const keptFiles = () =>
  fs
    .readdirSync(path.join(made.folder, 'media'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.length > 60);

test('an athlete erased is in no file of the store any more: no name, no word changed since, no file', async () => {
  expect(holding('quillmarsh')).not.toEqual([]);
  expect(keptFiles()).toHaveLength(2);
  const answer = await made.ask('athlete.erase', { caseId, number });
  expect(answer).toEqual({ cases: 1, files: 2, copies: [] });
  for (const word of ['quillmarsh', 'brackwater', 'sorrelgate', 'thistleford']) expect(holding(word)).toEqual([]);
  expect(keptFiles()).toEqual([]);
  expect((await made.refusal('case.open', { caseId })).code).toBe('not-found');
  expect((await made.ask('case.open', { caseId: other })).file.case.id).toBe(other);
  expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
});

test('another number than that of the case erases nothing', async () => {
  const failure = await made.refusal('athlete.erase', { caseId, number: `${number}1` });
  expect([failure.code, failure.path]).toEqual(['conflict', 'number']);
  expect((await made.ask('case.open', { caseId })).file.athlete.name).toBe('Quillmarsh');
  expect(keptFiles()).toHaveLength(2);
});

test('copies made before an update are named: they hold the athlete still', async () => {
  fs.writeFileSync(path.join(made.folder, 'cases-version-2.sqlite'), '');
  expect((await made.ask('athlete.erase', { caseId, number })).copies).toEqual(['cases-version-2.sqlite']);
});
