import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'An event lies within half a frame of the frame chosen: standard uncertainty Δt/√12 (rectangular, JCGM 100:2008, 4.3.7). A tenth of it as the limit is a convention',
  status: 'derived',
};

/** Between frames a careful eye may place an event; not to less than this share of a frame's own uncertainty. */
const LEAST_SHARE = 0.1;

/**
 * Mistake 33: are event times given as if they were exact? A frame is only known to half a frame either way.
 *
 * @param seen events with their standard uncertainty, s (null: half a frame will be taken), and true capture rate, Hz
 * @source JCGM 100:2008, 4.3.7; limit: convention
 */
export function eventsWithoutUncertainty(seen: {
  readonly events: readonly { readonly label: string; readonly uS: number | null }[];
  readonly captureRateHz: number | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'events-without-uncertainty', about: seen.about, source: SOURCE };
  const { events, captureRateHz } = seen;
  if (events.length === 0 || captureRateHz === null) {
    return cannotTell(
      base,
      `How exact the events are cannot be told: ${events.length === 0 ? 'there are none' : 'the true capture rate is not entered'}.`,
    );
  }
  const half = 1 / captureRateHz / Math.sqrt(12);
  const exact = events.filter(({ uS }) => uS !== null && uS < LEAST_SHARE * half);
  const [first] = exact;
  if (first === undefined) return fine(base, 'Every event carries at least what a frame leaves open.');
  return questioned(
    base,
    `${exact.map(({ label }) => label).join(', ')}: given as good as exact. At ${captureRateHz.toFixed(0)} frames a second each is known to ± ${(500 / captureRateHz).toFixed(1)} ms; leave the field empty to have that carried through.`,
    { label: 'Standard uncertainty as entered', value: first.uS ?? 0, unit: 's' },
    { label: 'Half a frame as one', value: half, unit: 's' },
  );
}
