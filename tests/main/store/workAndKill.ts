import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { expect } from 'vitest';
import type { RandomSource } from '../../../main/demo/randomSource.ts';

/**
 * Lets a process work for a random while and kills it.
 * @param isEarly true: the kill may come while the program is still starting, its store not yet made
 * @param signal of the test: one that ran out of time has its folder taken away, and must not begin again in an empty one
 * @returns the number of the last move that the program acknowledged; `first - 1`: none
 */
export async function workAndKill(
  work: 'case' | 'run',
  folder: string,
  first: number,
  isEarly: boolean,
  random: RandomSource,
  signal: AbortSignal,
): Promise<number> {
  signal.throwIfAborted();
  const script = path.join(import.meta.dirname, 'keepsWorking.ts');
  const child = spawn(process.execPath, [script, folder, String(first), work], {
    stdio: ['ignore', 'pipe', 'inherit'],
    signal,
    killSignal: 'SIGKILL',
  });
  const closed = once(child, 'close');
  let printed = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (printed += text));
  if (!isEarly) await Promise.race([once(child.stdout, 'data'), closed]);
  setTimeout(() => child.kill('SIGKILL'), (isEarly ? 1000 : 200) * random.uniform());
  const ended = await closed;
  expect(ended).toEqual([null, 'SIGKILL']);
  // A last line without its end was not told in full.
  return Number(printed.split('\n').at(-2) ?? first - 1);
}
