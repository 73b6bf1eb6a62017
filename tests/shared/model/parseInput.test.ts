import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { CHANNELS } from '../../../shared/contract/channels.ts';
import { parseInput } from '../../../shared/model/parseInput.ts';
import { id } from '../../conformance/examples.ts';

const thing = z.strictObject({
  count: z.int().min(0).max(10),
  massKg: z.number().positive().nullable(),
  name: z.string().max(5),
  side: z.enum(['left', 'right']),
  on: z.iso.date(),
  list: z.array(z.number()).max(2),
});
const good = { count: 1, massKg: 70, name: 'Ada', side: 'left', on: '2026-11-25', list: [1] };

test('gives back what fits', () => {
  expect(parseInput(thing, good, 'the thing')).toEqual(good);
});

test.each([
  [{ count: 11 }, 'count', 'In “count” of the thing: must be at most 10.'],
  [{ count: 1.5 }, 'count', 'In “count” of the thing: needs a whole number, and got 1.5.'],
  [{ massKg: 0 }, 'massKg', 'In “massKg” of the thing: must be more than 0.'],
  [{ massKg: '70' }, 'massKg', 'In “massKg” of the thing: needs a number, and got "70".'],
  [{ massKg: undefined }, 'massKg', 'In “massKg” of the thing: needs a number, and got nothing.'],
  [{ name: 'too long' }, 'name', 'In “name” of the thing: must have at most 5 characters.'],
  [{ side: 'up' }, 'side', 'In “side” of the thing: must be one of left, right, and got "up".'],
  [{ on: '2026-02-30' }, 'on', 'In “on” of the thing: must be a day like 2026-11-25.'],
  [{ list: [1, 2, 3] }, 'list', 'In “list” of the thing: must have at most 2 entries.'],
  [{ list: [1, 'x'] }, 'list.1', 'In “list.1” of the thing: needs a number, and got "x".'],
  [{ extra: 1 }, null, 'In the thing: knows nothing called extra.'],
])('%j: one sentence and the place', (wrong, path, message) => {
  expect(() => parseInput(thing, { ...good, ...wrong }, 'the thing')).toThrow(
    expect.objectContaining({ code: 'input-malformed', path, message }),
  );
});

describe('edits', () => {
  test.each([
    [{ op: 'patch', kind: 'jumpTrial', id: id(1), fields: { painNrs: 11 } }, 'edits.0.fields.painNrs'],
    [{ op: 'create', kind: 'injury', record: { id: 'x' } }, 'edits.0.record.id'],
    [
      { op: 'patch', kind: 'movementTrial', id: id(1), fields: { calibration: { kind: 'length', lengthM: 0 } } },
      'edits.0.fields.calibration.from',
    ],
    [{ op: 'patch', kind: '__proto__', id: id(1), fields: {} }, 'edits.0.kind'],
  ])('are told apart, so that a fault is found where it is', (edit, path) => {
    expect(() =>
      parseInput<unknown>(CHANNELS['case.edit'].request, { caseId: id(1), edits: [edit] }, 'the request'),
    ).toThrow(expect.objectContaining({ path }));
  });
});
