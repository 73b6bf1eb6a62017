import type { Quantity, Source } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { type ForceIntegrals, motionFromRest } from './integrateForce.ts';

/** One phase of a countermovement jump: from its start to the start of the next, the last to take-off. */
export interface JumpPhase {
  readonly start: Quantity<'s'>;
  readonly duration: Quantity<'s'>;
  /** Of the net force; negative while the body is speeding up downward. */
  readonly netImpulse: Quantity<'N.s'>;
}

export interface CountermovementPhases {
  /** First movement to the lowest velocity, where force is back at body weight. */
  readonly unweighting: JumpPhase;
  /** Lowest velocity to standstill, the lowest place. */
  readonly braking: JumpPhase;
  /** Standstill to take-off. */
  readonly propulsion: JumpPhase;
  /** Rise of the centre of mass in propulsion. */
  readonly pushOffDistance: Quantity<'m'>;
  /** Mean power of propulsion: work over time. */
  readonly meanPower: Quantity<'W'>;
}

export const PHASE_BOUNDARIES: Source = {
  cite: 'Phases after McMahon, Suchomel, Lake & Comfort 2018, Strength and Conditioning Journal 40(4):96-106 (boundaries from memory)',
  status: 'from memory',
};
export const WORK_ENERGY: Source = {
  cite: 'Work-energy theorem: the work of the force is the gain in kinetic and potential energy',
  status: 'derived',
};

/**
 * Phases of a countermovement jump from its force.
 *
 * @param seen integrals of the force with flights set to zero; body weight; onset, where the body is at rest; take-off
 * @returns null where the body never moves down and comes to a stop before take-off
 * @source McMahon et al. 2018
 */
export function countermovementPhases(seen: {
  readonly forceN: Float64Array;
  readonly integrals: ForceIntegrals;
  readonly bodyWeight: Quantity<'N'>;
  readonly mass: Quantity<'kg'>;
  readonly onset: Quantity<'s'>;
  readonly takeoff: Quantity<'s'>;
  readonly takeoffVelocity: Quantity<'m/s'>;
}): CountermovementPhases | null {
  const { forceN, integrals, bodyWeight, mass, onset, takeoff, takeoffVelocity } = seen;
  const { rateHz } = integrals;
  const motionOf = (W: number, t_0: number) => motionFromRest(integrals, W, t_0);
  const first = Math.round(onset.value * rateHz);
  const last = Math.round(takeoff.value * rateHz);

  /** Where velocity is lowest: force comes back up through body weight. */
  const brakingStart = (W: number, t_0: number): number => {
    const { velocity } = motionOf(W, t_0);
    let lowest = first;
    for (let k = first; k <= last; k++) if (velocity(k / rateHz) < velocity(lowest / rateHz)) lowest = k;
    const [before, after] = [forceN[lowest - 1] ?? W, forceN[lowest] ?? W];
    const isCrossing = before < W && after > W;
    return (isCrossing ? lowest - (after - W) / (after - before) : lowest) / rateHz;
  };
  /** Where velocity is back at zero, on the line between two samples; NaN where it never is. */
  const propulsionStart = (W: number, t_0: number): number => {
    const { velocity } = motionOf(W, t_0);
    let k = Math.ceil(brakingStart(W, t_0) * rateHz);
    while (k < last && velocity(k / rateHz) < 0) k++;
    const [before, after] = [velocity((k - 1) / rateHz), velocity(k / rateHz)];
    return before < 0 && after >= 0 ? (k - after / (after - before)) / rateHz : Number.NaN;
  };
  const isDown = motionOf(bodyWeight.value, onset.value).velocity(brakingStart(bodyWeight.value, onset.value)) < 0;
  if (!isDown || Number.isNaN(propulsionStart(bodyWeight.value, onset.value))) return null;

  const inputs = { W: bodyWeight, t_0: onset };
  const braking = derive(
    { symbol: 't_b', name: 'start of braking', unit: 's', formula: 't_b = argmin(v)', source: PHASE_BOUNDARIES },
    inputs,
    ({ W, t_0 }) => brakingStart(W, t_0),
  );
  const propulsion = derive(
    { symbol: 't_p', name: 'start of propulsion', unit: 's', formula: 'v(t_p) = 0', source: PHASE_BOUNDARIES },
    inputs,
    ({ W, t_0 }) => propulsionStart(W, t_0),
  );
  const phase = (name: string, start: Quantity<'s'>, end: Quantity<'s'>): JumpPhase => ({
    start,
    duration: derive(
      { symbol: 't', name: `duration of ${name}`, unit: 's', formula: 't = t_2 - t_1', source: PHASE_BOUNDARIES },
      { t_2: end, t_1: start },
      ({ t_2, t_1 }) => t_2 - t_1,
    ),
    netImpulse: derive(
      {
        symbol: 'J',
        name: `net impulse of ${name}`,
        unit: 'N.s',
        formula: 'J = ∫ (F - W) dt',
        source: PHASE_BOUNDARIES,
      },
      { W: bodyWeight, t_1: start, t_2: end },
      ({ W, t_1, t_2 }) => (motionOf(W, t_1).velocity(t_2) * W) / standardGravity.value,
    ),
  });
  const phases = {
    unweighting: phase('unweighting', onset, braking),
    braking: phase('braking', braking, propulsion),
    propulsion: phase('propulsion', propulsion, takeoff),
  };
  const pushOffDistance = derive(
    { symbol: 's', name: 'push-off distance', unit: 'm', formula: 's = ∫ v dt', source: PHASE_BOUNDARIES },
    { W: bodyWeight, t_0: onset, t_to: takeoff },
    ({ W, t_0, t_to }) => {
      const { position } = motionOf(W, t_0);
      return position(t_to) - position(propulsionStart(W, t_0));
    },
  );
  return {
    ...phases,
    pushOffDistance,
    meanPower: derive(
      {
        symbol: 'P',
        name: 'mean power of propulsion',
        unit: 'W',
        formula: 'P = m (v_to^2 / 2 + g s) / t',
        variant: 'work over time',
        source: WORK_ENERGY,
      },
      { m: mass, v_to: takeoffVelocity, g: standardGravity, s: pushOffDistance, t: phases.propulsion.duration },
      ({ m, v_to, g, s, t }) => (m * (v_to ** 2 / 2 + g * s)) / t,
    ),
  };
}
