import { DomainError, plainMessage } from '../../errors.ts';
import type { Movement } from '../../knowledge/movement.ts';
import type { SideOrNone } from '../../model/parts.ts';
import { BALL, type LandmarkTrack, type MovementTrial, type PointRepeat, type TrialEvent } from '../../model/trial.ts';
import { isKnown, measured, type Quantity, type Reading } from '../../quantity.ts';
import type { Facing } from '../angle/lean.ts';
import { type FrameClock, frameClock, usualRateHz } from '../event/frameClock.ts';
import { eventTime, type PhaseTime, phaseTimes } from '../event/phaseTimes.ts';
import { planeFromCalibration, type Plane } from '../plane/planeFromCalibration.ts';
import type { Point, PointU } from '../plane/point.ts';
import { centreOfMassFrames, type CentreOfMassFrames } from './centreOfMassFrames.ts';
import { joinTracks } from './joinTracks.ts';
import { type PointSeries, pointSeries } from './pointSeries.ts';
import { type PointUncertainty, pointUncertainty } from './pointUncertainty.ts';

export interface TrialInput {
  readonly trial: MovementTrial;
  readonly tracks: readonly LandmarkTrack[];
  readonly events: readonly TrialEvent[];
  /** Points put down twice; absent: none. */
  readonly repeats?: readonly PointRepeat[];
  readonly movement: Movement;
  readonly massKg: number | null;
  /** Standard uncertainty of the mass; absent or null: not known. */
  readonly massUKg?: number | null;
  readonly statureM: number | null;
  readonly referenceSex: 'female' | 'male' | 'no-reference' | null;
}

/** Everything about one trial that its measures read, prepared once. */
export interface Scene {
  /** Even frames a second of the points, from frame 0 on: the film's own, or where those are uneven their mean. */
  readonly rateHz: number;
  /** Of the film's own frames. */
  readonly clock: FrameClock;
  /** Of the low-pass that the smoothed points went through. */
  readonly cutoffHz: number;
  readonly movement: Movement;
  readonly side: SideOrNone;
  readonly facing: Facing;
  /** Why nothing in metres can be said; null: it can. Angles need no scale. */
  readonly noMetres: string | null;
  readonly pointU: PointU;
  readonly scaleU: PointU;
  /** The same for the ball, which may be nearer to the camera or farther than the body. */
  readonly ball: Pick<Plane, 'pointU' | 'scaleU'> & {
    /** By frame: of a tracked place, what it has for itself and not from the place it was tracked from, m. */
    readonly trackedU: ReadonlyMap<number, number>;
  };
  /** Of the calibration against itself, m; empty where there is nothing to compare. */
  readonly residualsM: readonly number[];
  readonly points: ReadonlyMap<string, PointSeries>;
  readonly body: CentreOfMassFrames;
  readonly phases: readonly PhaseTime[];
  readonly eventAt: (id: string) => Reading<'s'>;
  readonly warnings: readonly string[];
}

/** Low-pass for body points: a convention, in the middle of what jump and throw studies use. */
export const CUTOFF_HZ = 10;

/**
 * @returns why nothing that needs time can be computed, or the scene
 * @source conventions beside its constants
 */
export function scene(input: TrialInput): Scene | { readonly unknown: string } {
  const { trial, tracks, events, movement } = input;
  const clock = frameClock(trial);
  if (clock === null) return { unknown: 'true capture rate not entered' };
  const { rateHz } = clock;
  const warnings = unevenWarnings(trial, clock);
  const exact = pointUncertainty(trial, tracks, input.repeats ?? []);
  const { plane, ball, noMetres } = planesOf(trial, exact);
  if (noMetres !== null) warnings.push(`Nothing in metres can be said: ${noMetres}. Angles assume a level camera.`);
  warnings.push(...plane.warnings);

  const points = new Map<string, PointSeries>();
  const cutoffHz = Math.min(CUTOFF_HZ, rateHz / 4);
  const joined = joinTracks(tracks);
  for (const track of joined) {
    try {
      const { toMetres } = track.point === BALL ? ball : plane;
      const series = pointSeries(track, toMetres, clock, cutoffHz);
      points.set(track.point, series);
      if (track.point !== BALL) warnings.push(...gapWarnings(track.point, series));
    } catch (thrown) {
      if (!(thrown instanceof DomainError)) throw thrown;
      warnings.push(`${track.point} cannot be used: ${plainMessage(thrown.message)}.`);
    }
  }

  const { phases, warnings: order } = phaseTimes(movement, events, clock);
  warnings.push(...order, ...outsideSpan(plane, tracks));
  const body = centreOfMassFrames(points, input.referenceSex);
  warnings.push(...body.warnings);
  const facing = facingOf(points, body.raw);
  if (facing === null) warnings.push('Which way the person faces cannot be told; right is taken as forward.');
  return {
    rateHz,
    clock,
    cutoffHz,
    movement,
    side: trial.side,
    facing: facing ?? 1,
    noMetres,
    pointU: plane.pointU,
    scaleU: plane.scaleU,
    ball: {
      pointU: ball.pointU,
      scaleU: ball.scaleU,
      trackedU: trackedU(joined, clock, ball.pointU, exact.ballUPx),
    },
    residualsM: plane.residualsM,
    points,
    body,
    phases,
    eventAt(id) {
      const label = movement.events.find((event) => event.id === id)?.label ?? id;
      const event = events.find((candidate) => candidate.event === id);
      return event === undefined ? { unknown: `no ${label.toLowerCase()} event` } : eventTime(event, label, clock);
    },
    warnings,
  };
}

