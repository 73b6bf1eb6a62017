import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../shared/model/applyEdits.ts';
import { emptyCaseFile, recordsOf } from '../../../shared/model/caseLists.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import { caseFile, KINDS } from '../../../shared/model/records.ts';
import { creating, EXAMPLES, id } from '../../conformance/examples.ts';

const empty = emptyCaseFile(EXAMPLES.case, EXAMPLES.athlete);
const kinds = KINDS.filter((kind) => kind !== 'athlete' && kind !== 'case');
const whole = applyEdits(empty, creating(kinds));

describe('applyEdits', () => {
  test('adds every kind of record to its list, and the result is a valid case file', () => {
    expect(caseFile.parse(whole)).toEqual(whole);
    for (const kind of KINDS) expect(recordsOf(whole, kind)).toEqual([EXAMPLES[kind]]);
  });

  test('leaves the file it was given alone and counts the revision up by one a request', () => {
    expect(empty.injuries).toEqual([]);
    expect(whole.revision).toBe(empty.revision + 1);
  });

  test('patches one field and keeps its place in the list', () => {
    const second = { ...EXAMPLES.injury, id: id(99) };
    const file = applyEdits(whole, [
      { op: 'create', kind: 'injury', record: second },
      { op: 'patch', kind: 'injury', id: id(3), fields: { note: 'x' } },
    ]);
    expect(file.injuries).toEqual([{ ...EXAMPLES.injury, note: 'x' }, second]);
  });

  test('removing a trial removes its landmarks, events and entered measures', () => {
    const file = applyEdits(whole, [{ op: 'remove', kind: 'movementTrial', id: id(8) }]);
    expect([file.movementTrials, file.landmarkTracks, file.trialEvents, file.enteredMeasures]).toEqual([
      [],
      [],
      [],
      [],
    ]);
    expect(file.jumpTrials).toHaveLength(1);
  });

  const refused: readonly (readonly [string, Edit, string])[] = [
    ['an id already used', { op: 'create', kind: 'injury', record: EXAMPLES.injury }, 'conflict'],
    ['a second athlete', { op: 'create', kind: 'athlete', record: { ...EXAMPLES.athlete, id: id(50) } }, 'conflict'],
    ['removing the athlete', { op: 'remove', kind: 'athlete', id: id(1) }, 'conflict'],
    ['removing the case', { op: 'remove', kind: 'case', id: id(2) }, 'conflict'],
    ['changing a report', { op: 'patch', kind: 'report', id: id(14), fields: { pageCount: 4 } }, 'conflict'],
    ['removing a report', { op: 'remove', kind: 'report', id: id(14) }, 'conflict'],
    ['an unknown record', { op: 'patch', kind: 'injury', id: id(51), fields: { note: '' } }, 'not-found'],
    [
      'another case’s session',
      { op: 'patch', kind: 'screeningResult', id: id(5), fields: { sessionId: id(52) } },
      'not-found',
    ],
    [
      'moving the case to another athlete',
      { op: 'patch', kind: 'case', id: id(2), fields: { athleteId: id(53) } },
      'not-found',
    ],
    ['a negative mass', { op: 'patch', kind: 'athlete', id: id(1), fields: { massKg: -1 } }, 'input-malformed'],
    [
      'a day that is none',
      { op: 'patch', kind: 'athlete', id: id(1), fields: { birthDate: '2003-02-30' } },
      'input-malformed',
    ],
  ];
  test.each(refused)('refuses %s', (_name, edit, code) => {
    expect(() => applyEdits(whole, [edit])).toThrow(expect.objectContaining({ code }));
  });
});
