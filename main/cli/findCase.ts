import { DomainError } from '../../shared/errors.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { Service } from '../service.ts';
import { ask } from './ask.ts';

/** A case by its id or by the number people use, `2026-014`. @throws DomainError 'not-found' */
export async function findCase(service: Service, idOrNumber: string): Promise<CaseFile> {
  const caseId = /^[0-9a-f-]{36}$/.test(idOrNumber) ? idOrNumber : await idOf(service, idOrNumber);
  const { file } = await ask(service, 'case.open', { caseId });
  return file;
}

async function idOf(service: Service, number: string): Promise<string> {
  for (const archived of [false, true]) {
    const { rows } = await ask(service, 'shelf.list', { search: number, archived, offset: 0, limit: 500 });
    const row = rows.find((one) => one.number === number);
    if (row !== undefined) return row.caseId;
  }
  throw new DomainError('not-found', `There is no case ${number} in this store.`);
}