function planesOf(
  { calibration: scale }: MovementTrial,
  exact: PointUncertainty,
): { plane: Plane; ball: Plane; noMetres: string | null } {
  const calibration = scale === null || scale.kind === 'metres' ? scale : { ...scale, pointUPx: exact.handUPx };
  if (calibration === null) return { plane: PICTURE, ball: PICTURE, noMetres: 'no calibration' };
  try {
    return {
      plane: pooled(planeFromCalibration(calibration), exact.handUPx, exact.bodyUPx),
      ball: pooled(planeFromCalibration(calibration, 'ball'), exact.handUPx, exact.ballUPx),
      noMetres: null,
    };
  } catch (thrown) {
    if (!(thrown instanceof DomainError)) throw thrown;
    return { plane: PICTURE, ball: PICTURE, noMetres: plainMessage(thrown.message) };
  }
}

function trackedU(
  tracks: readonly LandmarkTrack[],
  clock: FrameClock,
  pointU: PointU,
  pointUPx: number | null,
): ReadonlyMap<number, number> {
  if (typeof pointU !== 'number' || pointUPx === null || pointUPx === 0) return new Map();
  const samples = tracks.find(({ point }) => point === BALL)?.samples ?? [];
  return new Map(
    samples.flatMap(([frame, , , uPx]) =>
      uPx === undefined ? [] : [[clock.timeOf(frame) * clock.rateHz, (uPx * pointU) / pointUPx] as const],
    ),
  );
}

/** A plane in which points are as exact as those of one trial are on the whole, rather than all as if put down by hand. */
function pooled(plane: Plane, handUPx: number | null, uPx: number | null): Plane {
  if (typeof plane.pointU !== 'number' || handUPx === null || handUPx === 0 || uPx === null) return plane;
  return { ...plane, pointU: (plane.pointU * uPx) / handUPx };
}

/** The scale of the calibration as a factor of 1 with its relative uncertainty; exact where that is not known. */
export function scaleOf({ scaleU }: Pick<Scene, 'scaleU'>): Quantity<'1'> {
  return measured('s', 'Scale of the calibration', 1, '1', typeof scaleU === 'number' ? scaleU : 0);
}

/** Without a usable calibration the picture itself, upright: good for angles only. */
const PICTURE: Plane = {
  toMetres: ({ x, y }) => ({ x, y: -y }),
  pointU: 'there is no calibration to say how exact points are',
  scaleU: 'there is no calibration',
  residualsM: [],
  metresPerPixel: null,
  spanPx: null,
  warnings: [],
};

/** A clip is slowed by a good deal, or not at all: a smaller factor is most likely a rate entered for another. */
const LEAST_SLOWED = 1.5;
const SAME_RATE = 0.005;

