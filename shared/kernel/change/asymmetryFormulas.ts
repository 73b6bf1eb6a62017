import type { Source } from '../../quantity.ts';

/**
 * Formulas for the difference between two sides, each under its own name: one pair of values gives 8.4, 4.4, 8.8 or
 * 2.8 % by different ones, so the name is always shown. `a` is the side named first (stronger, dominant or right), `b`
 * the other. Results are plain ratios; times 100 for per cent.
 */
export interface AsymmetryFormula {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly formula: string;
  readonly compute: (a: number, b: number) => number;
  /** Value where both sides are equal. */
  readonly even: 0 | 1;
  readonly source: Source;
}

const bishop2016 = 'reviewed by Bishop, Read, Chavda & Turner 2016, Strength and Conditioning Journal 38(6):27-32';

export const ASYMMETRY_FORMULAS = [
  {
    id: 'percentage-difference',
    name: 'percentage difference between sides',
    symbol: 'PD',
    formula: 'PD = (max(a, b) - min(a, b)) / max(a, b)',
    compute: (a, b) => (Math.max(a, b) - Math.min(a, b)) / Math.max(a, b),
    even: 0,
    source: {
      cite: 'Bishop, Read, Lake, Chavda & Turner 2018, Strength and Conditioning Journal 40(4):1-6, for one-leg tests (from memory)',
      status: 'from memory',
    },
  },
  {
    id: 'bilateral-index',
    name: 'bilateral asymmetry index',
    symbol: 'BAI',
    formula: 'BAI = (a - b) / (a + b)',
    compute: (a, b) => (a - b) / (a + b),
    even: 0,
    source: { cite: `${bishop2016}; for two-leg tests (from memory)`, status: 'from memory' },
  },
  {
    id: 'symmetry-index',
    name: 'symmetry index',
    symbol: 'SI',
    formula: 'SI = 2 (a - b) / (a + b)',
    compute: (a, b) => (2 * (a - b)) / (a + b),
    even: 0,
    source: { cite: 'Robinson, Herzog & Nigg 1987 (difference over the mean of both sides)', status: 'published' },
  },
  {
    id: 'limb-symmetry',
    name: 'limb symmetry index',
    symbol: 'LSI',
    formula: 'LSI = b / a',
    compute: (a, b) => b / a,
    even: 1,
    source: { cite: `${bishop2016} (formula from memory)`, status: 'from memory' },
  },
  {
    id: 'symmetry-angle',
    name: 'symmetry angle',
    symbol: 'SA',
    formula: 'SA = (π / 4 - atan(b / a)) / (π / 2)',
    compute: (a, b) => (Math.PI / 4 - Math.atan(b / a)) / (Math.PI / 2),
    even: 0,
    source: { cite: 'Zifchock, Davis, Higginson & Royer 2008, Gait & Posture (from memory)', status: 'from memory' },
  },
  {
    id: 'log-ratio',
    name: 'logarithmic ratio of sides',
    symbol: 'LR',
    formula: 'LR = log(a / b)',
    compute: (a, b) => Math.log(a / b),
    even: 0,
    source: {
      cite: 'Natural logarithm of the ratio; the same size for a gain and the loss that undoes it',
      status: 'derived',
    },
  },
] as const satisfies readonly AsymmetryFormula[];

export type AsymmetryId = (typeof ASYMMETRY_FORMULAS)[number]['id'];
