import type { Measure } from '../measure.ts';
import { assumedError, numeric } from './builders.ts';

/** Read from the ball's free flight after release. */
export const ballMeasures: readonly Measure[] = [
  numeric(
    'ball.releaseSpeed',
    'Ball speed at release',
    'm/s',
    'm/s',
    { short: 'Speed', possible: [0, 80], plausible: [3, 35] },
    'Speed of the ball from a fit to its free flight, taken back to the instant of release.',
  ),
  numeric(
    'ball.releaseAngle',
    'Ball release angle',
    'rad',
    'deg',
    { short: 'Angle', possible: [-90, 90], plausible: [-30, 75], error: assumedError(2, 1.41) },
    'Direction of the ball above the horizontal at release, from its path and not from the forearm.',
  ),
  numeric(
    'ball.releaseHeight',
    'Ball height at release',
    'm',
    'm',
    { short: 'Height', possible: [0, 4.5], plausible: [1.2, 3.6], error: assumedError(0.05, 0.04) },
    'Height of the centre of the ball above the floor at release.',
  ),
  numeric(
    'ball.entryAngle',
    'Entry angle at the target',
    'rad',
    'deg',
    { short: 'Entry', possible: [-90, 90], plausible: [25, 60], error: assumedError(2, 1.41) },
    'Angle below the horizontal at which the ball comes down to the height of the target.',
  ),
  numeric(
    'ball.leastSpeed',
    'Least speed that reaches the target',
    'm/s',
    'm/s',
    { short: 'Least speed', possible: [0, 80], plausible: [3, 25] },
    'Smallest release speed from which the target can be reached at all, from this height and distance.',
  ),
  numeric(
    'ball.leastSpeedAngle',
    'Angle of least speed',
    'rad',
    'deg',
    { short: 'Least-speed angle', possible: [0, 90], plausible: [30, 75] },
    'Release angle that needs the least speed, from this height and distance.',
  ),
  numeric(
    'ball.angleAboveLeastSpeed',
    'Release angle above that of least speed',
    'rad',
    'deg',
    { short: 'Above least-speed angle', possible: [-90, 90], plausible: [-15, 25], error: assumedError(2, 1.41) },
    'Release angle less the angle that needs the least speed.',
  ),
  numeric(
    'ball.gravityFound',
    'Gravity found in the flight',
    'm/s2',
    'm/s2',
    { short: 'g found', possible: [0, 200], plausible: [5, 15] },
    'Downward acceleration fitted to the flight. Far from 9.81 means that scale, frame rate or slow motion is wrong.',
  ),
];
