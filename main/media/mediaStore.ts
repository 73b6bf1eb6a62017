import { createHash, type Hash, randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import fs from 'node:fs/promises';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { DomainError } from '../../shared/errors.ts';
import { HEAD_BYTES } from '../../shared/film/filmType.ts';
import { storeError } from '../store/storeErrors.ts';

const UNFINISHED = '.part';
/** Marks a file kept whose record may not be written yet. */
const UNRECORDED = '.unrecorded';
const SHA256 = /^[0-9a-f]{64}$/;
/** A part that can be continued is named after the trial it is for and what it is of. */
const CONTINUABLE = /^[0-9a-f-]{36}\.[0-9a-f-]{36}\.[0-9a-f]{64}\.part$/;
/** How long the beginning of a file waits for its end: a convention. */
const WAITS_MS = 7 * 24 * 3600 * 1000;

/** A file on its way in. After `finish` or `discard` it is of no more use. */
export interface Incoming {
  readonly receivedBytes: number;
  /** Where it lies until it is finished. */
  readonly place: string;
  /** The first bytes received. */
  head(): Promise<Uint8Array>;
  append(bytes: Uint8Array): Promise<void>;
  /** @returns the SHA-256 under which it is kept now, on disk */
  finish(): Promise<string>;
  /** Leaves nothing behind. */
  discard(): Promise<void>;
  /** Lets go of the file where it is, to be continued another day. */
  leave(): Promise<void>;
}

/** A file that another program writes. */
export interface Making {
  readonly place: string;
  /** @returns its SHA-256 and size, once it is kept */
  finish(): Promise<{ readonly sha256: string; readonly sizeBytes: number }>;
  discard(): Promise<void>;
}

/** Files kept under the SHA-256 of their bytes, so that the same file is kept once and a changed one is noticed. */
export interface MediaStore {
  /** Keeps the bytes, on disk when it returns. @returns their SHA-256 */
  put(bytes: Uint8Array): Promise<string>;
  /**
   * Begins a file that arrives in pieces, or goes on with what of it came before. Invisible until finished; what is not
   * finished waits seven days.
   * @param identity what tells this file from others: the same words, the same file
   */
  receive(caseId: string, trialId: string, identity: string): Promise<Incoming>;
  /** A place for a file that is made here; gone at the next opening unless finished. */
  make(): Making;
  /** Files kept since the last call whose record was not written are taken out again: after a refusal, or a crash. */
  settle(isRecorded: (sha256: string) => Promise<boolean>): Promise<void>;
  /** Takes out what waits for its end: of a case, of one of its trials, or all but one of that. */
  forget(caseId: string, trialId?: string, but?: Incoming): Promise<void>;
  /** Where a file lies, whether or not it is there; null if this is no SHA-256. */
  path(sha256: string): string | null;
  /** @throws DomainError 'not-found', 'store-corrupt' if the bytes are no longer those that were kept */
  read(sha256: string): Promise<Uint8Array>;
  /** Takes a file out for good; nothing happens if it is not there. */
  remove(sha256: string): Promise<void>;
  /** Everything wrong with the files, in words: one that is named and not there as it was, one there that is not named. */
  verify(kept: readonly { readonly sha256: string; readonly fileName: string }[]): Promise<string[]>;
}

/** Opens the media of a store folder, which must exist and be held by this program, and clears what a crash left half-written. */
export async function openMediaStore(folder: string): Promise<MediaStore> {
  const root = path.join(folder, 'media');
  const unrecorded = new Set<string>();
  try {
    await fs.mkdir(root, { recursive: true, mode: 0o700 });
    for (const name of await fs.readdir(root)) {
      if (name.endsWith(UNRECORDED)) unrecorded.add(name.slice(0, -UNRECORDED.length));
      else if (name.endsWith(UNFINISHED) && !(await stillWaits(path.join(root, name)))) {
        await fs.rm(path.join(root, name));
      }
    }
  } catch (thrown) {
    throw storeError(thrown, folder);
  }

  const placeOf = (sha256: string) => path.join(root, sha256.slice(0, 2), sha256);
  const markerOf = (sha256: string) => path.join(root, `${sha256}${UNRECORDED}`);

  /** Complete and on disk under another name first: under its own name a file is never half there. */
  const keepAs = async (sha256: string, unfinished: string) => {
    const place = placeOf(sha256);
    if (await hasBytes(place, sha256)) return fs.rm(unfinished, { force: true });
    await fs.writeFile(markerOf(sha256), '', { flush: true, mode: 0o600 });
    unrecorded.add(sha256);
    await fs.mkdir(path.dirname(place), { recursive: true });
    await fs.rename(unfinished, place);
    await syncFolder(path.dirname(place));
  };

  return {
    async put(bytes) {
      const sha256 = createHash('sha256').update(bytes).digest('hex');
      if (await hasBytes(placeOf(sha256), sha256)) return sha256;
      return guarded(async () => {
        const unfinished = path.join(root, `${randomUUID()}${UNFINISHED}`);
        await fs.writeFile(unfinished, bytes, { flush: true, mode: 0o600 });
        await keepAs(sha256, unfinished);
        return sha256;
      }, folder);
    },
    receive: (caseId, trialId, identity) =>
      guarded(() => {
        const name = createHash('sha256').update(identity).digest('hex');
        return receive(path.join(root, `${caseId}.${trialId}.${name}${UNFINISHED}`), keepAs);
      }, folder),
    make() {
      const place = path.join(root, `${randomUUID()}${UNFINISHED}`);
      return {
        place,
        finish: () =>
          guarded(async () => {
            const sha256 = await digestOf(place);
            if (sha256 === null) throw new DomainError('internal', 'A file that was made is not there.');
            const file = await fs.open(place, 'r+');
            const { size } = await file.stat();
            await file.sync();
            await file.close();
            await keepAs(sha256, place);
            return { sha256, sizeBytes: size };
          }, folder),
        discard: () => fs.rm(place, { force: true }),
      };
    },
    settle: (isRecorded) =>
      guarded(async () => {
        for (const sha256 of unrecorded) {
          if (!(await isRecorded(sha256))) await fs.rm(placeOf(sha256), { force: true });
          await fs.rm(markerOf(sha256), { force: true });
          unrecorded.delete(sha256);
        }
      }, folder),
    forget: (caseId, trialId, but) =>
      guarded(async () => {
        for (const name of await fs.readdir(root)) {
          const isOfThese = name.startsWith(trialId === undefined ? `${caseId}.` : `${caseId}.${trialId}.`);
          const place = path.join(root, name);
          if (isOfThese && CONTINUABLE.test(name) && place !== but?.place) await fs.rm(place, { force: true });
        }
      }, folder),
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
      const named = new Set(kept.map(({ sha256 }) => sha256));
      const lying = await fs.readdir(root, { recursive: true, withFileTypes: true });
      return [
        ...problems,
        ...lying
          .filter((entry) => entry.isFile() && SHA256.test(entry.name) && !named.has(entry.name))
          .map(({ name }) => `The file ${name} lies in the store and belongs to no case.`),
      ];
    },
  };
}

