import { lowerFirst } from '../format/letterCase.ts';
import { numberWords } from '../rules/checks/words.ts';
import { isKnown } from '../quantity.ts';
import type { Assessment, Fact, Finding } from './assessment.ts';
import { stopWords } from './stopWords.ts';

/** `Stop and be seen` notices: one for each referral that the findings hold, naming the number that asks for it. */
export function stopNotices(findings: readonly Finding[], facts: readonly Fact[]): Assessment['stops'] {
  return findings
    .filter((finding) => finding.outcome === 'referral')
    .map((finding) => {
      const fact = facts.find(({ key }) => key === finding.tests[0]?.factKey);
      return { words: stopWords(reason(finding, fact)), about: fact?.key ?? finding.key };
    });
}

function reason(finding: Finding, fact: Fact | undefined): string {
  const side = finding.side === 'none' ? '' : `, ${finding.side}`;
  if (fact?.value.kind === 'number' && isKnown(fact.value.reading) && fact.measure.startsWith('pain.')) {
    const { value, unit } = fact.value.reading;
    const words = numberWords(value, unit);
    const label = lowerFirst(fact.label);
    return `${label.startsWith('pain ') ? label.replace('pain', `pain ${words}`) : `${label}: ${words}`}${side}`;
  }
  return `${lowerFirst(finding.finding).replace(/\.$/, '')}${side}`;
}
