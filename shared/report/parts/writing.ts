import type { Assessment } from '../../assess/assessment.ts';
import type { CaseFile } from '../../model/records.ts';
import type { Quantity, Source } from '../../quantity.ts';
import { isKnown } from '../../quantity.ts';
import type { Runs } from '../runs.ts';

/** What every part of a report writes from: the case, what follows from it, and numbered sources. */
export interface Writing {
  readonly file: CaseFile;
  readonly assessment: Assessment;
  readonly createdAt: string;
  readonly caseSha256: string;
  readonly sources: readonly Source[];
}

/** Sources in the order in which a reader meets them: findings, their checks, then the working. */
export function collectSources({ findings, facts, checks }: Assessment): Source[] {
  const all = [
    ...findings.flatMap((finding) => (finding.outcome === 'not-assessed' ? [] : finding.sources)),
    ...checks.flatMap((check) => (check.source === null ? [] : [check.source])),
    ...facts.flatMap(({ value }) =>
      value.kind === 'number' && isKnown(value.reading) ? sourcesOf(value.reading) : [],
    ),
  ];
  return [...new Map(all.map((source) => [source.cite, source])).values()];
}

function sourcesOf({ working }: Quantity): Source[] {
  const own = working.source === null ? [] : [working.source];
  return [...own, ...working.inputs.flatMap((input) => sourcesOf(input.quantity))];
}

/** `[3]`, or `[3] [5]`: numbers in the list of sources. */
export function cite(writing: Writing, sources: readonly Source[]): Runs {
  return sources.flatMap((source, i) => {
    const n = writing.sources.findIndex((one) => one.cite === source.cite) + 1;
    return n === 0 ? [] : [{ text: `${i === 0 ? '' : ' '}[${n}]` }];
  });
}

/** First letter large, the rest as it is. */
export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
