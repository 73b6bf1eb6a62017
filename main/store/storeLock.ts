import fs from 'node:fs';
import path from 'node:path';
import { DomainError } from '../../shared/errors.ts';
import { openDatabase } from './database.ts';

/** How a program that holds a store is named to another one that would like it. */
export interface Holder {
  readonly host: string;
  readonly pid: number;
  readonly since: string;
}

/**
 * Takes a store folder for this program alone. The lock is an exclusive SQLite lock on a tiny database, held by the
 * operating system: it ends with the process, however that ends, so there is no stale lock to clear.
 * @returns the function that gives the folder back
 * @throws DomainError 'store-locked', naming who has it
 */
export function lockStore(folder: string, holder: Holder): () => void {
  const note = path.join(folder, 'open-in.json');
  const database = openDatabase(path.join(folder, 'lock.sqlite'));
  try {
    database.exec('BEGIN EXCLUSIVE');
  } catch (thrown) {
    database.close();
    if (!(thrown instanceof Error && 'code' in thrown && thrown.code === 'SQLITE_BUSY')) throw thrown;
    throw new DomainError(
      'store-locked',
      `The case store in ${folder} is already open${holderWords(note)}. ` +
        'Close it there first, or choose another folder. Nothing was changed.',
    );
  }
  writeNote(note, holder);
  return () => {
    // Given back before: the note is another program's by now.
    if (!database.open) return;
    removeNote(note);
    database.close();
  };
}

/** Only for the sentence above; a missing or old note does no harm, and the lock is held without it. */
function writeNote(note: string, holder: Holder): void {
  try {
    fs.writeFileSync(note, JSON.stringify(holder));
  } catch {
    // A folder that cannot be written is told by the case database.
  }
}

function removeNote(note: string): void {
  try {
    fs.rmSync(note, { force: true });
  } catch {
    // It stays, and is written over by the next program that opens the folder.
  }
}

function holderWords(note: string): string {
  try {
    const { host, pid, since } = JSON.parse(fs.readFileSync(note, 'utf8')) as Holder;
    return ` (${host}, process ${pid}, since ${since})`;
  } catch {
    return ' in another window or command';
  }
}
