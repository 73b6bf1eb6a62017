import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { type Correlations, type Derivation, derive, pairKey } from '../quantity/derive.ts';
import { standardNormal } from './distribution.ts';
import { monteCarlo } from './monteCarlo.ts';
import type { MonteCarloOptions, MonteCarloResult } from './monteCarloTogether.ts';

const FIRST_DRAWS = 1000;

type Values<I> = { readonly [K in keyof I]: number };

/**
 * As `derive`, with the uncertainty from random draws in place of first-order propagation: for formulas that bend over
 * the width of their inputs. Inputs are taken as normal, correlated as given.
 *
 * @param random uniform, 0 ≤ value < 1; use seededRandom, so that the same case gives the same number
 * @param options `mayLeaveOut`: share of the draws in which the formula may have no value; they are left out (none unless given)
 * @returns the quantity (value at the inputs themselves, u the standard deviation of the draws) and the distribution,
 *   which is null where an input has no uncertainty. Where `distribution.mean` lies off the value, the formula is biased
 * @throws DomainError as derive; 'input-out-of-range' where correlations contradict each other or a draw has no value
 * @source JCGM 101:2008, 6.4.8 (multivariate normal), 7
 */
export function deriveByMonteCarlo<U extends Unit, I extends Readonly<Record<string, Quantity>>>(
  what: Derivation<U>,
  inputs: I,
  f: (values: Values<I>) => number,
  random: () => number,
  options: MonteCarloOptions & { readonly correlations?: Correlations; readonly mayLeaveOut?: number } = {},
): { readonly quantity: Quantity<U>; readonly distribution: MonteCarloResult | null } {
  const first = derive(what, inputs, f, options.correlations);
  const names = Object.keys(inputs) as (keyof I & string)[];
  const us = names.map((name) => (inputs[name] as Quantity).u);
  if (us.some((u) => u === null)) return { quantity: first, distribution: null };

  const lower = lowerTriangle(names, options.correlations ?? {});
  const normal = standardNormal(random);
  const z = new Float64Array(names.length);
  const values = Object.fromEntries(names.map((name) => [name, (inputs[name] as Quantity).value]));
  const mayLeaveOut = options.mayLeaveOut ?? 0;
  let [drawn, without] = [0, 0];
  const evaluate = () => {
    for (let k = 0; k < z.length; k++) z[k] = normal();
    const at: Record<string, number> = {};
    names.forEach((name, row) => {
      let sum = 0;
      for (let k = 0; k <= row; k++) sum += lower.get(row, k) * (z[k] as number);
      at[name] = (values[name] as number) + (us[row] as number) * sum;
    });
    return f(at as Values<I>);
  };
  const distribution = monteCarlo(() => {
    for (;;) {
      drawn += 1;
      const value = evaluate();
      if (Number.isFinite(value)) return value;
      without += 1;
      // Judged once there are enough draws to tell; until then a tail may come early by chance.
      if (mayLeaveOut === 0 || (drawn >= FIRST_DRAWS && without > mayLeaveOut * drawn)) return value;
    }
  }, options);
  return { quantity: { ...first, u: distribution.sd, uReason: null }, distribution };
}

function lowerTriangle(names: readonly string[], correlations: Correlations): Matrix {
  const matrix = new Matrix(names.map((a) => names.map((b) => (a === b ? 1 : (correlations[pairKey(a, b)] ?? 0)))));
  const cholesky = new CholeskyDecomposition(matrix);
  if (!cholesky.isPositiveDefinite()) {
    throw new DomainError(
      'input-out-of-range',
      'deriveByMonteCarlo needs correlations that can hold together, below 1 in size',
    );
  }
  return cholesky.lowerTriangularMatrix;
}
