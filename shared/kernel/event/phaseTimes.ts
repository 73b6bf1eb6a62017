import type { Movement } from '../../knowledge/movement.ts';
import type { TrialEvent } from '../../model/trial.ts';
import { isKnown, measured, type Quantity, type Reading, type Source } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import type { FrameClock } from './frameClock.ts';

export interface PhaseTime {
  readonly phase: string;
  readonly label: string;
  readonly start: Reading<'s'>;
  readonly end: Reading<'s'>;
  /** 0 for a phase that is an instant. */
  readonly duration: Reading<'s'>;
}

const HALF_FRAME: Source = {
  cite: 'An event lies anywhere within half a frame of the frame chosen: rectangular distribution, u = Δt/√12 (JCGM 100:2008, 4.3.7)',
  status: 'derived',
};

/**
 * When an event happened, with the uncertainty entered for it or that of half a frame.
 * @param clock of the trial: where frames are uneven, half of the frame at hand
 */
export function eventTime(event: TrialEvent, label: string, clock: FrameClock): Quantity<'s'> {
  return measured(
    't',
    label,
    event.timeS,
    's',
    event.uS ?? 1 / (clock.rateAt(event.timeS) * Math.sqrt(12)),
    event.uS === null ? HALF_FRAME : null,
  );
}

/**
 * The phases of a movement in real seconds, from its events. Two events half a frame uncertain each give a duration
 * with u = Δt/√6. A phase without one of its events is Unknown and says which.
 *
 * @param clock of the trial
 * @returns the phases in the movement's order, and a warning for every pair of events out of order
 * @source the movement's own events; JCGM 100:2008, 4.3.7
 */
export function phaseTimes(
  movement: Movement,
  events: readonly TrialEvent[],
  clock: FrameClock,
): { readonly phases: readonly PhaseTime[]; readonly warnings: readonly string[] } {
  const labels = new Map(movement.events.map(({ id, label }) => [id, label]));
  const at = (id: string): Reading<'s'> => {
    const label = labels.get(id) ?? id;
    const event = events.find((candidate) => candidate.event === id);
    return event === undefined ? { unknown: `no ${label.toLowerCase()} event` } : eventTime(event, label, clock);
  };
  const phases = movement.phases.map(({ id, label, startsAt, endsAt }): PhaseTime => {
    const [start, end] = [at(startsAt), at(endsAt)];
    return { phase: id, label, start, end, duration: durationOf(label, start, end, startsAt === endsAt) };
  });
  return { phases, warnings: outOfOrder(movement, at) };
}

function durationOf(label: string, start: Reading<'s'>, end: Reading<'s'>, isInstant: boolean): Reading<'s'> {
  if (!isKnown(start)) return start;
  if (!isKnown(end)) return end;
  if (isInstant) return measured('T', `Duration of ${label.toLowerCase()}`, 0, 's', 0);
  if (end.value < start.value) {
    return { unknown: `${label} ends before it starts: check its events` };
  }
  return derive(
    {
      symbol: 'T',
      name: `Duration of ${label.toLowerCase()}`,
      unit: 's',
      formula: 'T = t_2 - t_1',
      source: { cite: 'Difference of two instants', status: 'derived' },
    },
    { t_1: start, t_2: end },
    ({ t_1, t_2 }) => t_2 - t_1,
  );
}

function outOfOrder(movement: Movement, at: (id: string) => Reading<'s'>): string[] {
  const known = movement.events.flatMap(({ id, label }) => {
    const time = at(id);
    return isKnown(time) ? [{ id, label, t: time.value }] : [];
  });
  return known.slice(1).flatMap((later, i) => {
    const earlier = known[i] as (typeof known)[number];
    const mayOverlap = movement.mayOverlap.some(
      ([a, b]) => (a === earlier.id && b === later.id) || (a === later.id && b === earlier.id),
    );
    if (later.t > earlier.t || mayOverlap) return [];
    return [
      `${later.label} (${later.t.toFixed(3)} s) should come after ${earlier.label.toLowerCase()} (${earlier.t.toFixed(3)} s).`,
    ];
  });
}
