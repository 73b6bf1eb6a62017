import type { MovementTrial } from '../../model/trial.ts';

/** When each frame of a trial was taken, in real seconds from frame 0, and back. */
export interface FrameClock {
  /** Frames a second on the whole. */
  readonly rateHz: number;
  readonly isEven: boolean;
  /** Before the first and after the last frame known, at the rate of the whole. */
  readonly timeOf: (frame: number) => number;
  /** Where an instant lies among the frames: a fraction between two. */
  readonly frameAt: (timeS: number) => number;
  /** Frames a second about an instant. */
  readonly rateAt: (timeS: number) => number;
}

/**
 * The clock of a trial: frame over capture rate where frames are evenly spaced; where they are not, each frame's own
 * presentation time, scaled by how much slower the film plays than it was taken (the film's usual rate over the capture
 * rate).
 *
 * @returns null where the true capture rate is not known
 * @source definition
 */
export function frameClock(trial: Pick<MovementTrial, 'captureRateHz' | 'frameTimesS'>): FrameClock | null {
  const { captureRateHz, frameTimesS } = trial;
  if (captureRateHz === null) return null;
  return frameTimesS === null || frameTimesS.length < 2
    ? evenClock(captureRateHz)
    : unevenClock(frameTimesS, usualRateHz(frameTimesS) / captureRateHz);
}

/** @param rateHz frames a second, > 0 */
export function evenClock(rateHz: number): FrameClock {
  return {
    rateHz,
    isEven: true,
    timeOf: (frame) => frame / rateHz,
    frameAt: (timeS) => timeS * rateHz,
    rateAt: () => rateHz,
  };
}

/**
 * @param filmS seconds of the film, rising, at least two
 * @param realPerFilm real seconds in one of the film's
 */
function unevenClock(filmS: readonly number[], realPerFilm: number): FrameClock {
  const first = filmS[0] as number;
  const times = filmS.map((t) => (t - first) * realPerFilm);
  const last = times.length - 1;
  const end = times[last] as number;
  const rateHz = last / end;
  /** The frame before an instant inside the film. */
  const before = (timeS: number) => {
    let [low, high] = [0, last - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((times[middle] as number) <= timeS) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const spacing = (frame: number) => (times[frame + 1] as number) - (times[frame] as number);
  return {
    rateHz,
    isEven: false,
    timeOf(frame) {
      if (frame <= 0) return frame / rateHz;
      if (frame >= last) return end + (frame - last) / rateHz;
      const whole = Math.floor(frame);
      return (times[whole] as number) + (frame - whole) * spacing(whole);
    },
    frameAt(timeS) {
      if (timeS <= 0) return timeS * rateHz;
      if (timeS >= end) return last + (timeS - end) * rateHz;
      const frame = before(timeS);
      return frame + (timeS - (times[frame] as number)) / spacing(frame);
    },
    rateAt: (timeS) => (timeS < 0 || timeS > end ? rateHz : 1 / spacing(before(timeS))),
  };
}

/** Spacings farther than this from the middle one are frames left out, not the film's pace: a convention. */
const USUAL_WITHIN = 0.25;

/**
 * Frames a second that a film with frames left out or late usually has: from the mean of the spacings near the median, so
 * that neither a gap nor times in whole milliseconds shift it. What a camera calls its rate.
 *
 * @param times s, rising, at least two
 * @source convention
 */
export function usualRateHz(times: readonly number[]): number {
  const spacings = times.slice(1).map((t, i) => t - (times[i] as number));
  const median = spacings.toSorted((a, b) => a - b)[spacings.length >> 1] as number;
  const usual = spacings.filter((spacing) => Math.abs(spacing - median) <= USUAL_WITHIN * median);
  return usual.length / usual.reduce((sum, spacing) => sum + spacing, 0);
}
