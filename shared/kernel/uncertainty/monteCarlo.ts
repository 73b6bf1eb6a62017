import { type MonteCarloOptions, type MonteCarloResult, monteCarloTogether } from './monteCarloTogether.ts';

/**
 * Distribution of a model's result by random draws, adaptively: batches until mean, standard deviation and the ends of
 * the coverage interval are each settled to the digits asked for.
 *
 * @param draw one draw: the model evaluated for inputs drawn at random
 * @returns in the unit of the model's result
 * @throws DomainError 'input-out-of-range' for a coverage outside 0 to 1 or a draw that is not finite
 * @source JCGM 101:2008, 7.5 to 7.9
 */
export function monteCarlo(draw: () => number, options: MonteCarloOptions = {}): MonteCarloResult {
  const [result] = monteCarloTogether(
    1,
    (into) => {
      into[0] = draw();
    },
    options,
  );
  // One result was asked for.
  return result as MonteCarloResult;
}
