import type { Fact } from '../../assess/assessment.ts';
import type { Side, SideOrNone } from '../../model/parts.ts';
import { isKnown, measured, type Reading, type Unknown } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import type { Point } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import {
  type AngleCurve,
  angleAtEvent,
  angleExtreme,
  armElevation,
  elbowFlexion,
  kneeFlexion,
  trunkLean,
} from './angleCurves.ts';
import { BALL_MEASURES, type BallMeasure, ballMeasures } from './ballMeasures.ts';
import { type BodyFlight, bodyFlight } from './bodyFlight.ts';
import { segmentTurn } from './segmentTurn.ts';
import { pointAt } from './pointSeries.ts';
import { eventIn, phaseSpan, scaleOf, type Scene, scene, type TrialInput } from './scene.ts';
import { angleCurves, curvePoints } from './trialCurves.ts';

/** One thing measured in a trial. */
export interface TrialMeasure {
  readonly measure: string;
  /** Id of a phase of the movement, or `whole`. */
  readonly phase: string | null;
  readonly side: SideOrNone;
  readonly reading: Reading;
  /** Heights only: what they may be compared with. */
  readonly height: Fact['height'];
}

/** A curve over the whole clip: [seconds, value], gaps simply absent. */
export interface TrialSeries {
  readonly id: string;
  readonly label: string;
  readonly unit: Unit;
  readonly points: readonly (readonly [number, number])[];
}

export interface TrialMeasures {
  readonly measures: readonly TrialMeasure[];
  readonly warnings: readonly string[];
  readonly series: readonly TrialSeries[];
  /** How far the calibration's own points or lengths miss the plane they made, m; empty where there is nothing to compare. */
  readonly residualsM: readonly number[];
  /** Of the body, smoothed, metres in the calibrated plane. */
  readonly centreOfMass: readonly {
    /** Of the film: the nearest, where its own are uneven. */
    readonly frame: number;
    readonly timeS: number;
    readonly x: number;
    readonly y: number;
  }[];
}

interface Found {
  readonly side: SideOrNone;
  readonly reading: Reading;
  readonly height?: Fact['height'];
}

/**
 * Everything a filmed trial says, at the checkpoints of its movement: phase durations, joint angles, the body's flight,
 * the ball's release. Never throws for an incomplete trial: what a measure lacks is its reason.
 *
 * Time is frame over true capture rate, or of an uneven film each frame's own (frameClock, pointSeries). Body points are gap-filled up to 0.05 s and low-passed at 10 Hz (conventions);
 * free flight is fitted to unsmoothed points. Uncertainty: digitising, scale, and half a frame for events.
 *
 * @source the measures' own; see the files beside this one
 */
export function measureTrial(input: TrialInput): TrialMeasures {
  const { movement, trial } = input;
  const view = scene(input);
  const wanted = wantedMeasures(input);
  if ('unknown' in view) {
    const measures = wanted.map(({ phase, measure }) => ({
      measure,
      phase,
      side: 'none' as const,
      reading: view,
      height: null,
    }));
    return {
      measures,
      warnings: [`Nothing that needs time can be computed: ${view.unknown}.`],
      series: [],
      residualsM: [],
      centreOfMass: [],
    };
  }
  const body = bodyFlight(view);
  const floor = floorOf(view, trial);
  const ball = ballMeasures(view, trial, floor);
  const known: Context = { view, body, ball: ball.readings, input };
  const measures = wanted.flatMap(({ phase, measure }) =>
    (MEASURES[measure]?.(known, phase) ?? [none({ unknown: 'not computed from a film: enter it by hand' })]).map(
      ({ side, reading, height }): TrialMeasure => ({ measure, phase, side, reading, height: height ?? null }),
    ),
  );
  return {
    measures,
    warnings: [
      ...view.warnings,
      ...('unknown' in body ? [] : body.warnings),
      ...(movement.checkpoints.some(({ measure }) => measure.startsWith('ball.')) ? ball.warnings : []),
      ...statureWarning(view, input.statureM),
    ],
    series: seriesOf(view, floor),
    residualsM: view.residualsM,
    centreOfMass: [...view.body.smooth].map(([step, { x, y }]) => {
      const timeS = step / view.rateHz;
      return { frame: Math.round(view.clock.frameAt(timeS)), timeS, x, y };
    }),
  };
}

