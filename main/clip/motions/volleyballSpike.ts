import { jumpThrowMotion } from '../../demo/jumpThrow.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { beyondHand, tossed } from '../hands.ts';
import { between } from './between.ts';

const BALL_RADIUS_M = 0.105;

/** The run and jump of a throw; the ball comes from a set and is struck. */
export function volleyballSpike(random: RandomSource): Motion {
  const throwing = jumpThrowMotion({
    statureM: between(random, 1.75, 2.05),
    rise: between(random, 2.6, 3.3),
    run: between(random, 1.4, 2),
    releaseBeforeApexS: between(random, 0, 0.04),
    ballSpeedMPerS: between(random, 15, 22),
    ballDragPerM: 0.016,
    targetDistanceM: between(random, 6, 9),
    targetHeightM: 0.1,
    forearmBackDeg: -62,
    noiseM: 0,
  });
  const { plant, 'take-off': takeoff, cocked, release: contact, landing, end, ...rest } = throwing.events;
  const struckAt = contact ?? 0;
  const place = beyondHand(throwing.figureAt(struckAt), 'right', 0.1);
  const set = tossed({ x: place.x + 2.4, y: 2.1 }, struckAt - 1.1, place, struckAt);
  return {
    ...throwing,
    movementId: 'volleyball-spike',
    events: {
      'approach-start': rest['approach-start'] ?? 0,
      'last-step': plant ?? 0,
      'take-off': takeoff ?? 0,
      cocked: cocked ?? 0,
      contact: struckAt,
      landing: landing ?? 0,
      end: end ?? 0,
    },
    ballAt: (t) => (t <= struckAt ? set(t) : (throwing.ballAt?.(t) ?? place)),
    ballRadiusM: BALL_RADIUS_M,
  };
}
