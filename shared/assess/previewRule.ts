import type { CaseFile } from '../model/records.ts';
import { evaluateRules } from '../rules/evaluate.ts';
import type { Rule } from '../rules/rule.ts';
import type { Outcome } from './assessment.ts';
import { collectFacts } from './collectFacts.ts';
import { judgedAs } from './judgedAs.ts';
import { movementNamed, movementsOf } from './movementOf.ts';

/** What one rule alone would say of one case; null: nothing. `not-assessed` where a value it needs is missing. */
export interface RulePreview {
  readonly outcome: Outcome;
  readonly finding: string;
  readonly intervention: string | null;
}

/**
 * The first thing that a rule would say of a case, by itself: what other rules would hold back is not asked. A rule over a
 * movement of the user's own is asked of the movement of that name in this case.
 */
export function previewRule(rule: Rule, file: CaseFile): RulePreview | null {
  const movement = rule.movement === 'any' ? 'any' : movementNamed(rule.movement, movementsOf(file))?.id;
  if (movement === undefined) return null;
  const said = evaluateRules([{ ...rule, movement }], collectFacts(file), file.injuries, judgedAs(file));
  const first = said.find(({ outcome }) => outcome !== 'not-assessed') ?? said[0];
  if (first === undefined) return null;
  const { outcome, finding, intervention } = first;
  return { outcome, finding, intervention };
}
