import type { ForceSummary, JumpTest } from '../../model/jump.ts';
import { measured, type Quantity, type Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import type { Derivation } from '../quantity/derive.ts';
import { flightHeight } from './flightHeight.ts';
import { INTEGRATION, PLACED_BY_HAND } from './forceContext.ts';
import { heightFromTakeoffVelocity } from './heightFromTakeoffVelocity.ts';
import { reactiveStrengthIndex } from './reactiveStrengthIndex.ts';
import { reactiveStrengthIndexModified } from './reactiveStrengthIndexModified.ts';

/** What of a stored force-trace analysis is shown, each with its equation. */
export interface RestoredJump {
  readonly mass: Quantity<'kg'>;
  readonly takeoffVelocity: Quantity<'m/s'>;
  readonly jumpHeight: Quantity<'m'>;
  readonly jumpHeightFlightTime: Quantity<'m'>;
  readonly riseAboveStanding: Quantity<'m'> | null;
  readonly timeToTakeoff: Quantity<'s'>;
  readonly rsiModified: Quantity<'m/s'>;
  readonly peakForce: Quantity<'N'>;
  readonly peakPower: Quantity<'W'>;
  readonly countermovementDepth: Quantity<'m'> | null;
}

type Stored = { readonly value: number; readonly u: number | null };

/**
 * A stored analysis as quantities that show their working. Values and uncertainties are those that were stored, found
 * from the whole record with its correlations; the equations tell from which of the other stored numbers they come.
 *
 * @param kind a drop jump divides its height by the contact time
 * @throws DomainError 'input-out-of-range' for a summary with a velocity or a time that is not above zero
 * @source as in analyseForceTrace
 */
export function fromForceSummary(force: ForceSummary, kind: JumpTest['kind']): RestoredJump {
  const analysis: Source = { cite: `Force-trace analysis, kernel ${force.kernelVersion}`, status: 'derived' };
  const read = <U extends Unit>(symbol: string, name: string, one: Stored, unit: U, source: Source = analysis) =>
    measured(symbol, name, one.value, unit, one.u ?? NO_U, source);
  const worked = <U extends Unit>(
    what: Derivation<U>,
    one: Stored,
    inputs: Readonly<Record<string, Quantity>> = {},
  ): Quantity<U> => {
    const { symbol, name, unit, formula, variant = null, source } = what;
    const put = Object.entries(inputs).map(([of, quantity]) => ({ symbol: of, quantity }));
    return kept(one, {
      ...measured(symbol, name, one.value, unit, 0, source),
      working: { symbol, name, formula, inputs: put, variant, source },
    });
  };

  const isHandsOn = (force.placedByHand ?? []).length > 0;
  const at = (symbol: string, name: string, one: Stored) =>
    measured(symbol, name, one.value, 's', one.u ?? (isHandsOn ? PLACED_BY_HAND : NO_U), analysis);
  const weight = read('W', 'body weight on the plate', force.bodyWeightN, 'N');
  const mass = worked(
    {
      symbol: 'm',
      name: 'body mass on the plate',
      unit: 'kg',
      formula: 'm = W / g',
      source: { cite: "Newton's second law with standard gravity", status: 'published' },
    },
    force.massKg,
    { W: weight, g: standardGravity },
  );
  const onset = at('t_0', kind === 'drop' ? 'first contact' : 'first movement', force.onsetS);
  const takeoff = at('t_to', 'take-off', force.takeoffS);
  const landing = at('t_l', 'landing', force.landingS);
  const flightS = { value: force.landingS.value - force.takeoffS.value, u: timesU(force.landingS, force.takeoffS) };
  const definition: Source = { cite: 'Definition', status: 'convention' };
  const flightTime = worked(
    { symbol: 't_f', name: 'flight time on the plate', unit: 's', formula: 't_f = t_l - t_to', source: definition },
    flightS,
    { t_l: landing, t_to: takeoff },
  );
  const t = kind === 'drop' ? 't_c' : 't_p';
  const timeToTakeoff = worked(
    {
      symbol: t,
      name: kind === 'drop' ? 'contact time on the plate' : 'time to take-off',
      unit: 's',
      formula: `${t} = t_to - t_0`,
      source: definition,
    },
    force.timeToTakeoffS,
    { t_to: takeoff, t_0: onset },
  );
  const takeoffVelocity = worked(
    {
      symbol: 'v_to',
      name: 'take-off velocity',
      unit: 'm/s',
      formula: 'v_to = ∫ (F - W) dt / m',
      variant: 'impulse and momentum, from rest to take-off',
      source: INTEGRATION,
    },
    force.takeoffVelocityMPerS,
    { W: weight, m: mass },
  );
  const jumpHeight = kept(force.jumpHeightM, heightFromTakeoffVelocity(takeoffVelocity));
  return {
    mass,
    takeoffVelocity,
    jumpHeight,
    jumpHeightFlightTime: kept(force.jumpHeightFlightTimeM, flightHeight(flightTime)),
    riseAboveStanding:
      force.riseAboveStandingM &&
      worked(
        {
          symbol: 'H',
          name: 'rise above standing',
          unit: 'm',
          formula: 'H = ∫ v dt + h',
          variant: 'the integral from rest to take-off',
          source: INTEGRATION,
        },
        force.riseAboveStandingM,
        { h: jumpHeight },
      ),
    timeToTakeoff,
    rsiModified: kept(
      force.rsiModified,
      kind === 'drop'
        ? reactiveStrengthIndex(jumpHeight, timeToTakeoff, false)
        : reactiveStrengthIndexModified(jumpHeight, timeToTakeoff),
    ),
    peakForce: read('F_max', 'peak force before take-off', force.peakForceN, 'N', {
      cite: 'Highest single reading; u: spread of the unloaded plates',
      status: 'convention',
    }),
    peakPower: worked(
      {
        symbol: 'P_max',
        name: 'peak power',
        unit: 'W',
        formula: 'P_max = max(F v)',
        variant: 'force times velocity at every sample before take-off',
        source: INTEGRATION,
      },
      force.peakPowerW,
    ),
    countermovementDepth:
      force.countermovementDepthM &&
      worked(
        {
          symbol: 'd',
          name: 'countermovement depth',
          unit: 'm',
          formula: 'd = max(-x)',
          variant: 'with x = ∫ v dt from rest',
          source: INTEGRATION,
        },
        force.countermovementDepthM,
      ),
  };
}

const NO_U = 'the analysis gave none';

/** The stored number under the working that leads to it. */
function kept<U extends Unit>({ value, u }: Stored, quantity: Quantity<U>): Quantity<U> {
  return { ...quantity, value, u, uReason: u === null ? (quantity.uReason ?? NO_U) : null };
}

/** Of the difference of two independent instants. */
function timesU(a: Stored, b: Stored): number | null {
  return a.u === null || b.u === null ? null : Math.hypot(a.u, b.u);
}
