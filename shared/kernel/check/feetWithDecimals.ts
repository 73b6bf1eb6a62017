import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { feetAndInches } from '../../units.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = { cite: '1 ft = 12 in = 0.3048 m, exactly (NIST SP 811)', status: 'published' };

/**
 * Mistake 31: was 6 ft 2 in typed as 6.2 ft? A case keeps metres and forms have two boxes; whatever reads feet from a
 * file or a single box asks this of the text as typed.
 *
 * @param seen feet as typed: `6.2`; null: nothing was given in feet
 * @source NIST SP 811, 1 ft = 12 in
 */
export function feetWithDecimals(seen: {
  readonly typedFeet: string | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'feet-with-decimals', about: seen.about, source: SOURCE };
  const parts = seen.typedFeet === null ? null : /^\s*(\d+)(?:[.,](\d{1,2}))?\s*$/.exec(seen.typedFeet);
  if (parts === null) {
    return cannotTell(base, 'Whether inches were typed as a decimal cannot be told: there is no plain number of feet.');
  }
  const [, feet = '', inches] = parts;
  if (inches === undefined) return fine(base, 'Whole feet were typed.');
  const asDecimal = Number(`${feet}.${inches}`) * 0.3048;
  const count = Number(inches);
  if (count >= 12) return fine(base, `${feet}.${inches} ft can only be a decimal.`);
  const asInches = feetAndInches(Number(feet), count);
  return questioned(
    base,
    `${feet}.${inches} ft is ${asDecimal.toFixed(3)} m; ${feet} ft ${count} in is ${asInches.toFixed(3)} m. Which was meant? Type feet and inches apart.`,
    { label: 'As decimal feet', value: asDecimal, unit: 'm' },
    { label: 'As feet and inches', value: asInches, unit: 'm' },
  );
}
