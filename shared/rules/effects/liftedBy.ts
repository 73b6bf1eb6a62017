import type { Injury } from '../../model/injury.ts';

/**
 * Why the limits of an injury no longer hold, in words; null while they do. `resolved` alone lifts nothing: someone
 * must have cleared it, on a day, not before it happened, and not until a day that is over.
 * @param asOf the day that is asked about; null: not known, and a clearance that ends may then have ended
 */
export function liftedBy(injury: Injury, asOf: string | null): string | null {
  const { status, clearedBy, clearedOn, clearedUntil, onset } = injury;
  if (status !== 'resolved' || clearedBy.trim() === '' || clearedOn === null) return null;
  if (onset !== null && clearedOn < onset) return null;
  if (hasEnded(injury, asOf)) return null;
  const until = clearedUntil === null ? '' : `, until ${clearedUntil}`;
  return `cleared by ${clearedBy.trim()} on ${clearedOn}${until}`;
}

/** Whether a clearance is over; one that ends may be, on a day that is not known. */
export function hasEnded({ clearedUntil }: Injury, asOf: string | null): boolean {
  return clearedUntil !== null && (asOf === null || asOf > clearedUntil);
}
