import { expect, test } from 'vitest';
import { historyRows } from '../../../../app/case/history/historyRows.ts';
import type { Change } from '../../../../shared/model/edit.ts';
import { AT, id } from '../../../conformance/examples.ts';

const change = (more: Partial<Change>): Change => ({
  step: 2,
  at: AT,
  kind: 'athlete',
  recordId: id(1),
  op: 'patch',
  before: { massKg: null },
  after: { massKg: 67.4 },
  isUndone: false,
  label: 'body mass of the athlete',
  ...more,
});

test('a patch is a row a field, with what it was and became; a record made or removed is one row', () => {
  const two = change({ before: { sport: '', hasRedFlags: null }, after: { sport: 'handball', hasRedFlags: false } });
  const rows = historyRows(
    [two, change({ kind: 'injury', op: 'create', before: null, after: { condition: 'groin', note: '' } })],
    null,
  );
  expect(rows.map(({ what, before, after }) => [what, before, after])).toEqual([
    ['sport, athlete', 'empty', 'handball'],
    ['red flags, athlete', 'empty', 'no'],
    ['injury', '', 'added'],
  ]);
});

test('of one field only its own rows, from the day it was made, with what was undone', () => {
  const of = { kind: 'athlete', recordId: id(1), field: 'massKg' } as const;
  const made = change({ op: 'create', before: null, after: { massKg: 60, sport: '' } });
  const other = change({ recordId: id(99) });
  const rows = historyRows(
    [change({ isUndone: true }), change({ before: { sport: '' }, after: { sport: 'x' } }), other, made],
    of,
  );
  expect(rows.map(({ before, after, isUndone }) => [before, after, isUndone])).toEqual([
    ['empty', '67.4', true],
    ['', '60', false],
  ]);
});
