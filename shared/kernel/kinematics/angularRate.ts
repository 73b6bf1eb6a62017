import { measured, type Quantity } from '../../quantity.ts';
import { unwrap } from '../angle/unwrap.ts';
import type { PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { noiseLeft } from '../signal/noiseLeft.ts';

const RATES = {
  1: { symbol: 'ω', what: 'angular velocity', unit: 'rad/s', formula: 'ω = (φ_3 - φ_1) / (2 Δt) + ε' },
  2: { symbol: 'α', what: 'angular acceleration', unit: 'rad/s2', formula: 'α = (φ_3 - 2 φ_2 + φ_1) / Δt^2 + ε' },
} as const;

/**
 * Angular velocity (order 1) or acceleration (order 2) at the middle of three smoothed angles, by central differences,
 * across ±180° too. Its uncertainty is what the filter and the differences leave of the error of one angle as digitised;
 * what the filter rounds off a fast movement is not in it.
 *
 * @param angles rad, one frame apart, low-passed at `cutoffHz`
 * @param rateHz frames a second, > 0
 * @param cutoffHz of the filter they went through; null: none
 * @param angleU standard uncertainty of one angle before the filter, rad, or why there is none
 * @param name of the angle
 * @returns rad/s or rad/s²; positive where the angle grows
 * @throws DomainError 'input-out-of-range'
 * @source central differences; noiseLeft
 */
export function angularRate<O extends 1 | 2>(
  angles: readonly [number, number, number],
  rateHz: number,
  cutoffHz: number | null,
  order: O,
  angleU: PointU,
  name: string,
): Quantity<(typeof RATES)[O]['unit']> {
  const { symbol, what, unit, formula } = RATES[order];
  const [first, middle, last] = unwrap(angles) as [number, number, number];
  const left = typeof angleU === 'number' ? angleU * noiseLeft(rateHz, cutoffHz, order) : angleU;
  const angle = (i: number, value: number) => measured(`φ_${i}`, `${name}, frame ${i} of 3`, value, 'rad', 0);
  return derive(
    {
      symbol,
      name: `${name}: ${what}`,
      unit,
      formula,
      variant: `central difference, ${smoothing(cutoffHz)}`,
      source: {
        cite: 'Central differences; variance of a linear combination (JCGM 100:2008, 5.1.2)',
        status: 'derived',
      },
    },
    {
      φ_1: angle(1, first),
      φ_2: angle(2, middle),
      φ_3: angle(3, last),
      Δt: measured('Δt', 'From frame to frame', 1 / rateHz, 's', 0),
      ε: measured('ε', 'What filter and differences leave of the error of digitising', 0, unit, left),
    },
    ({ φ_1, φ_2, φ_3, Δt, ε }) => (order === 1 ? (φ_3 - φ_1) / (2 * Δt) + ε : (φ_3 - 2 * φ_2 + φ_1) / (Δt * Δt) + ε),
  );
}

/** How the values before the differences were smoothed, in words for a variant. */
export function smoothing(cutoffHz: number | null): string {
  return cutoffHz === null ? 'not filtered' : `after a low-pass of ${Number(cutoffHz.toPrecision(3))} Hz`;
}
