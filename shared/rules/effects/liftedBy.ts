import type { Injury } from '../../model/injury.ts';

/**
 * Why the limits of an injury no longer hold, in words; null while they do. `resolved` alone lifts nothing: someone
 * must have cleared it, on a day, and not before it happened.
 */
export function liftedBy(injury: Injury): string | null {
  if (injury.status !== 'resolved' || injury.clearedBy.trim() === '' || injury.clearedOn === null) return null;
  if (injury.onset !== null && injury.clearedOn < injury.onset) return null;
  return `cleared by ${injury.clearedBy.trim()} on ${injury.clearedOn}`;
}
