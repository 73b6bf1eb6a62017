import { createHash, randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import fs from 'node:fs/promises';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { DomainError } from '../../shared/errors.ts';
import { storeError } from '../store/storeErrors.ts';

const UNFINISHED = '.part';
const SHA256 = /^[0-9a-f]{64}$/;

/** A file on its way in. After `finish` or `discard` it is of no more use. */
export interface Incoming {
  readonly receivedBytes: number;
  append(bytes: Uint8Array): Promise<void>;
  /** @returns the SHA-256 under which it is kept now, on disk */
  finish(): Promise<string>;
  /** Leaves nothing behind. */
  discard(): Promise<void>;
}

/** Files kept under the SHA-256 of their bytes, so that the same file is kept once and a changed one is noticed. */
export interface MediaStore {
  /** Keeps the bytes, on disk when it returns. @returns their SHA-256 */
  put(bytes: Uint8Array): Promise<string>;
  /** Begins a file that arrives in pieces. Invisible until finished; one that is not finished is gone at the next opening. */
  receive(): Promise<Incoming>;
  /** Where a file lies, whether or not it is there; null if this is no SHA-256. */
  path(sha256: string): string | null;
  /** @throws DomainError 'not-found', 'store-corrupt' if the bytes are no longer those that were kept */
  read(sha256: string): Promise<Uint8Array>;
  /** Takes a file out for good; nothing happens if it is not there. */
  remove(sha256: string): Promise<void>;
  /** Everything wrong with the files named, in words. */
  verify(kept: readonly { readonly sha256: string; readonly fileName: string }[]): Promise<string[]>;
}

/** Opens the media of a store folder, which must exist and be held by this program, and clears what a crash left half-written. */
export async function openMediaStore(folder: string): Promise<MediaStore> {
  const root = path.join(folder, 'media');
  try {
    await fs.mkdir(root, { recursive: true, mode: 0o700 });
    for (const name of await fs.readdir(root)) {
      if (name.endsWith(UNFINISHED)) await fs.rm(path.join(root, name));
    }
  } catch (thrown) {
    throw storeError(thrown, folder);
  }

  const placeOf = (sha256: string) => path.join(root, sha256.slice(0, 2), sha256);

  return {
    async put(bytes) {
      const sha256 = createHash('sha256').update(bytes).digest('hex');
      const place = placeOf(sha256);
      if (await hasBytes(place, sha256)) return sha256;
      try {
        await fs.mkdir(path.dirname(place), { recursive: true });
        // Complete and on disk under another name first: under its own name a file is never half there.
        const unfinished = path.join(root, `${randomUUID()}${UNFINISHED}`);
        await fs.writeFile(unfinished, bytes, { flush: true, mode: 0o600 });
        await fs.rename(unfinished, place);
        await syncFolder(path.dirname(place));
      } catch (thrown) {
        throw storeError(thrown, folder);
      }
      return sha256;
    },
    receive: () => guarded(() => receive(root, placeOf), folder),
    path: (sha256) => (SHA256.test(sha256) ? placeOf(sha256) : null),
    async read(sha256) {
      const bytes = SHA256.test(sha256) ? await fs.readFile(placeOf(sha256)).catch(() => null) : null;
      if (bytes === null) {
        throw new DomainError('not-found', 'The file is not in the store any more. Import it again from the original.');
      }
      if (createHash('sha256').update(bytes).digest('hex') !== sha256) {
        throw new DomainError(
          'store-corrupt',
          'The stored file has changed on disk since it was kept. Restore the store folder from a copy, or import the file again.',
        );
      }
      return bytes;
    },
    remove: (sha256) =>
      guarded(async () => {
        if (!SHA256.test(sha256)) return;
        await fs.rm(placeOf(sha256), { force: true });
        await syncFolder(path.dirname(placeOf(sha256)));
      }, folder),
    async verify(kept) {
      const problems: string[] = [];
      for (const { sha256, fileName } of kept) {
        const found = await digestOf(placeOf(sha256));
        if (found === null) problems.push(`The file ${fileName} is missing from the store.`);
        else if (found !== sha256) problems.push(`The file ${fileName} has changed on disk since it was kept.`);
      }
      return problems;
    },
  };
}

async function receive(root: string, placeOf: (sha256: string) => string): Promise<Incoming> {
  const unfinished = path.join(root, `${randomUUID()}${UNFINISHED}`);
  const file = await fs.open(unfinished, 'wx', 0o600);
  const hash = createHash('sha256');
  let receivedBytes = 0;
  let isOver = false;
  const discard = async () => {
    if (isOver) return;
    isOver = true;
    await file.close();
    await fs.rm(unfinished, { force: true });
  };
  const orNothing = async <T>(work: () => Promise<T>): Promise<T> => {
    try {
      return await work();
    } catch (thrown) {
      await discard().catch(() => undefined);
      throw thrown;
    }
  };
  return {
    get receivedBytes() {
      return receivedBytes;
    },
    append: (bytes) =>
      guarded(
        () =>
          orNothing(async () => {
            await file.writeFile(bytes);
            hash.update(bytes);
            receivedBytes += bytes.length;
          }),
        root,
      ),
    finish: () =>
      guarded(
        () =>
          orNothing(async () => {
            await file.sync();
            const sha256 = hash.digest('hex');
            const place = placeOf(sha256);
            if (await hasBytes(place, sha256)) {
              await discard();
              return sha256;
            }
            isOver = true;
            await file.close();
            await fs.mkdir(path.dirname(place), { recursive: true });
            await fs.rename(unfinished, place);
            await syncFolder(path.dirname(place));
            return sha256;
          }),
        root,
      ),
    discard,
  };
}

async function guarded<T>(work: () => Promise<T>, folder: string): Promise<T> {
  try {
    return await work();
  } catch (thrown) {
    throw storeError(thrown, folder);
  }
}

async function hasBytes(place: string, sha256: string): Promise<boolean> {
  return (await digestOf(place)) === sha256;
}

/** SHA-256 of a file, read in pieces; null where there is none. */
async function digestOf(place: string): Promise<string | null> {
  const hash = createHash('sha256');
  try {
    await pipeline(createReadStream(place), hash);
    return hash.digest('hex');
  } catch {
    return null;
  }
}

/** A rename is on disk once its folder is; not every system can sync one, and those that cannot do not need it. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await fs.open(folder, 'r').catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}
