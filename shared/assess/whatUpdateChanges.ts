import type { CaseFile } from '../model/records.ts';
import { BY_NOTHING_ELSE } from '../model/ownRule.ts';
import { evaluateRules } from '../rules/evaluate.ts';
import { heldRules, ruleBook } from '../rules/ownRules.ts';
import type { Rule } from '../rules/rule.ts';
import type { Finding, Outcome } from './assessment.ts';
import { collectFacts } from './collectFacts.ts';
import { judgedAs } from './judgedAs.ts';
import { readsAs } from './standing.ts';

/** What a finding says before an update of the rules and after it; null: there it is not found. */
export interface FindingChange {
  readonly key: string;
  readonly before: Said | null;
  readonly after: Said | null;
  /** Whether it holds already, unasked: a referral, a caution or a stop never waits. */
  readonly isInForce: boolean;
}

export interface Said {
  readonly outcome: Outcome;
  readonly text: string;
}

/**
 * The findings of a case that an update of the rules makes appear, go or change, in the order of the findings. Empty
 * where none waits, or where the earlier rules cannot be read. What is not assessed counts as not found.
 */
export function whatUpdateChanges(file: CaseFile): FindingChange[] {
  const earlier = heldRules(file);
  if (earlier === null) return [];
  const facts = collectFacts(file);
  const who = judgedAs(file);
  const judge = (rules: readonly Rule[]): ReadonlyMap<string, Said> => {
    const found = evaluateRules(rules, facts, file.injuries, who);
    return new Map(found.filter(({ outcome }) => outcome !== 'not-assessed').map((one) => [one.key, said(one)]));
  };
  const { shared } = file.judgedBy;
  const before = judge(ruleBook(file, earlier).rules);
  const now = judge(ruleBook(file).rules);
  const after = judge(ruleBook({ ...file, judgedBy: { ...BY_NOTHING_ELSE, shared } }).rules);
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((key): FindingChange[] => {
    const [was, will, is] = [before, after, now].map((found) => found.get(key) ?? null);
    if (isAlike(was, will)) return [];
    return [{ key, before: was ?? null, after: will ?? null, isInForce: isAlike(is, will) }];
  });
}

function said(finding: Finding): Said {
  return { outcome: finding.outcome, text: readsAs(finding) };
}

function isAlike(a: Said | null | undefined, b: Said | null | undefined): boolean {
  return a?.outcome === b?.outcome && a?.text === b?.text;
}
