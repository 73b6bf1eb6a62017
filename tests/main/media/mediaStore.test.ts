import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type MediaStore, openMediaStore } from '../../../main/media/mediaStore.ts';

/** NIST, example values for SHA-256, one-block message "abc". */
const SHA_OF_ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
const ABC = new TextEncoder().encode('abc');

let folder: string;
let media: MediaStore;
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-media-'));
  media = openMediaStore(folder);
});
afterEach(() => fs.rmSync(folder, { recursive: true }));

test('NIST example value: the file "abc" is kept under its SHA-256 and read back', () => {
  expect(media.put(ABC, 'a.txt', 'text/plain')).toEqual({
    sha256: SHA_OF_ABC,
    fileName: 'a.txt',
    mediaType: 'text/plain',
    sizeBytes: 3,
  });
  expect(media.path(SHA_OF_ABC)).toBe(path.join(folder, 'media', 'ba', SHA_OF_ABC));
  expect([...media.read(SHA_OF_ABC)]).toEqual([...ABC]);
  expect(media.problems([SHA_OF_ABC])).toEqual([]);
});

test('the same bytes are kept once, whatever they are called', () => {
  media.put(ABC, 'a.txt', 'text/plain');
  media.put(ABC, 'b.txt', 'text/plain');
  expect(fs.readdirSync(path.join(folder, 'media'), { recursive: true })).toHaveLength(2);
});

test('what a crash left half written is invisible, and gone at the next opening', () => {
  fs.writeFileSync(path.join(folder, 'media', 'half.part'), 'ab');
  expect(media.path(SHA_OF_ABC)).toBeNull();
  openMediaStore(folder);
  expect(fs.readdirSync(path.join(folder, 'media'))).toEqual([]);
});

test('a changed or missing file is told, not served', () => {
  media.put(ABC, 'a.txt', 'text/plain');
  fs.writeFileSync(path.join(folder, 'media', 'ba', SHA_OF_ABC), 'abd');
  expect(() => media.read(SHA_OF_ABC)).toThrow(expect.objectContaining({ code: 'store-corrupt' }));
  expect(() => media.read('0'.repeat(64))).toThrow(expect.objectContaining({ code: 'not-found' }));
  expect(media.problems([SHA_OF_ABC, '0'.repeat(64)])).toHaveLength(2);
});

test.each(['..', '../../etc/passwd', '', 'BA7816BF', `${SHA_OF_ABC}/..`])('«%s» is no name of a file', (name) => {
  expect(media.path(name)).toBeNull();
});

test('a folder that cannot be written is refused with a sentence', () => {
  const file = path.join(folder, 'not-a-folder');
  fs.writeFileSync(file, '');
  expect(() => openMediaStore(file)).toThrow(expect.objectContaining({ code: 'store-unwritable' }));
});
