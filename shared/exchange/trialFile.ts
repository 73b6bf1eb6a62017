import { z } from 'zod';
import { DomainError } from '../errors.ts';
import { customBallId } from '../knowledge/balls/customBall.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { movementById } from '../knowledge/movements/index.ts';
import { day, finite, line, nonNegative, pain, positive, sideOrNone, text } from '../model/parts.ts';
import {
  BALL,
  calibration,
  type EnteredMeasure,
  frameTimesS,
  type LandmarkTrack,
  type MovementTrial,
  type TrialEvent,
} from '../model/trial.ts';
import { isUnit, type Unit, UNITS } from '../units.ts';

/**
 * The JSON file one filmed trial arrives in: landmarks frame by frame, calibration, events, and values measured
 * elsewhere. Frames count from 0 at the true capture rate, or at times of their own; event times are real seconds from frame 0. Coordinates are
 * pixels with y down, or metres with y up and 0 at the floor for calibration `metres`.
 */
const sample = z
  .tuple([z.int().min(0), finite.nullable(), finite.nullable()])
  .describe('[frame, x, y]; x and y null where the point could not be seen');

const unit = z
  .string()
  .refine((code) => isUnit(code), 'a unit by its UCUM code that this program knows, such as deg, m, cm or m/s');

const where = { measure: line.min(1), phase: line.nullable().default(null), side: sideOrNone.default('none') };

export const trialFile = z.strictObject({
  format: z.literal('caseframe-trial'),
  version: z.literal(1),
  movement: line.min(1).describe('id of a movement, such as handball-jump-throw'),
  label: line.default(''),
  filmedOn: day,
  side: sideOrNone.describe('throwing, striking or leading side'),
  captureRateHz: positive.max(100_000).nullable().describe('frames a second the camera truly recorded'),
  playbackRateHz: positive.max(100_000).nullable().default(null),
  frameTimesS: frameTimesS
    .nullable()
    .default(null)
    .describe('seconds of the film at which each frame is shown, from frame 0, where frames are unevenly spaced'),
  calibration: calibration.nullable(),
  ball: z
    .union([
      line,
      z.strictObject({
        massKg: positive.max(100),
        diameterM: positive.max(2),
        dragCoefficient: nonNegative.max(2),
      }),
    ])
    .nullable()
    .default(null)
    .describe('id of a ball or implement, such as handball-3, or the figures of another'),
  target: z
    .strictObject({
      distanceM: positive.max(200),
      heightM: finite.min(0).max(50),
      distanceUM: nonNegative.max(200).nullable().default(null),
      heightUM: nonNegative.max(50).nullable().default(null),
    })
    .nullable()
    .default(null)
    .describe('horizontal distance from release, and height, each with its standard uncertainty'),
  painNrs: pain.nullable().default(null),
  points: z.record(line.min(1), z.array(sample).max(200_000)),
  events: z
    .array(z.strictObject({ event: line.min(1), timeS: finite, uS: nonNegative.nullable().default(null) }))
    .max(1000)
    .default([]),
  measures: z
    .array(
      z.union([
        z.strictObject({ ...where, value: finite, unit, u: nonNegative.nullable().default(null) }),
        z.strictObject({ ...where, flag: z.boolean() }),
      ]),
    )
    .max(1000)
    .default([]),
  note: text.default(''),
});
export type TrialFile = z.infer<typeof trialFile>;

/** The published description of the format (JSON Schema 2020-12). */
export const TRIAL_FILE_SCHEMA: unknown = z.toJSONSchema(trialFile, { io: 'input' });

/**
 * Reads a trial file.
 *
 * @returns the file, and in words what is missing from it that a trial can do without
 * @throws DomainError 'input-malformed' with the path of the first fault: text that is not JSON, a field missing or of
 *   the wrong kind, frames that do not rise; 'unit-mismatch' for a value in a unit of something else
 */
export function readTrialFile(json: string): { readonly file: TrialFile; readonly warnings: readonly string[] } {
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch (thrown) {
    throw new DomainError('input-malformed', `readTrialFile needs JSON text: ${(thrown as SyntaxError).message}`);
  }
  const parsed = trialFile.safeParse(data);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const path = issue === undefined || issue.path.length === 0 ? null : issue.path.map(String).join('.');
    const others = parsed.error.issues.length - 1;
    throw new DomainError(
      'input-malformed',
      `readTrialFile found a fault at ${path ?? 'the top of the file'}: ${issue?.message ?? 'unreadable'}${others > 0 ? ` (and ${others} more)` : ''}`,
      path,
    );
  }
  for (const [point, samples] of Object.entries(parsed.data.points)) {
    samples.forEach(([frame], i) => {
      const before = samples[i - 1]?.[0] ?? -1;
      if (frame <= before) {
        throw new DomainError(
          'input-malformed',
          `readTrialFile needs the frames of ${point} in rising order, got ${frame} after ${before}`,
          `points.${point}.${i}`,
        );
      }
    });
  }
  parsed.data.measures.forEach((entry, i) => {
    if ('unit' in entry) requireUnitOf(entry.measure, entry.unit, `measures.${i}.unit`);
  });
  return { file: parsed.data, warnings: warningsAbout(parsed.data) };
}