function unevenWarnings({ captureRateHz, frameTimesS }: MovementTrial, clock: FrameClock): string[] {
  if (clock.isEven || frameTimesS === null || captureRateHz === null) return [];
  const usual = usualRateHz(frameTimesS);
  const factor = captureRateHz / usual;
  const longestS = frameTimesS.reduce((most, _, frame) => {
    return frame === 0 ? most : Math.max(most, clock.timeOf(frame) - clock.timeOf(frame - 1));
  }, 0);
  return [
    `Frames are unevenly spaced, up to ${(1000 * longestS).toFixed(1)} ms apart: each frame’s own time is used. For smoothing, points are put on an even grid of ${clock.rateHz.toFixed(1)} frames a second.`,
    ...(Math.abs(factor - 1) > SAME_RATE && factor < LEAST_SLOWED && factor > 1 / LEAST_SLOWED
      ? [
          `The film’s usual rate is ${usual.toFixed(2)} Hz and the capture rate entered ${captureRateHz} Hz, so that its times are divided by ${factor.toFixed(3)}. Unless it was slowed by that much, enter the film’s own rate.`,
        ]
      : []),
  ];
}

function gapWarnings(point: string, { filledFrames, openGaps }: PointSeries): string[] {
  const open = openGaps.reduce((sum, [first, last]) => sum + last - first + 1, 0);
  return [
    ...(filledFrames.length > 0 ? [`${point}: ${frames(filledFrames.length)} filled between neighbours.`] : []),
    ...(open > 0 ? [`${point}: ${frames(open)} missing in gaps too long to fill.`] : []),
  ];
}

function frames(count: number): string {
  return `${count} ${count === 1 ? 'frame' : 'frames'}`;
}

/** Points far outside the calibrated area are extrapolated: half its size beyond its edge is a convention. */
function outsideSpan(plane: Plane, tracks: readonly LandmarkTrack[]): string[] {
  const span = plane.spanPx;
  if (span === null) return [];
  const [w, h] = [(span.right - span.left) / 2, (span.bottom - span.top) / 2];
  const all = tracks.flatMap(({ samples }) => samples);
  const outside = all.filter(
    ([, x, y]) => x < span.left - w || x > span.right + w || y < span.top - h || y > span.bottom + h,
  );
  if (outside.length === 0) return [];
  return [
    `${Math.ceil((100 * outside.length) / all.length)} % of the points lie far outside the calibrated area, where small errors grow.`,
  ];
}

/** From heel to toe where feet are digitised, else the way the body, else the ball moves. */
function facingOf(points: ReadonlyMap<string, PointSeries>, body: ReadonlyMap<number, Point>): Facing | null {
  const feet = (['left', 'right'] as const).flatMap((side) => {
    const heel = points.get(`heel-${side}`)?.smooth;
    return [...(points.get(`toe-${side}`)?.smooth ?? [])].flatMap(([frame, toe]) => {
      const back = heel?.get(frame);
      return back === undefined ? [] : [toe.x - back.x];
    });
  });
  const votes = [
    feet.reduce((sum, forward) => sum + Math.sign(forward), 0),
    travelled(body),
    travelled(points.get(BALL)?.seen),
  ];
  const vote = votes.find((value) => value !== 0);
  return vote === undefined ? null : vote > 0 ? 1 : -1;
}

function travelled(path: ReadonlyMap<number, Point> | undefined): number {
  const places = [...(path?.values() ?? [])];
  return (places.at(-1)?.x ?? 0) - (places[0]?.x ?? 0);
}

/** The event of these that bounds or lies inside a phase of the movement, by the movement's own order. */
export function eventIn(movement: Movement, phaseId: string, candidates: readonly string[]): string | null {
  const order = movement.events.map(({ id }) => id);
  const phase = movement.phases.find(({ id }) => id === phaseId);
  if (phase === undefined) return candidates.find((id) => order.includes(id)) ?? null;
  const [first, last] = [order.indexOf(phase.startsAt), order.indexOf(phase.endsAt)];
  return candidates.find((id) => order.indexOf(id) >= first && order.indexOf(id) <= last && order.includes(id)) ?? null;
}

/** Start and end of a phase in seconds; of `whole`: first to last event known. */
export function phaseSpan(view: Scene, phaseId: string): { start: number; end: number } | { unknown: string } {
  const phase = view.phases.find(({ phase }) => phase === phaseId);
  if (phase === undefined) {
    const times = view.movement.events.flatMap(({ id }) => {
      const time = view.eventAt(id);
      return isKnown(time) ? [time.value] : [];
    });
    return times.length < 2
      ? { unknown: 'fewer than two events' }
      : { start: Math.min(...times), end: Math.max(...times) };
  }
  if (!isKnown(phase.start)) return phase.start;
  if (!isKnown(phase.end)) return phase.end;
  return { start: Math.min(phase.start.value, phase.end.value), end: Math.max(phase.start.value, phase.end.value) };
}
