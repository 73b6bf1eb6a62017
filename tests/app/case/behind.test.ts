import { expect, test } from 'vitest';
import { behind } from '../../../app/case/behind.ts';
import type { Assessment, CaseCheck, Fact, Finding, HistoryEffect } from '../../../shared/assess/assessment.ts';
import type { CaseFile } from '../../../shared/model/records.ts';

const fact = (key: string, id: string, kind = 'jumpTrial', measure = 'jump.height') =>
  ({ key, measure, from: { kind, id } }) as Fact;
const effect = (injuryId: string, change: string) => ({ injuryId, effect: 'replace', change }) as HistoryEffect;
const finding = (key: string, factKey: string, effects: HistoryEffect[], trialId: string | null = null) =>
  ({ key, trialId, tests: [{ factKey }], effects }) as unknown as Finding;
const check = (id: string, about: string | null) => ({ id, about }) as CaseCheck;

const file = { injuries: [{ id: 'shoulder' }, { id: 'ankle' }], jumpTrials: [] } as unknown as CaseFile;
const assessment = {
  facts: [
    fact('height/1', 'one'),
    fact('height/2', 'two'),
    fact('weight', 'athlete', 'athlete', 'body.weight'),
    fact('age', 'athlete', 'athlete', 'body.age'),
  ],
  findings: [
    finding('low', 'height/1', [effect('ankle', 'Land softly.')]),
    finding('press', 'strength', [effect('shoulder', 'Row instead.'), effect('shoulder', 'Row instead.')], 'trial'),
  ],
  checks: [check('heights', 'height/1'), check('weight', null), check('trial', 'two')],
} as unknown as Assessment;

const keys = (selection: Parameters<typeof behind>[0]) => {
  const { facts, findings, injuries, checks } = behind(selection, file, assessment);
  return {
    facts: facts.map(({ key }) => key),
    findings: findings.map(({ key }) => key),
    injuries: injuries.map(({ injury, effects }) => [injury.id, effects.length]),
    checks: checks.map(({ id }) => id),
  };
};

const record = (recordKind: 'jumpTrial' | 'injury' | 'movementTrial', id: string) =>
  keys({ kind: 'record', recordKind, id, field: null });

test('a fact brings the findings that test it, the injuries they meet and the checks on it', () => {
  expect(keys({ kind: 'fact', key: 'height/1' })).toEqual({
    facts: ['height/1'],
    findings: ['low'],
    injuries: [['ankle', 1]],
    checks: ['heights'],
  });
});

test('a finding brings the facts it was judged by; one injury saying one thing says it once', () => {
  expect(keys({ kind: 'finding', key: 'press' })).toEqual({
    facts: [],
    findings: ['press'],
    injuries: [['shoulder', 1]],
    checks: [],
  });
  expect(keys({ kind: 'finding', key: 'low' }).facts).toEqual(['height/1']);
});

test('a record brings its own facts and checks, an injury the findings it changed, a trial its findings', () => {
  expect(record('jumpTrial', 'two')).toEqual({ facts: ['height/2'], findings: [], injuries: [], checks: ['trial'] });
  expect(record('injury', 'ankle').findings).toEqual(['low']);
  expect(record('movementTrial', 'trial').findings).toEqual(['press']);
});

test('a field of the athlete brings what follows from that field only', () => {
  const athlete = { kind: 'record', recordKind: 'athlete', id: 'athlete' } as const;
  expect(keys({ ...athlete, field: 'massKg' }).facts).toEqual(['weight']);
  expect(keys({ ...athlete, field: 'birthDate' }).facts).toEqual(['age']);
  expect(keys({ ...athlete, field: 'sport' }).facts).toEqual([]);
});

test('something no longer there has nothing behind it', () => {
  expect(keys({ kind: 'fact', key: 'gone' })).toEqual({ facts: [], findings: [], injuries: [], checks: [] });
});

/** How many checks a finding on a jump test shows, when the one on its jump has this verdict. */
function shownWhen(verdict: CaseCheck['verdict']): number {
  const shown = { ...assessment, checks: [{ ...check('of-jump', 'jump'), verdict }] };
  const tested = { ...file, jumpTrials: [{ id: 'jump', testId: 'one' }] } as CaseFile;
  return behind({ kind: 'finding', key: 'low' }, tested, shown).checks.length;
}

test('a questioned check on the record a finding was read from is shown, others are not', () => {
  expect([shownWhen('questioned'), shownWhen('fine'), shownWhen('cannot tell')]).toEqual([1, 0, 0]);
});
