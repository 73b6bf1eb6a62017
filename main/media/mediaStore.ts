import { createHash, randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { DomainError } from '../../shared/errors.ts';
import type { MediaRecord } from '../../shared/model/outcome.ts';
import { storeError } from '../store/storeErrors.ts';

export type StoredFile = Pick<MediaRecord, 'sha256' | 'fileName' | 'mediaType' | 'sizeBytes'>;

export interface MediaStore {
  /** Keeps a file; the same bytes are kept once. On disk, under their final name, when it returns. */
  put(bytes: Uint8Array, fileName: string, mediaType: string): StoredFile;
  /** Where a file lies; null if it is not here. */
  path(sha256: string): string | null;
  /** @throws DomainError 'not-found', or 'store-corrupt' if the bytes are no longer those that were kept */
  read(sha256: string): Uint8Array;
  /** What is wrong with these files, in words. */
  problems(sha256s: readonly string[]): string[];
}

const SHA256 = /^[0-9a-f]{64}$/;
const UNFINISHED = '.part';

/**
 * Files of a store folder, named by what they contain: `media/ab/ab12…`. A file is written under another name, forced
 * to disk and only then renamed, so that a name always means whole contents. What a crash left unfinished is removed.
 */
export function openMediaStore(storeFolder: string): MediaStore {
  const root = path.join(storeFolder, 'media');
  const place = (sha256: string) => path.join(root, sha256.slice(0, 2), sha256);
  try {
    fs.mkdirSync(root, { recursive: true, mode: 0o700 });
    for (const name of fs.readdirSync(root).filter((one) => one.endsWith(UNFINISHED))) fs.rmSync(path.join(root, name));
  } catch (thrown) {
    throw storeError(thrown, storeFolder);
  }

  function find(sha256: string): string | null {
    return SHA256.test(sha256) && fs.existsSync(place(sha256)) ? place(sha256) : null;
  }

  function read(sha256: string): Uint8Array {
    const file = find(sha256);
    if (file === null) {
      throw new DomainError('not-found', `The file ${sha256} is not in the media folder of this store.`);
    }
    const bytes = fs.readFileSync(file);
    if (sha256Of(bytes) !== sha256) {
      throw new DomainError(
        'store-corrupt',
        `The file ${file} is not what was kept: its bytes have changed. Put back a good copy of it.`,
      );
    }
    return bytes;
  }

  return {
    put: (bytes, fileName, mediaType) => {
      const sha256 = sha256Of(bytes);
      try {
        if (find(sha256) === null) writeWhole(root, place(sha256), bytes);
      } catch (thrown) {
        throw storeError(thrown, storeFolder);
      }
      return { sha256, fileName, mediaType, sizeBytes: bytes.byteLength };
    },
    path: find,
    read,
    problems: (sha256s) =>
      sha256s.flatMap((sha256) => {
        try {
          read(sha256);
          return [];
        } catch (thrown) {
          return [thrown instanceof Error ? thrown.message : String(thrown)];
        }
      }),
  };
}

export function sha256Of(data: Uint8Array | string): string {
  return createHash('sha256').update(data).digest('hex');
}

function writeWhole(root: string, file: string, bytes: Uint8Array): void {
  const unfinished = path.join(root, `${randomUUID()}${UNFINISHED}`);
  fs.writeFileSync(unfinished, bytes, { flag: 'wx', flush: true, mode: 0o600 });
  fs.mkdirSync(path.dirname(file), { recursive: true, mode: 0o700 });
  fs.renameSync(unfinished, file);
  // A new name is on disk only once its folder is; Windows cannot open a folder and needs no help with it.
  if (process.platform === 'win32') return;
  for (const folder of [path.dirname(file), root]) {
    const handle = fs.openSync(folder, 'r');
    fs.fsyncSync(handle);
    fs.closeSync(handle);
  }
}
