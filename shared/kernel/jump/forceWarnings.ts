import type { JumpContext } from './forceContext.ts';
import type { ForceJump } from './forceTrace.ts';

/** Limits past which a reader is warned. Conventions. */
/** A hair under a second: the rate of a file with rounded times may come out a trifle high. */
const QUIET_WANTED_S = 0.99;
const PLATE_OFFSET_SHARE = 0.005;
const MASS_SHARE = 0.02;
const HEIGHTS_APART_M = 0.03;
const DRIFT_M_PER_S = 0.15;
const SQUAT_DIP_SHARE = 0.1;

/**
 * What a careful reader should know about one jump of a force record, in plain sentences.
 *
 * @source limits are conventions of this program
 */
export function forceWarnings(context: JumpContext, jump: Omit<ForceJump, 'warnings'>): string[] {
  const { trace, flight, rest, isBackward } = context;
  const words: string[] = [];
  const at = `the jump at ${jump.takeoff.value.toFixed(2)} s`;
  const weightN = jump.bodyWeight.value;
  const restS = (rest.end - rest.start) / trace.rateHz;

  if (jump.placedByHand.length > 0) {
    words.push(
      `Placed by hand in ${at}, not found: ${jump.placedByHand.join(', ')}. What rests on it has no uncertainty.`,
    );
  }
  if (!rest.isStill) {
    words.push(
      `No still stance ${isBackward ? 'after' : 'before'} ${at}: the quietest ${restS.toFixed(1)} s vary by ${rest.sdN.toFixed(1)} N (standard deviation), and at least 0.5 s within 5 N are needed. What rests on the impulse cannot be relied on; use the height from flight time.`,
    );
  } else if (restS < QUIET_WANTED_S) {
    words.push(
      `Quiet stance ${isBackward ? 'after' : 'before'} ${at} lasts ${restS.toFixed(1)} s; a full second makes the body weight surer.`,
    );
  }
  if (Math.abs(flight.unloadedMeanN) > PLATE_OFFSET_SHARE * weightN) {
    words.push(
      `The plate is not zeroed: with nobody on it, it reads ${flight.unloadedMeanN.toFixed(1)} N. Nothing was taken off.`,
    );
  }
  if (trace.massKg !== null && Math.abs(jump.mass.value - trace.massKg) > MASS_SHARE * trace.massKg) {
    words.push(
      `The stance weighs ${jump.mass.value.toFixed(1)} kg, but the mass entered is ${trace.massKg.toFixed(1)} kg. Check the plate, the clothing or the entry.`,
    );
  }
  const apart = jump.jumpHeightFlightTime.value - jump.jumpHeight.value;
  if (rest.isStill && Math.abs(apart) > HEIGHTS_APART_M) {
    words.push(
      `Flight time gives ${Math.abs(apart * 100).toFixed(1)} cm ${apart > 0 ? 'more' : 'less'} than the impulse in ${at}: a landing in another posture than take-off, or a wrong body weight.`,
    );
  }
  if (jump.drift !== null && Math.abs(jump.drift.value) > DRIFT_M_PER_S) {
    words.push(
      `The integration drifts: ${jump.drift.value.toFixed(2)} m/s are left over where the jumper stands still again, which should be 0.`,
    );
  }
  if (trace.kind === 'squat' && dip(context, jump) > SQUAT_DIP_SHARE * weightN) {
    words.push(
      `Force falls ${dip(context, jump).toFixed(0)} N below body weight before the push of ${at}: it began with a countermovement and is no pure squat jump.`,
    );
  }
  return words;
}

/** How far force falls below body weight between onset and its peak, N. */
function dip({ trace, forceN, flight }: JumpContext, jump: Omit<ForceJump, 'warnings'>): number {
  let lowest = jump.bodyWeight.value;
  let deepest = lowest;
  let peak = 0;
  for (let k = Math.round(jump.onset.value * trace.rateHz); k < flight.takeoff; k++) {
    const force = forceN[k] as number;
    lowest = Math.min(lowest, force);
    if (force > peak) {
      peak = force;
      deepest = lowest;
    }
  }
  return jump.bodyWeight.value - deepest;
}
