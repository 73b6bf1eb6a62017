import { BALL } from '../../model/trial.ts';
import { leanOf } from '../angle/lean.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { CONTACT_HEIGHT_M } from '../event/airborneSpan.ts';
import { lastInHand } from '../event/lastInHand.ts';
import { turningPoint } from '../event/turningPoint.ts';
import { fitRelease, LEAST_FLIGHT_FRAMES } from '../flight/fitRelease.ts';
import { distance, type Point } from '../plane/point.ts';
import { type AngleCurve, elbowFlexion, kneeFlexion } from './angleCurves.ts';
import { type FootContact, footContacts, lowestFeet, touchdown } from './footContacts.ts';
import { longestRun, type Run } from './longestRun.ts';
import { CUTOFF_HZ, type Scene, scene, type TrialInput } from './scene.ts';

/** An instant to be confirmed by a person. Never an event until then. */
export interface EventProposal {
  readonly event: string;
  readonly timeS: number;
  readonly uS: number;
  readonly confidence: 'clear' | 'likely' | 'doubtful';
  /** What it rests on, in words. */
  readonly because: string;
}

/** The ball's parting from the hand is seen within a frame: ± 1 frame, rectangular. */
const RELEASE_FRAME_U = 1 / Math.sqrt(3);
/**
 * What is read from points low-passed at 10 Hz (a foot that stops, a joint that turns) is no better placed than the filter
 * spreads it, ± a quarter of its period, rectangular: a convention.
 */
const SMOOTHED_U_S = 1 / (4 * CUTOFF_HZ) / Math.sqrt(3);
/** How far back from take-off or release a cocked arm is looked for, s: a convention. */
const COCKING_S = 0.3;

/**
 * Proposes the movement's events from the points: plant, take-off and landing from the feet (footContacts), the apex and
 * the lowest point from the centre of mass, the release from the ball leaving the hand, the set point and the cocked arm
 * from elbow and forearm, the end from the knees. Only events this movement has; those it cannot find are left out.
 *
 * @returns in the movement's order, each with half a frame of uncertainty (release a frame, plant, take-off and landing as
 *   long as the foot's jolt lasts, turning points of the body less, what joints and a foot that stops show what the
 *   smoothing leaves)
 * @source conventions stated in the files used
 */
export function proposeEvents(input: TrialInput): readonly EventProposal[] {
  const view = scene({ ...input, events: [] });
  if ('unknown' in view || view.noMetres !== null) return [];
  const found = new Map<string, EventProposal>();
  const propose = (
    event: string,
    frame: number | null,
    confidence: EventProposal['confidence'],
    because: string,
    frameU = 1 / Math.sqrt(12),
  ) => {
    if (frame !== null) {
      found.set(event, { event, timeS: frame / view.rateHz, uS: frameU / view.rateHz, confidence, because });
    }
  };

  const contacts = footContacts(view);
  const [takeoff, landing] = [nearest(contacts?.takeoff), nearest(contacts?.landing)];
  const fall = oneFoot(view) ?? fallBetween(view, takeoff, landing);
  const proposeContact = (event: string, contact: FootContact | null | undefined, how: string) => {
    if (contact) propose(event, contact.frame, fall.confidence, `${how}; ${fall.because}`, contact.uFrames);
  };
  proposeContact('take-off', contacts?.takeoff, 'the foot last on the floor is thrown up hardest');
  proposeContact('landing', contacts?.landing, 'the foot first on the floor is stopped hardest');

  const smoothedU = SMOOTHED_U_S * view.rateHz;
  const stands = contacts?.takeoff ? firstOfContact(view, contacts.takeoff.low) : null;
  if (stands !== null) {
    const plant = touchdown(view, stands, takeoffSides(view)) ?? { frame: stands, uFrames: smoothedU };
    const because = 'the take-off foot comes down and stays down until take-off';
    propose('plant', plant.frame, 'likely', because, plant.uFrames);
  }

  const height = longestRun(view.body.smooth);
  if (height !== null) {
    const ys = height.values.map(({ y }) => y);
    const before = takeoff === null ? ys : ys.slice(0, Math.max(3, takeoff - height.firstFrame + 1));
    if (before.length >= 3) {
      const low = turningPoint(before, 'lowest');
      propose(
        'lowest-point',
        low.isAtEdge ? null : height.firstFrame + low.index,
        'clear',
        'the centre of mass is lowest before take-off',
        0.25,
      );
      propose(
        'start',
        low.isAtEdge ? null : startOfDip(before, height.firstFrame),
        'likely',
        'the centre of mass has sunk 1 cm',
      );
    }
    if (takeoff !== null) {
      const inAir = ys.slice(
        Math.max(0, takeoff - height.firstFrame),
        landing === null ? ys.length : landing - height.firstFrame + 1,
      );
      if (inAir.length >= 3) {
        const top = turningPoint(inAir, 'highest');
        propose(
          'apex',
          top.isAtEdge ? null : Math.max(takeoff, height.firstFrame) + top.index,
          'clear',
          'the centre of mass is highest',
          0.25,
        );
      }
    }
  }

  const side = view.side === 'none' ? null : view.side;
  const release = side === null ? null : releaseFrame(view, side);
  propose('release', release, 'likely', 'the ball moves away from where the hand held it', RELEASE_FRAME_U);
  if (side !== null && release !== null) {
    proposeArm(view, side, Math.round(release), takeoff, (event, frame, confidence, because) =>
      propose(event, frame, confidence, because, smoothedU),
    );
  }
  if (landing !== null) {
    const deepest = deepestKnee(view, landing);
    propose('deepest', deepest, 'likely', 'the knees are bent most after landing', smoothedU);
    propose(
      'end',
      view.movement.events.some(({ id }) => id === 'deepest') ? null : deepest,
      'likely',
      'the knees stop bending after landing',
      smoothedU,
    );
  }
  return view.movement.events.flatMap(({ id }) => found.get(id) ?? []);
}

