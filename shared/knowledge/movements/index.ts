import type { Movement } from '../movement.ts';
import { basketballJumpShot } from './basketball-jump-shot.ts';
import { countermovementJump } from './countermovement-jump.ts';
import { dropLanding } from './drop-landing.ts';
import { handballJumpThrow } from './handball-jump-throw.ts';
import { overheadSquat } from './overhead-squat.ts';
import { overheadThrow } from './overhead-throw.ts';
import { sprintCut } from './sprint-cut.ts';
import { tennisServe } from './tennis-serve.ts';
import { volleyballSpike } from './volleyball-spike.ts';

/** Every movement the program knows, in the order it offers them. */
export const MOVEMENTS: readonly Movement[] = [
  handballJumpThrow,
  basketballJumpShot,
  countermovementJump,
  overheadThrow,
  volleyballSpike,
  tennisServe,
  dropLanding,
  overheadSquat,
  sprintCut,
];

const byId = new Map(MOVEMENTS.map((movement) => [movement.id, movement]));

/** Null for a movement this version does not know: the trial is kept and shown, without phases. */
export function movementById(id: string): Movement | null {
  return byId.get(id) ?? null;
}
