import { DomainError } from '../../errors.ts';

/**
 * Coverage factor: the quantile t_p(ν) of Student's distribution that holds the probability p between −t and +t.
 *
 * @param probability 0 to 1, exclusive
 * @param degrees of freedom, ≥ 1; a fraction is cut down to the integer below (JCGM 100:2008, G.4.1); Infinity gives
 *   the normal distribution to five digits
 * @returns ratio without unit, > 0
 * @throws DomainError 'input-out-of-range'
 * @source JCGM 100:2008, G.3 and table G.2; finite series of Abramowitz & Stegun 1964, 26.7.3 and 26.7.4
 */
export function coverageFactor(probability: number, degrees: number): number {
  if (!(probability > 0 && probability < 1) || !(degrees >= 1)) {
    throw new DomainError(
      'input-out-of-range',
      `coverageFactor needs a probability between 0 and 1 and at least 1 degree of freedom, got ${probability} and ${degrees}`,
    );
  }
  // With 100 000 degrees the quantile is that of the normal distribution to within 0.002 %.
  const nu = Math.floor(Math.min(degrees, 1e5) + 1e-9);
  let [low, high] = [0, 1];
  while (between(high, nu) < probability) high *= 2;
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (between(middle, nu) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability between −t and +t for a whole number of degrees of freedom. */
function between(t: number, nu: number): number {
  const theta = Math.atan(t / Math.sqrt(nu));
  const cos2 = Math.cos(theta) ** 2;
  const isOdd = nu % 2 === 1;
  let term = isOdd ? Math.cos(theta) : 1;
  let sum = nu === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= nu - 2; k += 2) {
    term *= (cos2 * (k - 1)) / k;
    sum += term;
  }
  const series = Math.sin(theta) * sum;
  return isOdd ? (2 / Math.PI) * (theta + series) : series;
}