function nearest(contact: FootContact | null | undefined): number | null {
  return contact ? Math.round(contact.frame) : null;
}

type Propose = (event: string, frame: number | null, confidence: EventProposal['confidence'], because: string) => void;

function proposeArm(
  view: Scene,
  side: 'left' | 'right',
  release: number,
  takeoff: number | null,
  propose: Propose,
): void {
  const elbow = angleRun(view, elbowFlexion(view, side), 0, release);
  if (elbow !== null) {
    const bent = turningPoint(elbow.values, 'highest');
    const setPoint = elbow.firstFrame + Math.round(bent.index);
    propose('set-point', setPoint, bent.isAtEdge ? 'doubtful' : 'likely', 'the elbow is bent most before release');
    const straightens = elbow.values.findIndex(
      (flexion, i) => elbow.firstFrame + i > setPoint && bent.value - flexion > (5 * Math.PI) / 180,
    );
    propose(
      'elbow-extension',
      straightens === -1 ? null : elbow.firstFrame + straightens - 1,
      'likely',
      'the elbow has straightened by 5°',
    );
    const ball = longestRun(view.points.get(BALL)?.smooth);
    if (ball !== null) {
      const rising = ball.values.map(({ y }) => y).slice(0, Math.max(1, setPoint - ball.firstFrame));
      const low = rising.indexOf(Math.min(...rising));
      propose(
        'ball-rise',
        rising.length < 3 ? null : ball.firstFrame + low,
        'likely',
        'the ball is lowest before it goes up',
      );
    }
  }
  const from = Math.max(0, (takeoff ?? release) - Math.round(COCKING_S * view.rateHz));
  propose('cocked', furthestBack(view, side, from, release), 'likely', 'the forearm lies furthest back');
}

/** The forearm has come forward from where it lay furthest back once it has turned so far: a convention. */
const CAME_FORWARD_RAD = (10 * Math.PI) / 180;

/** Backwards from the release: where the forearm last turned from going back to coming forward; null if it does not. */
function furthestBack(view: Scene, side: 'left' | 'right', from: number, release: number): number | null {
  let furthest: { frame: number; back: number } | null = null;
  for (let frame = release; frame >= from; frame -= 1) {
    const [elbow, wrist] = [`elbow-${side}`, `wrist-${side}`].map((name) => view.points.get(name)?.smooth.get(frame));
    if (elbow === undefined || wrist === undefined) continue;
    // Against vertical, backward negative: most negative is furthest back.
    const back = leanOf(elbow, wrist, view.facing);
    if (furthest === null || back < furthest.back) furthest = { frame, back };
    else if (back > furthest.back + CAME_FORWARD_RAD && furthest.frame < release) return furthest.frame;
  }
  return null;
}

/** With one foot alone nobody knows where the other one is; null where both are there. */
function oneFoot({ points }: Scene): { confidence: 'doubtful'; because: string } | null {
  const [left, right] = (['left', 'right'] as const).map((side) =>
    ['toe', 'heel'].some((part) => points.has(`${part}-${side}`)),
  );
  if (left === right) return null;
  return {
    confidence: 'doubtful',
    because: `only the ${left === true ? 'left' : 'right'} foot is digitised, the other may still stand`,
  };
}

