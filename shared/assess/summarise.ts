import type { CaseSummary } from '../ports/caseStore.ts';
import type { Assessment } from './assessment.ts';

/** What the shelf shows of a case without opening it. */
export function summarise({ missing, stops, findings }: Assessment): CaseSummary {
  const cautions = findings.filter((finding) => finding.outcome === 'caution').map((finding) => finding.finding);
  return { missing, cautions: [...new Set([...stops.map((stop) => stop.words), ...cautions])] };
}
