import { curve } from '../../demo/curves.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { beyondHand, thrown } from '../hands.ts';
import { uprightMotion } from '../uprightMotion.ts';
import { between } from './between.ts';

const BALL_RADIUS_M = 0.12;

/** Both arms bring the ball up, the right one shoots near the top of the jump. */
export function basketballJumpShot(random: RandomSource): Motion {
  const statureM = between(random, 1.75, 2.05);
  const riseMPerS = between(random, 1.9, 2.6);
  const [start, rises, lowest, up] = [0.4, 0.62, 0.78, 1.04];
  const set = up - 0.1;
  const straightens = up - 0.04;
  const release = up + riseMPerS / 9.80665 - between(random, 0.01, 0.05);
  const upper = curve([rises, 28], [set, 104], [straightens, 106], [release, 150], [release + 0.15, 158], [2.2, 20]);
  const fore = curve([rises, 112], [set, 196], [straightens, 198], [release, 158], [release + 0.15, 150], [2.2, 40]);
  const body = uprightMotion({
    statureM,
    start,
    lowest,
    up,
    dip: between(random, 0.08, 0.11),
    riseMPerS,
    boxM: 0,
    trunk: curve([start, 6], [lowest, 16], [up, 1], [release, -2], [2, 14]),
    arms: (t) => ({
      left: { upper: upper(t) - 8, fore: fore(t) - 14 },
      right: { upper: upper(t), fore: fore(t) },
    }),
  });
  const handAt = (t: number) => beyondHand(body.figureAt(t), 'right', 0.07);
  const speedMPerS = between(random, 6.8, 8.4);
  const angleRad = between(random, 0.84, 0.98);
  const from = handAt(release);
  const flight = thrown(from, speedMPerS, angleRad, 0.019);
  const { landing, deepest } = body;
  return {
    movementId: 'basketball-jump-shot',
    side: 'right',
    statureM,
    lastsS: deepest + 0.3,
    events: {
      start,
      'ball-rise': rises,
      'set-point': set,
      'elbow-extension': straightens,
      'take-off': up,
      release,
      landing,
      end: deepest,
    },
    figureAt: body.figureAt,
    ballAt: (t) => (t <= release ? handAt(t) : flight(t - release)),
    ballRadiusM: BALL_RADIUS_M,
    release: { timeS: release, speedMPerS, angleRad, heightM: from.y },
    riseMPerS,
  };
}
