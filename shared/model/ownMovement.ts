import { z } from 'zod';
import { id, line } from './parts.ts';

/**
 * A movement built in a case by its user: instants, the phases they bound, and what to measure in each. A trial is of it
 * when its `movementId` is this id. Stored at every step of building, so it may be unfinished.
 */
export const ownMovement = z.strictObject({
  id,
  caseId: id,
  label: line,
  sport: line,
  /** In time order. Ids as those of the shipped movements where it is the same instant: `take-off`, `release`. */
  events: z.array(z.strictObject({ id: line.min(1), label: line, means: line })).max(60),
  /** In time order; the ids of two events each. */
  phases: z.array(z.strictObject({ id: line.min(1), label: line, startsAt: line, endsAt: line, means: line })).max(60),
  /** A phase, or `whole`, and the id of a measure taken there. */
  checkpoints: z.array(z.strictObject({ phase: line.min(1), measure: line.min(1) })).max(300),
  aimsAtTarget: z.boolean(),
  isAirborneSkill: z.boolean(),
});
export type OwnMovement = z.infer<typeof ownMovement>;
