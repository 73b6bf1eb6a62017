import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { INTEGRATION, integrationVariant, type JumpContext } from './forceContext.ts';
import type { ForceInstants } from './forceInstants.ts';
import type { ForceJump, PlateShare } from './forceTrace.ts';
import { rateOfForceDevelopment } from './rateOfForceDevelopment.ts';

/** The peak of a landing lies within this time. Convention. */
const LANDING_S = 0.5;

/**
 * Peaks of force and power, the depth of the countermovement and what each plate took.
 *
 * @source highest single readings; power as force times velocity; Owen et al. 2014, J Strength Cond Res
 *   28(6):1552-1558 (the method as in analyseForceTrace)
 */
export function forceExtremes(
  context: JumpContext,
  { bodyWeight, rest, onset, motionOf }: ForceInstants,
): Pick<
  ForceJump,
  'peakForce' | 'peakPower' | 'countermovementDepth' | 'rateOfForceDevelopment' | 'peakLandingForce' | 'plates'
> {
  const { trace, forceN, flight } = context;
  const { rateHz } = trace;
  const first = Math.round(onset.value * rateHz);
  const landed = Math.min(forceN.length - 1, flight.landing + Math.round(LANDING_S * rateHz));
  const readingU =
    flight.unloadedSdN > 0 ? flight.unloadedSdN : 'the plate shows no noise, and its calibration is not recorded';
  const peak = (symbol: string, name: string, of: ArrayLike<number>, from: number, to: number): Quantity<'N'> =>
    measured(
      symbol,
      name,
      highest(from, to, (k) => of[k] as number),
      'N',
      readingU,
      {
        cite: 'Highest single reading; u: spread of the unloaded plates',
        status: 'convention',
      },
    );

  const what = { variant: integrationVariant(context), source: INTEGRATION };
  const inputs = { W: bodyWeight, t_r: rest };
  const peakPower = derive(
    { ...what, symbol: 'P_max', name: 'peak power', unit: 'W', formula: 'P_max = max(F v)' },
    inputs,
    (at) => {
      const { velocity } = motionOf(at);
      return highest(first, flight.takeoff, (k) => (forceN[k] as number) * velocity(k / rateHz));
    },
  );
  const depth = () =>
    derive({ ...what, symbol: 'd', name: 'countermovement depth', unit: 'm', formula: 'd = max(-x)' }, inputs, (at) => {
      const { position } = motionOf(at);
      return highest(first, flight.takeoff, (k) => -position(k / rateHz));
    });
  return {
    peakForce: peak('F_max', 'peak force before take-off', forceN, first, flight.takeoff),
    peakPower,
    countermovementDepth: trace.kind === 'countermovement' && context.rest.isStill ? depth() : null,
    rateOfForceDevelopment: lowestToHighest(),
    peakLandingForce: peak('F_l', 'peak landing force', forceN, flight.landing, landed),
    plates: trace.plates.map(plateShare),
  };

  function lowestToHighest(): Quantity<'N/s'> | null {
    let [lowest, top] = [first, first];
    for (let k = first; k <= flight.takeoff; k++) if ((forceN[k] as number) > (forceN[top] as number)) top = k;
    for (let k = first; k < top; k++) if ((forceN[k] as number) < (forceN[lowest] as number)) lowest = k;
    return lowest < top ? rateOfForceDevelopment(forceN, rateHz, lowest, top, readingU) : null;
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
        INTEGRATION,
      ),
      peakLandingForce: peak('F_l', `peak landing force on ${name}`, plateN, flight.landing, landed),
    };
  }
}

function highest(from: number, to: number, visit: (sample: number) => number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let k = from; k <= to; k++) most = Math.max(most, visit(k));
  return most;
}
