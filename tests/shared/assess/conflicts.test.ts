import { expect, test } from 'vitest';
import { conflicts } from '../../../shared/assess/conflicts.ts';
import type { Finding } from '../../../shared/assess/assessment.ts';
import { readsAs } from '../../../shared/assess/standing.ts';
import type { FindingDecision } from '../../../shared/model/outcome.ts';
import { evaluateRules } from '../../../shared/rules/evaluate.ts';
import { ownCopy } from '../../../shared/rules/ownCopy.ts';
import { parsePackRule } from '../../../shared/rules/rulePack.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { ADULT_MAN, fact } from '../rules/build.ts';

// Told by hand: a week of throwing far above the last four asks for less; drills for the throw ask for more.

const found = evaluateRules(
  SHIPPED_RULES,
  [
    fact('throw.weeklyRise', 90),
    fact('elbow.flexAtRelease', 80, { movement: 'overhead-throw', phase: 'acceleration' }),
    fact('wblt.diff', 4),
    fact('wblt.distance', 5, { side: 'left' }),
  ],
  [],
  ADULT_MAN,
).filter((one) => one.intervention !== null);
const decided = (one: Finding, more: Partial<FindingDecision> = {}): FindingDecision => ({
  id: one.key,
  caseId: 'case',
  findingKey: one.key,
  decision: 'accepted',
  wording: '',
  reason: '',
  decidedOutcome: one.outcome,
  decidedText: readsAs(one),
  ...more,
});
const pairs = (decisions: readonly FindingDecision[]) =>
  conflicts(found, decisions, SHIPPED_RULES).map(({ less, more }) => [
    less.split('/').slice(0, 2),
    more.split('/').slice(0, 2),
  ]);

test('less throwing beside a throwing drill is pointed out, ankle work is not', () => {
  expect(found.map((one) => one.ruleId)).toEqual([
    'any/lunge-short-on-one-side',
    'any/throwing-load-jumped',
    'overhead-throw/elbow-still-bent',
  ]);
  expect(pairs(found.map((one) => decided(one)))).toEqual([
    [
      ['any', 'throwing-load-jumped'],
      ['overhead-throw', 'elbow-still-bent'],
    ],
  ]);
});

test('what is not yet decided, or set aside, is in no plan and conflicts with nothing', () => {
  expect(pairs([])).toEqual([]);
  const aside = found.map((one) => decided(one, one.movement === 'any' ? {} : { decision: 'set-aside' }));
  expect(pairs(aside)).toEqual([]);
});

test('a wording that leaves the throw out conflicts no more', () => {
  const reworded = found.map((one) =>
    decided(one, one.movement === 'any' ? {} : { decision: 'reworded', wording: 'Trunk turns, without throwing.' }),
  );
  expect(pairs(reworded)).toEqual([]);
});

const shipped = (id: string) => {
  const rule = SHIPPED_RULES.find((one) => one.id === id);
  if (rule === undefined) throw new Error(id);
  return rule;
};

test('a rule of one’s own has its say: easing what another adds, and adding what another eases', () => {
  // Told by hand: stiff ankles as a reason for less throwing, and throws as the answer to them.
  const eases = { ...ownCopy(shipped('any/lunge-short-on-one-side')), id: 'own/throw-less', eases: ['throwing'] };
  const wording = { finding: 'The lunge is short.', intervention: 'Throw from the knees.' };
  const adds = {
    ...ownCopy(shipped('any/lunge-short-on-one-side')),
    id: 'own/throw-more',
    replaces: null,
    wording: { athlete: wording, practitioner: wording, clinician: wording },
    loads: ['throwing-overhead'],
  };
  const rules = [...SHIPPED_RULES, parsePackRule(eases, 'eases'), parsePackRule(adds, 'adds')];
  const known = [
    fact('throw.weeklyRise', 90),
    fact('elbow.flexAtRelease', 80, { movement: 'overhead-throw', phase: 'acceleration' }),
    fact('wblt.diff', 4),
    fact('wblt.distance', 5, { side: 'left' }),
  ];
  const all = evaluateRules(rules, known, [], ADULT_MAN).filter((one) => one.intervention !== null);
  const clashes = conflicts(
    all,
    all.map((one) => decided(one)),
    rules,
  ).map(({ less, more }) => `${less.split('/')[1]} < ${more.split('/')[1]}`);
  expect(clashes.toSorted()).toEqual([
    'throw-less < elbow-still-bent',
    'throw-less < throw-more',
    'throwing-load-jumped < elbow-still-bent',
    'throwing-load-jumped < throw-more',
  ]);
});
