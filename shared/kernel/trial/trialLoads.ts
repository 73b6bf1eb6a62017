import { ballById } from '../../knowledge/balls/index.ts';
import { BALL } from '../../model/trial.ts';
import { isKnown, measured, type Quantity, type Reading, type Unknown } from '../../quantity.ts';
import { ballMass } from '../flight/ballMass.ts';
import { weight } from '../force/weight.ts';
import { meanLandingForce } from '../jump/meanLandingForce.ts';
import { meanPushOffForce } from '../jump/meanPushOffForce.ts';
import { meanForceByImpulse } from '../load/meanForceByImpulse.ts';
import { derive } from '../quantity/derive.ts';
import { noiseLeft } from '../signal/noiseLeft.ts';
import { ballMeasures } from './ballMeasures.ts';
import { type BodyFlight, bodyFlight } from './bodyFlight.ts';
import { bodyScatter } from './bodyScatter.ts';
import { pointAt } from './pointSeries.ts';
import { readingOr } from './readingOr.ts';
import type { Scene, TrialInput } from './scene.ts';
import { type JointMoment, staticMoments } from './staticMoments.ts';

export interface TrialLoads {
  /** Of the body, as every load here takes it. */
  readonly bodyMass: Quantity<'kg'>;
  readonly moments: readonly JointMoment[];
  readonly meanPushOffForce: Reading<'N'>;
  readonly meanLandingForce: Reading<'N'>;
  /** Mean net force on the ball from the drawn-back arm to release; null where nothing is thrown. */
  readonly meanBallForce: Reading<'N'> | null;
}

/** Events at which an arm stands still, drawn back, before it throws. */
const DRAWN_BACK = ['cocked', 'set-point'];

/** Over less than this the low-pass decides how far the body moved, not the body. Convention. */
const LEAST_PATH_M = 0.05;

/**
 * Loads of a filmed trial, each by a model that anyone can redo on paper: static joint moments at every event, mean force
 * of push-off and of landing by work and energy, mean force on the ball by impulse and momentum. None is a load on a
 * tissue, and in a fast movement the static moment is not the moment.
 *
 * @param atFrame a frame to take the static moments of besides the events, under the event `frame`; absent: none
 * @returns unknown where nothing can be said at all: no mass, no metres
 * @source staticJointMoment, meanPushOffForce, meanLandingForce, meanForceByImpulse
 */
export function trialLoads(view: Scene, input: TrialInput, atFrame: number | null = null): TrialLoads | Unknown {
  if (view.noMetres !== null) return { unknown: view.noMetres };
  if (input.massKg === null) return { unknown: 'the body mass is not entered' };
  const bodyMass = measured('m_b', 'Body mass', input.massKg, 'kg', input.massUKg ?? 'its uncertainty is not recorded');
  const flight = bodyFlight(view);
  return {
    bodyMass,
    moments: [
      ...staticMoments(view, input, bodyMass, 'events'),
      ...(atFrame === null ? [] : staticMoments(view, input, bodyMass, atFrame)),
    ],
    meanPushOffForce: pushOff(view, bodyMass, flight),
    meanLandingForce: landing(view, bodyMass, flight),
    meanBallForce: onBall(view, input),
  };
}

function pushOff(view: Scene, mass: Quantity<'kg'>, flight: BodyFlight | Unknown): Reading<'N'> {
  if ('unknown' in flight) return flight;
  const takeoff = view.eventAt('take-off');
  if (!isKnown(takeoff)) return takeoff;
  const rise = climb(view, { before: takeoff.value }, takeoff.value, 'Rise of the centre of mass up to take-off');
  return 'unknown' in rise ? rise : readingOr(() => meanPushOffForce(weight(mass), flight.rise, rise));
}

function landing(view: Scene, mass: Quantity<'kg'>, flight: BodyFlight | Unknown): Reading<'N'> {
  if ('unknown' in flight) return flight;
  const down = view.eventAt('landing');
  if (!isKnown(down)) return down;
  const here = pointAt(view.body.smooth, down.value, view.rateHz);
  if (here === null) return { unknown: 'the body is not digitised at landing' };
  const fall = derive(
    {
      symbol: 'h',
      name: 'Fall of the centre of mass before landing',
      unit: 'm',
      formula: 'h = y_a - y_l',
      source: { cite: 'Definition', status: 'derived' },
    },
    {
      y_a: flight.apexHeight,
      y_l: measured('y_l', 'Centre of mass at landing', here.y, 'm', bodyScatter(view)),
    },
    ({ y_a, y_l }) => y_a - y_l,
  );
  const stop = climb(view, { after: down.value }, down.value, 'Fall of the centre of mass after landing');
  return 'unknown' in stop ? stop : readingOr(() => meanLandingForce(weight(mass), fall, stop));
}

