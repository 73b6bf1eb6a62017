import fs from 'node:fs';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { DomainError } from '../../shared/errors.ts';
import type { Finding } from '../../shared/assess/assessment.ts';
import { readsAs } from '../../shared/assess/standing.ts';
import { caseFile } from '../../shared/model/records.ts';
import { parseInput } from '../../shared/model/parseInput.ts';
import type { Rule } from '../../shared/rules/rule.ts';
import { checkPack, parsePack } from '../../shared/rules/rulePack.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { type Command, readJson } from './command.ts';
import { findCase } from './findCase.ts';

export const rulesEvaluate: Command = {
  name: 'rules evaluate',
  usage: 'CASE|FILE.json [--pack PACK.json] [--folder DIR]',
  does: 'every finding of a case, or of a file that case show --json wrote, with what the injuries did to it',
  words: 1,
  options: { pack: { type: 'string' } },
  async run({ words: [name = ''], options: { pack }, openStore }) {
    const isFile = name.endsWith('.json') || fs.existsSync(name);
    const file = isFile ? parseInput(caseFile, readJson(name), name) : await findCase(await openStore(), name);
    const { findings, facts, stops, missing, kernelVersion, rulesVersion } = assessCase(
      file,
      typeof pack === 'string' ? withPack(pack) : undefined,
    );
    return {
      json: { findings: findings.map(inShort), facts, stops, missing, kernelVersion, rulesVersion },
      lines: findings.filter(({ outcome }) => outcome !== 'not-assessed').flatMap(linesOf),
    };
  },
};

/** The shipped rules and those of a pack, which must keep to the same demands. @throws DomainError 'refused-for-safety' */
function withPack(file: string): readonly Rule[] {
  const pack = parsePack(readJson(file), file);
  const [first] = checkPack(pack);
  if (first !== undefined) {
    throw new DomainError(
      'refused-for-safety',
      `${file} is refused: ${first.about}: ${first.problem}. See: rules check`,
    );
  }
  return [...SHIPPED_RULES, ...pack.rules];
}

/** The finding in full, and beside it what a script asks for first: the measure that decided, its limit, the text. */
function inShort(finding: Finding) {
  const [first] = finding.tests;
  return {
    id: finding.key,
    ...finding,
    measure: first?.measure ?? null,
    threshold: first === undefined ? null : { comparator: first.comparator, value: first.threshold, unit: first.unit },
    text: readsAs(finding),
    source: finding.sources,
  };
}

function linesOf(finding: Finding): string[] {
  const { movement, phase, outcome, withheld } = finding;
  return [
    `${movement} / ${phase}: ${outcome}`,
    `  ${finding.finding}`,
    ...(finding.intervention === null ? [] : [`  Do: ${finding.intervention}`]),
    ...finding.adjustments.map((adjustment) => `  With: ${adjustment}`),
    ...(withheld === null
      ? []
      : withheld.because.map(
          ({ condition, clears }) => `  Withheld because of ${condition.replaceAll('-', ' ')}; ${clears}`,
        )),
  ];
}
