import { DomainError } from '../../errors.ts';
import { measured, type Quantity, type Source } from '../../quantity.ts';

const source: Source = {
  cite: 'Each end lies within half a frame of the frame chosen (rectangular, JCGM 100:2008, 4.3.7), so the interval has a standard uncertainty of one frame divided by √6',
  status: 'derived',
};

/**
 * An interval between two events read from a recording.
 *
 * @param timeS s, > 0, in real time (not in the seconds of a slowed clip)
 * @param frameRateHz frames a second the camera truly recorded; null where the device gives no frames
 * @returns s; u = Δt/√6 with Δt one frame, or none and why
 * @throws DomainError 'input-out-of-range' for a time or a rate that is not above zero
 * @source JCGM 100:2008, 4.3.7: two rectangular ends
 */
export function intervalFromFrames(
  symbol: string,
  name: string,
  timeS: number,
  frameRateHz: number | null,
): Quantity<'s'> {
  if (!(Number.isFinite(timeS) && timeS > 0)) {
    throw new DomainError('input-out-of-range', `${name} needs a time above 0 s, got ${timeS}`);
  }
  if (frameRateHz === null) {
    return measured(symbol, name, timeS, 's', 'the resolution of the timing device is not recorded');
  }
  if (!(Number.isFinite(frameRateHz) && frameRateHz > 0)) {
    throw new DomainError('input-out-of-range', `${name} needs a frame rate above 0 Hz, got ${frameRateHz}`);
  }
  return measured(symbol, name, timeS, 's', 1 / (frameRateHz * Math.sqrt(6)), source);
}
