import type { Drill } from '../knowledge/drills/drill.ts';
import { addDays } from '../format/number.ts';
import type { FindingDecision } from '../model/outcome.ts';
import type { Finding } from './assessment.ts';
import { standingOf } from './standing.ts';

/** One thing the practitioner took on, in the words it is printed in. */
export interface PlanItem {
  readonly finding: Finding;
  /** As accepted, or as reworded. */
  readonly text: string;
  /** How much and how it gets harder; null where the practitioner's own words stand or an injury replaced the drill. */
  readonly drill: Drill | null;
  /** What to measure again. `on` is the first day it says something; null where the day it counts from is not known. */
  readonly retest: { readonly label: string; readonly afterDays: number; readonly on: string | null } | null;
}

/** What was accepted or reworded and still reads as it did then, in the order of the findings. */
export function plan(findings: readonly Finding[], decisions: readonly FindingDecision[]): PlanItem[] {
  return findings.flatMap((finding) => {
    const text = acceptedText(finding, decisions);
    if (text === null) return [];
    const { retest, takenOn } = finding;
    const on = retest === null || takenOn === null ? null : addDays(takenOn, retest.afterDays);
    return [
      {
        finding,
        text,
        drill: text === finding.intervention ? finding.drill : null,
        retest: retest === null ? null : { label: retest.label, afterDays: retest.afterDays, on },
      },
    ];
  });
}

/** Null where nothing was taken on, or nothing may be suggested. */
function acceptedText(finding: Finding, decisions: readonly FindingDecision[]): string | null {
  const { decision, state } = standingOf(finding, decisions);
  if (finding.intervention === null || state !== 'decided' || decision === null) return null;
  if (decision.decision === 'set-aside') return null;
  return decision.decision === 'reworded' && decision.wording !== '' ? decision.wording : finding.intervention;
}
