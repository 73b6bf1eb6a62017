import type { Quantity, Unknown } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { fitRelease } from '../flight/fitRelease.ts';
import { derive } from '../quantity/derive.ts';
import { flightFrames } from './flightFrames.ts';
import type { Scene } from './scene.ts';

/** The body's free flight, fitted to its centre of mass. */
export interface BodyFlight {
  /** At take-off. */
  readonly verticalVelocity: Quantity<'m/s'>;
  /** At take-off, forward positive. */
  readonly horizontalVelocity: Quantity<'m/s'>;
  /** From take-off to the highest point of the centre of mass. */
  readonly rise: Quantity<'m'>;
  readonly apexTime: Quantity<'s'>;
  readonly apexHeight: Quantity<'m'>;
  readonly warnings: readonly string[];
}

const SOURCE = { cite: 'Constant acceleration from take-off', status: 'derived' } as const;

/**
 * Fits free flight to the centre of mass between take-off and landing (flightFrames),
 * with standard gravity.
 *
 * @source constant acceleration; least squares
 */
export function bodyFlight(view: Scene): BodyFlight | Unknown {
  const flight = flightFrames(view, 'body');
  if ('unknown' in flight) return flight;
  const { samples, begin: takeoff, pointU } = flight;
  const options = { releaseAt: { t: takeoff.value, u: takeoff.u ?? 0 }, scaleU: view.scaleU };
  const fit = fitRelease(samples, pointU, null, { ...options, gravity: 'standard' });
  const vertical = renamed(fit.velocityY, 'Vertical velocity at take-off');
  const timeUp = derive(
    { symbol: 't_a', name: 'From take-off to the highest point', unit: 's', formula: 't_a = v_y / g', source: SOURCE },
    { v_y: vertical, g: standardGravity },
    ({ v_y, g }) => v_y / g,
  );
  const rise = derive(
    {
      symbol: 'h',
      name: 'Rise of the centre of mass after take-off',
      unit: 'm',
      formula: 'h = v_y^2 / (2 g)',
      variant: 'centre of mass from video, v_y at take-off from the fitted flight',
      source: SOURCE,
    },
    { v_y: vertical, g: standardGravity },
    ({ v_y, g }) => (v_y * Math.abs(v_y)) / (2 * g),
  );
  const g = fit.gravity;
  const off = Math.abs(g.value - standardGravity.value);
  return {
    verticalVelocity: vertical,
    horizontalVelocity: derive(
      {
        symbol: 'v_f',
        name: 'Forward velocity at take-off',
        unit: 'm/s',
        formula: view.facing === 1 ? 'v_f = v_x' : 'v_f = -v_x',
        variant: 'forward positive',
        source: SOURCE,
      },
      { v_x: fit.velocityX },
      ({ v_x }) => view.facing * v_x,
    ),
    rise,
    apexTime: derive(
      { symbol: 't', name: 'Highest point of the centre of mass', unit: 's', formula: 't = t_0 + t_a', source: SOURCE },
      { t_0: takeoff, t_a: timeUp },
      // The release instant's own timing shifts t_0 and, through v_y, t_a by opposite amounts: the apex stays put.
      ({ t_0, t_a }) => t_0 + t_a,
      { 't_0|t_a': timeUp.u === null || timeUp.u === 0 ? 0 : -Math.min(1, (takeoff.u ?? 0) / timeUp.u) },
    ),
    apexHeight: derive(
      {
        symbol: 'y_a',
        name: 'Highest point of the centre of mass',
        unit: 'm',
        formula: 'y_a = y_0 + h',
        source: SOURCE,
      },
      { y_0: fit.y, h: rise },
      ({ y_0, h }) => y_0 + h,
    ),
    warnings:
      off > 0.25 * standardGravity.value && off > 2 * (g.u ?? 0)
        ? [
            `The body's centre of mass falls with ${g.value.toFixed(1)} m/s² instead of 9.8: check the scale, the capture rate and the events.`,
          ]
        : [],
  };
}

function renamed<U extends 'm/s'>(quantity: Quantity<U>, name: string): Quantity<U> {
  return { ...quantity, working: { ...quantity.working, name } };
}
