import { DomainError } from '../../errors.ts';
import type { Comparator } from '../rule.ts';
import type { Limits } from './compare.ts';

/**
 * Chance that the true value meets the test, if the reading is normally distributed about it with standard deviation
 * `sigma`. Same unit for all; 0 to 1. With sigma 0 it is 0 or 1.
 * @throws DomainError 'input-out-of-range' if sigma is negative or anything is not finite
 * @source JCGM 106:2012, 7.2 and 7.3 (conformance probability with a normal distribution)
 */
export function chancePast(value: number, sigma: number, comparator: Comparator, limits: Limits): number {
  if (![value, sigma, ...limits].every(Number.isFinite) || sigma < 0) {
    throw new DomainError(
      'input-out-of-range',
      `chancePast needs finite numbers and sigma ≥ 0, got ${value} ± ${sigma}`,
    );
  }
  const below = (limit: number): number => normalBelow(limit, value, sigma);
  const [low, high] = limits;
  switch (comparator) {
    case '<':
    case '<=':
      return below(low);
    case '>':
    case '>=':
      return 1 - below(low);
    case 'between':
      return below(high ?? low) - below(low);
    case 'outside':
      return 1 - (below(high ?? low) - below(low));
    case 'is':
      return value === low ? 1 : 0;
  }
}

function normalBelow(limit: number, mean: number, sigma: number): number {
  if (sigma === 0) return mean <= limit ? 1 : 0;
  return standardNormal((limit - mean) / sigma);
}

/** Abramowitz & Stegun 1964, 26.2.17: absolute error under 7.5e-8, far below anything shown. */
function standardNormal(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z >= 0 ? 1 - tail : tail;
}