async function stillWaits(place: string): Promise<boolean> {
  const { mtimeMs } = await fs.stat(place);
  return CONTINUABLE.test(path.basename(place)) && Date.now() - mtimeMs < WAITS_MS;
}

async function receive(
  place: string,
  keepAs: (sha256: string, unfinished: string) => Promise<void>,
): Promise<Incoming> {
  const file = await fs.open(place, 'a+', 0o600);
  const hash = createHash('sha256');
  let receivedBytes = await feed(hash, place);
  let isOver = false;
  const leave = async () => {
    if (isOver) return;
    isOver = true;
    await file.close();
  };
  const discard = async () => {
    if (isOver) return;
    await leave();
    await fs.rm(place, { force: true });
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
    place,
    async head() {
      const { buffer, bytesRead } = await file.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
      return buffer.subarray(0, bytesRead);
    },
    append: (bytes) =>
      guarded(
        () =>
          orNothing(async () => {
            await file.appendFile(bytes);
            // On disk before it counts as received: whoever goes on after a power cut goes on from there.
            await file.datasync();
            hash.update(bytes);
            receivedBytes += bytes.length;
          }),
        path.dirname(place),
      ),
    finish: () =>
      guarded(
        () =>
          orNothing(async () => {
            await file.sync();
            const sha256 = hash.digest('hex');
            await leave();
            await keepAs(sha256, place);
            return sha256;
          }),
        path.dirname(place),
      ),
    discard,
    leave,
  };
}

/** Reads a file into a hash. @returns its size, bytes */
async function feed(hash: Hash, place: string): Promise<number> {
  let size = 0;
  for await (const piece of createReadStream(place)) {
    hash.update(piece as Buffer);
    size += (piece as Buffer).length;
  }
  return size;
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
