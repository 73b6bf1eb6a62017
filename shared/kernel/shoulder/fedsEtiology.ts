import type { Etiology } from '../../model/shoulder.ts';
import type { Classified } from './classified.ts';

/**
 * Whether the instability began with an injury: that of the first event (convention: later events of a shoulder already
 * unstable say little of its cause). With rough or missing dates every event must agree.
 *
 * @param events each with its date as precisely as known, and its cause
 * @source Kuhn 2011, J Shoulder Elbow Surg 20:548 (published classes); the first event is a convention
 */
export function fedsEtiology(
  events: readonly { readonly happenedOn: string | null; readonly etiology: Etiology | null }[],
): Classified<Etiology> {
  if (events.length === 0) return { is: null, because: 'no event is recorded' };
  const causes = new Set(events.map(({ etiology }) => etiology));
  const [only = null] = causes;
  if (causes.size === 1) {
    return only === null
      ? { is: null, because: 'the cause of no event is recorded' }
      : { is: only, because: 'as recorded of every event' };
  }
  const dates = events.map(({ happenedOn }) => happenedOn);
  if (dates.includes(null))
    return { is: null, because: 'the causes differ or are not all recorded, and not every event has a date' };
  const ordered = events.toSorted((a, b) => ((a.happenedOn ?? '') < (b.happenedOn ?? '') ? -1 : 1));
  const [first, second] = ordered;
  if (first === undefined || (second?.happenedOn ?? '').startsWith(first.happenedOn ?? '')) {
    return {
      is: null,
      because: 'the causes differ or are not all recorded, and the dates do not tell which event came first',
    };
  }
  return first.etiology === null
    ? { is: null, because: 'the cause of the first event is not recorded' }
    : { is: first.etiology, because: 'as recorded of the first event' };
}
