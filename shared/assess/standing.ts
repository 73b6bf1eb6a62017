import type { FindingDecision } from '../model/outcome.ts';
import type { Finding, Outcome } from './assessment.ts';

/** How one finding stands with the practitioner. `changed since`: it reads otherwise than when it was decided on. */
export interface Standing {
  readonly decision: FindingDecision | null;
  readonly state: 'to decide' | 'nothing to decide' | 'decided' | 'changed since';
}

/** These suggest nothing, so there is nothing to accept or set aside; a decision may still be made. */
const SUGGESTS_NOTHING: readonly Outcome[] = ['confirmed', 'not-assessed'];

/** The finding in full as it reads now: what a decision is made on and kept with. */
export function readsAs(finding: Finding): string {
  return [finding.finding, finding.intervention, ...finding.adjustments].filter((text) => text !== null).join('\n');
}

/** Of several decisions on one finding the last made counts. */
export function standingOf(finding: Finding, decisions: readonly FindingDecision[]): Standing {
  const decision = decisions.findLast(({ findingKey }) => findingKey === finding.key) ?? null;
  if (decision === null) {
    return { decision, state: SUGGESTS_NOTHING.includes(finding.outcome) ? 'nothing to decide' : 'to decide' };
  }
  const isSame = decision.decidedOutcome === finding.outcome && decision.decidedText === readsAs(finding);
  return { decision, state: isSame ? 'decided' : 'changed since' };
}
