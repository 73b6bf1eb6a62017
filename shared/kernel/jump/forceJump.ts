import { measured, type Quantity, type Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { weight } from '../force/weight.ts';
import { correlationOfDerived } from '../quantity/correlationOfDerived.ts';
import { derive } from '../quantity/derive.ts';
import { countermovementPhases } from './countermovementPhases.ts';
import type { Flight } from './findFlights.ts';
import { findOnset, ONSET_PERSISTENCE_S } from './findOnset.ts';
import { flightHeight } from './flightHeight.ts';
import type { ForceJump, ForceTrace, PlateShare } from './forceTrace.ts';
import { forceWarnings } from './forceWarnings.ts';
import { heightFromTakeoffVelocity } from './heightFromTakeoffVelocity.ts';
import { type ForceIntegrals, motionFromRest } from './integrateForce.ts';
import type { QuietWindow } from './quietWindow.ts';
import { rateOfForceDevelopment } from './rateOfForceDevelopment.ts';
import { reactiveStrengthIndex } from './reactiveStrengthIndex.ts';
import { reactiveStrengthIndexModified } from './reactiveStrengthIndexModified.ts';

export interface JumpContext {
  readonly trace: ForceTrace;
  /** Sum of the plates, N. */
  readonly forceN: Float64Array;
  /** Integrals of the force with every flight set to zero. */
  readonly integrals: ForceIntegrals;
  readonly flight: Flight;
  readonly before: QuietWindow | null;
  readonly after: QuietWindow | null;
  /** The stance that the integration starts from: `before`, or `after` when integrating backward. */
  readonly rest: QuietWindow;
  readonly isBackward: boolean;
  /** The best still stance of the whole record. */
  readonly calmest: QuietWindow | null;
}

const METHOD: Source = {
  cite: 'Trapezoid rule from rest; Owen, Watkins, Kilduff, Bevan & Bennett 2014, Journal of Strength and Conditioning Research 28(6):1552-1558; Linthorne 2001, American Journal of Physics 69(11):1198-1204',
  status: 'published',
};
const NOT_STILL = 'nobody stood still where the integration starts';

/** The peak of a landing lies within this time. Convention. */
const LANDING_S = 0.5;

type Instants = { readonly W: number; readonly t_r: number; readonly t_to: number };

/**
 * All that follows from one flight of a force record (method and uncertainty: analyseForceTrace).
 *
 * @returns null where the integration gives no upward velocity, or a drop jump shows no first contact
 */
export function forceJump(context: JumpContext): ForceJump | null {
  const { trace, forceN, integrals, flight, rest, isBackward } = context;
  const { rateHz, kind } = trace;
  const variant = isBackward ? 'backward from the still stance at the end' : 'forward from the first movement';
  const integral = <U extends Unit>(symbol: string, name: string, unit: U, formula: string) => ({
    symbol,
    name,
    unit,
    formula,
    variant,
    source: METHOD,
  });

  const firstContact = kind === 'drop' ? contactStart(forceN, flight) : null;
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
  const takeoff = crossing('t_to', 'take-off', flight.takeoff, context);
  const landing = crossing('t_l', 'landing', flight.landing, context);
  const restInstant = isBackward
    ? moment('t_r', 'rest', rest.start / rateHz, rest.isStill)
    : moment('t_r', 'first movement', findOnset(forceN, rateHz, rest, flight.takeoff) / rateHz, rest.isStill);
  const instants = { W: bodyWeight, t_r: restInstant, t_to: takeoff };
  const motionOf = ({ W, t_r }: Pick<Instants, 'W' | 't_r'>) => motionFromRest(integrals, W, t_r);
  const motion = motionOf({ W: bodyWeight.value, t_r: restInstant.value });

  const onset =
    firstContact !== null
      ? crossing('t_0', 'first contact', firstContact, context)
      : isBackward
        ? moment('t_0', 'first movement', pushStart(context, motion.velocity) / rateHz, true)
        : restInstant;
  const flightTime = derive(
    { symbol: 't_f', name: 'flight time', unit: 's', formula: 't_f = t_l - t_to', source: DEFINITION },
    { t_l: landing, t_to: takeoff },
    ({ t_l, t_to }) => t_l - t_to,
  );
  const timeToTakeoff = derive(
    {
      symbol: kind === 'drop' ? 't_c' : 't_p',
      name: kind === 'drop' ? 'contact time' : 'time to take-off',
      unit: 's',
      formula: kind === 'drop' ? 't_c = t_to - t_0' : 't_p = t_to - t_0',
      source: DEFINITION,
    },
    { t_to: takeoff, t_0: onset },
    ({ t_to, t_0 }) => t_to - t_0,
  );

  // Net impulse and mass both rest on the body weight: their correlation keeps the uncertainty of the velocity honest.
  const velocityOf = ({ W, t_r, t_to }: Instants) => motionOf({ W, t_r }).velocity(t_to);
  const impulseOf = (at: Instants) => (velocityOf(at) * at.W) / standardGravity.value;
  const impulse = derive(integral('J', 'net impulse to take-off', 'N.s', 'J = ∫ (F - W) dt'), instants, impulseOf);
  if (!(impulse.value > 0)) return null;
  const takeoffVelocity = derive(
    integral('v_to', 'take-off velocity', 'm/s', 'v_to = J / m'),
    { J: impulse, m: mass },
    ({ J, m }) => J / m,
    { 'J|m': correlationOfDerived(instants, impulseOf, ({ W }) => W) },
  );
  const jumpHeight = heightFromTakeoffVelocity(takeoffVelocity);

  const placeOf = ({ W, t_r, t_to }: Instants) => motionOf({ W, t_r }).position(t_to);
  const place = derive(
    integral('x_to', 'centre of mass above standing at take-off', 'm', 'x_to = ∫ v dt'),
    instants,
    placeOf,
  );
  const riseAboveStanding = derive(
    {
      symbol: 'H',
      name: 'rise above standing',
      unit: 'm',
      formula: 'H = x_to + h',
      source: {
        cite: 'Place at take-off plus flight height; Moir 2008, Measurement in Physical Education and Exercise Science 12(4):207-218',
        status: 'published',
      },
    },
    { x_to: place, h: jumpHeight },
    ({ x_to, h }) => x_to + h,
    { 'h|x_to': correlationOfDerived(instants, placeOf, velocityOf) },
  );

  const first = Math.round(onset.value * rateHz);
  const highest = (visit: (sample: number) => number) => {
    let most = Number.NEGATIVE_INFINITY;
    for (let k = first; k <= flight.takeoff; k++) most = Math.max(most, visit(k));
    return most;
  };
  const landingEnd = Math.min(forceN.length - 1, flight.landing + Math.round(LANDING_S * rateHz));
  const readingU =
    flight.unloadedSdN > 0 ? flight.unloadedSdN : 'the plate shows no noise, and its calibration is not recorded';
  const weightAndRest = { W: bodyWeight, t_r: restInstant };
  const peakPower = derive(integral('P_max', 'peak power', 'W', 'P_max = max(F v)'), weightAndRest, (at) => {
    const { velocity } = motionOf(at);
    return highest((k) => (forceN[k] as number) * velocity(k / rateHz));
  });
  const countermovementDepth =
    kind !== 'countermovement' || !rest.isStill
      ? null
      : derive(integral('d', 'countermovement depth', 'm', 'd = max(-x)'), weightAndRest, (at) => {
          const { position } = motionOf(at);
          return highest((k) => -position(k / rateHz));
        });

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
    riseAboveStanding: rest.isStill && (kind === 'countermovement' || isBackward) ? riseAboveStanding : null,
    rsiModified:
      kind === 'drop'
        ? reactiveStrengthIndex(jumpHeight, timeToTakeoff, false)
        : reactiveStrengthIndexModified(jumpHeight, timeToTakeoff),
    peakForce: peak('F_max', 'peak force before take-off', forceN, first, flight.takeoff),
    peakPower,
    countermovementDepth,
    phases:
      kind === 'countermovement' && rest.isStill
        ? countermovementPhases({ forceN, integrals, bodyWeight, mass, onset, takeoff, takeoffVelocity })
        : null,
    rateOfForceDevelopment: rise(),
    peakLandingForce: peak('F_l', 'peak landing force', forceN, flight.landing, landingEnd),
    plates: trace.plates.map(plateShare),
    dropHeight: kind === 'drop' ? dropHeight() : null,
    drift: drift(),
    isImpulseSound: rest.isStill,
  };
  return { ...jump, warnings: forceWarnings(context, jump) };

  function peak(symbol: string, name: string, of: ArrayLike<number>, from: number, to: number): Quantity<'N'> {
    let most = Number.NEGATIVE_INFINITY;
    for (let k = from; k <= to; k++) most = Math.max(most, of[k] as number);
    return measured(symbol, name, most, 'N', readingU, {
      cite: 'Highest single reading; u: spread of the unloaded plates',
      status: 'convention',
    });
  }

  function plateShare(plateN: readonly number[], index: number): PlateShare {
    let sum = 0;
    for (let k = first + 1; k <= flight.takeoff; k++) sum += (plateN[k - 1] as number) + (plateN[k] as number);
    const name = `plate ${index + 1}`;
    return {
      impulse: measured(
        'J',
        `impulse on ${name}, onset to take-off`,
        sum / 2 / rateHz,
        'N.s',
        'the calibration of the plate is not recorded',
        METHOD,
      ),
      peakLandingForce: peak('F_l', `peak landing force on ${name}`, plateN, flight.landing, landingEnd),
    };
  }

  function rise(): Quantity<'N/s'> | null {
    let [lowest, top] = [first, first];
    for (let k = first; k <= flight.takeoff; k++) if ((forceN[k] as number) > (forceN[top] as number)) top = k;
    for (let k = first; k < top; k++) if ((forceN[k] as number) < (forceN[lowest] as number)) lowest = k;
    return lowest < top ? rateOfForceDevelopment(forceN, rateHz, lowest, top, readingU) : null;
  }

  /** Null unless the body is falling at first contact. */
  function dropHeight(): Quantity<'m'> | null {
    const touchdown = derive(
      integral('v_td', 'downward velocity at first contact', 'm/s', 'v_td = -∫ (F - W) dt / m'),
      { ...weightAndRest, t_0: onset },
      ({ t_0, ...at }) => -motionOf(at).velocity(t_0),
    );
    if (!(touchdown.value > 0)) return null;
    return heightFromTakeoffVelocity(touchdown);
  }

  function drift(): Quantity<'m/s'> | null {
    const other = isBackward ? context.before : context.after;
    if (!rest.isStill || !other?.isStill) return null;
    return derive(
      integral('v_d', 'velocity left over where the jumper stands still again', 'm/s', 'v_d = ∫ (F - W) dt / m'),
      weightAndRest,
      (at) => motionOf(at).velocity(other.start / rateHz),
    );
  }
}

const DEFINITION: Source = { cite: 'Definition', status: 'convention' };

function crossing(symbol: string, name: string, sample: number, { trace, flight }: JumpContext): Quantity<'s'> {
  return measured(symbol, name, sample / trace.rateHz, 's', 1 / (trace.rateHz * Math.sqrt(3)), {
    cite: `First sample past ${flight.thresholdN.toFixed(1)} N: the unloaded plate's mean + 5 SD, at least 20 N. Uncertainty: one sample either way, rectangular`,
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

/** Start of the push of a squat jump: by noise after a held squat, else where the body last stops sinking. */
function pushStart({ trace, forceN, flight, before }: JumpContext, velocity: (timeS: number) => number): number {
  if (before?.isStill) return findOnset(forceN, trace.rateHz, before, flight.takeoff);
  let k = flight.takeoff;
  while (k > 0 && velocity(k / trace.rateHz) > 0) k--;
  return k;
}
