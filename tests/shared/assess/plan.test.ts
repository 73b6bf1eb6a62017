import { expect, test } from 'vitest';
import { plan } from '../../../shared/assess/plan.ts';
import { readsAs } from '../../../shared/assess/standing.ts';
import type { FindingDecision } from '../../../shared/model/outcome.ts';
import { evaluateRules } from '../../../shared/rules/evaluate.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { ADULT_MAN, fact, injury } from '../rules/build.ts';

// Told by hand: an elbow still bent at the release of a throw, on 18 November 2026. Days counted on a calendar.

const bent = fact('elbow.flexAtRelease', 80, { movement: 'overhead-throw', phase: 'acceleration' });
const judged = (...history: Parameters<typeof evaluateRules>[2]) =>
  evaluateRules(SHIPPED_RULES, [bent], history, ADULT_MAN).filter(
    (one) => one.kind === 'intervention' && one.outcome !== 'not-assessed',
  );
const [found] = judged();
if (found === undefined) throw new Error('nothing found');
const decided = (more: Partial<FindingDecision> = {}): FindingDecision => ({
  id: 'decision',
  caseId: 'case',
  findingKey: found.key,
  decision: 'accepted',
  wording: '',
  reason: '',
  decidedOutcome: found.outcome,
  decidedText: readsAs(found),
  ...more,
});

test('what is accepted stands in it as it reads, with the day to test again', () => {
  const [item, ...others] = plan([found], [decided()]);
  expect(others).toEqual([]);
  expect(item?.text).toBe(found.intervention);
  expect([found.takenOn, found.retest?.afterDays, item?.retest?.on]).toEqual(['2026-11-18', 28, '2026-12-16']);
});

test('what is reworded stands in the practitioner’s words', () => {
  expect(plan([found], [decided({ decision: 'reworded', wording: 'Longer arm.' })])[0]?.text).toBe('Longer arm.');
});

test('nothing undecided or set aside is in it', () => {
  expect(plan([found], [])).toEqual([]);
  expect(plan([found], [decided({ decision: 'set-aside' })])).toEqual([]);
});

test('what an injury stops after it was accepted leaves the plan', () => {
  const after = judged(injury('elbow-ulnar-collateral-ligament'), injury('concussion'));
  expect(after.map((one) => one.key)).toEqual([found.key]);
  expect(plan(after, [decided()])).toEqual([]);
});
