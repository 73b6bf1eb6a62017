import { canonicalJson } from '../canonicalJson.ts';
import { measureById } from '../knowledge/measures/index.ts';
import type { Rule } from './rule.ts';

/**
 * What judges while an update of the rules waits to be accepted: the earlier rules, made stricter at once wherever the
 * new ones are. New referrals and cautions speak already and earlier ones do not yet fall silent; advice stays as it was,
 * with the limits of both. An earlier rule over a measure that is gone can judge nothing more and is left out.
 */
export function interimRules(held: readonly Rule[], shipped: readonly Rule[]): readonly Rule[] {
  const newer = new Map(shipped.map((rule) => [rule.id, rule]));
  const earlier = held
    .filter((rule) => rule.supersededBy === null && rule.all.every(({ measure }) => measureById(measure) !== null))
    .filter((rule) => !(isAlert(rule) && isSame(rule, newer.get(rule.id))))
    // Of two statements about one injury the stricter holds; of two as strict, the first.
    .map((rule) =>
      isAlert(rule) ? rule : { ...rule, effects: [...(newer.get(rule.id)?.effects ?? []), ...rule.effects] },
    );
  return [...shipped.filter((rule) => isAlert(rule) && rule.supersededBy === null), ...earlier];
}

function isSame(held: Rule, shipped: Rule | undefined): boolean {
  return shipped !== undefined && writtenOut(held) === writtenOut(shipped);
}

/** What may be left out of a rule is there in one that was kept. */
function writtenOut(rule: Rule): string {
  return canonicalJson({ eases: [], replaces: null, ...rule });
}

function isAlert({ kind }: Rule): boolean {
  return kind === 'referral' || kind === 'caution';
}
