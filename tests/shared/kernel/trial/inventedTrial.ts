import { advance, launch } from '../../../../shared/kernel/flight/path.ts';
import type { TrialInput } from '../../../../shared/kernel/trial/scene.ts';
import { basketballJumpShot } from '../../../../shared/knowledge/movements/basketball-jump-shot.ts';
import { type Calibration, LANDMARKS } from '../../../../shared/model/trial.ts';

/**
 * An invented trial whose answers are known in closed form: a stiff crouching figure, both limbs alike, that stands,
 * then flies as one piece on a parabola, and a ball that leaves it on another. No real person moves like this.
 */
export const FIGURE = {
  vertex: [0.02, 1.78],
  cervicale: [-0.03, 1.52],
  shoulder: [0, 1.44],
  elbow: [0.1, 1.17],
  wrist: [0.3, 1.33],
  knuckle: [0.37, 1.39],
  hip: [-0.05, 0.92],
  knee: [0.1, 0.52],
  ankle: [0, 0.09],
  heel: [-0.05, 0.02],
  toe: [0.2, 0.01],
} as const;

export const RATE = 120;
const G = 9.80665;
/** Frames. Flight of 0.6 s, highest at frame 76; released 6 frames, 50 ms, before. */
export const FRAMES = { takeoff: 40, release: 70, landing: 112, last: 130 };
export const TAKEOFF = { vx: 0.5, vy: G * 0.3 };
export const BALL = { speed: 7.8, angle: (52 * Math.PI) / 180, k: 0.0225 };

/** A hundred pixels a metre, exactly; a place put down by hand uncertain by 0.6 px a coordinate. */
export const HUNDRED_PX_A_METRE = {
  kind: 'length',
  from: { xPx: 0, yPx: 0 },
  to: { xPx: 100, yPx: 0 },
  lengthM: 1,
  lengthUM: 0,
  pointUPx: 0.6,
  tiltDeg: 0,
} as const;

function bodyAt(frame: number): { x: number; y: number } {
  const t = Math.min(Math.max(0, frame - FRAMES.takeoff), FRAMES.landing - FRAMES.takeoff) / RATE;
  return { x: TAKEOFF.vx * t, y: TAKEOFF.vy * t - (G * t * t) / 2 };
}

function hand(frame: number): { x: number; y: number } {
  return { x: bodyAt(frame).x + 0.45, y: bodyAt(frame).y + 1.5 };
}

export function inventedTrial(
  options: {
    readonly calibration?: Calibration | null;
    readonly toFile?: (x: number, y: number) => [number, number];
    /** When pictures are taken, in frames of RATE; absent: at every one. */
    readonly instants?: readonly number[];
  } = {},
): TrialInput {
  const toFile = options.toFile ?? ((x, y) => [x, y]);
  const id = '00000000-0000-4000-8000-000000000001';
  const frames = options.instants ?? Array.from({ length: FRAMES.last + 1 }, (_, frame) => frame);
  const sample = (frame: number, x: number, y: number): [number, number, number] => [frame, ...toFile(x, y)];
  const tracks = LANDMARKS.map((point) => {
    const part = point.replace(/-(left|right)$/, '') as keyof typeof FIGURE;
    const [x, y] = FIGURE[part];
    return {
      id,
      trialId: id,
      point,
      origin: 'imported' as const,
      uPx: null,
      samples: frames.map((frame, i) => sample(i, x + bodyAt(frame).x, y + bodyAt(frame).y)),
    };
  });
  const ball = frames
    .filter((frame) => frame < FRAMES.release + 25)
    .map((frame, i) => {
      if (frame <= FRAMES.release) return sample(i, hand(frame).x, hand(frame).y);
      const from = hand(FRAMES.release);
      const state = advance(launch(BALL.speed, BALL.angle, from.y), (frame - FRAMES.release) / RATE, {
        drag: BALL.k,
        lift: 0,
      });
      return sample(i, from.x + state.x, state.y);
    });
  const event = (name: string, frame: number) => ({
    id,
    trialId: id,
    event: name,
    timeS: frame / RATE,
    uS: null,
    origin: 'by-hand' as const,
  });
  return {
    trial: {
      id,
      caseId: id,
      movementId: basketballJumpShot.id,
      filmedOn: '2026-01-01',
      label: '',
      side: 'right',
      captureRateHz: RATE,
      playbackRateHz: null,
      clipSha256: null,
      calibration: options.calibration === undefined ? { kind: 'metres', pointUM: 0.004 } : options.calibration,
      captureRateFrom: null,
      calibrationDraft: null,
      frameTimesS: null,
      ballId: 'basketball-7',
      targetDistanceM: 4.225,
      targetHeightM: 3.05,
      targetDistanceUM: null,
      targetHeightUM: null,
      painNrs: null,
      note: '',
    },
    tracks: [...tracks, { id, trialId: id, point: 'ball', origin: 'imported' as const, samples: ball, uPx: null }],
    events: [
      event('start', 5),
      event('ball-rise', 15),
      event('set-point', 25),
      event('elbow-extension', 35),
      event('take-off', FRAMES.takeoff),
      event('release', FRAMES.release),
      event('landing', FRAMES.landing),
      event('end', 125),
    ],
    movement: basketballJumpShot,
    massKg: 70,
    statureM: 1.82,
    referenceSex: 'male',
  };
}
