import { openService } from '../../../main/service.ts';
import { generalBattery } from '../../../shared/knowledge/screening/generalBattery.ts';
import type { Channel, Request } from '../../../shared/contract/channels.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import { AT, after, EXAMPLES, id } from '../../conformance/examples.ts';
import type { Mover } from './moves.ts';

/** Athletes of the squad, by name. None is a real person. */
const SQUAD = ['Alder', 'Birch', 'Cedar', 'Elm', 'Hazel', 'Larch'];
/** What stands in one cell after each key. */
const KEYS = [0.1, 0.105, 0.1, 0.12, null, 0.125];
const CELL = { itemId: 'weight-bearing-lunge', side: 'left', grade: null, isPositive: null, painNrs: null } as const;
/** Moves an athlete takes: the keys, then pain, then it is taken back. */
const MOVES_EACH = KEYS.length + 2;

/** Move 0 takes in the squad; from then on one athlete after the other is screened, key by key, a session a round. */
export async function openRunMover(folder: string): Promise<Mover> {
  let [current, ids] = [0, 0];
  const service = await openService({
    folder,
    host: 'command line',
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

/** In the order the squad was taken in: each case takes an id of its own and then one for its athlete. */
export const SQUAD_CASES = SQUAD.map((_name, i) => id(1_000_000 + 2 * i));

function moveOf(n: number): [Channel, Request<Channel>] {
  if (n === 0) {
    const text = `Name\n${SQUAD.join('\n')}\n`;
    return ['roster.import', { fileName: 'squad.csv', text, mapping: [], openedOn: AT.slice(0, 10) }];
  }
  const key = (n - 1) % MOVES_EACH;
  const turn = Math.floor((n - 1) / MOVES_EACH);
  const caseId = SQUAD_CASES[turn % SQUAD.length] ?? '';
  if (key === MOVES_EACH - 1) return ['case.undo', { caseId }];
  return ['case.edit', { caseId, edits: editsOf(caseId, turn, key) }];
}

function editsOf(caseId: string, turn: number, key: number): Edit[] {
  const [sessionId, resultId] = [id(10_000 + turn), id(500_000 + turn)];
  if (key === KEYS.length) return [{ op: 'patch', kind: 'screeningResult', id: resultId, fields: { painNrs: 3 } }];
  const valueSi = KEYS[key] ?? null;
  if (key > 0) return [{ op: 'patch', kind: 'screeningResult', id: resultId, fields: { valueSi } }];
  const { id: batteryId, version: batteryVersion } = generalBattery;
  const result = { ...EXAMPLES.screeningResult, id: resultId, sessionId, ...CELL, valueSi };
  return [
    {
      op: 'create',
      kind: 'screeningSession',
      record: { ...EXAMPLES.screeningSession, id: sessionId, caseId, batteryId, batteryVersion },
    },
    { op: 'create', kind: 'screeningResult', record: result },
  ];
}
