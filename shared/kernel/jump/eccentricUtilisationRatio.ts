import type { Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

/**
 * Countermovement jump height over squat jump height. A description, not a mark of quality: its use as one is doubted
 * (Kozinc, Pleša & Šarabon 2021, IJERPH 18(22):11754).
 *
 * @param countermovement m, > 0
 * @param squat m, > 0, measured the same way
 * @returns a ratio without unit
 * @throws DomainError 'input-out-of-range' if either is not above zero
 * @source McGuigan et al. 2006, J Strength Cond Res 20(4):992-995
 */
export function eccentricUtilisationRatio(countermovement: Quantity<'m'>, squat: Quantity<'m'>): Quantity<'1'> {
  requirePositive('eccentricUtilisationRatio', countermovement, squat);
  return derive(
    {
      symbol: 'EUR',
      name: 'eccentric utilisation ratio',
      unit: '1',
      formula: 'EUR = h_CMJ / h_SJ',
      source: {
        cite: 'McGuigan et al. 2006, Journal of Strength and Conditioning Research 20(4):992-995',
        status: 'published',
      },
    },
    { h_CMJ: countermovement, h_SJ: squat },
    ({ h_CMJ, h_SJ }) => h_CMJ / h_SJ,
  );
}
