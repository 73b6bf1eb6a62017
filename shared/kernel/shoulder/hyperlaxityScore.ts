import { LAXITY_SIGNS, type LaxitySign } from '../../model/shoulder.ts';

/** Points out of nine; null while any sign is unanswered. */
export interface Points {
  readonly points: number | null;
  /** What is still missing, by name. */
  readonly missing: readonly string[];
}

/**
 * Points of generalised joint laxity: one for each of nine signs (four on each side, one of both). No part-score.
 *
 * @returns 0 to 9
 * @source the nine-point score; cut-offs by age in Malfait 2017, Am J Med Genet C 175:8
 */
export function hyperlaxityScore(signs: Readonly<Record<LaxitySign, boolean | null>>): Points {
  const missing = LAXITY_SIGNS.filter((sign) => signs[sign] === null);
  return { points: missing.length > 0 ? null : LAXITY_SIGNS.filter((sign) => signs[sign] === true).length, missing };
}