/** The movement's checkpoints, a duration for every phase that lasts, and the ball's release where a ball was digitised. */
function wantedMeasures({ movement, tracks }: TrialInput): { phase: string; measure: string }[] {
  const listed = movement.checkpoints.map(({ phase, measure }) => ({ phase, measure }));
  const has = (phase: string | null, measure: string) =>
    listed.some((one) => one.measure === measure && (phase === null || one.phase === phase));
  const durations = movement.phases
    .filter(({ id, startsAt, endsAt }) => startsAt !== endsAt && !has(id, 'phase.duration'))
    .map(({ id }) => ({ phase: id, measure: 'phase.duration' }));
  const release = movement.phases.find(({ id }) => id === 'release')?.id ?? 'whole';
  const flight = tracks.some(({ point }) => point === 'ball')
    ? BALL_MEASURES.filter((measure) => !has(null, measure)).map((measure) => ({ phase: release, measure }))
    : [];
  return [...listed, ...durations, ...flight];
}

interface Context {
  readonly view: Scene;
  readonly body: BodyFlight | Unknown;
  readonly ball: Readonly<Record<BallMeasure, Reading>>;
  readonly input: TrialInput;
}

function none(reading: Reading, height?: Fact['height']): Found {
  return { side: 'none', reading, height: height ?? null };
}

const MEASURES: Readonly<Record<string, (context: Context, phase: string) => readonly Found[]>> = {
  'phase.duration': ({ view }, phase) => [
    none(view.phases.find((one) => one.phase === phase)?.duration ?? { unknown: 'no such phase' }),
  ],
  'knee.flexPeak': ({ view, input }, phase) =>
    legs(view, input, phase).map((side) => extreme(view, side, kneeFlexion, phaseSpan(view, phase))),
  'knee.flexAtContact': ({ view, input }, phase) =>
    legs(view, input, phase).map((side) => atEvent(view, side, kneeFlexion, eventIn(view.movement, phase, CONTACTS))),
  'knee.flexAtTakeoff': ({ view, input }, phase) =>
    legs(view, input, phase).map((side) => atEvent(view, side, kneeFlexion, 'take-off')),
  'landing.kneeFlexPeak': ({ view, input }, phase) =>
    legs(view, input, phase).map((side) => extreme(view, side, kneeFlexion, landingSpan(view, phase))),
  'elbow.flexAtRelease': ({ view }) => arms(view).map((side) => atEvent(view, side, elbowFlexion, 'release')),
  'arm.elevation': ({ view }, phase) =>
    arms(view).map((side) => atEvent(view, side, armElevation, eventIn(view.movement, phase, ARM_EVENTS) ?? 'release')),
  'trunk.lean': ({ view }, phase) => [none(angleOver(view, trunkLean(view), phaseSpan(view, phase), Math.abs, phase))],
  'trunk.finishFlexion': ({ view }, phase) => [
    none(angleOver(view, trunkLean(view), phaseSpan(view, phase), (rad) => rad, phase)),
  ],
  'landing.drift': ({ view }) => [none(landingDrift(view))],
  'takeoff.contactTime': ({ view }) => [none(contactTime(view))],
  'takeoff.verticalVelocity': ({ body }) => [none('unknown' in body ? body : body.verticalVelocity)],
  'takeoff.horizontalVelocity': ({ body }) => [none('unknown' in body ? body : body.horizontalVelocity)],
  'com.riseInSkill': ({ body }) => [
    none('unknown' in body ? body : body.rise, {
      reference: 'take-off',
      method: 'video centre of mass',
      arms: 'as in the skill',
    }),
  ],
  'com.riseAboveStanding': ({ view, body }) => [
    none(riseAboveStanding(view, body), {
      reference: 'standing',
      method: 'video centre of mass',
      arms: 'as in the skill',
    }),
  ],
  'release.apexOffset': ({ view, body }) => [none(apexOffset(view, body))],
  'segment.outOfPlane': ({ view }) => segmentTurn(view),
  ...Object.fromEntries(BALL_MEASURES.map((id) => [id, ({ ball }: Context) => [none(ball[id])]])),
};

