import { movementOf } from '../../assess/movementOf.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import { formatDate } from '../../format/number.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { table } from '../blocks/table.ts';
import type { Block } from '../blocks/block.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { JUMP_KIND_WORDS, SIDE_WORDS } from '../words.ts';
import { type Writing } from './writing.ts';

/** Everything on file that has a date, in order; a year sorts before its months. */
export function timeline({ file }: Writing): Block[] {
  const events: { readonly on: string; readonly what: string }[] = [
    ...file.injuries.flatMap((injury) => {
      const label = [conditionEntry(injury.condition).label, SIDE_WORDS[injury.side]]
        .filter((word) => word !== '')
        .join(', ');
      return [
        ...(injury.onset === null ? [] : [{ on: injury.onset, what: `Injury: ${label}` }]),
        ...(injury.clearedOn === null ? [] : [{ on: injury.clearedOn, what: `Cleared: ${label}` }]),
      ];
    }),
    ...file.instabilityEvents.flatMap(({ happenedOn, severity }) =>
      happenedOn === null ? [] : [{ on: happenedOn, what: `Shoulder: ${severity ?? 'slipped or came out'}` }],
    ),
    { on: file.case.openedOn, what: 'Case opened' },
    ...file.screeningSessions.map((session) => ({ on: session.heldOn, what: 'Screening' })),
    ...file.jumpTests.map((test) => ({ on: test.heldOn, what: JUMP_KIND_WORDS[test.kind] })),
    ...file.movementTrials.map((trial) => ({
      on: trial.filmedOn,
      what: `Filmed: ${(movementOf(file, trial.movementId)?.label ?? trial.movementId).toLowerCase()}`,
    })),
  ];
  if (events.length === 0) return [paragraph('Not recorded.')];
  const rows = events
    .toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
    .map(({ on, what }) => [formatDate(on), sentenceCase(what)]);
  return [table('What happened when', ['Date', 'Event'], rows)];
}
