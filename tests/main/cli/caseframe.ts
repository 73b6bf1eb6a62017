import { spawnSync } from 'node:child_process';
import { parseArgs } from 'node:util';
import type { Output } from '../../../main/cli/command.ts';
import { COMMANDS } from '../../../main/cli/commands.ts';

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
  /** The one JSON document on standard output. */
  readonly json: Record<string, unknown>;
}

/** Runs the command line as a user would, in a process of its own. */
export function caseframe(...words: string[]): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['main/cli/main.ts', ...words], { encoding: 'utf8' });
  const isJson = words.includes('--json');
  return {
    code: status,
    out: stdout,
    err: stderr,
    json: isJson ? (JSON.parse(stdout) as Record<string, unknown>) : {},
  };
}

/** A number from an answer, by key or by keys joined with a point. */
export function valueOf(json: Record<string, unknown>, path: string): number {
  const found = path
    .split('.')
    .reduce<unknown>((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], json);
  return (found as { value: number }).value;
}

/** Runs a command that needs no store in this process: quick, no exit code, and what it throws is thrown. */
export async function inProcess(...words: string[]): Promise<Output> {
  const command = COMMANDS.filter(({ name }) => `${words.join(' ')} `.startsWith(`${name} `)).toSorted(
    (a, b) => b.name.length - a.name.length,
  )[0];
  if (command === undefined) throw new Error(`no command in ${words.join(' ')}`);
  const args = words.slice(command.name.split(' ').length);
  const { values, positionals } = parseArgs({ args, options: command.options, allowPositionals: true });
  return await command.run({
    words: positionals,
    options: values as Record<string, string | boolean | undefined>,
    openStore: () => Promise.reject(new Error('no store here')),
  });
}
