import type { Movement } from '../knowledge/movement.ts';
import { MOVEMENTS, movementById } from '../knowledge/movements/index.ts';
import type { OwnMovement } from '../model/ownMovement.ts';
import type { CaseFile } from '../model/records.ts';

type Own = Pick<CaseFile, 'ownMovements'>;

/** The movement of a trial: shipped, or the case's own. Null where neither knows it: kept and shown, without phases. */
export function movementOf({ ownMovements }: Own, id: string): Movement | null {
  const own = ownMovements.find((one) => one.id === id);
  return own === undefined ? movementById(id) : asMovement(own);
}

/** Every movement that can be chosen in a case: those of the program, then its own. */
export function movementsOf({ ownMovements }: Own): readonly Movement[] {
  return [...MOVEMENTS, ...ownMovements.map(asMovement)];
}

/**
 * A movement by its id or, one of the user's own, by the name that rules know it by: `own/push-kick` is the movement called
 * "Push kick" in whatever case it was built.
 */
export function movementNamed(name: string, movements: readonly Movement[]): Movement | null {
  return movements.find(({ id, label }) => id === name || ownMovementName(label) === name) ?? null;
}

export function ownMovementName(label: string): string {
  return `own/${label
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '')}`;
}

/** A movement keeps its identity while its record does, so that measures of its trials need not be computed anew. */
const known = new WeakMap<OwnMovement, Movement>();

/** As far as it is built: a phase without both its events is left out, and what is asked of a phase left out with it. */
function asMovement(own: OwnMovement): Movement {
  const before = known.get(own);
  if (before !== undefined) return before;
  const events = new Set(own.events.map(({ id }) => id));
  const phases = own.phases.filter(({ startsAt, endsAt }) => events.has(startsAt) && events.has(endsAt));
  const places = new Set(['whole', ...phases.map(({ id }) => id)]);
  const movement: Movement = {
    id: own.id,
    label: own.label.trim() === '' ? 'Movement without a name' : own.label,
    sport: own.sport,
    events: own.events,
    phases,
    checkpoints: own.checkpoints.filter(({ phase }) => places.has(phase)),
    mayOverlap: [],
    aimsAtTarget: own.aimsAtTarget,
    isAirborneSkill: own.isAirborneSkill,
    source: { cite: 'Built in this case by its user', status: 'convention' },
  };
  known.set(own, movement);
  return movement;
}
