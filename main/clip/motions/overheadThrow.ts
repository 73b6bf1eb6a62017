import { curve, motionThrough, still } from '../../demo/curves.ts';
import { figureOnPath, legThrough } from '../../demo/figureOnPath.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { beyondHand, thrown } from '../hands.ts';
import { between } from './between.ts';

const BALL_RADIUS_M = 0.037;

/** A stride onto the left foot and a throw over it; no jump. */
export function overheadThrow(random: RandomSource): Motion {
  const statureM = between(random, 1.7, 2);
  const [start, apart, plant, cocked] = [0.4, 0.8, 1.15, 1.22];
  const release = 1.31;
  const end = 1.75;
  const reach = between(random, 0.36, 0.42) * statureM;
  const forward = motionThrough([
    still(start, 0),
    { t: plant, x: 0.5 * reach, v: 1.3, a: 0 },
    still(end, 0.86 * reach),
  ]);
  const height = motionThrough([
    still(start, 0.54 * statureM),
    still(plant, 0.475 * statureM),
    still(release, 0.48 * statureM),
    still(end, 0.5 * statureM),
  ]);
  const upper = curve([start, 20], [apart, 5], [plant, -88], [cocked, -100], [release, -205], [end, -345]);
  const fore = curve([start, 95], [apart, 40], [plant, -110], [cocked, -40], [release, -192], [end, -350]);
  const leftUpper = curve([start, 20], [apart, 30], [plant, 80], [release, 30], [end, 5]);
  const trunk = curve([start, 2], [plant, -8], [cocked, -6], [release, 24], [end, 42]);
  const flat = curve([0, 0], [1e6, 0]);
  const figureAt = figureOnPath({
    statureM,
    path: (t) => ({ x: forward(t).x, y: height(t).x }),
    posture: (t) => ({
      trunk: trunk(t),
      head: trunk(t) / 3,
      arms: { left: { upper: leftUpper(t), fore: leftUpper(t) + 35 }, right: { upper: upper(t), fore: fore(t) } },
    }),
    stances: [
      {
        side: 'right',
        from: 0,
        to: release,
        toeX: 0.1 * statureM,
        floorY: 0,
        lift: curve([apart, 0], [release, 60]),
      },
      { side: 'left', from: 0, to: start, toeX: 0.15 * statureM, floorY: 0, lift: flat },
      { side: 'left', from: plant, to: 1e6, toeX: 0.1 * statureM + reach * 1.35, floorY: 0, lift: flat },
    ],
    swinging: (inStance) => ({
      left: legThrough(inStance, 'left', start, [apart, 62, 70, 20], plant),
      right: legThrough(inStance, 'right', release, [release + 0.15, -38, 48, 80], [end, -12, 70, 60]),
    }),
  });
  const handAt = (t: number) => beyondHand(figureAt(t), 'right', 0.03);
  const speedMPerS = between(random, 24, 32);
  const angleRad = between(random, 0.02, 0.12);
  const from = handAt(release);
  const flight = thrown(from, speedMPerS, angleRad, 0.006);
  return {
    movementId: 'overhead-throw',
    side: 'right',
    statureM,
    lastsS: end + 0.3,
    events: { start, 'hands-apart': apart, plant, cocked, release, end },
    figureAt,
    ballAt: (t) => (t <= release ? handAt(t) : flight(t - release)),
    ballRadiusM: BALL_RADIUS_M,
    release: { timeS: release, speedMPerS, angleRad, heightM: from.y },
    riseMPerS: null,
  };
}
