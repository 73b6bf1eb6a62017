import type { Movement } from '../../knowledge/movement.ts';
import type { MovementTrial, Still } from '../../model/trial.ts';
import type { Figure } from '../blocks/figure.ts';
import { stillFigure } from '../figures/still.ts';
import type { Writing } from './writing.ts';

/**
 * Stills of one phase of a trial, or those of no phase (`null`), in the order of the film. Without consent to images none
 * is printed.
 */
export function stillsOf(
  { file, evidence }: Writing,
  trial: MovementTrial,
  phase: Movement['phases'][number] | null,
  movement: Movement | null,
  tallest?: number,
): Figure[] {
  if (file.athlete.consentToImages !== true) return [];
  const timeOf = (event: string) =>
    file.trialEvents.find((one) => one.trialId === trial.id && one.event === event)?.timeS;
  const isIn = ({ timeS }: Still, one: Movement['phases'][number]) => {
    const [from, to] = [timeOf(one.startsAt), timeOf(one.endsAt)];
    return from !== undefined && to !== undefined && timeS >= from && timeS <= to;
  };
  const own = file.stills.filter((still) => still.trialId === trial.id).toSorted((a, b) => a.timeS - b.timeS);
  // A frame on the border of two phases is told once, in the first.
  const phaseOf = (still: Still) => movement?.phases.find((one) => isIn(still, one)) ?? null;
  return own
    .filter((still) => phaseOf(still)?.id === phase?.id)
    .flatMap((still) => stillFigure(still, evidence.images, tallest) ?? []);
}
