import { assessCase } from '../../shared/assess/assessCase.ts';
import type { Rule } from '../../shared/rules/rule.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { seededCases } from './seededCases.ts';

export interface JudgingFigures {
  readonly cases: number;
  readonly rules: number;
  /** Of the mean case. */
  readonly facts: number;
  readonly findings: number;
  readonly casesPerSecond: number;
}

/** Rules many times over under other ids: what a larger book of rules would cost. */
function times(rules: readonly Rule[], n: number): readonly Rule[] {
  return Array.from({ length: n }, (_, i) => rules.map((rule) => ({ ...rule, id: `${rule.id}#${i}` }))).flat();
}

/**
 * How fast whole cases are assessed, from records to findings, checks and states: 1 000 different ones, then fewer and
 * more, then with two and four times the rules. Each is seen once, so nothing can be remembered of it. The clock is
 * handed in, in milliseconds.
 */
export function judging(nowMs: () => number): JudgingFigures[] {
  for (const file of seededCases(1000)) assessCase(file);
  const measure = (cases: number, copies: number): JudgingFigures => {
    const rules = times(SHIPPED_RULES, copies);
    const files = seededCases(cases);
    let [facts, findings] = [0, 0];
    const began = nowMs();
    for (const file of files) {
      const found = assessCase(file, rules);
      facts += found.facts.length;
      findings += found.findings.length;
    }
    const seconds = (nowMs() - began) / 1000;
    return {
      cases,
      rules: rules.length,
      facts: facts / cases,
      findings: findings / cases,
      casesPerSecond: cases / seconds,
    };
  };
  return [measure(1000, 1), measure(250, 1), measure(4000, 1), measure(1000, 2), measure(1000, 4)];
}
