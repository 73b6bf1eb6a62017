import type { Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { correlationOfDerived } from '../quantity/correlationOfDerived.ts';
import { derive } from '../quantity/derive.ts';
import { INTEGRATION, integrationVariant, type JumpContext } from './forceContext.ts';
import type { ForceInstants } from './forceInstants.ts';
import { heightFromTakeoffVelocity } from './heightFromTakeoffVelocity.ts';

export interface ForceImpulse {
  readonly takeoffVelocity: Quantity<'m/s'>;
  readonly jumpHeight: Quantity<'m'>;
  /** Apex above the place at rest. */
  readonly rise: Quantity<'m'>;
}

type At = { readonly W: number; readonly t_r: number; readonly t_to: number };

/**
 * Take-off velocity and heights by impulse and momentum: v_to = J / m with J = ∫ (F − W) dt from rest to take-off.
 *
 * @returns null where the impulse points down: the stance it starts from was none
 * @source impulse-momentum theorem; Moir 2008, Meas Phys Educ Exerc Sci 12(4):207-218
 */
export function forceImpulse(context: JumpContext, instants: ForceInstants): ForceImpulse | null {
  const { bodyWeight, mass, rest, takeoff, motionOf } = instants;
  const what = { variant: integrationVariant(context), source: INTEGRATION };
  const inputs = { W: bodyWeight, t_r: rest, t_to: takeoff };
  const velocityOf = (at: At) => motionOf(at).velocity(at.t_to);
  const impulseOf = (at: At) => (velocityOf(at) * at.W) / standardGravity.value;
  const placeOf = (at: At) => motionOf(at).position(at.t_to);

  const impulse = derive(
    { ...what, symbol: 'J', name: 'net impulse to take-off', unit: 'N.s', formula: 'J = ∫ (F - W) dt' },
    inputs,
    impulseOf,
  );
  if (!(impulse.value > 0)) return null;
  // Impulse and mass both rest on the body weight: their correlation keeps the uncertainty of the velocity honest.
  const takeoffVelocity = derive(
    { ...what, symbol: 'v_to', name: 'take-off velocity', unit: 'm/s', formula: 'v_to = J / m' },
    { J: impulse, m: mass },
    ({ J, m }) => J / m,
    { 'J|m': correlationOfDerived(inputs, impulseOf, ({ W }) => W) },
  );
  const jumpHeight = heightFromTakeoffVelocity(takeoffVelocity);
  const place = derive(
    {
      ...what,
      symbol: 'x_to',
      name: 'centre of mass above standing at take-off',
      unit: 'm',
      formula: 'x_to = ∫ v dt',
    },
    inputs,
    placeOf,
  );
  const rise = derive(
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
    { 'h|x_to': correlationOfDerived(inputs, placeOf, velocityOf) },
  );
  return { takeoffVelocity, jumpHeight, rise };
}
