import path from 'node:path';
import { DomainError, type ErrorCode } from '../../shared/errors.ts';

/** Codes of SQLite and of the file system that mean the folder or the disk cannot take what is to be written. */
const UNWRITABLE =
  /^(SQLITE_(READONLY|CANTOPEN|FULL|IOERR|PERM)|EACCES|EPERM|EROFS|ENOSPC|EDQUOT|ENOTDIR|EEXIST|ENOENT)/;
const CORRUPT = /^SQLITE_(CORRUPT|NOTADB)/;
const BUSY = /^SQLITE_(BUSY|LOCKED)/;

/** What SQLite or the file system threw, as a sentence with a next step. Anything else is passed on as it is. */
export function storeError(thrown: unknown, folder: string): unknown {
  if (!(thrown instanceof Error) || thrown instanceof DomainError) return thrown;
  const code = 'code' in thrown && typeof thrown.code === 'string' ? thrown.code : '';
  if (CORRUPT.test(code)) return corrupt(folder, thrown.message);
  if (BUSY.test(code))
    return told('store-locked', `Another program is using the case store in ${folder}. Close it and try again.`);
  if (/^SQLITE_CONSTRAINT_(UNIQUE|PRIMARYKEY|ROWID)/.test(code))
    return told('conflict', 'An id of these records is already in use.');
  if (code.startsWith('SQLITE_CONSTRAINT_FOREIGNKEY')) {
    return told('not-found', 'A record belongs to something that is not in this store.');
  }
  if (UNWRITABLE.test(code)) {
    const why = /FULL|ENOSPC|EDQUOT/.test(code) ? 'the disk is full' : thrown.message;
    return told(
      'store-unwritable',
      `The case store in ${folder} cannot be written (${why}). Nothing more was stored. ` +
        'Choose a folder you may write to, or make room and the permission to write there.',
    );
  }
  return thrown;
}

export function corrupt(folder: string, what: string): DomainError {
  return told(
    'store-corrupt',
    `The case store in ${folder} is damaged (${what}) and was left as it is. ` +
      `Copy the whole folder to a safe place first, then put the latest good copy of ${path.join(folder, 'cases.sqlite')} in its place.`,
  );
}

function told(code: ErrorCode, message: string): DomainError {
  return new DomainError(code, message);
}
