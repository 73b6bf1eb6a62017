import fs from 'node:fs';
import path from 'node:path';
import type { Database } from './database.ts';
import { schemaVersion } from './migrate.ts';

/**
 * Keeps a whole copy of a database beside it before its layout moves on, named after the version that it is of, so that
 * the program of that version can go back to it. Nothing is copied of a database that is new or up to date.
 * @returns the copy's path, or null where none was due
 */
export function copyBeforeMigration(database: Database, folder: string, latest: number): string | null {
  const version = schemaVersion(database);
  if (version === 0 || version >= latest) return null;
  const copy = path.join(folder, `cases-version-${version}.sqlite`);
  const unfinished = `${copy}.unfinished`;
  fs.rmSync(unfinished, { force: true });
  // SQLite makes files that anyone on the machine may read; an empty one of our own is taken as it is.
  fs.writeFileSync(unfinished, '', { mode: 0o600 });
  database.prepare('VACUUM INTO ?').run(unfinished);
  sync(unfinished);
  fs.renameSync(unfinished, copy);
  return copy;
}

/** Names of the copies that a folder holds. */
export function copiesOf(folder: string): string[] {
  return fs.readdirSync(folder).filter((name) => /^cases-version-\d+\.sqlite$/.test(name));
}

function sync(file: string): void {
  const handle = fs.openSync(file, 'r+');
  try {
    fs.fsyncSync(handle);
  } finally {
    fs.closeSync(handle);
  }
}
