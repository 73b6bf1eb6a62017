import { spawnSync } from 'node:child_process';

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
