import { DomainError } from '../../errors.ts';
import type { Points } from './hyperlaxityScore.ts';

export interface SeverityItems {
  readonly ageAtSurgeryYears: number | null;
  readonly isCompetitive: boolean | null;
  readonly isContactOrOverhead: boolean | null;
  readonly isHyperlaxShoulder: boolean | null;
  /** Dent of the upper arm's head on the front film in external rotation. */
  readonly headDentVisible: boolean | null;
  /** Loss of the lower outline of the socket on the front film. */
  readonly lowerOutlineLost: boolean | null;
}

/** Points of each item but the age. */
const POINTS = {
  isCompetitive: 2,
  isContactOrOverhead: 1,
  isHyperlaxShoulder: 1,
  headDentVisible: 2,
  lowerOutlineLost: 2,
} as const;

/**
 * The surgeon's severity index of an unstable shoulder, 0 to 10: age at surgery of 20 or less 2, competitive sport 2,
 * contact or forced overhead sport 1, lax shoulder 1, dent of the head 2, outline of the socket lost 2. No part-score:
 * without the films there is none. A total, never advice.
 *
 * @throws DomainError 'input-out-of-range' for an age no one has
 * @source Balg & Boileau 2007, J Bone Joint Surg Br 89:1470; points by item as reprinted in Clin Orthop Surg 2019;11:445
 */
export function severityIndex(items: SeverityItems): Points {
  const { ageAtSurgeryYears } = items;
  if (ageAtSurgeryYears !== null && !(ageAtSurgeryYears >= 0 && ageAtSurgeryYears <= 120)) {
    throw new DomainError(
      'input-out-of-range',
      `severityIndex needs an age from 0 to 120 years, and got ${ageAtSurgeryYears}.`,
    );
  }
  const named = Object.entries(POINTS) as [keyof typeof POINTS, number][];
  const missing = [
    ...(ageAtSurgeryYears === null ? ['ageAtSurgeryYears'] : []),
    ...named.filter(([item]) => items[item] === null).map(([item]) => item),
  ];
  const points = named.reduce((sum, [item, worth]) => sum + (items[item] === true ? worth : 0), 0);
  return { points: missing.length > 0 ? null : points + ((ageAtSurgeryYears ?? 99) <= 20 ? 2 : 0), missing };
}
