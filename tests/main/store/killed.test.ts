import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { type RandomSource, randomSource } from '../../../main/demo/randomSource.ts';
import { aFolder } from './aFolder.ts';
import { CASE, type Mover, openMover, TURNS } from './moves.ts';

const KILLS = 50;
/** Of these, kills that may come while the program is still starting, its store not yet made. */
const EARLY = 10;
const SOURCE = 9;

/** Lets a process work for a random while, kills it, and says the last move it was told is kept; `first - 1`: none. */
async function workAndKill(folder: string, first: number, isEarly: boolean, random: RandomSource): Promise<number> {
  const child = spawn(process.execPath, [path.join(import.meta.dirname, 'keepsWorking.ts'), folder, String(first)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const closed = once(child, 'close');
  let printed = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (printed += text));
  if (!isEarly) await once(child.stdout, 'data');
  setTimeout(() => child.kill('SIGKILL'), (isEarly ? 1000 : 200) * random.uniform());
  const [code, signal] = await closed;
  expect([code, signal]).toEqual([null, 'SIGKILL']);
  // A last line without its end was not told in full.
  return Number(printed.split('\n').at(-2) ?? first - 1);
}

/** All that a person could see of the store. */
function seen({ service }: Mover): Promise<unknown[]> {
  const shelf = { archived: false, offset: 0, limit: 10 };
  return Promise.all([
    service.dispatch('case.open', { caseId: CASE }),
    service.dispatch('case.history', { caseId: CASE, limit: 50 }),
    service.dispatch('shelf.list', { ...shelf, search: '' }),
    service.dispatch('shelf.list', { ...shelf, search: 'round limits' }),
  ]);
}

test(`killed with signal 9 at ${KILLS} random moments of work (random source ${SOURCE}): the folder is free at once, all that was acknowledged is there as in a store that was never killed, and verify is clean`, async () => {
  const folder = aFolder();
  const random = randomSource(SOURCE);
  const unharmed = await openMover(aFolder());
  let done = -1;
  for (let kill = 0; kill < KILLS; kill++) {
    const acknowledged = await workAndKill(folder, done + 1, kill < EARLY, random);
    const harmed = await openMover(folder);
    const found = await seen(harmed);
    while (done < acknowledged) await unharmed.move(++done);
    // The move under way may have been kept too, whole.
    if (!isDeepStrictEqual(found, await seen(unharmed))) await unharmed.move(++done);
    expect(found).toEqual(await seen(unharmed));
    expect(await harmed.service.dispatch('store.verify', {})).toEqual({ ok: true, value: { problems: [] } });
    await harmed.service.close();
  }
  await unharmed.service.close();
  // Every kind of move was made, and more than once.
  expect(done).toBeGreaterThan(3 * TURNS.length);
}, 180_000);
