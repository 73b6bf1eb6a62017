import type { RuleBody } from '../model/ownRule.ts';
import type { Rule } from './rule.ts';

/**
 * A shipped rule as the beginning of one's own, in its place. What its limit was founded on no longer holds once it is
 * changed, so it is called a convention from the start; the sources stay as what it grew from.
 */
export function ownCopy(rule: Rule): RuleBody {
  const { id, ...rest } = rule;
  const own = {
    ...rest,
    id: `own/${id.replace(/^own\//, '').replaceAll(/[^a-z0-9]+/g, '-')}`,
    loads: [],
    evidence: 'convention',
    basis: 'convention',
    sources: [...rule.sources, { cite: `Own limit or wording, after the rule ${id}`, status: 'convention' }],
    replaces: id.startsWith('own/') ? null : id,
  };
  // Rules are data only, so this is a JSON object; what is undefined falls away.
  return JSON.parse(JSON.stringify(own)) as RuleBody;
}
