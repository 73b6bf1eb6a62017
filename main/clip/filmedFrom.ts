import type { Motion } from '../demo/motion.ts';

/** The same movement, its clock begun later by so much: a camera's first frame falls anywhere between two instants. */
export function filmedFrom(motion: Motion, laterS: number): Motion {
  const { figureAt, ballAt, release } = motion;
  return {
    ...motion,
    lastsS: motion.lastsS - laterS,
    events: Object.fromEntries(Object.entries(motion.events).map(([event, timeS]) => [event, timeS - laterS])),
    figureAt: (t) => figureAt(t + laterS),
    ballAt: ballAt === null ? null : (t) => ballAt(t + laterS),
    release: release === null ? null : { ...release, timeS: release.timeS - laterS },
  };
}
