import { createRequire } from 'node:module';
import type BetterSqlite3 from 'better-sqlite3';
import { DomainError } from '../../shared/errors.ts';

export type Database = BetterSqlite3.Database;
export type Statement<P extends unknown[] = unknown[], R = unknown> = BetterSqlite3.Statement<P, R>;

const OLDEST_NODE = 22;

/**
 * Opens a SQLite file, making it if need be. Nothing is read yet.
 * @throws DomainError 'internal' on a Node that the SQLite library would crash
 */
export function openDatabase(file: string): Database {
  const version = process.versions.node;
  if (Number.parseInt(version, 10) < OLDEST_NODE) {
    throw new DomainError('internal', `The case store needs Node ${OLDEST_NODE} or newer and runs on Node ${version}.`);
  }
  // Loaded after the check: on an older Node the mere loading ends the process without a word.
  const Sqlite = createRequire(import.meta.url)('better-sqlite3') as typeof BetterSqlite3;
  return new Sqlite(file, { timeout: 0 });
}

/** The settings the case database runs with. FULL: a commit survives a power cut, not only a crash. */
export function configure(database: Database): void {
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.pragma('foreign_keys = ON');
  database.pragma('trusted_schema = OFF');
  // What is deleted is overwritten: an athlete taken out for good must not be found by reading the file.
  database.pragma('secure_delete = ON');
}