/** First contact after being in the air, or the plant of the take-off foot: whichever the phase holds. */
const CONTACTS = ['plant', 'take-off-touchdown', 'landing'];
/** Where in a phase the arm is read. */
const ARM_EVENTS = ['release', 'contact', 'cocked', 'set-point'];

/**
 * Legs to measure: in the phases up to take-off of a movement off one foot, that foot (opposite the throwing arm); else
 * every leg digitised.
 */
function legs(view: Scene, { movement }: TrialInput, phase: string): SideOrNone[] {
  const isOffOneFoot = movement.events.some(({ id }) => CONTACTS.slice(0, 2).includes(id));
  const endsBy = movement.phases.find(({ id }) => id === phase)?.endsAt;
  const order = movement.events.map(({ id }) => id);
  const isBeforeTakeoff = endsBy !== undefined && order.indexOf(endsBy) <= order.indexOf('take-off');
  if (isOffOneFoot && isBeforeTakeoff && view.side !== 'none') return [view.side === 'left' ? 'right' : 'left'];
  return digitised(view, ['hip', 'knee', 'ankle']);
}

function arms(view: Scene): SideOrNone[] {
  return view.side === 'none' ? digitised(view, ['shoulder', 'elbow', 'wrist']) : [view.side];
}

/** Sides with all of these points; `none` where neither has them. */
function digitised(view: Scene, parts: readonly string[]): SideOrNone[] {
  const sides = (['left', 'right'] as const).filter((side) =>
    parts.every((part) => view.points.has(`${part}-${side}`)),
  );
  return sides.length === 0 ? ['none'] : [...sides];
}

const NO_SIDE: Unknown = { unknown: 'the points of this joint are digitised on neither side' };

function atEvent(
  view: Scene,
  side: SideOrNone,
  curve: (view: Scene, side: Side) => AngleCurve,
  event: string | null,
): Found {
  if (side === 'none') return none(NO_SIDE);
  if (event === null) return { side, reading: { unknown: 'this phase has no event to read it at' } };
  const time = view.eventAt(event);
  return { side, reading: isKnown(time) ? angleAtEvent(view, curve(view, side), time) : time };
}

function extreme(
  view: Scene,
  side: SideOrNone,
  curve: (view: Scene, side: Side) => AngleCurve,
  span: { start: number; end: number } | Unknown,
): Found {
  if (side === 'none') return none(NO_SIDE);
  return {
    side,
    reading: 'unknown' in span ? span : renamePeak(angleExtreme(view, curve(view, side), span, (rad) => rad)),
  };
}

function renamePeak(reading: Reading<'rad'>): Reading<'rad'> {
  if (!isKnown(reading)) return reading;
  return { ...reading, working: { ...reading.working, name: `${reading.working.name}, greatest` } };
}

function angleOver(
  view: Scene,
  curve: AngleCurve,
  span: { start: number; end: number } | Unknown,
  score: (rad: number) => number,
  phase: string,
): Reading<'rad'> {
  if ('unknown' in span) return span;
  const instant = view.phases.find((one) => one.phase === phase);
  if (span.start === span.end && instant !== undefined && isKnown(instant.start)) {
    return angleAtEvent(view, curve, instant.start);
  }
  return angleExtreme(view, curve, span, score);
}

/** From landing to the end of the phase; `deepest`, where the movement has it, lies inside. */
function landingSpan(view: Scene, phase: string): { start: number; end: number } | Unknown {
  const landing = view.eventAt('landing');
  if (!isKnown(landing)) return landing;
  const span = phaseSpan(view, phase);
  return 'unknown' in span ? span : { start: landing.value, end: Math.max(landing.value, span.end) };
}

