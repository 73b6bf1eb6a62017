import { MOVEMENTS } from '../knowledge/movements/index.ts';
import type { Movement } from '../knowledge/movement.ts';
import type { OwnRule } from '../model/ownRule.ts';
import { toFailure } from '../errors.ts';
import { checkRules } from './checkRules.ts';
import { parsePackRule } from './rulePack.ts';
import type { Rule } from './rule.ts';
import { SHIPPED_RULES } from './shippedRules.ts';

export interface RuleBook {
  /** What a case is judged by: the shipped rules without those replaced, and its own that are on and sound. */
  readonly rules: readonly Rule[];
  /** Own rules that are on and keep from being used, by the id of their record. */
  readonly refused: ReadonlyMap<string, readonly string[]>;
}

const SHIPPED: RuleBook = { rules: SHIPPED_RULES, refused: new Map() };

/** The rules of a case. An own rule is held to everything a shipped one is; one that fails judges nothing. */
export function ruleBook(own: readonly OwnRule[], movements: readonly Movement[] = MOVEMENTS): RuleBook {
  const on = own.filter(({ isOn }) => isOn);
  if (on.length === 0) return SHIPPED;
  const refused = new Map<string, readonly string[]>();
  const sound: Rule[] = [];
  for (const record of on) {
    const { rule, problems } = readOwnRule(record.rule, sound, movements);
    if (rule === null || problems.length > 0) refused.set(record.id, problems);
    else sound.push(rule);
  }
  return { rules: beside(sound), refused };
}

/** An own rule with all that keeps it from being used beside the shipped rules and others of the user's own. */
export function readOwnRule(
  body: unknown,
  others: readonly Rule[] = [],
  movements: readonly Movement[] = MOVEMENTS,
): { readonly rule: Rule | null; readonly problems: readonly string[] } {
  try {
    const rule = parsePackRule(body, 'the rule');
    const found = checkRules(beside([...others, rule]), movements);
    // Coverage of own movements is not asked for; a contradiction names both rules.
    const problems = found.filter(({ about, problem }) => about === rule.id || problem.includes(rule.id));
    return { rule, problems: problems.map(({ problem }) => problem) };
  } catch (thrown) {
    return { rule: null, problems: [toFailure(thrown).message] };
  }
}

/** The shipped rules with own ones beside them, or in place of those they name. */
export function beside(own: readonly Rule[]): readonly Rule[] {
  const replaced = new Set(own.flatMap(({ replaces }) => replaces ?? []));
  return [...SHIPPED_RULES.filter(({ id }) => !replaced.has(id)), ...own];
}

/** Whether a finding comes of a rule of the user's own: said wherever it is shown or printed. */
export function isOwnRule(ruleId: string): boolean {
  return ruleId.startsWith('own/');
}

export const OWN_RULE_WORDS = 'A rule of one’s own, not one that comes with the program';
