import { jumpTraceCsv } from '../../../main/demo/jumpTrace.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { openService, type Service } from '../../../main/service.ts';
import type { Channel, Request } from '../../../shared/contract/channels.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import { AT, after, EXAMPLES, id } from '../../conformance/examples.ts';

/** A practitioner at work, who does the same things in the same order every time: move 0 opens the case. */
export interface Mover {
  readonly service: Service;
  /** Resolves once the program has acknowledged it. */
  move(n: number): Promise<void>;
}

export const CASE = id(1_000_000);
const ATHLETE = id(1_000_001);

/** Opens a folder with clock and ids that depend on the move alone, so that two movers leave the same store. */
export async function openMover(folder: string): Promise<Mover> {
  let [current, ids] = [0, 0];
  const service = await openService({
    folder,
    host: 'command line',
    // Short enough between two keystrokes that typing is one step of undo.
    now: () => new Date(after(700 * current)),
    newId: () => id(1_000_000 + 100 * current + ids++),
  });
  return {
    service,
    async move(n) {
      [current, ids] = [n, 0];
      const result = await service.dispatch(...moveOf(n));
      if (!result.ok) throw new Error(`move ${n}: ${result.error.message}`);
    },
  };
}

function moveOf(n: number): [Channel, Request<Channel>] {
  if (n === 0) return call('case.create', { purpose: 'study', athleteId: null, openedOn: AT.slice(0, 10) });
  const [round, turn] = [Math.floor(n / TURNS.length), n % TURNS.length];
  return (TURNS[turn] as (typeof TURNS)[number])(round, turn);
}

/** One round of moves: typing keystroke by keystroke, work stored in parts, records made with their parts, an import, removals, undo and redo. */
export const TURNS: readonly ((round: number, turn: number) => [Channel, Request<Channel>])[] = [
  (round) => edit({ op: 'patch', kind: 'athlete', id: ATHLETE, fields: { massKg: 60 + (round % 40), statureM: 1.8 } }),
  ...Array.from({ length: 6 }, () => (round: number, turn: number) => typing(`Round ${round}: what limits`, turn)),
  ...[1, 2].map((part) => (round: number) => inParts(round, part)),
  (round) =>
    edit(
      { op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, id: id(10_000 + round), athleteId: ATHLETE } },
      { op: 'patch', kind: 'case', id: CASE, fields: { note: `note ${round}` } },
    ),
  (round) => edit(...jumpTest(round)),
  () => call('case.undo', { caseId: CASE }),
  () => call('case.redo', { caseId: CASE }),
  (round) => call('jump.importForce', { caseId: CASE, testId: id(20_000 + round), file: forceFile(round) }),
  (round) => removing('jumpTest', round, 20_000),
  (round) => removing('injury', round, 10_000),
  () => call('case.undo', { caseId: CASE }),
  () => call('case.redo', { caseId: CASE }),
];

function call<C extends Channel>(channel: C, request: Request<C>): [Channel, Request<Channel>] {
  return [channel, request];
}

function edit(...edits: Edit[]) {
  return call('case.edit', { caseId: CASE, edits });
}

function typing(sentence: string, turn: number) {
  const question = sentence.slice(0, Math.ceil((sentence.length * turn) / 6));
  return edit({ op: 'patch', kind: 'case', id: CASE, fields: { question } });
}

/** Work stored in parts, as a tracker does. */
function inParts(round: number, part: number) {
  const fields = { note: `round ${round}, ${part} of 2 parts` };
  return call('case.edit', {
    caseId: CASE,
    edits: [{ op: 'patch', kind: 'case', id: CASE, fields }],
    continues: part > 1,
  });
}

function jumpTest(round: number): Edit[] {
  const test = { ...EXAMPLES.jumpTest, id: id(20_000 + round), caseId: CASE, method: 'force-plate' as const };
  const trial = { ...EXAMPLES.jumpTrial, id: id(30_000 + round), testId: test.id, force: null, mediaSha256: null };
  return [
    { op: 'create', kind: 'jumpTest', record: test },
    { op: 'create', kind: 'jumpTrial', record: trial },
  ];
}

/** What the round before made goes, with all its parts. */
function removing(kind: 'jumpTest' | 'injury', round: number, from: number) {
  if (round > 0) return edit({ op: 'remove', kind, id: id(from + round - 1) });
  return edit({ op: 'patch', kind: 'case', id: CASE, fields: { practitioner: `no ${kind} to remove` } });
}

/** Another file each round. */
function forceFile(round: number): Request<'jump.importForce'>['file'] {
  const jump = { massKg: 60 + (round % 40), takeoffVelocityMPerS: 2.5, depthM: 0.3, leftShare: 0.5 };
  const text = jumpTraceCsv(jump, randomSource(round));
  return { fileName: `jump ${round}.csv`, text, columns: [], rateHz: null, massKg: null };
}
