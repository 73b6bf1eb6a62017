import type { EventSeverity } from '../../model/shoulder.ts';
import type { Classified } from './classified.ts';

/**
 * Whether the shoulder ever came fully out: one dislocation makes it dislocation, subluxation needs every event known.
 *
 * @param severities one an event; null where not recorded
 * @source Kuhn 2011, J Shoulder Elbow Surg 20:548 (published classes; the worst event counts: convention)
 */
export function fedsSeverity(severities: readonly (EventSeverity | null)[]): Classified<EventSeverity> {
  if (severities.length === 0) return { is: null, because: 'no event is recorded' };
  const out = severities.filter((severity) => severity === 'dislocation').length;
  if (out > 0) return { is: 'dislocation', because: `fully out in ${out} of ${severities.length} events` };
  return severities.includes(null)
    ? { is: null, because: 'of some events it is not recorded whether it came fully out' }
    : { is: 'subluxation', because: 'slipped, never fully out' };
}
