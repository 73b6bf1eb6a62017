import { DomainError } from '../../errors.ts';

/** What is known about an input, as a probability density (JCGM 101:2008, table 1). */
export type Distribution =
  | { readonly kind: 'normal'; readonly mean: number; readonly sd: number }
  | { readonly kind: 'rectangular' | 'triangular' | 'arcsine'; readonly low: number; readonly high: number }
  /** A rectangle whose limits are known only to within ± `vagueness`. */
  | {
      readonly kind: 'curvilinear-trapezoid';
      readonly low: number;
      readonly high: number;
      readonly vagueness: number;
    }
  /** Scaled and shifted: what n = degrees + 1 readings tell. */
  | { readonly kind: 't'; readonly centre: number; readonly scale: number; readonly degrees: number };

/**
 * A source of draws from a distribution.
 *
 * @param random uniform, 0 ≤ value < 1
 * @throws DomainError 'input-out-of-range' for parameters that describe no distribution
 * @source JCGM 101:2008, 6.4
 */
export function drawsFrom(distribution: Distribution, random: () => number): () => number {
  if (!isSound(distribution)) {
    throw new DomainError('input-out-of-range', `drawsFrom needs a distribution, got ${JSON.stringify(distribution)}`);
  }
  switch (distribution.kind) {
    case 'normal': {
      const { mean, sd } = distribution;
      const normal = standardNormal(random);
      return () => mean + sd * normal();
    }
    case 'rectangular': {
      const { low, high } = distribution;
      return () => low + (high - low) * random();
    }
    case 'triangular': {
      const { low, high } = distribution;
      return () => low + ((high - low) / 2) * (random() + random());
    }
    case 'arcsine': {
      const { low, high } = distribution;
      return () => (low + high) / 2 + ((high - low) / 2) * Math.sin(2 * Math.PI * random());
    }
    case 'curvilinear-trapezoid': {
      const { low, high, vagueness } = distribution;
      return () => {
        const start = low - vagueness + 2 * vagueness * random();
        return start + (low + high - 2 * start) * random();
      };
    }
    case 't': {
      const { centre, scale, degrees } = distribution;
      const normal = standardNormal(random);
      return () => {
        let squares = 0;
        for (let k = 0; k < degrees; k++) squares += normal() ** 2;
        return centre + (scale * normal()) / Math.sqrt(squares / degrees);
      };
    }
  }
}

/** Box and Muller: two normals from two uniforms (JCGM 101:2008, C.4). */
export function standardNormal(random: () => number): () => number {
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    // 1 − r lies above 0, so that the logarithm is finite.
    const radius = Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

function isSound(distribution: Distribution): boolean {
  const numbers = Object.values(distribution).filter((value) => typeof value === 'number');
  if (!numbers.every(Number.isFinite)) return false;
  switch (distribution.kind) {
    case 'normal':
      return distribution.sd >= 0;
    case 't':
      return distribution.scale >= 0 && Number.isInteger(distribution.degrees) && distribution.degrees >= 1;
    case 'curvilinear-trapezoid':
      return distribution.vagueness >= 0 && distribution.high - distribution.low >= 2 * distribution.vagueness;
    default:
      return distribution.high >= distribution.low;
  }
}