/** How much higher the centre of mass is at an instant than at its lowest before it, or after it. */
function climb(
  view: Scene,
  span: { readonly before: number } | { readonly after: number },
  timeS: number,
  name: string,
): Reading<'m'> {
  const here = pointAt(view.body.smooth, timeS, view.rateHz);
  const heights = [...view.body.smooth].flatMap(([frame, { y }]) => {
    const t = frame / view.rateHz;
    return ('before' in span ? t <= span.before : t >= span.after) ? [y] : [];
  });
  if (here === null || heights.length === 0) return { unknown: 'the body is not digitised there' };
  if (here.y - Math.min(...heights) < LEAST_PATH_M) {
    return {
      unknown: `the centre of mass moves less than ${100 * LEAST_PATH_M} cm there: too little to average a force over`,
    };
  }
  const u = bodyScatter(view);
  return derive(
    {
      symbol: 's',
      name,
      unit: 'm',
      formula: 's = y - y_min',
      variant: 'centre of mass from video, smoothed',
      source: { cite: 'Definition', status: 'derived' },
    },
    {
      y: measured('y', 'Centre of mass at that instant', here.y, 'm', u),
      y_min: measured('y_min', 'Centre of mass at its lowest', Math.min(...heights), 'm', u),
    },
    ({ y, y_min }) => y - y_min,
  );
}

function onBall(view: Scene, { trial }: TrialInput): Reading<'N'> | null {
  const order = view.movement.events.map(({ id }) => id);
  const from = order.slice(0, Math.max(0, order.indexOf('release'))).findLast((id) => DRAWN_BACK.includes(id));
  if (from === undefined || !view.points.has(BALL)) return null;
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  if (ball === null) return { unknown: 'the ball is not chosen, so its mass is not known' };
  const [start, release] = [view.eventAt(from), view.eventAt('release')];
  if (!isKnown(start)) return start;
  if (!isKnown(release)) return release;
  // Where the floor lies does not matter to speed and angle.
  const { readings } = ballMeasures(view, trial, { unknown: 'not asked for' });
  const [speed, angle] = [readings['ball.releaseSpeed'], readings['ball.releaseAngle']];
  if (!isKnown(speed)) return speed;
  if (!isKnown(angle)) return angle;
  const before = along(view, start.value, angle.value);
  if ('unknown' in before) return before;
  const duration = derive(
    {
      symbol: 't',
      name: 'From the drawn-back arm to release',
      unit: 's',
      formula: 't = t_2 - t_1',
      source: { cite: 'Difference of two instants', status: 'derived' },
    },
    { t_1: start, t_2: release },
    ({ t_1, t_2 }) => t_2 - t_1,
  );
  return readingOr(() => meanForceByImpulse(ballMass(ball), before, speed as Quantity<'m/s'>, duration));
}

/** The ball's velocity along the direction in which it is released. */
function along(view: Scene, timeS: number, angleRad: number): Reading<'m/s'> {
  const path = view.points.get(BALL)?.smooth;
  const [a, b] = [-1, 1].map((step) => pointAt(path, timeS + step / view.rateHz, view.rateHz));
  if (!a || !b) return { unknown: 'the ball is not digitised while the arm is drawn back' };
  const [vx, vy] = [((b.x - a.x) * view.rateHz) / 2, ((b.y - a.y) * view.rateHz) / 2];
  const { pointU } = view.ball;
  return measured(
    'v_1',
    'Ball along the line of release, arm drawn back',
    view.facing * vx * Math.cos(angleRad) + vy * Math.sin(angleRad),
    'm/s',
    typeof pointU === 'number' ? pointU * noiseLeft(view.rateHz, view.cutoffHz, 1) : pointU,
    { cite: 'Central differences', status: 'derived' },
  );
}
