import { DomainError } from '../errors.ts';

export function notInStore(what: 'case' | 'athlete', id: string): DomainError {
  return new DomainError('not-found', `There is no ${what} with the id ${id} in this store.`, `${what}Id`);
}
