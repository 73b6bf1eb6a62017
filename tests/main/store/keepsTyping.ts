import { openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { EXAMPLES, id } from '../../conformance/examples.ts';

/**
 * Run as a process of its own, to be killed: types into the whole example case without end, one edit after another, and
 * prints the number of each edit once the store says it is kept. Edit n leaves `n` in the note of the case and, every
 * fifth time, an injury with id n; every seventh edit is undone and done again.
 */
const [folder = '', first = '0'] = process.argv.slice(2);
const store = openSqliteCaseStore(folder, { host: 'typist', pid: process.pid, since: '' });
const caseId = EXAMPLES.case.id;

for (let n = Number(first); ; n++) {
  const at = new Date(Date.parse('2026-11-25T10:00:00.000Z') + 700 * n).toISOString();
  await store.apply(
    caseId,
    [
      { op: 'patch', kind: 'case', id: caseId, fields: { note: `note ${n}` } },
      ...(n % 5 === 0
        ? [{ op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, id: id(10_000 + n) } } as const]
        : []),
    ],
    at,
  );
  // Straight to the pipe: what is printed was kept, whatever happens next.
  if (!process.stdout.write(`${n}\n`)) await new Promise((resolve) => process.stdout.once('drain', resolve));
  if (n % 7 === 0) {
    await store.undo(caseId, at);
    await store.redo(caseId, at);
  }
}
