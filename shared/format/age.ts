import type { Athlete } from '../model/athlete.ts';

/** Whole years from one day to another, both `2026-11-25` or an instant. Negative if the birth lies after. */
export function ageOn(birthDate: string, on: string): number {
  const years = Number(on.slice(0, 4)) - Number(birthDate.slice(0, 4));
  return on.slice(5, 10) < birthDate.slice(5, 10) ? years - 1 : years;
}

const LEAST_AGES = { 'under-12': 0, '12-15': 12, '16-17': 16, '18-39': 18, '40-64': 40, '65-over': 65 } as const;

/** The lower end of an age band in whole years: where only the band is known, the careful reading. */
export function leastAge(band: Athlete['ageBand']): number | null {
  return band === null ? null : LEAST_AGES[band];
}

/**
 * Reference values of adults are used from 16 (dossier) up to 65: the groups behind them are students, athletes and
 * working-age adults, and where each ends is mostly not printed. The upper end is a convention of the house.
 */
export const ADULT_AGES = { from: 16, to: 65 } as const;

/** Why reference values of adults are not used at this age, in words; null: they are, or the age is not known. */
export function notOfReferenceAge(ageYears: number | null): string | null {
  if (ageYears === null) return null;
  if (ageYears < ADULT_AGES.from) return `reference values come from adults and are not used under ${ADULT_AGES.from}`;
  if (ageYears < ADULT_AGES.to) return null;
  return `reference values come from younger adults and are not used from ${ADULT_AGES.to} on (convention)`;
}
