import { measured, type Quantity, type Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { weight } from '../force/weight.ts';
import { derive } from '../quantity/derive.ts';
import type { Flight } from './findFlights.ts';
import { findOnset, ONSET_PERSISTENCE_S } from './findOnset.ts';
import { type JumpContext, PLACED_BY_HAND } from './forceContext.ts';
import { type Motion, motionFromRest } from './integrateForce.ts';

/** Body weight and the instants that a jump hangs on. */
export interface ForceInstants {
  readonly bodyWeight: Quantity<'N'>;
  readonly mass: Quantity<'kg'>;
  /** Where the integration starts from rest. */
  readonly rest: Quantity<'s'>;
  /** First movement; first contact for a drop jump. */
  readonly onset: Quantity<'s'>;
  readonly takeoff: Quantity<'s'>;
  readonly landing: Quantity<'s'>;
  readonly flightTime: Quantity<'s'>;
  /** Contact time for a drop jump. */
  readonly timeToTakeoff: Quantity<'s'>;
  /** Motion for any body weight, N, and instant of rest, s. */
  readonly motionOf: (at: { readonly W: number; readonly t_r: number }) => Motion;
}

const NOT_STILL = 'nobody stood still where the integration starts';
const DEFINITION: Source = { cite: 'Definition', status: 'convention' };

/**
 * Weighs and times one jump of a force record (method and uncertainty: analyseForceTrace).
 *
 * @returns null for a drop jump whose first contact is not in the record
 * @source Owen et al. 2014, J Strength Cond Res 28(6):1552-1558 (the method as in analyseForceTrace)
 */
export function forceInstants(context: JumpContext): ForceInstants | null {
  const { trace, forceN, integrals, flight, marks, rest: stance, isBackward } = context;
  const { rateHz, kind } = trace;
  const placed = marks?.onsetS ?? null;
  const firstContact =
    kind !== 'drop' ? null : placed === null ? contactStart(forceN, flight) : Math.round(placed * rateHz);
  if (firstContact === 0) return null;
  const bodyWeight = weigh(context);
  const mass = derive(
    {
      symbol: 'm',
      name: 'body mass',
      unit: 'kg',
      formula: 'm = W / g',
      source: { cite: "Newton's second law with standard gravity", status: 'published' },
    },
    { W: bodyWeight, g: standardGravity },
    ({ W, g }) => W / g,
  );
  const takeoff = crossing('t_to', 'take-off', flight.takeoff, context, typeof marks?.takeoffS === 'number');
  const landing = crossing('t_l', 'landing', flight.landing, context, typeof marks?.landingS === 'number');
  const rest = isBackward
    ? moment('t_r', 'rest', stance.start / rateHz, stance.isStill)
    : placed !== null && kind !== 'drop'
      ? byHand('t_r', 'first movement', placed)
      : moment('t_r', 'first movement', findOnset(forceN, rateHz, stance, flight.takeoff) / rateHz, stance.isStill);
  const motionOf: ForceInstants['motionOf'] = ({ W, t_r }) => motionFromRest(integrals, W, t_r);
  const onset =
    firstContact !== null
      ? crossing('t_0', 'first contact', firstContact, context, placed !== null)
      : isBackward
        ? placed !== null
          ? byHand('t_0', 'first movement', placed)
          : moment(
              't_0',
              'first movement',
              pushStart(context, motionOf({ W: bodyWeight.value, t_r: rest.value })),
              true,
            )
        : rest;
  const symbol = kind === 'drop' ? 't_c' : 't_p';
  return {
    bodyWeight,
    mass,
    rest,
    onset,
    takeoff,
    landing,
    motionOf,
    flightTime: derive(
      { symbol: 't_f', name: 'flight time', unit: 's', formula: 't_f = t_l - t_to', source: DEFINITION },
      { t_l: landing, t_to: takeoff },
      ({ t_l, t_to }) => t_l - t_to,
    ),
    timeToTakeoff: derive(
      {
        symbol,
        name: kind === 'drop' ? 'contact time' : 'time to take-off',
        unit: 's',
        formula: `${symbol} = t_to - t_0`,
        source: DEFINITION,
      },
      { t_to: takeoff, t_0: onset },
      ({ t_to, t_0 }) => t_to - t_0,
    ),
  };
}

function crossing(
  symbol: string,
  name: string,
  sample: number,
  { trace, flight }: JumpContext,
  isPlaced: boolean,
): Quantity<'s'> {
  if (isPlaced) return byHand(symbol, name, sample / trace.rateHz);
  return measured(symbol, name, sample / trace.rateHz, 's', 1 / (trace.rateHz * Math.sqrt(3)), {
    cite: `First sample past ${flight.thresholdN.toFixed(1)} N: the unloaded plate's mean + 5 SD, at least 20 N. Uncertainty: one sample either way, rectangular`,
    status: 'convention',
  });
}

function byHand(symbol: string, name: string, timeS: number): Quantity<'s'> {
  return measured(symbol, name, timeS, 's', PLACED_BY_HAND, {
    cite: 'Placed by hand on the force trace',
    status: 'convention',
  });
}

function moment(symbol: string, name: string, timeS: number, isStill: boolean): Quantity<'s'> {
  const u = ONSET_PERSISTENCE_S / Math.sqrt(3);
  return measured(symbol, name, timeS, 's', isStill ? u : NOT_STILL, {
    cite: `Force leaves quiet stance by 5 SD for 30 ms, set back 30 ms (Owen et al. 2014). Uncertainty: 30 ms either way, rectangular (convention)`,
    status: 'published',
  });
}

/** Body weight from the stance of this jump, else from the best stance of the record, else from the mass entered. */
function weigh({ trace, flight, rest, calmest }: JumpContext): Quantity<'N'> {
  const window = rest.isStill ? rest : calmest;
  if (!window && trace.massKg !== null) {
    return weight(measured('m', 'body mass', trace.massKg, 'kg', 'the mass was entered without one'));
  }
  const { meanN, meanUN, start, end } = window ?? rest;
  const u = window ? Math.hypot(meanUN, flight.unloadedMeanN / Math.sqrt(3)) : NOT_STILL;
  return measured('W', 'body weight', meanN, 'N', u, {
    cite: `Mean force of the quietest stance, ${(start / trace.rateHz).toFixed(2)} to ${(end / trace.rateHz).toFixed(2)} s (Owen et al. 2014). Uncertainty: spread of ten part-means, and the plate's reading in flight as the half-width of a rectangle`,
    status: 'published',
  });
}

/** First sample of the contact that ends in this flight; 0 where the record starts in it. */
function contactStart(forceN: Float64Array, { takeoff, thresholdN }: Flight): number {
  let k = takeoff;
  while (k > 0 && (forceN[k - 1] as number) >= thresholdN) k--;
  return k;
}

/** Start of the push of a squat jump, s: by noise after a held squat, else where the body last stops sinking. */
function pushStart({ trace, forceN, flight, before }: JumpContext, motion: Motion): number {
  if (before?.isStill) return findOnset(forceN, trace.rateHz, before, flight.takeoff) / trace.rateHz;
  let k = flight.takeoff;
  while (k > 0 && motion.velocity(k / trace.rateHz) > 0) k--;
  return k / trace.rateHz;
}
