import { DomainError } from '../../shared/errors.ts';
import { explainRule } from '../../shared/rules/explainRule.ts';
import { parsePack } from '../../shared/rules/rulePack.ts';
import { READERS, type Rule } from '../../shared/rules/rule.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { type Command, readJson } from './command.ts';

export const rulesExplain: Command = {
  name: 'rules explain',
  usage: 'RULE-ID [--pack PACK.json]',
  does: 'one rule in words: what it looks at, its limit and where that is from, what each injury does to it',
  words: 1,
  options: { pack: { type: 'string' } },
  run({ words: [id = ''], options: { pack } }) {
    const own = typeof pack === 'string' ? parsePack(readJson(pack), pack).rules : [];
    const rule = [...own, ...SHIPPED_RULES].find((one) => one.id === id);
    if (rule === undefined) throw new DomainError('not-found', `There is no rule ${id}.${nearTo(id)}`);
    return { json: { rule, inWords: explainRule(rule) }, lines: linesOf(rule) };
  },
};

/** `pain` and `pain-in-trunk-test` find what they are part of. */
function nearTo(id: string): string {
  const near = SHIPPED_RULES.filter((one) => id !== '' && one.id.includes(id)).slice(0, 5);
  return near.length === 0 ? '' : ` Near to it: ${near.map((one) => one.id).join(', ')}.`;
}

function linesOf(rule: Rule): string[] {
  const { looksAt, tests, says, suggests, dose, doseFrom, retest, basis, evidence, sources, effects, decides } =
    explainRule(rule);
  return [
    `${rule.id}: ${rule.kind}, since ${rule.since}${rule.supersededBy === null ? '' : `, superseded by ${rule.supersededBy}`}`,
    `  Looks at: ${looksAt}`,
    ...tests.map((test) => `  Holds if: ${test}`),
    `  Limit: ${basis}`,
    `  Evidence: ${evidence}`,
    ...sources.map((source) => `  Source: ${source}`),
    ...READERS.map((reader) => `  Says to the ${reader}: ${says[reader]}`),
    ...(suggests === null ? [] : READERS.map((reader) => `  Suggests to the ${reader}: ${suggests[reader]}`)),
    ...(dose === null ? [] : [`  Dose: ${dose} Dose from: ${doseFrom}`]),
    ...(retest === null ? [] : [`  Test again: ${retest}`]),
    `  Decides in the end: ${decides.join('; ')}`,
    ...effects.map((effect) => `  With ${effect}`),
  ];
}
