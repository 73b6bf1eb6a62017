import type { Quantity } from '../../quantity.ts';
import type { CountermovementPhases } from './countermovementPhases.ts';

export interface ForceTrace {
  /** Samples a second. */
  readonly rateHz: number;
  /** Vertical force of each plate, N, up positive; one array a plate, all of one length. */
  readonly plates: readonly (readonly number[])[];
  /** Body mass if known from elsewhere, kg: a check, and the weight where nobody stands still. */
  readonly massKg: number | null;
  readonly kind: 'countermovement' | 'squat' | 'drop';
  /** Instants that a person placed instead of those that would be found, a list entry a jump. */
  readonly marks?: readonly ForceMarks[];
}

/** Instants placed by hand, s from the start of the record; null for one that is left to be found. */
export interface ForceMarks {
  readonly onsetS: number | null;
  readonly takeoffS: number | null;
  readonly landingS: number | null;
}

/** One plate's part in a jump. */
export interface PlateShare {
  /** Of the whole force on this plate, onset to take-off. */
  readonly impulse: Quantity<'N.s'>;
  readonly peakLandingForce: Quantity<'N'>;
}

/** One jump of a force record. Where nobody stood still, what rests on the impulse has no uncertainty and says so. */
export interface ForceJump {
  readonly bodyWeight: Quantity<'N'>;
  readonly mass: Quantity<'kg'>;
  /** First movement; first contact for a drop jump. */
  readonly onset: Quantity<'s'>;
  readonly takeoff: Quantity<'s'>;
  readonly landing: Quantity<'s'>;
  readonly flightTime: Quantity<'s'>;
  /** From onset; contact time for a drop jump. */
  readonly timeToTakeoff: Quantity<'s'>;
  /** At the instant of take-off, from the impulse. */
  readonly takeoffVelocity: Quantity<'m/s'>;
  /** From the impulse; reference: take-off. */
  readonly jumpHeight: Quantity<'m'>;
  readonly jumpHeightFlightTime: Quantity<'m'>;
  /** Apex above the standing place of the centre of mass; null where the integration does not start from still standing. */
  readonly riseAboveStanding: Quantity<'m'> | null;
  /** Height over time to take-off; for a drop jump that is the plain reactive strength index. */
  readonly rsiModified: Quantity<'m/s'>;
  readonly peakForce: Quantity<'N'>;
  readonly peakPower: Quantity<'W'>;
  /** How far the centre of mass sinks before the push-off; null for squat and drop jumps, and without a still stance. */
  readonly countermovementDepth: Quantity<'m'> | null;
  /** Null for squat and drop jumps, without a still stance, and where the body does not dip. */
  readonly phases: CountermovementPhases | null;
  /** Mean rate from the lowest force to the highest before take-off; null where the lowest does not come first. */
  readonly rateOfForceDevelopment: Quantity<'N/s'> | null;
  /** Highest force in the half second after landing. */
  readonly peakLandingForce: Quantity<'N'>;
  /** What each plate took, in the order of the plates; for comparing sides with a named formula. */
  readonly plates: readonly PlateShare[];
  /** Drop jump: fall height that the velocity at first contact amounts to; else null. */
  readonly dropHeight: Quantity<'m'> | null;
  /** Velocity that the integration shows where the jumper stands still again, which should be 0; null without such a place. */
  readonly drift: Quantity<'m/s'> | null;
  /** False where nobody stood still before (squat and drop: after) the jump: the impulse is then not to be trusted. */
  readonly isImpulseSound: boolean;
  /** Which instants a person placed instead of those that would be found. */
  readonly placedByHand: readonly PlacedInstant[];
  readonly warnings: readonly string[];
}

export type PlacedInstant = 'onset' | 'take-off' | 'landing';

/** The best jump of the record, and all of them in order. */
export interface ForceTraceAnalysis extends ForceJump {
  readonly jumps: readonly ForceJump[];
}
