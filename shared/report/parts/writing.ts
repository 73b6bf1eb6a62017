import type { Assessment, Fact } from '../../assess/assessment.ts';
import { forceDetails } from '../../assess/forceDetails.ts';
import type { CaseFile } from '../../model/records.ts';
import type { Quantity, Source } from '../../quantity.ts';
import { isKnown } from '../../quantity.ts';
import type { Evidence } from '../evidence.ts';
import type { Runs } from '../runs.ts';

/** What every part of a report writes from: the case, what follows from it, and numbered sources. */
export interface Writing {
  readonly file: CaseFile;
  readonly assessment: Assessment;
  readonly createdAt: string;
  readonly caseSha256: string;
  /** Of all digitised points as a file; null: there are none. */
  readonly pointsSha256: string | null;
  readonly evidence: Evidence;
  readonly isFinal: boolean;
  /** What names the athlete is left out. */
  readonly isWithoutNames: boolean;
  /** What changed since the final report before; null: there was none. */
  readonly changes: { readonly madeAt: string; readonly words: readonly string[] } | null;
  /** Facts whose working is printed. */
  readonly worked: readonly Fact[];
  readonly sources: readonly Source[];
}

/** What a report is written from. A study works every number; the others those that they print. */
export function prepare(base: Omit<Writing, 'worked' | 'sources'>, isWhole: boolean): Writing {
  const worked = isWhole ? base.assessment.facts : printedFacts(base);
  // A study tells also what stands behind the heights of a force record.
  const behind = base.file.jumpTrials.flatMap(({ force }) => (force === null || !isWhole ? [] : forceDetails(force)));
  const sources = collectSources(
    base.assessment,
    worked,
    behind.map(({ source }) => source),
  );
  return { ...base, worked, sources };
}

/** Facts that judged findings rest on, and those of jumps, screening and athlete. */
function printedFacts({ file, assessment }: Pick<Writing, 'file' | 'assessment'>): Fact[] {
  const judged = assessment.findings.filter((finding) => finding.outcome !== 'not-assessed');
  const keys = new Set(judged.flatMap((finding) => finding.tests.map((test) => test.factKey)));
  const trials = new Set(file.movementTrials.map((trial) => trial.id));
  return assessment.facts.filter((fact) => keys.has(fact.key) || !trials.has(fact.from.id));
}

/** Sources in the order in which a reader meets them: findings, checks that question a number, then the working. */
export function collectSources(
  { findings, checks }: Pick<Assessment, 'findings' | 'checks'>,
  worked: readonly Fact[],
  others: readonly Source[] = [],
): Source[] {
  const all = [
    ...findings.flatMap((finding) => (finding.outcome === 'not-assessed' ? [] : finding.sources)),
    ...checks.flatMap((check) => (check.source === null || check.verdict !== 'questioned' ? [] : [check.source])),
    ...worked.flatMap(({ value }) =>
      value.kind === 'number' && isKnown(value.reading) ? sourcesOf(value.reading) : [],
    ),
    ...others,
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
    return n === 0
      ? []
      : [{ text: i === 0 ? '' : ' ' }, { text: `[${n}]`, goTo: `${ANCHORS.source}-${n}`, ink: 'accent' as const }];
  });
}

/** Names of the places that text leads to. */
export const ANCHORS = {
  source: 'source',
  safety: 'safety',
  heldBack: 'held-back',
  notAssessed: 'not-assessed',
} as const;
