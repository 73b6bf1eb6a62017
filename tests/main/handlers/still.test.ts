import { createHash } from 'node:crypto';
import fs from 'node:fs';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { EXAMPLES, id } from '../../conformance/examples.ts';
import { type Asked, aService, TODAY } from './aService.ts';

/** The smallest picture a browser draws: one transparent pixel. */
const PNG = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==';
const SHA = createHash('sha256').update(Buffer.from(PNG, 'base64')).digest('hex');
const trialId = EXAMPLES.movementTrial.id;

let made: Asked;
let caseId: string;
beforeEach(async () => {
  made = await aService();
  ({ caseId } = await made.ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY }));
  const record = { ...EXAMPLES.movementTrial, caseId, clipSha256: null };
  await made.ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'movementTrial', record }] });
});
afterEach(() => made.dispose());

const still = { trialId, timeS: 0.41, caption: 'Release', alt: 'A player in the air' };
const file = async () => (await made.ask('case.open', { caseId })).file;

test('a still is kept byte for byte under its SHA-256 and listed on its trial; undo and redo take it out and put it back', async () => {
  const { stillId } = await made.ask('still.keep', { caseId, ...still, png: PNG });
  const record = { id: stillId, ...still, mediaSha: SHA };
  expect((await file()).stills).toEqual([record]);
  expect(fs.readFileSync(made.service.mediaFile(SHA) ?? '').toString('base64')).toBe(PNG);
  await made.ask('case.undo', { caseId });
  expect((await file()).stills).toEqual([]);
  await made.ask('case.redo', { caseId });
  expect((await file()).stills).toEqual([record]);
  expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
});

test('what is no PNG, or of a trial that is gone, is refused in words and nothing is kept', async () => {
  const text = Buffer.from('a picture, really').toString('base64');
  expect((await made.refusal('still.keep', { caseId, ...still, png: text })).message).toMatch(/no PNG/);
  expect((await made.refusal('still.keep', { caseId, ...still, trialId: id(99), png: PNG })).message).toMatch(/trial/);
  const bad = { caseId, fileName: 'sheet.png', file: { kind: 'png', base64: text } };
  expect((await made.refusal('export.keep', bad)).message).toMatch(/no PNG/);
  const { stills, media } = await file();
  expect([stills, media]).toEqual([[], []]);
});

test('an export is served as a file of the case under a name that every system takes; the same one twice is one file', async () => {
  const csv = { caseId, fileName: 'trial 1/2: measures.csv', file: { kind: 'csv', text: 'a,b\n1,2\n' } } as const;
  const { href } = await made.ask('export.keep', csv);
  expect(href).toMatch(/^\/files\/[0-9a-f]{64}\/trial-1-2-measures\.csv$/);
  expect((await made.ask('export.keep', csv)).href).toBe(href);
  expect((await file()).media.map(({ mediaType }) => mediaType)).toEqual(['text/csv']);
});
