import { z } from 'zod';
import { day, finite, id, line, nonNegative, pain, positive, sha256, side, sideOrNone, text } from './parts.ts';

/** Named points of the body model (20) and the ball or implement. Users may add names of their own. */
export const LANDMARKS = [
  'vertex',
  'cervicale',
  'shoulder-left',
  'shoulder-right',
  'elbow-left',
  'elbow-right',
  'wrist-left',
  'wrist-right',
  'knuckle-left',
  'knuckle-right',
  'hip-left',
  'hip-right',
  'knee-left',
  'knee-right',
  'ankle-left',
  'ankle-right',
  'heel-left',
  'heel-right',
  'toe-left',
  'toe-right',
] as const;
export type Landmark = (typeof LANDMARKS)[number];
export const BALL = 'ball';

const pixel = z.strictObject({ xPx: finite, yPx: finite });
const plane = z.strictObject({ xM: finite, yM: finite });

/**
 * How far the movement is from where the scale was taken, seen from the camera: nearer things look larger. `axis`: where
 * the camera points, the middle of its picture.
 */
const depth = z.strictObject({
  cameraM: positive.max(1000).describe('camera to the plane of the scale'),
  bodyNearerM: finite.describe('how much nearer to the camera than the scale the body is; negative: farther'),
  ballNearerM: finite.describe('the same for the ball or implement'),
  uM: nonNegative.describe('standard uncertainty of each of these three'),
  axis: pixel,
});
export type Depth = z.infer<typeof depth>;

const knownLength = z.strictObject({ from: pixel, to: pixel, lengthM: positive, lengthUM: nonNegative });

/** How pixels become metres. Image y points down; metres have y up. */
export const calibration = z.discriminatedUnion('kind', [
  /** Coordinates already in metres, y up. `pointUM`: standard uncertainty of one coordinate. */
  z.strictObject({ kind: z.literal('metres'), pointUM: nonNegative.nullable() }),
  /** One known length in the plane of motion. `pointUPx`: standard uncertainty of one digitised coordinate. */
  z.strictObject({
    kind: z.literal('length'),
    from: pixel,
    to: pixel,
    lengthM: positive,
    lengthUM: nonNegative,
    pointUPx: nonNegative.nullable(),
    /** Degrees the image's down direction is turned from true vertical, anticlockwise positive. */
    tiltDeg: finite.min(-45).max(45),
    /** More known lengths in the same plane; the scale is then the one that fits them all best. */
    others: z.exactOptional(z.array(knownLength).max(20)),
    depth: z.exactOptional(depth),
  }),
  /** Four or more points whose places in the plane of motion are known. */
  z.strictObject({
    kind: z.literal('plane'),
    points: z
      .array(z.strictObject({ image: pixel, plane }))
      .min(4)
      .max(100),
    pointUPx: nonNegative.nullable(),
    depth: z.exactOptional(depth),
    /** Degrees the plane's down, as its points were measured, is turned from true vertical, anticlockwise positive; absent: 0. */
    tiltDeg: z.exactOptional(finite.min(-45).max(45)),
  }),
]);
export type Calibration = z.infer<typeof calibration>;

const draftPixel = z.strictObject({ xPx: finite.nullable(), yPx: finite.nullable() });

/** A calibration on its way: kept at each step, used once what is complete of it is enough. */
export const calibrationDraft = z.strictObject({
  kind: z.enum(['length', 'plane']),
  from: draftPixel,
  to: draftPixel,
  lengthM: positive.nullable(),
  lengthUM: nonNegative.nullable(),
  points: z.array(z.strictObject({ image: draftPixel, xM: finite.nullable(), yM: finite.nullable() })).max(100),
  pointUPx: nonNegative.nullable(),
  tiltDeg: finite.min(-45).max(45),
  /** Both ends of something that hangs or stands true. */
  plumb: z.strictObject({ top: draftPixel, bottom: draftPixel }),
  /** As `others` and `depth` of a calibration. */
  others: z.array(knownLength).max(20),
  depth: z.strictObject({
    cameraM: positive.max(1000).nullable(),
    bodyNearerM: finite.nullable(),
    ballNearerM: finite.nullable(),
    uM: nonNegative.nullable(),
    axis: draftPixel,
  }),
});
export type CalibrationDraft = z.infer<typeof calibrationDraft>;

export const MOST_FRAMES = 200_000;
export const frameTimesS = z
  .array(nonNegative)
  .min(2)
  .max(MOST_FRAMES)
  .refine(
    (times) => times[0] === 0 && times.every((t, i) => i === 0 || t > (times[i - 1] as number)),
    'times that rise from 0',
  );

