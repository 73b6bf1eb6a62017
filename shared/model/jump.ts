import { z } from 'zod';
import { day, finite, id, line, nonNegative, pain, positive, sha256, text } from './parts.ts';

export const JUMP_KINDS = ['countermovement', 'squat', 'drop'] as const;
export const JUMP_METHODS = ['flight-time', 'jump-and-reach', 'force-plate', 'contact-mat', 'filmed-trial'] as const;
export const ARMS = ['free', 'hips'] as const;

/** Methods that time the flight: height by g t²/8, each a method of its own that is compared with itself alone. */
export const FLIGHT_METHODS: readonly JumpMethod[] = ['flight-time', 'contact-mat', 'filmed-trial'];
type JumpMethod = (typeof JUMP_METHODS)[number];

/** Conditions that all trials of one test share. Two heights may be compared only if these agree. */
export const jumpTest = z.strictObject({
  id,
  caseId: id,
  heldOn: day,
  kind: z.enum(JUMP_KINDS),
  method: z.enum(JUMP_METHODS),
  arms: z.enum(ARMS).nullable(),
  shoes: z.boolean().nullable(),
  device: line,
  /** Frames a second of the video a flight time was read from, or samples a second of the mat; null where not known. */
  frameRateHz: positive.max(100_000).nullable(),
  /** Jump and reach: standing reach in the same shoes. */
  standingReachM: positive.max(4).nullable(),
  /** Drop jump: height of the box. */
  dropHeightM: positive.max(3).nullable(),
  note: text,
  /** What was done before the first trial, in words. */
  warmUp: line,
});
export type JumpTest = z.infer<typeof jumpTest>;

/** Units a file of forces may be in. */
export const FORCE_UNITS = ['N', 'kN', 'kgf', 'lbf'] as const;
const forceUnit = z.enum(FORCE_UNITS);

/** How a force file is read where its own heads do not say so, as a person decided: kept for files with the same heads. */
export const forceReading = z.strictObject({
  /** Columns to sum; empty: recognise them. */
  columns: z.array(line).max(4),
  /** Samples a second; null: from the time column. */
  rateHz: positive.max(100_000).nullable(),
  /** Null: as the heads say. */
  forceUnit: forceUnit.nullable(),
});
export type ForceReading = z.infer<typeof forceReading>;

const stored = z.strictObject({ value: finite, u: nonNegative.nullable() });

/** What the force-trace analysis found, in SI, with the version of the kernel that found it. The trace itself is in the media store. */
export const forceSummary = z.strictObject({
  kernelVersion: line,
  rateHz: positive,
  columns: z.array(line).min(1).max(4),
  /** What a person said the columns are in, where their heads do not or say otherwise. */
  forceUnit: forceUnit.exactOptional(),
  bodyWeightN: stored,
  massKg: stored,
  onsetS: stored,
  takeoffS: stored,
  landingS: stored,
  takeoffVelocityMPerS: stored,
  jumpHeightM: stored,
  jumpHeightFlightTimeM: stored,
  riseAboveStandingM: stored.nullable(),
  timeToTakeoffS: stored,
  rsiModified: stored,
  peakForceN: stored,
  peakPowerW: stored,
  countermovementDepthM: stored.nullable(),
  /** Instants a person placed instead of those found; a summary from before marks could be moved has none. */
  placedByHand: z
    .array(z.enum(['onset', 'take-off', 'landing']))
    .max(3)
    .exactOptional(),
  /** Phases, loading and landing; a summary from before these were kept has none. */
  details: z
    .strictObject({
      phases: z
        .strictObject({
          unweightingS: stored,
          brakingS: stored,
          propulsionS: stored,
          pushOffDistanceM: stored,
          meanPowerW: stored,
        })
        .nullable(),
      /** Lowest to highest force before take-off. */
      rateOfForceDevelopmentNPerS: stored.nullable(),
      peakLandingForceN: stored,
      plates: z.array(z.strictObject({ impulseNs: stored, peakLandingForceN: stored })).max(4),
    })
    .exactOptional(),
  warnings: z.array(z.string().max(500)).max(50),
});
export type ForceSummary = z.infer<typeof forceSummary>;

export const jumpTrial = z.strictObject({
  id,
  testId: id,
  /** Order within the test, from 1. */
  number: z.int().min(1).max(999),
  flightTimeS: positive.max(1.5).nullable(),
  contactTimeS: positive.max(5).nullable(),
  jumpReachM: positive.max(5).nullable(),
  force: forceSummary.nullable(),
  mediaSha256: sha256.nullable(),
  painNrs: pain.nullable(),
  isSetAside: z.boolean(),
  note: text,
  /** The filmed trial whose flight this is; its events give the flight time. */
  movementTrialId: id.nullable(),
});
export type JumpTrial = z.infer<typeof jumpTrial>;