/** Does the centre of mass fall freely in between? That is what being in the air means. */
function fallBetween(
  view: Scene,
  takeoff: number | null,
  landing: number | null,
): { confidence: EventProposal['confidence']; because: string } {
  if (takeoff === null || landing === null)
    return { confidence: 'likely', because: 'only one end of the flight is in the clip' };
  const samples = [...view.body.seen]
    .filter(([frame]) => frame > takeoff && frame < landing)
    .map(([frame, { x, y }]) => ({ t: frame / view.rateHz, x, y }))
    .toSorted((a, b) => a.t - b.t);
  if (samples.length < LEAST_FLIGHT_FRAMES)
    return { confidence: 'likely', because: 'too little of the body is digitised to check its fall' };
  const g = fitRelease(samples, 'scatter is used', null).gravity.value;
  const isFalling = Math.abs(g / standardGravity.value - 1) < 0.15;
  return {
    confidence: isFalling ? 'clear' : 'doubtful',
    because: `in between the centre of mass falls with ${g.toFixed(1)} m/s²`,
  };
}

/** A foot that stands moves along the floor slower than this, heel or toe; a swinging one faster: a convention. */
const STANDING_FOOT_M_PER_S = 1;

/** Of the foot that may take off: that opposite the throwing arm, or either. */
function takeoffSides({ side }: Scene): readonly ('left' | 'right')[] {
  return side === 'none' ? ['left', 'right'] : [side === 'left' ? 'right' : 'left'];
}

/** Backwards from take-off: the first frame in which the foot opposite the throwing arm is down and stands. */
function firstOfContact(view: Scene, takeoff: number): number | null {
  const sides = takeoffSides(view);
  const feet = lowestFeet(view, sides);
  if (feet === null) return null;
  const level = (feet.heights[takeoff - feet.firstFrame] ?? 0) + CONTACT_HEIGHT_M;
  const stands = (frame: number): boolean =>
    (feet.heights[frame - feet.firstFrame] ?? Infinity) <= level &&
    sides.some((side) =>
      ['toe', 'heel'].some((part) => {
        const foot = view.points.get(`${part}-${side}`)?.smooth;
        const [before, after] = [foot?.get(frame - 1), foot?.get(frame + 1)];
        if (before === undefined || after === undefined) return false;
        return (Math.abs(after.x - before.x) * view.rateHz) / 2 < STANDING_FOOT_M_PER_S;
      }),
    );
  let frame = takeoff;
  while (frame > feet.firstFrame && stands(frame - 1)) frame -= 1;
  return frame === feet.firstFrame || frame === takeoff ? null : frame;
}

function startOfDip(heights: readonly number[], firstFrame: number): number | null {
  const standing = heights[0] as number;
  const sunk = heights.findIndex((y) => standing - y > 0.01);
  return sunk === -1 ? null : firstFrame + sunk;
}

function releaseFrame(view: Scene, side: 'left' | 'right'): number | null {
  const ball = view.points.get(BALL)?.raw;
  const hand = view.points.get(`knuckle-${side}`)?.raw ?? view.points.get(`wrist-${side}`)?.raw;
  const apart = new Map<number, number>();
  for (const [frame, place] of ball ?? []) {
    const held: Point | undefined = hand?.get(frame);
    if (held !== undefined) apart.set(frame, distance(place, held));
  }
  const stretch = longestRun(apart);
  if (stretch === null || stretch.values.length < 5) return null;
  const last = lastInHand(stretch.values);
  return last === null ? null : stretch.firstFrame + last;
}

function deepestKnee(view: Scene, landing: number): number | null {
  const frames = (['left', 'right'] as const).flatMap((side) => {
    const bend = angleRun(view, kneeFlexion(view, side), landing, Number.POSITIVE_INFINITY);
    if (bend === null) return [];
    const deepest = turningPoint(bend.values, 'highest');
    return deepest.isAtEdge ? [] : [bend.firstFrame + Math.round(deepest.index)];
  });
  return frames.length === 0 ? null : Math.max(...frames);
}

function angleRun(view: Scene, curve: AngleCurve, first: number, last: number): Run<number> | null {
  const frames = [...new Set([...view.points.values()].flatMap(({ smooth }) => [...smooth.keys()]))];
  const angles = new Map<number, number>();
  for (const frame of frames) {
    if (frame < first || frame > last) continue;
    const angle = curve.valueAt(frame / view.rateHz);
    if (angle !== null) angles.set(frame, angle);
  }
  return longestRun(angles);
}
