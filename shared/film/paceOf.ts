import { DomainError } from '../errors.ts';
import { usualRateHz } from '../kernel/event/frameClock.ts';
import { MOST_FRAMES } from '../model/trial.ts';

export interface Pace {
  /** Pictures a second of the film's own time; null for a single picture. */
  readonly rateHz: number | null;
  /** Farthest a picture lies from an even beat, s. */
  readonly offBeatS: number;
  /** Seconds of each picture from the first, where they are unevenly spaced; null where a rate says it all. */
  readonly frameTimesS: number[] | null;
}

/** Beyond this part of a beat pictures are unevenly spaced whatever the rate. */
const MOST_OFF_BEAT = 0.25;
/** Containers count whole milliseconds or six-hundredths of a second; so little says nothing of the camera. */
const ROUNDED_S = 0.002;
const MICRO = 1e6;

/**
 * Whether a film's pictures keep an even beat. Two at one time, as in damaged films, are told apart by a microsecond.
 * @param times s, rising
 * @throws DomainError 'input-out-of-range' for more uneven pictures than a trial can hold
 * @source conventions beside its constants
 */
export function paceOf(times: readonly number[]): Pace {
  const [first = 0, last = 0] = [times[0], times.at(-1)];
  if (times.length < 2 || last <= first) return { rateHz: null, offBeatS: 0, frameTimesS: null };
  const beat = (last - first) / (times.length - 1);
  const offBeatS = times.reduce((most, t, i) => Math.max(most, Math.abs(t - first - i * beat)), 0);
  if (offBeatS <= Math.min(MOST_OFF_BEAT * beat, ROUNDED_S)) return { rateHz: 1 / beat, offBeatS, frameTimesS: null };
  if (times.length > MOST_FRAMES) {
    throw new DomainError(
      'input-out-of-range',
      `This film has ${times.length} unevenly spaced pictures; a trial holds up to ${MOST_FRAMES}. Cut it to the movement, then bring it in.`,
    );
  }
  let microseconds = -1;
  const frameTimesS = times.map((t) => {
    microseconds = Math.max(microseconds + 1, Math.round((t - first) * MICRO));
    return microseconds / MICRO;
  });
  return { rateHz: usualRateHz(frameTimesS), offBeatS, frameTimesS };
}
