import type { Quantity } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Smallest change worth having: a fifth of the spread between people. A convention about size, not about what can be
 * detected; compare it with the minimal detectable change.
 *
 * @param deviation standard deviation between people, > 0
 * @returns in its unit
 * @throws DomainError 'input-out-of-range'
 * @source a fifth of the spread: Cohen, as used by Hopkins (from memory)
 */
export function smallestWorthwhileChange<U extends Unit>(deviation: Quantity<U>): Quantity<U> {
  requirePositive('smallestWorthwhileChange', deviation);
  return derive(
    {
      symbol: 'SWC',
      name: 'smallest worthwhile change',
      unit: deviation.unit,
      formula: 'SWC = 0.2 SD',
      variant: 'a fifth of the spread between people',
      source: {
        cite: 'Small effect of 0.2 standard deviations, Cohen; as used by Hopkins (from memory)',
        status: 'convention',
      },
    },
    { SD: deviation },
    ({ SD }) => 0.2 * SD,
  );
}
