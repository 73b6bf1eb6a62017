import { DomainError } from '../../errors.ts';
import type { Quantity, Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';

export interface Derivation<U extends Unit> {
  readonly symbol: string;
  readonly name: string;
  readonly unit: U;
  /** Linear notation: `h = g t^2 / 8`. Symbols are those of the inputs. */
  readonly formula: string;
  readonly variant?: string;
  readonly source: Source;
}

/** Correlation coefficients between inputs, by the two symbols in alphabetical order: `{ 'I|V': -0.36 }`. */
export type Correlations = Readonly<Record<string, number>>;

/** Key of two inputs in Correlations. */
export function pairKey(a: string, b: string): string {
  return a < b ? `${a}|${b}` : `${b}|${a}`;
}

type Values<I> = { readonly [K in keyof I]: number };

/**
 * Computes a quantity from others: its value, its standard uncertainty by first-order propagation, and its working.
 *
 * u² = Σ cᵢ² uᵢ² + 2 ΣΣ cᵢ cⱼ uᵢ uⱼ rᵢⱼ, where cᵢuᵢ is taken as [f(xᵢ+uᵢ) − f(xᵢ−uᵢ)] / 2
 * (JCGM 100:2008, 5.1.2, 5.1.3 note 2 and 5.2.2). Where f bends strongly over ±u use Monte Carlo instead.
 *
 * If any input has no uncertainty the result has none either, and says which input is to blame.
 * @throws DomainError 'input-out-of-range' if an input or the result is not finite
 * @source JCGM 100:2008, 5.1 and 5.2
 */
export function derive<U extends Unit, I extends Readonly<Record<string, Quantity>>>(
  what: Derivation<U>,
  inputs: I,
  f: (values: Values<I>) => number,
  correlations: Correlations = {},
): Quantity<U> {
  const names = Object.keys(inputs) as (keyof I & string)[];
  const values: Record<string, number> = {};
  for (const name of names) {
    const value = (inputs[name] as Quantity).value;
    if (!Number.isFinite(value)) {
      throw new DomainError('input-out-of-range', `${what.name} needs a finite ${name}, got ${value}`);
    }
    values[name] = value;
  }
  const value = f(values as Values<I>);
  if (!Number.isFinite(value)) {
    throw new DomainError(
      'input-out-of-range',
      `${what.name} has no finite value for ${names.map((name) => `${name} = ${values[name]}`).join(', ')}`,
    );
  }

  const without = names.find((name) => (inputs[name] as Quantity).u === null);
  const working = {
    symbol: what.symbol,
    name: what.name,
    formula: what.formula,
    inputs: names.map((symbol) => ({ symbol, quantity: inputs[symbol] as Quantity })),
    variant: what.variant ?? null,
    source: what.source,
  };
  if (without !== undefined) {
    const input = inputs[without] as Quantity;
    return { value, unit: what.unit, u: null, uReason: `${input.working.name} has none: ${input.uReason}`, working };
  }

  const contributions = names.map((name) => {
    const u = (inputs[name] as Quantity).u ?? 0;
    if (u === 0) return 0;
    const x = values[name] as number;
    const above = f({ ...values, [name]: x + u } as Values<I>);
    const below = f({ ...values, [name]: x - u } as Values<I>);
    return (above - below) / 2;
  });
  let variance = 0;
  contributions.forEach((ci, i) => {
    variance += ci * ci;
    contributions.slice(i + 1).forEach((cj, offset) => {
      variance += 2 * ci * cj * (correlations[pairKey(String(names[i]), String(names[i + 1 + offset]))] ?? 0);
    });
  });
  if (!Number.isFinite(variance)) {
    return {
      value,
      unit: what.unit,
      u: null,
      uReason: 'the formula has no value one standard uncertainty away from an input',
      working,
    };
  }
  const inputsThatMove = working.inputs.map((input, i) => ({ ...input, moves: Math.abs(contributions[i] ?? 0) }));
  return {
    value,
    unit: what.unit,
    u: Math.sqrt(Math.max(0, variance)),
    uReason: null,
    working: { ...working, inputs: inputsThatMove },
  };
}