/** Centimetres of an angle would be kept as so many radians, and judged. */
function requireUnitOf(measureId: string, given: Unit, path: string): void {
  const measure = measureById(measureId);
  const wanted = measure?.displayUnit ?? measure?.unit ?? null;
  if (wanted === null || UNITS[given].dimension === UNITS[wanted].dimension) return;
  throw new DomainError(
    'unit-mismatch',
    `readTrialFile needs ${measureId} (${measure?.label}) as ${UNITS[wanted].dimension}, for example in ${wanted}, and got ${given}`,
    path,
  );
}

/**
 * The records a trial file becomes, ready to be created in a case.
 * @param ids makes a new record id at each call
 */
export function trialFileToRecords(
  file: TrialFile,
  ids: () => string,
  caseId: string,
): {
  readonly movementTrial: MovementTrial;
  readonly landmarkTracks: readonly LandmarkTrack[];
  readonly trialEvents: readonly TrialEvent[];
  readonly enteredMeasures: readonly EnteredMeasure[];
  readonly warnings: readonly string[];
} {
  const trialId = ids();
  return {
    movementTrial: {
      id: trialId,
      caseId,
      movementId: file.movement,
      filmedOn: file.filmedOn,
      label: file.label,
      side: file.side,
      captureRateHz: file.captureRateHz,
      playbackRateHz: file.playbackRateHz,
      captureRateFrom: file.captureRateHz === null ? null : 'entered',
      clipSha256: null,
      calibration: file.calibration,
      calibrationDraft: null,
      frameTimesS: file.frameTimesS,
      ballId: typeof file.ball === 'object' && file.ball !== null ? customBallId(file.ball) : file.ball,
      targetDistanceM: file.target?.distanceM ?? null,
      targetHeightM: file.target?.heightM ?? null,
      targetDistanceUM: file.target?.distanceUM ?? null,
      targetHeightUM: file.target?.heightUM ?? null,
      painNrs: file.painNrs,
      note: file.note,
    },
    landmarkTracks: Object.entries(file.points).flatMap(([point, samples]) => {
      const seen = seenSamples(samples);
      return seen.length === 0
        ? []
        : [{ id: ids(), trialId, point, origin: 'imported' as const, samples: seen, uPx: null }];
    }),
    trialEvents: file.events.map((event) => ({ id: ids(), trialId, origin: 'imported' as const, ...event })),
    enteredMeasures: file.measures.map((entry) => {
      const factor = 'unit' in entry ? UNITS[entry.unit].toSi : 1;
      return {
        id: ids(),
        caseId,
        trialId,
        measureId: entry.measure,
        phase: entry.phase,
        side: entry.side,
        takenOn: file.filmedOn,
        valueSi: 'value' in entry ? entry.value * factor : null,
        uSi: 'value' in entry && entry.u !== null ? entry.u * factor : null,
        flag: 'flag' in entry ? entry.flag : null,
        note: '',
      };
    }),
    warnings: warningsAbout(file),
  };
}

function seenSamples(samples: TrialFile['points'][string]): [number, number, number][] {
  return samples.flatMap(([frame, x, y]) =>
    x === null || y === null ? [] : [[frame, x, y] as [number, number, number]],
  );
}

function warningsAbout(file: TrialFile): string[] {
  const warnings: string[] = [];
  const movement = movementById(file.movement);
  if (movement === null) {
    warnings.push(`This version does not know the movement ${file.movement}: the trial is kept, without phases.`);
  } else {
    const known = new Set(movement.events.map(({ id }) => id));
    for (const { event } of file.events) {
      if (!known.has(event)) warnings.push(`${movement.label} has no event ${event}: it is kept but bounds no phase.`);
    }
  }
  if (file.captureRateHz === null)
    warnings.push('The true capture rate is not given, so nothing that needs time can be computed.');
  if (file.calibration === null) warnings.push('There is no calibration, so nothing in metres can be computed.');

  const tracks = Object.entries(file.points).map(([point, samples]) => ({
    point,
    frames: seenSamples(samples).map(([frame]) => frame),
  }));
  const frames = tracks
    .flatMap((track) => [track.frames[0], track.frames.at(-1)])
    .filter((frame) => frame !== undefined);
  if (frames.length === 0) return [...warnings, 'No point has been digitised.'];
  const count = Math.max(...frames) - Math.min(...frames) + 1;
  for (const { point, frames: seen } of tracks) {
    // The ball is often digitised in flight only; how much of that there is is judged where it is used.
    if (point !== BALL && seen.length < count) {
      warnings.push(`${point} missing in ${count - seen.length} of ${count} frames`);
    }
  }
  return warnings;
}
