import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { basketballJumpShot } from './basketballJumpShot.ts';
import { countermovementJump } from './countermovementJump.ts';
import { dropLanding } from './dropLanding.ts';
import { handballJumpThrow } from './handballJumpThrow.ts';
import { overheadSquat } from './overheadSquat.ts';
import { overheadThrow } from './overheadThrow.ts';
import { sprintCut } from './sprintCut.ts';
import { tennisServe } from './tennisServe.ts';
import { volleyballSpike } from './volleyballSpike.ts';

/** An invented performance of each shipped movement, by the movement's id. */
export const MOTIONS: Readonly<Record<string, (random: RandomSource) => Motion>> = {
  'basketball-jump-shot': basketballJumpShot,
  'countermovement-jump': countermovementJump,
  'drop-landing': dropLanding,
  'handball-jump-throw': handballJumpThrow,
  'overhead-squat': overheadSquat,
  'overhead-throw': overheadThrow,
  'sprint-cut': sprintCut,
  'tennis-serve': tennisServe,
  'volleyball-spike': volleyballSpike,
};
