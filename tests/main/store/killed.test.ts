import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { aFolder } from './aFolder.ts';
import { CASE, type Mover, openMover, TURNS } from './moves.ts';
import { workAndKill } from './workAndKill.ts';

const KILLS = 50;
/** Of these, kills that may come while the program is still starting, its store not yet made. */
const EARLY = 10;
const SOURCE = 9;

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

test(
  `killed with signal 9 at ${KILLS} random moments of work (random source ${SOURCE}): the folder is free at once, all that was acknowledged is there as in a store that was never killed, and verify is clean`,
  async ({ signal }) => {
    const folder = aFolder();
    const random = randomSource(SOURCE);
    const unharmed = await openMover(aFolder());
    let done = -1;
    for (let kill = 0; kill < KILLS; kill++) {
      const acknowledged = await workAndKill('case', folder, done + 1, kill < EARLY, random, signal);
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
  },
  20_000 * KILLS,
);