/** How the true capture rate is known: entered, from a clip that is not slowed, or from the gravity its free flight shows. */
export const CAPTURE_RATE_FROM = ['entered', 'not-slowed', 'free-flight'] as const;

export const movementTrial = z.strictObject({
  id,
  caseId: id,
  /** Id of a movement in the knowledge, `handball-jump-throw`, or of one of the case's own. */
  movementId: line,
  filmedOn: day,
  label: line,
  /** Throwing, striking or leading side. */
  side: sideOrNone,
  /** Frames a second the camera truly recorded. */
  captureRateHz: positive.max(100_000).nullable(),
  /** Frames a second at which the clip plays; differs from capture in slow motion. */
  playbackRateHz: positive.max(100_000).nullable(),
  calibration: calibration.nullable(),
  /** Ball or implement by its knowledge id, `handball-3`; null: none. */
  ballId: line.nullable(),
  /** Horizontal distance from release to target, and the target's height, where the skill aims at one. */
  targetDistanceM: positive.max(200).nullable(),
  targetHeightM: finite.min(0).max(50).nullable(),
  painNrs: pain.nullable(),
  note: text,
  /** The film in the media store; null: none was brought in. Frames of points count the film's own pictures from 0. */
  clipSha256: sha256.nullable(),
  /** Standard uncertainty of the target's distance and height; null: not known. */
  targetDistanceUM: nonNegative.max(200).nullable(),
  targetHeightUM: nonNegative.max(50).nullable(),
  captureRateFrom: z.enum(CAPTURE_RATE_FROM).nullable(),
  calibrationDraft: calibrationDraft.nullable(),
  /**
   * Seconds of the film's own time at which it shows each of its frames, from the first, where they are unevenly spaced;
   * null: frames are even, and the capture rate says it all.
   */
  frameTimesS: frameTimesS.nullable(),
});
export type MovementTrial = z.infer<typeof movementTrial>;

export const POINT_ORIGINS = ['by-hand', 'tracked', 'suggested-and-confirmed', 'imported'] as const;

/**
 * [frame, x, y] in the trial's coordinates (pixels y down, or metres y up for calibration `metres`). A tracked one has a
 * fourth: the standard uncertainty of one coordinate beside that of the place it was tracked from, px.
 */
const sample = z
  .tuple([z.int().min(0), finite, finite], nonNegative)
  .refine(({ length }) => length <= 4, 'a frame, two coordinates and at most one uncertainty');

/** One named point through time, frames rising. Frames are numbered from 0; a frame without a point is simply absent. */
export const landmarkTrack = z.strictObject({
  id,
  trialId: id,
  point: line,
  origin: z.enum(POINT_ORIGINS),
  samples: z.array(sample).max(MOST_FRAMES),
  /** Standard uncertainty of one coordinate of these samples as they were obtained; null: what the trial says. */
  uPx: nonNegative.nullable(),
});
export type LandmarkTrack = z.infer<typeof landmarkTrack>;

/** A point put down a second time in a frame, without sight of the first: what a person's own error is computed from. */
export const pointRepeat = z.strictObject({
  id,
  trialId: id,
  point: line,
  frame: z.int().min(0),
  first: pixel,
  again: pixel,
});
export type PointRepeat = z.infer<typeof pointRepeat>;

/** A frame kept as a picture with what was drawn on it, for the report. */
export const still = z.strictObject({
  id,
  trialId: id,
  /** Real seconds from frame 0; of the film where the true capture rate is not known. */
  timeS: finite,
  caption: text,
  /** What it shows, for those who cannot see it. */
  alt: text,
  /** A PNG in the media store. */
  mediaSha: sha256,
});
export type Still = z.infer<typeof still>;

/** An instant that bounds phases: `take-off`, `release`. Time is real seconds from frame 0. */
export const trialEvent = z.strictObject({
  id,
  trialId: id,
  event: line,
  timeS: finite,
  /** Standard uncertainty; half a frame unless better is known. */
  uS: nonNegative.nullable(),
  origin: z.enum(['by-hand', 'proposed-and-confirmed', 'imported']),
});
export type TrialEvent = z.infer<typeof trialEvent>;

/** A value someone measured elsewhere and typed in: an angle from another tool, a count, a yes or no. */
export const enteredMeasure = z.strictObject({
  id,
  caseId: id,
  trialId: id.nullable(),
  measureId: line,
  phase: line.nullable(),
  side: sideOrNone,
  takenOn: day,
  valueSi: finite.nullable(),
  uSi: nonNegative.nullable(),
  flag: z.boolean().nullable(),
  note: text,
});
export type EnteredMeasure = z.infer<typeof enteredMeasure>;
export type { Side } from './parts.ts';
export { side };
