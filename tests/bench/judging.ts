import { evaluateRules } from '../../shared/rules/evaluate.ts';
import type { Rule } from '../../shared/rules/rule.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { asOf } from '../../shared/assess/asOf.ts';
import { collectFacts } from '../../shared/assess/collectFacts.ts';
import type { CaseFile } from '../../shared/model/records.ts';

export interface JudgingFigures {
  readonly cases: number;
  readonly rules: number;
  readonly facts: number;
  readonly casesPerSecond: number;
}

/** Rules many times over under other ids: what a larger book of rules would cost. */
function times(rules: readonly Rule[], n: number): readonly Rule[] {
  return Array.from({ length: n }, (_, i) => rules.map((rule) => ({ ...rule, id: `${rule.id}#${i}` }))).flat();
}

/**
 * How fast full cases are judged, by facts collected beforehand: 1 000 of them, then fewer and more, then with two and
 * four times the rules. The clock is handed in, in milliseconds, so that this can be tested.
 */
export function judging(file: CaseFile, nowMs: () => number): JudgingFigures[] {
  const facts = collectFacts(file);
  const { referenceSex, birthDate } = file.athlete;
  const measure = (cases: number, copies: number): JudgingFigures => {
    const rules = times(SHIPPED_RULES, copies);
    const judge = () => evaluateRules(rules, facts, file.injuries, { referenceSex, birthDate, asOf: asOf(file) });
    for (let i = 0; i < 20; i += 1) judge();
    const began = nowMs();
    for (let i = 0; i < cases; i += 1) judge();
    return { cases, rules: rules.length, facts: facts.length, casesPerSecond: (cases / (nowMs() - began)) * 1000 };
  };
  return [measure(100, 1), measure(1000, 1), measure(4000, 1), measure(1000, 2), measure(1000, 4)];
}