function contactTime(view: Scene): Reading<'s'> {
  const down = view.movement.events.find(({ id }) => id === 'plant' || id === 'take-off-touchdown');
  const [from, to] = [view.eventAt(down?.id ?? 'plant'), view.eventAt('take-off')];
  if (!isKnown(from)) return from;
  if (!isKnown(to)) return to;
  if (to.value <= from.value) return { unknown: 'take-off comes before the foot is down: check the events' };
  return derive(
    {
      symbol: 't_c',
      name: 'Contact time of the take-off foot',
      unit: 's',
      formula: 't_c = t_2 - t_1',
      source: { cite: 'Difference of two instants', status: 'derived' },
    },
    { t_1: from, t_2: to },
    ({ t_1, t_2 }) => t_2 - t_1,
  );
}

/** How far the landing foot comes down from the spot of the take-off foot, either way. */
function landingDrift(view: Scene): Reading<'m'> {
  if (view.noMetres !== null) return { unknown: view.noMetres };
  const spot = (event: string): (Point & { name: string }) | Unknown => {
    const time = view.eventAt(event);
    if (!isKnown(time)) return time;
    // The foot on the floor is the lower one: its toe, or the ankle where toes are not digitised.
    for (const part of ['toe', 'ankle']) {
      const feet = (['left', 'right'] as const).flatMap((side) => {
        const point = pointAt(view.points.get(`${part}-${side}`)?.smooth, time.value, view.rateHz);
        return point === null ? [] : [{ ...point, name: `${part}-${side}` }];
      });
      const lowest = feet.toSorted((a, b) => a.y - b.y)[0];
      if (lowest !== undefined) return lowest;
    }
    return { unknown: `neither toe nor ankle is digitised at ${time.working.name.toLowerCase()}` };
  };
  const [from, to] = [spot('take-off'), spot('landing')];
  if ('unknown' in from) return from;
  if ('unknown' in to) return to;
  const forward = view.facing * (to.x - from.x);
  return derive(
    {
      symbol: 'd',
      name: `Landing away from take-off, ${forward >= 0 ? 'forward' : 'backward'}`,
      unit: 'm',
      formula: 'd = s abs(x_2 - x_1)',
      variant: `${from.name} to ${to.name}; s: scale of the calibration, 1`,
      source: { cite: 'Definition', status: 'derived' },
    },
    {
      x_1: measured('x_1', 'Foot at take-off', from.x, 'm', view.pointU),
      x_2: measured('x_2', 'Foot at landing', to.x, 'm', view.pointU),
      s: scaleOf(view),
    },
    // Signed inside, so that u does not fold at 0.
    ({ x_1, x_2, s }) => (forward >= 0 ? 1 : -1) * view.facing * s * (x_2 - x_1),
  );
}

/** Against the centre of mass at the movement's start, where it has one at rest. */
function riseAboveStanding(view: Scene, body: BodyFlight | Unknown): Reading<'m'> {
  if ('unknown' in body) return body;
  if (!view.movement.events.some(({ id }) => id === 'start')) {
    return { unknown: 'this movement starts on the move: there is no quiet standing to compare with' };
  }
  const start = view.eventAt('start');
  if (!isKnown(start)) return start;
  const standing = pointAt(view.body.smooth, start.value, view.rateHz);
  if (standing === null) return { unknown: 'the body is not digitised at the start' };
  return derive(
    {
      symbol: 'h_s',
      name: 'Rise of the centre of mass above standing',
      unit: 'm',
      formula: 'h_s = s (y_a - y_s)',
      variant: 'centre of mass from video, standing taken at the start event; s: scale of the calibration, 1',
      source: { cite: 'Definition', status: 'derived' },
    },
    {
      y_a: body.apexHeight,
      y_s: measured('y_s', 'Centre of mass, standing', standing.y, 'm', view.pointU),
      s: scaleOf(view),
    },
    ({ y_a, y_s, s }) => s * (y_a - y_s),
  );
}

