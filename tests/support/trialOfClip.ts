import type { ClipTruth } from '../../main/clip/clip.ts';
import type { RandomSource } from '../../main/demo/randomSource.ts';
import type { TrialInput } from '../../shared/kernel/trial/scene.ts';
import { evenClock, frameClock } from '../../shared/kernel/event/frameClock.ts';
import { proposeEvents } from '../../shared/kernel/trial/proposeEvents.ts';
import { movementById } from '../../shared/knowledge/movements/index.ts';
import type { Calibration, LandmarkTrack, MovementTrial } from '../../shared/model/trial.ts';
import { EXAMPLES, id } from '../conformance/examples.ts';
import { HAND_PX, type Samples } from './digitiseClip.ts';

/** Standard uncertainty that a person states for a coordinate put down or followed, px. */
const STATED_PX = 0.6;

/** The stick's ends put down by hand. */
export function stickCalibration({ stick }: ClipTruth, random: RandomSource): Calibration {
  const put = ([x, y]: readonly [number, number]) => ({
    xPx: x + random.normal(HAND_PX),
    yPx: y + random.normal(HAND_PX),
  });
  const [from, to] = [put(stick.from), put(stick.to)];
  return { kind: 'length', from, to, lengthM: stick.lengthM, lengthUM: 0.001, pointUPx: STATED_PX, tiltDeg: 0 };
}

/** The marks of the plane put down by hand. */
export function planeCalibration({ plane }: ClipTruth, random: RandomSource): Calibration {
  const points = plane.map(({ px: [x, y], m: [xM, yM] }) => ({
    image: { xPx: x + random.normal(HAND_PX), yPx: y + random.normal(HAND_PX) },
    plane: { xM, yM },
  }));
  return { kind: 'plane', points, pointUPx: STATED_PX };
}

/** A trial as the bench would hold it once the proposed events are accepted as they are and the others put down by hand. */
export function trialOfClip(
  truth: ClipTruth,
  points: ReadonlyMap<string, Samples>,
  calibration: Calibration,
  captureRateHz: number,
  frameTimesS: number[] | null = null,
): TrialInput {
  const movement = movementById(truth.movement);
  if (movement === null) throw new Error(`no movement ${truth.movement}`);
  const trial: MovementTrial = {
    ...EXAMPLES.movementTrial,
    movementId: truth.movement,
    side: truth.side,
    captureRateHz,
    playbackRateHz: truth.playbackRateHz,
    calibration,
    calibrationDraft: null,
    frameTimesS,
    ballId: truth.movement === 'handball-jump-throw' ? 'handball-3' : null,
    targetDistanceM: null,
    targetHeightM: null,
    targetDistanceUM: null,
    targetHeightUM: null,
  };
  const tracks = [...points].flatMap(([point, samples], i) =>
    (['by-hand', 'tracked'] as const).map(
      (origin, j): LandmarkTrack => ({
        id: id(9000 + 2 * i + j),
        trialId: trial.id,
        point,
        origin,
        uPx: null,
        samples: samples.flatMap(([frame, x, y, u]) => {
          if ((u === undefined) !== (origin === 'by-hand')) return [];
          return [u === undefined ? [frame, x, y] : [frame, x, y, u]];
        }),
      }),
    ),
  );
  const input: TrialInput = {
    trial,
    tracks,
    events: [],
    movement,
    massKg: 75,
    statureM: truth.statureM,
    referenceSex: 'male',
  };
  const clock = frameClock(trial) ?? evenClock(captureRateHz);
  const proposed = proposeEvents(input).map((one) => ({ ...one, origin: 'proposed-and-confirmed' as const }));
  // What is not proposed is stepped to and put down on its frame, to half a frame.
  const byHand = Object.entries(truth.events)
    .filter(([event]) => !proposed.some((one) => one.event === event))
    .map(([event, t]) => ({
      event,
      timeS: clock.timeOf(Math.round(clock.frameAt(t))),
      uS: 1 / clock.rateAt(t) / Math.sqrt(12),
      origin: 'by-hand' as const,
    }));
  const events = [...proposed, ...byHand].map(({ event, timeS, uS, origin }, i) => ({
    id: id(9500 + i),
    trialId: trial.id,
    event,
    timeS,
    uS,
    origin,
  }));
  return { ...input, events };
}
