import { expect, test } from 'vitest';
import type { Finding } from '../../../shared/assess/assessment.ts';
import { readsAs, standingOf } from '../../../shared/assess/standing.ts';
import { byReader } from '../../../shared/rules/byReader.ts';
import type { FindingDecision } from '../../../shared/model/outcome.ts';

const finding: Finding = {
  key: 'rule/trial/phase/none',
  ruleId: 'rule',
  kind: 'intervention',
  outcome: 'intervention',
  movement: 'any',
  phase: 'profile',
  side: 'none',
  trialId: null,
  takenOn: null,
  finding: 'Seen.',
  intervention: 'Do this.',
  adjustments: [],
  wording: byReader(() => ({ finding: 'Seen.', intervention: 'Do this.', adjustments: [] })),
  drill: null,
  withheld: null,
  effects: [],
  tests: [],
  needed: null,
  sources: [],
  evidence: 'convention',
  basis: 'convention',
  defersTo: [],
  retest: null,
  trace: [],
};

const decision: FindingDecision = {
  id: '00000000-0000-4000-8000-000000000001',
  caseId: '00000000-0000-4000-8000-000000000002',
  findingKey: finding.key,
  decision: 'accepted',
  wording: '',
  reason: '',
  decidedOutcome: finding.outcome,
  decidedText: readsAs(finding),
};

test('a suggestion waits for a decision; a confirmation does not', () => {
  expect(standingOf(finding, []).state).toBe('to decide');
  expect(standingOf({ ...finding, outcome: 'confirmed', intervention: null }, []).state).toBe('nothing to decide');
  expect(standingOf({ ...finding, outcome: 'not-assessed', intervention: null }, []).state).toBe('nothing to decide');
});

test('a decision holds until the outcome or any word of the finding changes', () => {
  expect(standingOf(finding, [decision]).state).toBe('decided');
  expect(standingOf({ ...finding, outcome: 'stopped' }, [decision]).state).toBe('changed since');
  expect(standingOf({ ...finding, intervention: null }, [decision]).state).toBe('changed since');
  expect(standingOf({ ...finding, adjustments: ['Not overhead.'] }, [decision]).state).toBe('changed since');
});

test('decisions on other findings do not count, and of two on this one the later does', () => {
  expect(standingOf(finding, [{ ...decision, findingKey: 'another' }]).state).toBe('to decide');
  const later: FindingDecision = { ...decision, decision: 'set-aside', reason: 'Not relevant.' };
  expect(standingOf(finding, [decision, later]).decision).toBe(later);
});
