import { DomainError } from '../../shared/errors.ts';

/** @throws DomainError 'input-malformed' if the text is not JSON */
export function parseJson(text: string, name: string): unknown {
  try {
    return JSON.parse(text);
  } catch (thrown) {
    throw new DomainError('input-malformed', `The file ${name} is not JSON: ${(thrown as Error).message}.`);
  }
}
