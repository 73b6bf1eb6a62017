import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type MediaStore, openMediaStore } from '../../../main/media/mediaStore.ts';

/** NIST, example values for SHA-256, one-block message "abc". */
const SHA_OF_ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
const NAMED = { sha256: SHA_OF_ABC, fileName: 'a.txt' };
const ABC = new TextEncoder().encode('abc');

let folder: string;
let media: MediaStore;
beforeEach(async () => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-media-'));
  media = await openMediaStore(folder);
});
afterEach(() => fs.rmSync(folder, { recursive: true }));

test('NIST example value: the file "abc" is kept under its SHA-256 and read back', async () => {
  expect(await media.put(ABC)).toBe(SHA_OF_ABC);
  expect(media.path(SHA_OF_ABC)).toBe(path.join(folder, 'media', 'ba', SHA_OF_ABC));
  expect([...(await media.read(SHA_OF_ABC))]).toEqual([...ABC]);
  expect(await media.verify([NAMED])).toEqual([]);
});

test('the same bytes are kept once', async () => {
  await Promise.all([media.put(ABC), media.put(ABC)]);
  await media.put(ABC);
  await media.settle(async () => true);
  expect(fs.readdirSync(path.join(folder, 'media'))).toEqual(['ba']);
  expect(fs.readdirSync(path.join(folder, 'media', 'ba'))).toEqual([SHA_OF_ABC]);
});

test('what a crash left half written is invisible, and gone at the next opening', async () => {
  fs.writeFileSync(path.join(folder, 'media', 'half.part'), 'ab');
  await expect(media.read(SHA_OF_ABC)).rejects.toMatchObject({ code: 'not-found' });
  await openMediaStore(folder);
  expect(fs.readdirSync(path.join(folder, 'media'))).toEqual([]);
});

test('a changed or missing file is told, not served, and mended by keeping it again', async () => {
  const missing = { sha256: '0'.repeat(64), fileName: 'lost.csv' };
  await media.put(ABC);
  fs.writeFileSync(path.join(folder, 'media', 'ba', SHA_OF_ABC), 'abd');
  await expect(media.read(SHA_OF_ABC)).rejects.toMatchObject({ code: 'store-corrupt' });
  await expect(media.read(missing.sha256)).rejects.toMatchObject({ code: 'not-found' });
  expect(await media.verify([NAMED, missing])).toEqual([
    'The file a.txt has changed on disk since it was kept.',
    'The file lost.csv is missing from the store.',
  ]);
  await media.put(ABC);
  expect(await media.verify([NAMED])).toEqual([]);
});

test.each(['..', '../../etc/passwd', '', 'BA7816BF', `${SHA_OF_ABC}/..`])('«%s» is no name of a file', (name) => {
  expect(media.path(name)).toBeNull();
});

test('a folder that cannot be written is refused with a sentence', async () => {
  const file = path.join(folder, 'not-a-folder');
  fs.writeFileSync(file, '');
  await expect(openMediaStore(file)).rejects.toMatchObject({ code: 'store-unwritable' });
});
