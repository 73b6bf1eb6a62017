import { dragFactor } from '../../../shared/kernel/flight/dragFactor.ts';
import { handball3 } from '../../../shared/knowledge/balls/handball-3.ts';
import { jumpThrowMotion } from '../../demo/jumpThrow.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { between } from './between.ts';

/** The throw of the demo, by another body at another speed. */
export function handballJumpThrow(random: RandomSource): Motion {
  // One ball among those that the rules allow.
  const drag = dragFactor(handball3);
  return jumpThrowMotion({
    statureM: between(random, 1.68, 1.98),
    rise: between(random, 2.7, 3.2),
    run: between(random, 1.6, 2.4),
    releaseBeforeApexS: between(random, 0, 0.04),
    ballSpeedMPerS: between(random, 17, 24),
    ballDragPerM: drag.value + random.normal(drag.u ?? 0),
    targetDistanceM: between(random, 7, 10),
    targetHeightM: between(random, 0.4, 1.8),
    forearmBackDeg: -62,
    noiseM: 0,
  });
}