/** Signed: negative before the highest point. */
function apexOffset(view: Scene, body: BodyFlight | Unknown): Reading<'s'> {
  const release = view.eventAt('release');
  if (!isKnown(release)) return release;
  if ('unknown' in body) return body;
  return derive(
    {
      symbol: 'Δt',
      name: 'Release after the highest point of the centre of mass',
      unit: 's',
      formula: 'Δt = t_r - t_a',
      variant: 'negative: before it',
      source: { cite: 'Definition', status: 'derived' },
    },
    { t_r: release, t_a: body.apexTime },
    ({ t_r, t_a }) => t_r - t_a,
  );
}

/** 0 where the coordinates are given from the floor; else the lowest heel or toe up to take-off. */
function floorOf(view: Scene, trial: TrialInput['trial']): Reading<'m'> {
  if (view.noMetres !== null) return { unknown: view.noMetres };
  if (trial.calibration?.kind !== 'length') return measured('y_floor', 'Floor', 0, 'm', 0);
  const takeoff = view.eventAt('take-off');
  const last = isKnown(takeoff) ? takeoff.value * view.rateHz : Number.POSITIVE_INFINITY;
  const heights = lowestFeet(view, last);
  if (heights.length === 0) return { unknown: 'no heel or toe is digitised, so there is no floor to measure from' };
  const u = typeof view.pointU === 'number' ? Math.hypot(view.pointU, FOOT_U_M) : view.pointU;
  return measured('y_floor', 'Floor, from the lowest heel or toe', Math.min(...heights), 'm', u);
}

/** A toe or heel landmark sits up to about this far above the ground: a convention. */
const FOOT_U_M = 0.01;

function lowestFeet(view: Scene, lastFrame: number): number[] {
  return ['toe-left', 'toe-right', 'heel-left', 'heel-right'].flatMap((name) =>
    [...(view.points.get(name)?.smooth ?? [])].flatMap(([frame, { y }]) => (frame <= lastFrame ? [y] : [])),
  );
}

/** The body from crown to lowest foot is never taller than the person, nor less than half of them when upright. */
function statureWarning(view: Scene, statureM: number | null): string[] {
  if (statureM === null || view.noMetres !== null) return [];
  const heights = [...(view.points.get('vertex')?.smooth ?? [])].flatMap(([frame, top]) => {
    const feet = ['toe-left', 'toe-right', 'heel-left', 'heel-right'].flatMap((name) => {
      const foot = view.points.get(name)?.smooth.get(frame);
      return foot === undefined ? [] : [foot.y];
    });
    return feet.length === 0 ? [] : [top.y - Math.min(...feet)];
  });
  if (heights.length === 0) return [];
  const tallest = Math.max(...heights);
  // On tiptoe with a leg stretched down a body reaches about 15 % more than its stature.
  if (tallest <= 1.2 * statureM && tallest >= 0.6 * statureM) return [];
  return [
    `The body measures ${tallest.toFixed(2)} m from crown to foot at most, against a stature of ${statureM.toFixed(2)} m: check the scale.`,
  ];
}

function seriesOf(view: Scene, floor: Reading<'m'>): TrialSeries[] {
  const series: TrialSeries[] = [
    ...angleCurves(view).map(
      ({ id, label }): TrialSeries => ({ id, label, unit: 'rad', points: curvePoints(view, `angle:${id}`) }),
    ),
    ...(view.noMetres === null
      ? [comHeight(view, floor), { ...COM_VELOCITY, points: curvePoints(view, 'rising:') }]
      : []),
  ];
  return series.filter(({ points }) => points.length > 0);
}

/** Above the floor; without a floor from wherever the points are counted from, and the name says so. */
function comHeight(view: Scene, floor: Reading<'m'>): TrialSeries {
  const points = curvePoints(view, 'height:centre-of-mass');
  const of = { id: 'com.height', unit: 'm' } as const;
  if (!isKnown(floor)) return { ...of, label: 'Centre of mass, height in the coordinates of the points', points };
  return {
    ...of,
    label: 'Centre of mass, above the floor',
    points: points.map(([timeS, height]) => [timeS, height - floor.value] as const),
  };
}

const COM_VELOCITY = { id: 'com.verticalVelocity', label: 'Centre of mass, vertical velocity', unit: 'm/s' } as const;
