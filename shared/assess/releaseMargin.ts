import { aimFor } from '../kernel/flight/aimFor.ts';
import { dragFactor } from '../kernel/flight/dragFactor.ts';
import { type Margin, marginForError } from '../kernel/flight/marginForError.ts';
import { NO_AIR } from '../kernel/flight/release.ts';
import { readingOr } from '../kernel/trial/readingOr.ts';
import { trialTarget } from '../kernel/trial/trialTarget.ts';
import { ballById, targetOf } from '../knowledge/balls/index.ts';
import type { MovementTrial } from '../model/trial.ts';
import { type Unknown, uOf } from '../quantity.ts';
import type { Fact } from './assessment.ts';
import { releaseOf } from './releaseOf.ts';

/** How far off the release of a trial may be and still pass its target, the ball's own drag included; or what is missing. */
export function releaseMargin(trial: MovementTrial, facts: readonly Fact[]): Margin | Unknown {
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  if (ball === null) return { unknown: 'the ball is not chosen' };
  const target = trialTarget(trial);
  if ('unknown' in target) return target;
  const { distance, height } = target;
  const aim = aimFor(targetOf(ball), distance.value, height.value);
  if (aim === null) return { unknown: 'the program knows no target of this ball' };
  const release = releaseOf(trial, facts);
  if ('unknown' in release) return release;
  const radius = (ball.diameterM[0] + ball.diameterM[1]) / 4;
  const aimU = { distance: uOf(distance), height: uOf(height) };
  return readingOr(() => marginForError(release, aim, radius, { ...NO_AIR, drag: dragFactor(ball) }, aimU));
}
