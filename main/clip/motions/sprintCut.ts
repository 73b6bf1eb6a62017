import { jumpThrowMotion } from '../../demo/jumpThrow.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { between } from './between.ts';

/** Run up, last step but one, plant and push off, seen from the side; the arms are those of a throw without a ball. */
export function sprintCut(random: RandomSource): Motion {
  const running = jumpThrowMotion({
    statureM: between(random, 1.65, 1.95),
    rise: between(random, 1.2, 1.6),
    run: between(random, 2.2, 3),
    // The arm comes through late and slowly.
    releaseBeforeApexS: -0.08,
    ballSpeedMPerS: 10,
    ballDragPerM: 0,
    targetDistanceM: 5,
    targetHeightM: 1,
    forearmBackDeg: -62,
    noiseM: 0,
  });
  const { plant = 0, 'take-off': takeoff = 0, landing = 0 } = running.events;
  return {
    ...running,
    movementId: 'sprint-cut',
    side: 'left',
    lastsS: landing + 0.3,
    events: {
      start: running.events['approach-start'] ?? 0,
      penultimate: 0.22,
      plant,
      deepest: deepestKnee(running, plant, takeoff),
      'take-off': takeoff,
      end: landing,
    },
    ballAt: null,
    ballRadiusM: 0,
    release: null,
  };
}

/** When the left knee is bent most, to a millisecond. */
function deepestKnee({ figureAt }: Motion, from: number, to: number): number {
  const bent = (t: number) => {
    const { 'hip-left': hip, 'knee-left': knee, 'ankle-left': ankle } = figureAt(t);
    const [a, b] = [Math.atan2(hip.y - knee.y, hip.x - knee.x), Math.atan2(ankle.y - knee.y, ankle.x - knee.x)];
    return Math.PI - Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));
  };
  const times = Array.from({ length: Math.round((to - from) * 1000) + 1 }, (_, i) => from + i / 1000);
  return times.reduce((most, t) => (bent(t) > bent(most) ? t : most), from);
}
