import { loadsNamedIn } from '../knowledge/namedLoads.ts';
import type { FindingDecision } from '../model/outcome.ts';
import type { Rule } from '../rules/rule.ts';
import type { Finding } from './assessment.ts';
import { plan } from './plan.ts';

/** Two suggestions of one plan that pull apart. */
export interface Conflict {
  /** Keys of the finding that asks for less and of the one that asks for more. */
  readonly less: string;
  readonly more: string;
  readonly words: string;
}

/** Accepted suggestions that ask for less of a load, beside accepted ones that ask for more of it. */
export function conflicts(
  findings: readonly Finding[],
  decisions: readonly FindingDecision[],
  rules: readonly Rule[],
): Conflict[] {
  const easing = new Map(rules.map((rule) => [rule.id, rule.eases ?? []]));
  const taken = plan(findings, decisions);
  return taken.flatMap(({ finding: less }) =>
    (easing.get(less.ruleId) ?? []).flatMap((load) =>
      taken
        .filter(
          ({ finding, text }) =>
            finding.key !== less.key &&
            !(easing.get(finding.ruleId) ?? []).includes(load) &&
            loadsNamedIn(text).some(({ id }) => id === load),
        )
        .map(({ finding: more }) => ({
          less: less.key,
          more: more.key,
          words: `"${less.finding}" asks for less of what "${more.finding}" adds: settle which comes first.`,
        })),
    ),
  );
}
