import { DomainError } from '../../errors.ts';

/**
 * How steep a segment looks when its own plane is turned about the vertical: tan α' = tan α / cos θ. It always looks
 * steeper than it is.
 *
 * @param inclination α, rad above the horizontal, −π/2 to π/2
 * @param turn θ, rad, −π/2 to π/2, both ends excluded
 * @returns α', rad
 * @throws DomainError 'input-out-of-range' outside those ranges
 * @source parallel projection
 */
export function apparentInclination(inclination: number, turn: number): number {
  if (!(Math.abs(turn) < Math.PI / 2 && Math.abs(inclination) <= Math.PI / 2)) {
    throw new DomainError(
      'input-out-of-range',
      `apparentInclination needs an inclination of at most 90° and a turn of less than 90°, got ${inclination} and ${turn} rad`,
    );
  }
  return Math.atan2(Math.sin(inclination), Math.cos(inclination) * Math.cos(turn));
}
