import type { z } from 'zod';
import { DomainError } from '../errors.ts';

/**
 * Unknown data as a value of the model, or one plain sentence about the first thing wrong with it.
 * @param what names the data in the sentence: `the injury`
 * @throws DomainError 'input-malformed' with the path of the value at fault
 */
export function parseInput<T>(schema: z.ZodType<T>, input: unknown, what: string): T {
  const parsed = schema.safeParse(input, { reportInput: true });
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  const path = issue === undefined || issue.path.length === 0 ? null : issue.path.join('.');
  const where = path === null ? what : `“${path}” of ${what}`;
  throw new DomainError(
    'input-malformed',
    `In ${where}: ${issue === undefined ? 'not understood' : words(issue)}.`,
    path,
  );
}

function words(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `needs ${NEEDS[issue.expected] ?? issue.expected}, and got ${got(issue.input)}`;
    case 'too_big':
      return `must ${amount(issue.origin, issue.inclusive === false ? 'less than' : 'at most', issue.maximum)}`;
    case 'too_small':
      return `must ${amount(issue.origin, issue.inclusive === false ? 'more than' : 'at least', issue.minimum)}`;
    case 'invalid_value':
      return `must be one of ${issue.values.map(String).join(', ')}, and got ${got(issue.input)}`;
    case 'invalid_format':
      return `must be ${FORMATS[issue.format] ?? issue.message}`;
    case 'unrecognized_keys':
      return `knows nothing called ${issue.keys.join(', ')}`;
    case 'invalid_union':
      return 'is none of the forms known here';
    default:
      return issue.message;
  }
}

const NEEDS: Readonly<Record<string, string>> = {
  int: 'a whole number',
  number: 'a number',
  string: 'text',
  boolean: 'yes or no',
  array: 'a list',
  object: 'a record',
};

const FORMATS: Readonly<Record<string, string>> = {
  uuid: 'an id (a UUID)',
  date: 'a day like 2026-11-25',
  datetime: 'an instant in UTC like 2026-11-25T14:05:00.000Z',
};

function amount(origin: string, than: string, limit: number | bigint): string {
  if (origin === 'string') return `have ${than} ${limit} characters`;
  return origin === 'array' ? `have ${than} ${limit} entries` : `be ${than} ${limit}`;
}

function got(input: unknown): string {
  if (input === undefined) return 'nothing';
  return typeof input === 'number' ? String(input) : (JSON.stringify(input)?.slice(0, 60) ?? typeof input);
}
