import type { Quantity } from '../../quantity.ts';
import { type Correlations, pairKey } from './derive.ts';

type Values<I> = { readonly [K in keyof I]: number };

/**
 * Correlation coefficient of two quantities derived from the same inputs, for passing on to `derive`.
 *
 * cov(y, z) = Σᵢ Σⱼ cᵢ uᵢ dⱼ uⱼ rᵢⱼ, divided by u(y) u(z) (JCGM 100:2008, F.1.2.3 and H.2.3), with cᵢuᵢ taken as half
 * the change of the function from one standard uncertainty below the input to one above.
 *
 * @returns −1 to 1; 0 where either has no uncertainty
 * @source JCGM 100:2008, F.1.2.3 and H.2.3
 */
export function correlationOfDerived<I extends Readonly<Record<string, Quantity>>>(
  inputs: I,
  f: (values: Values<I>) => number,
  g: (values: Values<I>) => number,
  correlations: Correlations = {},
): number {
  const names = Object.keys(inputs) as (keyof I & string)[];
  const values = Object.fromEntries(names.map((name) => [name, (inputs[name] as Quantity).value])) as Values<I>;
  const contributions = (of: (values: Values<I>) => number) =>
    names.map((name) => {
      const { value, u } = inputs[name] as Quantity;
      if (!u) return 0;
      return (of({ ...values, [name]: value + u }) - of({ ...values, [name]: value - u })) / 2;
    });
  const a = contributions(f);
  const b = contributions(g);
  const covariance = (x: readonly number[], y: readonly number[]) => {
    let sum = 0;
    names.forEach((first, i) => {
      names.forEach((second, j) => {
        const r = i === j ? 1 : (correlations[pairKey(first, second)] ?? 0);
        sum += (x[i] as number) * (y[j] as number) * r;
      });
    });
    return sum;
  };
  const scale = Math.sqrt(covariance(a, a) * covariance(b, b));
  return scale > 0 ? Math.max(-1, Math.min(1, covariance(a, b) / scale)) : 0;
}
