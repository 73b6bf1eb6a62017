import { expect, test } from 'vitest';
import { explainRule } from '../../../shared/rules/explainRule.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';

// Read off the rule as data, by hand for the ones named; the rest only has to come out in words.

const explained = (id: string) => {
  const rule = SHIPPED_RULES.find((one) => one.id === id);
  if (rule === undefined) throw new Error(id);
  return explainRule(rule);
};

test('where it looks, what holds and what is convention', () => {
  expect(explained('basketball-jump-shot/low-set-point')).toMatchObject({
    looksAt: 'Basketball jump shot, stability; load on the shoulder',
    tests: ['Upper-arm elevation: less than 80°'],
    basis: 'convention, no published source',
    retest: expect.stringMatching(/^Upper-arm elevation after 28\sdays$/) as string,
  });
});

test('the strictest effect comes first, and says what it is unsafe beside', () => {
  const { effects } = explained('basketball-jump-shot/low-set-point');
  expect(effects[0]).toMatch(/stops it/);
  expect(effects.find((one) => one.startsWith('Shoulder instability, anterior'))).toMatch(
    /replaces it\..* Stops it where also on file: Shoulder instability, posterior/,
  );
});

test('a flag reads yes or no', () => {
  expect(explained('any/red-flag-before-taking-part').tests.join()).toMatch(/: yes$/);
});

test.each(SHIPPED_RULES.map((rule) => [rule.id, rule] as const))('%s comes out in words', (_, rule) => {
  const words = JSON.stringify(explainRule(rule));
  expect(words).not.toMatch(/undefined|\[object|NaN|""/);
});
