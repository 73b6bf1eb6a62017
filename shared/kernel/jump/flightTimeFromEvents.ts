import { DomainError } from '../../errors.ts';
import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/** An instant of a filmed trial. */
export interface Instant {
  readonly timeS: number;
  /** Standard uncertainty; null: not known. */
  readonly uS: number | null;
}

/**
 * Time in the air between two events of a filmed trial: t_f = t_l - t_o.
 *
 * @param takeoff last contact, s from the start of the trial in real time
 * @param landing first contact after it
 * @returns s; its uncertainty is that of both events together, none where one of them has none
 * @throws DomainError 'input-out-of-range' for instants that are not finite, or a landing that is not after the take-off
 * @source definition; uncertainty by JCGM 100:2008, 5.1.2
 */
export function flightTimeFromEvents(takeoff: Instant, landing: Instant): Quantity<'s'> {
  if (!(Number.isFinite(takeoff.timeS) && Number.isFinite(landing.timeS) && landing.timeS > takeoff.timeS)) {
    throw new DomainError(
      'input-out-of-range',
      `flightTimeFromEvents needs a landing after the take-off, got ${landing.timeS} and ${takeoff.timeS} s`,
    );
  }
  const instant = (symbol: string, name: string, { timeS, uS }: Instant) =>
    measured(symbol, name, timeS, 's', uS ?? 'the event was marked without an uncertainty');
  return derive(
    {
      symbol: 't_f',
      name: 'flight time',
      unit: 's',
      formula: 't_f = t_l - t_o',
      source: { cite: 'Definition', status: 'convention' },
    },
    { t_l: instant('t_l', 'landing', landing), t_o: instant('t_o', 'take-off', takeoff) },
    ({ t_l, t_o }) => t_l - t_o,
  );
}
