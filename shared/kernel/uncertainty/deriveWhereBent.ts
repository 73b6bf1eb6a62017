import { DomainError } from '../../errors.ts';
import type { Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { type Correlations, type Derivation, derive } from '../quantity/derive.ts';
import { deriveByMonteCarlo } from './deriveByMonteCarlo.ts';
import type { MonteCarloOptions } from './monteCarloTogether.ts';
import { seededRandom } from './seededRandom.ts';

type Values<I> = { readonly [K in keyof I]: number };

/** A second-order part of more than this share of u is no longer near linear: a convention. */
const BENT = 0.1;
/** Share of the draws that may have no value, because a tail reaches past an edge of the formula: a convention. */
export const MAY_LEAVE_OUT = 0.01;
/** Relative; where nothing is uncertain, the rounding of an integrated path must not count as a bend. */
const ROUNDING = 1e-9;

/**
 * As `derive`, but where the formula bends over the width of its inputs its uncertainty comes from random draws: the
 * second-order part ½[f(x + u) − 2 f(x) + f(x − u)] of every input is set against the first-order uncertainty.
 *
 * @param options `seed`: the same gives the same number
 * @returns no uncertainty, and why, where the formula has no value in more than 1 % of the draws
 * @throws DomainError as derive
 * @source JCGM 100:2008, 5.1.2 note (when higher-order terms count); JCGM 101:2008, 7
 */
export function deriveWhereBent<U extends Unit, I extends Readonly<Record<string, Quantity>>>(
  what: Derivation<U>,
  inputs: I,
  f: (values: Values<I>) => number,
  options: MonteCarloOptions & { readonly correlations?: Correlations; readonly seed?: number } = {},
): Quantity<U> {
  const first = derive(what, inputs, f, options.correlations);
  const values = Object.fromEntries(Object.entries(inputs).map(([name, { value }]) => [name, value])) as Values<I>;
  const isOff = Object.values(inputs).some(({ u }) => u === null);
  if (
    isOff ||
    (first.u !== null &&
      secondOrder(inputs, values, f, first.value) <= BENT * first.u + ROUNDING * Math.abs(first.value))
  )
    return first;
  try {
    const { seed = 1, ...rest } = options;
    const { quantity, distribution } = deriveByMonteCarlo(what, inputs, f, seededRandom(seed), {
      ...rest,
      mayLeaveOut: MAY_LEAVE_OUT,
    });
    const variant = [what.variant, `u from ${distribution?.draws} random draws, since the formula bends`];
    return {
      ...quantity,
      working: { ...quantity.working, variant: variant.filter((words) => words !== undefined).join('; ') },
    };
  } catch (thrown) {
    if (!(thrown instanceof DomainError)) throw thrown;
    return { ...first, u: null, uReason: 'the formula has no value for much of what its inputs may truly be' };
  }
}

function secondOrder<I extends Readonly<Record<string, Quantity>>>(
  inputs: I,
  values: Values<I>,
  f: (values: Values<I>) => number,
  middle: number,
): number {
  const parts = Object.entries(inputs).map(([name, { value, u }]) => {
    if (u === null || u === 0) return 0;
    return (f({ ...values, [name]: value + u }) - 2 * middle + f({ ...values, [name]: value - u })) / 2;
  });
  return Math.hypot(...parts);
}
