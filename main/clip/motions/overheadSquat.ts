import { curveThrough } from '../../demo/curves.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { uprightMotion } from '../uprightMotion.ts';
import { between } from './between.ts';

/** Arms overhead, down and up again. */
export function overheadSquat(random: RandomSource): Motion {
  const statureM = between(random, 1.6, 1.98);
  const [start, bottom, end] = [0.5, 1.7, 2.9];
  const lean = between(random, 24, 38);
  const trunk = curveThrough([
    [start, 3],
    [bottom, lean],
    [end, 3],
  ]);
  // Hands stay above the feet as the trunk leans.
  const arm = (t: number) => ({ upper: 176 - trunk(t) / 3, fore: 178 - trunk(t) / 3 });
  const { figureAt } = uprightMotion({
    statureM,
    start,
    lowest: bottom,
    up: end,
    dip: between(random, 0.2, 0.25),
    riseMPerS: null,
    boxM: 0,
    trunk,
    arms: (t) => ({ left: arm(t), right: arm(t) }),
  });
  return {
    movementId: 'overhead-squat',
    side: 'none',
    statureM,
    lastsS: end + 0.4,
    events: { start, bottom, end },
    figureAt,
    ballAt: null,
    ballRadiusM: 0,
    release: null,
    riseMPerS: null,
  };
}
