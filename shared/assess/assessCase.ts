import type { CaseFile } from '../model/records.ts';
import { evaluateRules } from '../rules/evaluate.ts';
import type { Rule } from '../rules/rule.ts';
import { ruleBook, rulesVersionOf } from '../rules/ownRules.ts';
import { KERNEL_VERSION } from '../versions.ts';
import type { Assessment } from './assessment.ts';
import { checkCase } from './checkCase.ts';
import { checkRuled } from './checkRuled.ts';
import { collectFacts } from './collectFacts.ts';
import { judgedAs } from './judgedAs.ts';
import { missingWords } from './missingWords.ts';
import { sectionStates } from './sectionStates.ts';
import { stopNotices } from './stopNotices.ts';

/** Everything that follows from a case file. Pure: the same file and rules always give the same assessment. */
export function assessCase(file: CaseFile, rules: readonly Rule[] = ruleBook(file).rules): Assessment {
  const facts = collectFacts(file);
  const findings = evaluateRules(rules, facts, file.injuries, judgedAs(file));
  const sections = sectionStates(file, findings);
  return {
    facts,
    findings,
    checks: [...checkCase(file, facts), ...checkRuled(file, rules)],
    sections,
    stops: stopNotices(findings, facts),
    missing: missingWords(file, sections),
    kernelVersion: KERNEL_VERSION,
    rulesVersion: rulesVersionOf(file),
  };
}
