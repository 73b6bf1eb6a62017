import { ballById } from '../../knowledge/balls/index.ts';
import type { Side } from '../../model/parts.ts';
import { BALL, LANDMARKS } from '../../model/trial.ts';
import { isKnown, type Quantity, type Reading } from '../../quantity.ts';
import type { BodyPoints } from '../anthropometry/segmentCentres.ts';
import { ballMass } from '../flight/ballMass.ts';
import { type Joint, type JointLoad, staticJointMoment } from '../load/staticJointMoment.ts';
import { segmentTableFor } from './centreOfMassFrames.ts';
import { pointAt } from './pointSeries.ts';
import { readingOr } from './readingOr.ts';
import type { Scene, TrialInput } from './scene.ts';

export interface JointMoment {
  readonly event: string;
  readonly label: string;
  readonly joint: Joint;
  readonly side: Side;
  /** What the joint holds up; which of the three is true of a leg, the film's reader sees. */
  readonly carries: JointLoad['carries'];
  /** Whether the ball is counted with the hand that holds it. */
  readonly withBall: boolean;
  readonly moment: Reading<'N.m'>;
}

const HOLDS: readonly { readonly joint: Joint; readonly carries: readonly JointLoad['carries'][] }[] = [
  { joint: 'shoulder', carries: ['hanging'] },
  { joint: 'elbow', carries: ['hanging'] },
  { joint: 'hip', carries: ['hanging', 'one leg', 'two legs'] },
  { joint: 'knee', carries: ['hanging', 'one leg', 'two legs'] },
];

/**
 * What each joint would hold if the body stood still as it is: at every event of the trial, or in one frame, which then
 * goes under the event `frame`. Nothing for what is not digitised there.
 *
 * @source staticJointMoment
 */
export function staticMoments(
  view: Scene,
  input: TrialInput,
  bodyMass: Quantity<'kg'>,
  at: 'events' | number,
): JointMoment[] {
  const instants =
    at === 'events' ? eventsOf(view) : [{ event: 'frame', label: `Frame ${at}`, timeS: view.clock.timeOf(at) }];
  return instants.flatMap((instant) => momentsAt(view, input, bodyMass, instant));
}

interface Instant {
  readonly event: string;
  readonly label: string;
  readonly timeS: number;
}

function eventsOf(view: Scene): Instant[] {
  return view.movement.events.flatMap(({ id, label }): Instant[] => {
    const time = view.eventAt(id);
    return isKnown(time) ? [{ event: id, label, timeS: time.value }] : [];
  });
}

function momentsAt(
  view: Scene,
  input: TrialInput,
  bodyMass: Quantity<'kg'>,
  { event, label, timeS }: Instant,
): JointMoment[] {
  const table = segmentTableFor(input.referenceSex);
  // Forward is +x, whichever way the person faces.
  const points: BodyPoints = Object.fromEntries(
    LANDMARKS.flatMap((name) => {
      const at = pointAt(view.points.get(name)?.smooth, timeS, view.rateHz);
      return at === null ? [] : [[name, { x: view.facing * at.x, y: at.y }]];
    }),
  );
  const held = heldAt(view, input, timeS);
  return HOLDS.flatMap(({ joint, carries }) =>
    (['left', 'right'] as const)
      .filter((side) => points[`${joint}-${side}`] !== undefined)
      .flatMap((side) =>
        carries.map((how): JointMoment => {
          const inHand = how === 'hanging' && (joint === 'hip' || joint === 'knee' || side !== view.side) ? null : held;
          const load = { points, table, bodyMass, joint, side, carries: how, held: inHand, pointU: view.pointU };
          const moment = readingOr(() => staticJointMoment(load));
          return { event, label, joint, side, carries: how, withBall: inHand !== null, moment };
        }),
      ),
  );
}

/** The ball while it is still held: up to its release. */
function heldAt(view: Scene, { trial }: TrialInput, timeS: number): JointLoad['held'] {
  const at = pointAt(view.points.get(BALL)?.smooth, timeS, view.rateHz);
  const ball = trial.ballId === null ? null : ballById(trial.ballId);
  const release = view.eventAt('release');
  if (at === null || ball === null || !isKnown(release) || timeS > release.value) return null;
  return { mass: ballMass(ball), at: { x: view.facing * at.x, y: at.y } };
}
