import fs from 'node:fs';
import type { ParseArgsOptionsConfig } from 'node:util';
import { DomainError } from '../../shared/errors.ts';
import { parseJson } from '../exchange/parseJson.ts';
import type { Service } from '../service.ts';

/** A command line that cannot be understood; the message says what was expected. */
export class UsageError extends Error {}

/** What a command has to say: one JSON document, or the same in lines for a person. */
export interface Output {
  readonly json: unknown;
  readonly lines: readonly string[];
  /** 0, unless the command did its work and found something to refuse. */
  readonly exitCode?: number;
}

export interface Invocation {
  /** The words after the command's name, as many as its usage names. */
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
  /** The store named by `--folder`, or this user's own. Closed when the command ends. */
  readonly openStore: () => Promise<Service>;
}

export interface Command {
  /** `jump time`. */
  readonly name: string;
  /** What follows the name: `SECONDS [--fps HZ]`. */
  readonly usage: string;
  readonly does: string;
  /** How many words must follow. */
  readonly words: number;
  /** How many more may. */
  readonly mayFollow?: number;
  readonly options: ParseArgsOptionsConfig;
  run(invocation: Invocation): Promise<Output> | Output;
}

/** @throws DomainError 'not-found' or 'input-malformed' */
export function readText(file: string): string {
  return readBytes(file).toString('utf8');
}

/** @throws DomainError 'not-found' or 'input-malformed' */
export function readBytes(file: string): Buffer {
  try {
    return fs.readFileSync(file);
  } catch (thrown) {
    const code = (thrown as NodeJS.ErrnoException).code;
    if (code === 'ENOENT') throw new DomainError('not-found', `There is no file ${file}.`);
    throw new DomainError('input-malformed', `The file ${file} cannot be read (${code}).`);
  }
}

/** @throws DomainError 'input-malformed' if the file is not JSON */
export function readJson(file: string): unknown {
  return parseJson(readText(file), file);
}

/** @throws DomainError 'store-unwritable' if the file cannot be written, in words that go on from those given */
export function writing(file: string, work: () => void, before = ''): void {
  try {
    work();
  } catch (thrown) {
    const { code } = thrown as NodeJS.ErrnoException;
    throw new DomainError('store-unwritable', `${before}${file} cannot be written (${code}).`);
  }
}

/** A number given as an option or a word. @throws UsageError if it is none */
export function numberFrom(text: string | boolean | undefined, name: string): number {
  const value = typeof text === 'string' && text.trim() !== '' ? Number(text) : Number.NaN;
  if (Number.isFinite(value)) return value;
  const hint = typeof text === 'string' && text.includes(',') ? ' Write the decimal sign as a point.' : '';
  throw new UsageError(text === undefined ? `${name} is needed.` : `${name} needs a number, got “${text}”.${hint}`);
}

export function optionalNumber(text: string | boolean | undefined, name: string): number | null {
  return text === undefined ? null : numberFrom(text, name);
}

/** @throws DomainError 'input-out-of-range' for a number that is not above 0 */
export function optionalPositive(needer: string, text: string | boolean | undefined, name: string): number | null {
  const value = optionalNumber(text, name);
  if (value === null || value > 0) return value;
  throw new DomainError('input-out-of-range', `${needer} needs ${name} above 0, got ${value}.`);
}

/** One of some words. @throws UsageError if it is none of them */
export function choiceFrom<T extends string>(
  text: string | boolean | undefined,
  name: string,
  choices: readonly T[],
  otherwise?: T,
): T {
  const choice = text === undefined ? otherwise : choices.find((one) => one === text);
  if (choice !== undefined) return choice;
  const got = text === undefined ? '' : `, got “${text}”`;
  throw new UsageError(`${name} needs one of ${choices.join(', ')}${got}.`);
}
