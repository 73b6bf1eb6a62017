import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { EXAMPLES, id } from '../../conformance/examples.ts';
import { openMediaStore } from '../../../main/media/mediaStore.ts';
import { type Asked, aService, TODAY } from './aService.ts';

/** No player would show it; what the store must know of a film is where it begins and every byte of it. */
const FILM = Buffer.concat([Buffer.from('\0\0\0\x14ftypisom\0\0\x02\0isom', 'latin1'), Buffer.alloc(50_000, 'moving')]);
const SHA = createHash('sha256').update(FILM).digest('hex');
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

const begin = (fileName = 'throw.mp4', sizeBytes = FILM.length) =>
  made.ask('media.begin', { caseId, trialId, fileName, sizeBytes, modifiedAtMs: 0, pictures: null });
const piece = (uploadId: string, from: number, to: number, film = FILM) => ({
  uploadId,
  offsetBytes: from,
  base64: film.subarray(from, to).toString('base64'),
});
/** Files lying in the media store, finished or not. */
const lying = () =>
  fs
    .readdirSync(path.join(made.folder, 'media'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => name);
const trial = async () => (await made.ask('case.open', { caseId })).file.movementTrials[0];

test('a film in three pieces is kept byte for byte under its SHA-256, and the trial points to it; undo lets go of it', async () => {
  const { uploadId } = await begin();
  await made.ask('media.append', piece(uploadId, 0, 20_000));
  await made.ask('media.append', piece(uploadId, 20_000, 40_001));
  const { receivedBytes } = await made.ask('media.append', piece(uploadId, 40_001, FILM.length));
  expect([receivedBytes, (await trial())?.clipSha256]).toEqual([FILM.length, null]);
  const { sha256, edits } = await made.ask('media.finish', { uploadId });
  expect(sha256).toBe(SHA);
  expect(fs.readFileSync(made.service.mediaFile(SHA) ?? '').equals(FILM)).toBe(true);
  expect((await trial())?.clipSha256).toBe(SHA);
  expect((await made.ask('case.open', { caseId })).file.media).toMatchObject([
    { sha256: SHA, fileName: 'throw.mp4', mediaType: 'video/mp4', sizeBytes: FILM.length },
  ]);
  expect(lying()).toEqual([SHA]);
  expect(edits.undo).not.toBeNull();
  await made.ask('case.undo', { caseId });
  expect((await trial())?.clipSha256).toBeNull();
  expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
});

test('cancelled, or replaced by another film of the trial: nothing of it stays', async () => {
  const { uploadId } = await begin();
  await made.ask('media.append', piece(uploadId, 0, 20_000));
  await made.ask('media.cancel', { uploadId });
  expect(lying()).toEqual([]);
  expect((await made.refusal('media.append', piece(uploadId, 20_000, 30_000))).code).toBe('not-found');

  const { uploadId: second } = await begin();
  await made.ask('media.append', piece(second, 0, 20_000));
  const { uploadId: other, receivedBytes } = await begin('another.mp4');
  expect([receivedBytes, lying().length]).toEqual([0, 1]);
  await made.ask('media.cancel', { uploadId: other });
  expect(lying()).toEqual([]);
});

test('begun again, by a new window or after the program ended, the same film goes on where it stopped', async () => {
  const { uploadId } = await begin();
  await made.ask('media.append', piece(uploadId, 0, 20_000));
  const { uploadId: second, receivedBytes } = await begin();
  expect(receivedBytes).toBe(20_000);
  await made.ask('media.append', piece(second, 20_000, 30_000));
  await made.service.close();

  const again = await aService(made.folder);
  const request = { caseId, trialId, fileName: 'throw.mp4', sizeBytes: FILM.length, modifiedAtMs: 0, pictures: null };
  const third = await again.ask('media.begin', request);
  expect(third.receivedBytes).toBe(30_000);
  await again.ask('media.append', piece(third.uploadId, 30_000, FILM.length));
  expect((await again.ask('media.finish', { uploadId: third.uploadId })).sha256).toBe(SHA);
  expect(lying()).toEqual([SHA]);
  await again.service.close();
});

test('what waits for its end is gone after seven days, when the athlete is erased, and with another film of that name', async () => {
  const part = () => path.join(made.folder, 'media', lying()[0] ?? '');
  const { uploadId } = await begin();
  await made.ask('media.append', piece(uploadId, 0, 20_000));
  await made.service.close();
  const sixDays = Date.now() / 1000 - 6 * 24 * 3600;
  fs.utimesSync(part(), sixDays, sixDays);
  made = await aService(made.folder);
  expect(lying()).toHaveLength(1);
  await made.service.close();
  fs.utimesSync(part(), sixDays - 2 * 24 * 3600, sixDays - 2 * 24 * 3600);
  made = await aService(made.folder);
  expect(lying()).toEqual([]);

  const { uploadId: second } = await begin();
  await made.ask('media.append', piece(second, 0, 20_000));
  const { file } = await made.ask('case.open', { caseId });
  await made.ask('athlete.erase', { caseId, number: file.case.number });
  expect(lying()).toEqual([]);
});

test('a file whose record was never written, because the program ended in between, is gone at the next opening', async () => {
  const media = await openMediaStore(made.folder);
  const sha256 = await media.put(FILM);
  expect(await made.ask('store.verify', {})).toEqual({
    problems: [`The file ${sha256} lies in the store and belongs to no case.`],
  });
  await made.service.close();
  made = await aService(made.folder);
  expect(lying()).toEqual([]);
  expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
});

test.each([
  ['text with a film’s name', 'notes.mp4', Buffer.from('Third throw was the best of them all.')],
  ['a sound file', 'voice.mp4', Buffer.from('ID3\x04\0\0\0\0\0\0sound', 'latin1')],
  ['a sound in the container of AVI', 'throw.avi', Buffer.from('RIFF\0\0\0\0WAVEfmt ', 'latin1')],
])('%s is refused at its first piece by what it is, and nothing stays', async (_what, fileName, bytes) => {
  const { uploadId } = await begin(fileName, bytes.length);
  const refused = await made.refusal('media.append', piece(uploadId, 0, bytes.length, bytes));
  expect(refused).toMatchObject({ code: 'input-malformed', message: expect.stringContaining(fileName) });
  expect(lying()).toEqual([]);
});

test('a piece out of order, too much, or too little is noticed, and nothing stays', async () => {
  const { uploadId: gap } = await begin();
  await made.ask('media.append', piece(gap, 0, 10));
  expect((await made.refusal('media.append', piece(gap, 20, 30))).code).toBe('conflict');
  const { uploadId: more } = await begin('throw.mp4', 100);
  expect((await made.refusal('media.append', piece(more, 0, 200))).code).toBe('conflict');
  const { uploadId: less } = await begin();
  await made.ask('media.append', piece(less, 0, 30_000));
  expect((await made.refusal('media.finish', { uploadId: less })).code).toBe('input-missing');
  expect(lying()).toEqual([]);
});

test('asked what it says of itself before any window opens it: what holds no picture is refused, and nothing stays', async () => {
  const { uploadId } = await begin();
  await made.ask('media.append', piece(uploadId, 0, 20_000));
  expect((await made.refusal('media.facts', { uploadId })).code).toBe('input-missing');
  expect(lying()).toEqual([]);
  const { uploadId: whole } = await begin();
  await made.ask('media.append', piece(whole, 0, FILM.length));
  const refused = await made.refusal('media.facts', { uploadId: whole });
  expect(refused).toMatchObject({
    code: 'input-malformed',
    message: expect.stringContaining('throw.mp4 holds no pic'),
  });
  expect(lying()).toEqual([]);
});

test('a film of a trial that is gone is refused, before it comes and after it came', async () => {
  const request = {
    caseId,
    trialId: id(4999),
    fileName: 'throw.mp4',
    sizeBytes: FILM.length,
    modifiedAtMs: 0,
    pictures: null,
  };
  expect((await made.refusal('media.begin', request)).code).toBe('not-found');
  const { uploadId } = await begin();
  await made.ask('media.append', piece(uploadId, 0, FILM.length));
  await made.ask('case.edit', { caseId, edits: [{ op: 'remove', kind: 'movementTrial', id: trialId }] });
  expect((await made.refusal('media.finish', { uploadId })).code).toBe('not-found');
  expect(lying()).toEqual([]);
});
