import type { Source } from '../../quantity.ts';

/**
 * Regression equations that predict the power of a jump from its height, each under its own name. As published they take
 * the height in centimetres: P = a h + b m (+ c stature) + d. Coefficients of a: W/cm, b: W/kg, d: W.
 */
export interface PowerEquation {
  readonly id: string;
  readonly name: string;
  readonly predicts: 'peak' | 'mean';
  readonly perCentimetre: number;
  readonly perKilogram: number;
  readonly constant: number;
  /** Whom and which jump it was made on; shown beside every result. */
  readonly validFor: string;
  readonly source: Source;
}

const SAYERS = 'Sayers et al. 1999, Medicine & Science in Sports & Exercise 31(4):572-577';
const CHECKED = 'coefficients checked against the group means of Canavan & Vescovi 2004';

export const POWER_EQUATIONS = [
  {
    id: 'sayers-squat',
    name: 'peak power, squat-jump equation of Sayers et al.',
    predicts: 'peak',
    perCentimetre: 60.7,
    perKilogram: 45.3,
    constant: -2055,
    validFor: 'students and athletes of both sexes; squat jump, jump and reach',
    source: { cite: `${SAYERS}; ${CHECKED}`, status: 'published' },
  },
  {
    id: 'sayers-countermovement',
    name: 'peak power, countermovement equation of Sayers et al.',
    predicts: 'peak',
    perCentimetre: 51.9,
    perKilogram: 48.9,
    constant: -2007,
    validFor: 'students and athletes of both sexes; countermovement jump, jump and reach',
    source: { cite: `${SAYERS}, from memory; ${CHECKED}`, status: 'from memory' },
  },
  {
    id: 'harman-peak',
    name: 'peak power, equation of Harman et al.',
    predicts: 'peak',
    perCentimetre: 61.9,
    perKilogram: 36,
    constant: -1822,
    validFor: 'a small group of men; squat jump, jump and reach',
    source: {
      cite: `Harman et al. 1991, Journal of Applied Sport Science Research 5(3):116-120 (citation from memory); ${CHECKED}, which settles the sign of the constant`,
      status: 'from memory',
    },
  },
  {
    id: 'harman-mean',
    name: 'mean power, equation of Harman et al.',
    predicts: 'mean',
    perCentimetre: 21.2,
    perKilogram: 23,
    constant: -1393,
    validFor: 'a small group of men; squat jump, jump and reach',
    source: {
      cite: 'Harman et al. 1991, Journal of Applied Sport Science Research 5(3):116-120, from memory',
      status: 'from memory',
    },
  },
  {
    id: 'canavan-vescovi',
    name: 'peak power, equation of Canavan and Vescovi',
    predicts: 'peak',
    perCentimetre: 65.1,
    perKilogram: 25.8,
    constant: -1413.1,
    validFor: 'young women; countermovement jump',
    source: {
      cite: 'Canavan & Vescovi 2004, Medicine & Science in Sports & Exercise 36(9):1589-1593',
      status: 'published',
    },
  },
] as const satisfies readonly PowerEquation[];

export type PowerEquationId = (typeof POWER_EQUATIONS)[number]['id'];
