import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { countermovementPhases } from './countermovementPhases.ts';
import { flightHeight } from './flightHeight.ts';
import { INTEGRATION, integrationVariant, type JumpContext } from './forceContext.ts';
import { forceExtremes } from './forceExtremes.ts';
import { forceImpulse } from './forceImpulse.ts';
import { type ForceInstants, forceInstants } from './forceInstants.ts';
import type { ForceJump, ForceMarks, PlacedInstant } from './forceTrace.ts';
import { forceWarnings } from './forceWarnings.ts';
import { heightFromTakeoffVelocity } from './heightFromTakeoffVelocity.ts';
import { reactiveStrengthIndex } from './reactiveStrengthIndex.ts';
import { reactiveStrengthIndexModified } from './reactiveStrengthIndexModified.ts';

/**
 * All that follows from one flight of a force record (method and uncertainty: analyseForceTrace).
 *
 * @returns null where the integration gives no upward velocity, or a drop jump shows no first contact
 * @source Owen et al. 2014, J Strength Cond Res 28(6):1552-1558 (the method as in analyseForceTrace)
 */
export function forceJump(context: JumpContext): ForceJump | null {
  const instants = forceInstants(context);
  const impulse = instants && forceImpulse(context, instants);
  if (!impulse) return null;
  const { trace, forceN, integrals, isBackward } = context;
  const { kind } = trace;
  const { bodyWeight, mass, onset, takeoff, landing, flightTime, timeToTakeoff } = instants;
  const { takeoffVelocity, jumpHeight, rise } = impulse;
  const isSound = context.rest.isStill;
  const jump = {
    bodyWeight,
    mass,
    onset,
    takeoff,
    landing,
    flightTime,
    timeToTakeoff,
    takeoffVelocity,
    jumpHeight,
    jumpHeightFlightTime: flightHeight(flightTime),
    // A squat jump integrated forward starts from the squat, not from standing.
    riseAboveStanding: isSound && (kind === 'countermovement' || isBackward) ? rise : null,
    rsiModified:
      kind === 'drop'
        ? reactiveStrengthIndex(jumpHeight, timeToTakeoff, false)
        : reactiveStrengthIndexModified(jumpHeight, timeToTakeoff),
    ...forceExtremes(context, instants),
    phases:
      kind === 'countermovement' && isSound
        ? countermovementPhases({ forceN, integrals, bodyWeight, mass, onset, takeoff, takeoffVelocity })
        : null,
    dropHeight: kind === 'drop' ? dropHeight(context, instants) : null,
    drift: drift(context, instants),
    isImpulseSound: isSound,
    placedByHand: placedIn(context.marks),
  };
  return { ...jump, warnings: forceWarnings(context, jump) };
}

function placedIn(marks: ForceMarks | null): PlacedInstant[] {
  const placed = { onset: marks?.onsetS, 'take-off': marks?.takeoffS, landing: marks?.landingS };
  return (['onset', 'take-off', 'landing'] as const).filter((name) => typeof placed[name] === 'number');
}

/** Null unless the body is falling at first contact. */
function dropHeight(context: JumpContext, { bodyWeight, rest, onset, motionOf }: ForceInstants): Quantity<'m'> | null {
  const touchdown = derive(
    {
      symbol: 'v_td',
      name: 'downward velocity at first contact',
      unit: 'm/s',
      formula: 'v_td = -∫ (F - W) dt / m',
      variant: integrationVariant(context),
      source: INTEGRATION,
    },
    { W: bodyWeight, t_r: rest, t_0: onset },
    ({ t_0, ...at }) => -motionOf(at).velocity(t_0),
  );
  return touchdown.value > 0 ? heightFromTakeoffVelocity(touchdown) : null;
}

/** Velocity at the other still stance of the jump; null without one. */
function drift(context: JumpContext, { bodyWeight, rest, motionOf }: ForceInstants): Quantity<'m/s'> | null {
  const other = context.isBackward ? context.before : context.after;
  if (!context.rest.isStill || !other?.isStill) return null;
  return derive(
    {
      symbol: 'v_d',
      name: 'velocity left over where the jumper stands still again',
      unit: 'm/s',
      formula: 'v_d = ∫ (F - W) dt / m',
      variant: integrationVariant(context),
      source: INTEGRATION,
    },
    { W: bodyWeight, t_r: rest },
    (at) => motionOf(at).velocity(other.start / context.trace.rateHz),
  );
}
