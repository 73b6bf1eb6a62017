import { DomainError } from '../../errors.ts';
import { measured, type Quantity } from '../../quantity.ts';
import type { Air } from './path.ts';

/** How a ball or implement sets off. Height: of its centre above the floor. */
export interface Release {
  readonly speed: Quantity<'m/s'>;
  /** Above the horizontal, rad; negative: downwards. */
  readonly angle: Quantity<'rad'>;
  readonly height: Quantity<'m'>;
  /** Of the errors of speed and angle, −1 to 1; none where they were found apart. */
  readonly correlation?: number;
}

/** The air around it: null for a vacuum. Both are per metre of path, k = ρ C A/(2m). */
export interface AirQuantities {
  readonly drag: Quantity<'/m'> | null;
  /** Lift by backspin. Off unless someone has measured it. */
  readonly lift: Quantity<'/m'> | null;
}

export const NO_AIR: AirQuantities = { drag: null, lift: null };

const none = measured('k', 'No effect of the air', 0, '/m', 0);

/** The air for `derive`, under the symbols k and l; what is absent counts as exactly 0. */
export function airInputs(air: AirQuantities) {
  return { k: air.drag ?? none, l: air.lift ?? none };
}

/** Inputs of a flight for `derive`, under the symbols v, θ, y_0, k and l. */
export function flightInputs(release: Release, air: AirQuantities) {
  return { v: release.speed, θ: release.angle, y_0: release.height, ...airInputs(air) };
}

/** The same factors, /m, as the path takes them. */
export function airOf({ k, l }: { readonly k: number; readonly l: number }): Air {
  return { drag: k, lift: l };
}

/** Whether closed forms hold: no drag and no lift. */
export function isVacuum(air: AirQuantities): boolean {
  return (air.drag?.value ?? 0) === 0 && (air.lift?.value ?? 0) === 0;
}

/** How many random draws may be spent: one through air costs fifty times one in a vacuum. */
export function drawsIn(air: AirQuantities): { readonly mostDraws: number } {
  return { mostDraws: isVacuum(air) ? 1_000_000 : 20_000 };
}

/** @throws DomainError 'input-out-of-range' for a speed below 0, an angle past vertical or negative drag */
export function refuseImpossibleRelease(name: string, release: Release, air: AirQuantities): void {
  if (!(release.speed.value >= 0)) {
    throw new DomainError('input-out-of-range', `${name} needs a speed of 0 or more, got ${release.speed.value} m/s`);
  }
  if (!(Math.abs(release.angle.value) <= Math.PI / 2)) {
    throw new DomainError(
      'input-out-of-range',
      `${name} needs an angle from -90° to 90° in radians, got ${release.angle.value} rad`,
    );
  }
  if ((air.drag?.value ?? 0) < 0) {
    throw new DomainError('input-out-of-range', `${name} needs a drag factor of 0 or more, got ${air.drag?.value} /m`);
  }
}

/** The formula shown for a flight that has no closed form, and the words beside it. */
export const PATH_FORMULA = 'dv/dt = -g - k |v| v + l |v| v_n';
export const PATH_VARIANT = 'with drag; v_n is v turned by 90°';

export const PATH_SOURCE = {
  cite: 'Newton; quadratic drag. Integrated by ODEX (Hairer, Nørsett & Wanner, Solving Ordinary Differential Equations I), adaptive, relative tolerance 1e-11',
  status: 'derived',
} as const;

export const VACUUM_SOURCE = {
  cite: 'Motion with constant acceleration; as in Brancazio 1981, Am J Phys 49(4):356-365',
  status: 'derived',
} as const;
