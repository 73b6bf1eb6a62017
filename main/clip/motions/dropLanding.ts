import { curveThrough } from '../../demo/curves.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { uprightMotion } from '../uprightMotion.ts';
import { between } from './between.ts';

/** Off a box, onto both feet. */
export function dropLanding(random: RandomSource): Motion {
  const statureM = between(random, 1.6, 1.98);
  const up = 0.5;
  const body = uprightMotion({
    statureM,
    start: 0,
    lowest: 0.2,
    up,
    dip: 0,
    riseMPerS: null,
    boxM: between(random, 0.3, 0.45),
    trunk: curveThrough([
      [up, 2],
      [up + 0.3, 8],
      [up + 0.55, 30],
      [up + 1.1, 4],
    ]),
    arms: () => ({ left: { upper: -12, fore: 20 }, right: { upper: -12, fore: 20 } }),
  });
  const { landing, deepest, end, figureAt } = body;
  return {
    movementId: 'drop-landing',
    side: 'none',
    statureM,
    lastsS: end + 0.3,
    events: { landing, deepest, end },
    figureAt,
    ballAt: null,
    ballRadiusM: 0,
    release: null,
    riseMPerS: null,
  };
}
