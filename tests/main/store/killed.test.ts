import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { expect, test } from 'vitest';
import { openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { AT, EXAMPLES, id, WHOLE_CASE } from '../../conformance/examples.ts';
import { aFolder, HOLDER } from './aFolder.ts';

const KILLS = 50;

/** Lets a process type for a random while, kills it, and says the last edit it was told is kept. */
async function typeAndKill(folder: string, first: number): Promise<number> {
  const child = spawn(process.execPath, [path.join(import.meta.dirname, 'keepsTyping.ts'), folder, String(first)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let printed = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (printed += text));
  await once(child.stdout, 'data');
  setTimeout(() => child.kill('SIGKILL'), 250 * Math.random());
  await once(child, 'close');
  // A last line without its end was not told in full.
  return Number(printed.split('\n').at(-2));
}

test(`killed with signal 9 at ${KILLS} random moments while typing: every edit that was acknowledged is there, the store sound`, async () => {
  const folder = aFolder();
  let store = openSqliteCaseStore(folder, HOLDER);
  await store.create(
    WHOLE_CASE.filter((edit) => edit.kind !== 'injury'),
    AT,
  );
  await store.close();
  let next = 1;
  for (let kill = 0; kill < KILLS; kill++) {
    const kept = await typeAndKill(folder, next);
    expect(kept).toBeGreaterThanOrEqual(next);
    store = openSqliteCaseStore(folder, HOLDER);
    const file = await store.open(EXAMPLES.case.id);
    const noted = Number(file.case.note.replace('note ', ''));
    // One edit more may have been kept than was told; or, killed between undo and redo, the last one told is undone.
    const { redo } = await store.editState(EXAMPLES.case.id);
    if (redo !== null) {
      await store.redo(EXAMPLES.case.id, AT);
    } else {
      expect([kept, kept + 1]).toContain(noted);
    }
    const whole = await store.open(EXAMPLES.case.id);
    const last = Number(whole.case.note.replace('note ', ''));
    expect(last).toBeGreaterThanOrEqual(kept);
    const expected = Array.from({ length: Math.floor(last / 5) }, (_, i) => id(10_000 + 5 * (i + 1)));
    expect(whole.injuries.map((injury) => injury.id)).toEqual(expected);
    expect(await store.verify()).toEqual([]);
    await store.close();
    next = last + 1;
  }
}, 120_000);
