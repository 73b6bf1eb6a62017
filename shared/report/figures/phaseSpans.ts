import type { Movement } from '../../knowledge/movement.ts';
import type { TrialEvent } from '../../model/trial.ts';

export interface PhaseSpan {
  readonly label: string;
  readonly startS: number;
  readonly endS: number;
}

/** The phases that last, in order: those whose two events are marked, and are not one instant. */
export function phaseSpans({ phases }: Movement, events: readonly TrialEvent[]): PhaseSpan[] {
  const timeOf = (id: string) => events.find((event) => event.event === id)?.timeS ?? null;
  return phases.flatMap(({ label, startsAt, endsAt }) => {
    const [startS, endS] = [timeOf(startsAt), timeOf(endsAt)];
    return startS === null || endS === null || endS <= startS ? [] : [{ label, startS, endS }];
  });
}
