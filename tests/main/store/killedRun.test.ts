import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { aFolder } from './aFolder.ts';
import type { Mover } from './moves.ts';
import { openRunMover, SQUAD_CASES } from './runMoves.ts';
import { workAndKill } from './workAndKill.ts';

/** RUN_KILLS=100 is the long run. */
const KILLS = Number(process.env['RUN_KILLS'] ?? 8);
const EARLY = Math.ceil(KILLS / 8);
const SOURCE = 31;

/** Every cell of the squad, with its history. */
function seen({ service }: Mover): Promise<unknown[]> {
  return Promise.all([
    service.dispatch('run.list', {}),
    ...SQUAD_CASES.flatMap((caseId) => [
      service.dispatch('case.open', { caseId }),
      service.dispatch('case.history', { caseId, limit: 40 }),
    ]),
  ]);
}

test(
  `killed with signal 9 at ${KILLS} random moments of an intake run (random source ${SOURCE}): at most the keystroke in flight is missing, and verify is clean`,
  async ({ signal }) => {
    const folder = aFolder();
    const random = randomSource(SOURCE);
    const unharmed = await openRunMover(aFolder());
    let done = -1;
    for (let kill = 0; kill < KILLS; kill++) {
      const acknowledged = await workAndKill('run', folder, done + 1, kill < EARLY, random, signal);
      const harmed = await openRunMover(folder);
      const found = await seen(harmed);
      while (done < acknowledged) await unharmed.move(++done);
      if (!isDeepStrictEqual(found, await seen(unharmed))) await unharmed.move(++done);
      expect(found).toEqual(await seen(unharmed));
      expect(await harmed.service.dispatch('store.verify', {})).toEqual({ ok: true, value: { problems: [] } });
      await harmed.service.close();
    }
    await unharmed.service.close();
    // More than one athlete was typed in, or nothing was tried.
    expect(done).toBeGreaterThan(2 * KILLS);
  },
  // Enough on a machine with much else to do: a start of the program takes seconds there.
  60_000 + 20_000 * KILLS,
);
