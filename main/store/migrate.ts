import fs from 'node:fs';
import path from 'node:path';
import { DomainError } from '../../shared/errors.ts';
import type { Database } from './database.ts';

/** SQL of every migration in order; the first brings an empty database to version 1. */
export type Migrations = readonly { readonly name: string; readonly sql: string }[];

/**
 * Reads `NNNN_what_it_does.sql` files, numbered from 0001 without a gap.
 * @throws DomainError 'internal' for a name or number out of line: a mistake of the program, not of its user
 */
export function readMigrations(folder: string): Migrations {
  const names = fs.readdirSync(folder).toSorted();
  for (const [i, name] of names.entries()) {
    if (!/^\d{4}_[a-z0-9_]+\.sql$/.test(name) || Number.parseInt(name, 10) !== i + 1) {
      throw new DomainError(
        'internal',
        `Migrations are named NNNN_words.sql from 0001 without a gap; ${name} is not next.`,
      );
    }
  }
  return names.map((name) => ({ name, sql: fs.readFileSync(path.join(folder, name), 'utf8') }));
}

/** @throws DomainError 'store-newer' if the database was written by a later program; nothing is changed */
export function refuseNewer(database: Database, migrations: Migrations, folder: string): void {
  const version = schemaVersion(database);
  if (version > migrations.length) {
    throw new DomainError(
      'store-newer',
      `The case store in ${folder} was written by a newer Caseframe (version ${version} of its layout; this program ` +
        `knows ${migrations.length}). Nothing was changed. Update Caseframe, or choose another folder.`,
    );
  }
}

/**
 * Brings a database up to date, each migration in one transaction that ends with the new version number: one that fails
 * leaves the database at the version before it.
 */
export function migrate(database: Database, migrations: Migrations): void {
  const version = schemaVersion(database);
  // Checked at the end of each migration instead: the setting cannot change inside a transaction.
  database.pragma('foreign_keys = OFF');
  try {
    for (const [i, { name, sql }] of migrations.entries()) {
      if (i >= version) database.transaction(() => runOne(database, name, sql, i + 1)).immediate();
    }
  } finally {
    database.pragma('foreign_keys = ON');
  }
}

export function schemaVersion(database: Database): number {
  return Number(database.pragma('user_version', { simple: true }));
}

function runOne(database: Database, name: string, sql: string, version: number): void {
  try {
    database.exec(sql);
  } catch (thrown) {
    // Anything else (a full disk, damage) has sentences of its own.
    if (!(thrown instanceof Error && 'code' in thrown && /^SQLITE_(ERROR|CONSTRAINT)/.test(String(thrown.code))))
      throw thrown;
    throw new DomainError(
      'internal',
      `The case store could not be brought up to date: migration ${name} failed (${thrown.message}). ` +
        'It was left as it was; use the version of Caseframe that opened it last, and report this.',
    );
  }
  const broken = database.pragma('foreign_key_check') as readonly unknown[];
  if (broken.length > 0) throw new DomainError('internal', `Migration ${name} leaves records without their owner.`);
  database.pragma(`user_version = ${version}`);
}
