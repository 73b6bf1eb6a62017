import { curveThrough } from '../../demo/curves.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { uprightMotion } from '../uprightMotion.ts';
import { between } from './between.ts';

/** Hands on the hips throughout. */
export function countermovementJump(random: RandomSource): Motion {
  const [start, lowest] = [0.5, 0.92];
  const up = lowest + between(random, 0.24, 0.3);
  const statureM = between(random, 1.6, 1.98);
  const riseMPerS = between(random, 2.1, 3);
  const body = uprightMotion({
    statureM,
    start,
    lowest,
    up,
    dip: between(random, 0.13, 0.17),
    riseMPerS,
    boxM: 0,
    trunk: curveThrough([
      [start, 4],
      [lowest, 38],
      [up, 4],
      [up + 0.25, 2],
      [up + 0.5, 10],
      [up + 0.9, 26],
      [up + 1.5, 4],
    ]),
    arms: () => ({ left: { upper: -28, fore: 48 }, right: { upper: -28, fore: 48 } }),
  });
  const { landing, apex, deepest, end } = body;
  return {
    movementId: 'countermovement-jump',
    side: 'none',
    statureM,
    lastsS: end + 0.3,
    events: { start, 'lowest-point': lowest, 'take-off': up, apex, landing, deepest, end },
    figureAt: body.figureAt,
    ballAt: null,
    ballRadiusM: 0,
    release: null,
    riseMPerS,
  };
}
