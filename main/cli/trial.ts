import { randomUUID } from 'node:crypto';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { DomainError } from '../../shared/errors.ts';
import { readTrialFile, TRIAL_FILE_SCHEMA, trialFileToRecords } from '../../shared/exchange/trialFile.ts';
import { frameClock } from '../../shared/kernel/event/frameClock.ts';
import { phaseTimes } from '../../shared/kernel/event/phaseTimes.ts';
import { type EventKinematics, eventKinematics } from '../../shared/kernel/trial/eventKinematics.ts';
import { measureTrial, type TrialSeries } from '../../shared/kernel/trial/measureTrial.ts';
import { scene } from '../../shared/kernel/trial/scene.ts';
import { type TrialLoads, trialLoads } from '../../shared/kernel/trial/trialLoads.ts';
import { measureById } from '../../shared/knowledge/measures/index.ts';
import { movementById } from '../../shared/knowledge/movements/index.ts';
import { REFERENCE_SEXES } from '../../shared/model/athlete.ts';
import { blankAthlete, blankCase } from '../../shared/model/blank.ts';
import { emptyCaseFile } from '../../shared/model/caseLists.ts';
import type { Unknown } from '../../shared/quantity.ts';
import { convert } from '../../shared/units.ts';
import { choiceFrom, type Command, optionalNumber, optionalPositive, readText, UsageError } from './command.ts';
import { readingsToJson, readingsToLines, type Row } from './readings.ts';

export const trial: Command = {
  name: 'trial',
  usage: `FILE.json|--schema [--mass KG] [--stature M] [--sex ${REFERENCE_SEXES.join('|')}] [--frame N]`,
  does: 'phases, measures, centre of mass, angles and checks of one filmed trial; --frame: one more frame for the static moments; --schema: JSON Schema of the file',
  words: 0,
  mayFollow: 1,
  options: {
    schema: { type: 'boolean' },
    mass: { type: 'string' },
    stature: { type: 'string' },
    sex: { type: 'string' },
    frame: { type: 'string' },
  },
  run({ words: [name], options }) {
    if (options['schema'] === true) {
      return { json: TRIAL_FILE_SCHEMA, lines: [JSON.stringify(TRIAL_FILE_SCHEMA, null, 2)] };
    }
    if (name === undefined) throw new UsageError('trial needs FILE.json, or --schema.');
    const { file } = readTrialFile(readText(name));
    const movement = movementById(file.movement);
    const clock = frameClock(file);
    if (movement === null || clock === null) {
      throw new DomainError(
        'input-missing',
        movement === null
          ? `trial needs a movement it knows, because of its phases; got ${file.movement}.`
          : 'trial needs the true capture rate, because everything rests on time; captureRateHz is null.',
      );
    }
    const athlete = {
      ...blankAthlete(randomUUID()),
      massKg: optionalPositive('trial', options['mass'], '--mass'),
      statureM: optionalPositive('trial', options['stature'], '--stature'),
      referenceSex: choiceFrom(options['sex'], '--sex', REFERENCE_SEXES, 'no-reference'),
    };
    const caseId = randomUUID();
    const { warnings, ...records } = trialFileToRecords(file, randomUUID, caseId);
    const input = {
      trial: records.movementTrial,
      tracks: records.landmarkTracks,
      events: records.trialEvents,
      movement,
      massKg: athlete.massKg,
      statureM: athlete.statureM,
      referenceSex: athlete.referenceSex,
    };
    const found = measureTrial(input);
    const view = scene(input);
    // A case of this one trial, never stored: the checks read cases.
    const { checks } = assessCase({
      ...emptyCaseFile(blankCase({ id: caseId, athleteId: athlete.id }, '', 'study', file.filmedOn), athlete),
      movementTrials: [records.movementTrial],
      landmarkTracks: [...records.landmarkTracks],
      trialEvents: [...records.trialEvents],
      enteredMeasures: [...records.enteredMeasures],
    });

    const { phases } = phaseTimes(movement, records.trialEvents, clock);
    const phaseRows = phases.map(({ phase, label, start, end, duration }) => ({
      phase,
      label,
      rows: [
        { key: 'start', label: 'Start', reading: start },
        { key: 'end', label: 'End', reading: end },
        { key: 'duration', label: 'Duration', reading: duration },
      ] as const,
    }));
    const measures = found.measures.map(({ measure, phase, side, reading }) => {
      const known = measureById(measure);
      const label = [known?.label ?? measure, phase, side === 'none' ? null : side].filter((part) => part !== null);
      const row: Row = {
        key: 'value',
        label: label.join(', '),
        reading,
        ...(known?.displayUnit ? { shownIn: known.displayUnit } : {}),
      };
      return { measure, phase, side, row };
    });
    const said = [...new Set([...warnings, ...found.warnings])];
    return {
      json: {
        movement: movement.id,
        phases: phaseRows.map(({ phase, label, rows }) => ({ phase, label, ...readingsToJson(rows) })),
        measures: measures.map(({ row, ...where }) => ({ ...where, ...readingsToJson([row]) })),
        calibration: { kind: file.calibration?.kind ?? null, residualsM: found.residualsM },
        atEvents: 'unknown' in view ? [] : eventKinematics(view).map(inJson),
        ...loadsInJson('unknown' in view ? view : trialLoads(view, input, frameOf(options['frame']))),
        centreOfMass: found.centreOfMass.map(({ frame, timeS, x, y }) => ({ frame, timeS, xM: x, yM: y })),
        angles: found.series.filter(({ unit }) => unit === 'rad').map(inDegrees),
        curves: found.series.filter(({ unit }) => unit !== 'rad'),
        checks,
        warnings: said,
      },
      lines: [
        movement.label,
        ...readingsToLines(measures.map(({ row }) => row)),
        ...checks.filter(({ verdict }) => verdict === 'questioned').map(({ sentence }) => `Questioned: ${sentence}`),
        ...said.map((warning) => `Look at: ${warning}`),
      ],
    };
  },
};

function inJson({ event, time, angles, speeds }: EventKinematics) {
  return {
    event,
    ...readingsToJson([{ key: 'time', label: 'Time', reading: time }]),
    angles: angles.map(({ id, angle, velocity, acceleration }) => ({
      id,
      ...readingsToJson([
        { key: 'angle', label: 'Angle', reading: angle },
        { key: 'angularVelocity', label: 'Angular velocity', reading: velocity },
        { key: 'angularAcceleration', label: 'Angular acceleration', reading: acceleration },
      ]),
    })),
    speeds: speeds.map(({ point, speed }) => ({
      point,
      ...readingsToJson([{ key: 'speed', label: 'Speed', reading: speed }]),
    })),
  };
}

function frameOf(option: string | boolean | undefined): number | null {
  const frame = optionalNumber(option, '--frame');
  if (frame === null || (Number.isInteger(frame) && frame >= 0)) return frame;
  throw new DomainError('input-out-of-range', `trial needs --frame as a whole number of 0 or more, got ${frame}.`);
}

/** Loads by models; null with the reason where there are none. */
function loadsInJson(loads: TrialLoads | Unknown): Record<string, unknown> {
  if ('unknown' in loads) return { loads: null, loadsReason: loads.unknown };
  const { moments, meanPushOffForce, meanLandingForce, meanBallForce } = loads;
  return {
    loads: {
      ...readingsToJson([
        { key: 'meanPushOffForce', label: 'Mean push-off force', reading: meanPushOffForce },
        { key: 'meanLandingForce', label: 'Mean landing force', reading: meanLandingForce },
        { key: 'meanBallForce', label: 'Mean net force on the ball', reading: meanBallForce },
      ]),
      staticMoments: moments.map(({ moment, label: _label, ...of }) => ({
        ...of,
        ...readingsToJson([{ key: 'moment', label: 'Static moment', reading: moment }]),
      })),
    },
  };
}

/** Angles leave the command line in degrees, as they come in. */
function inDegrees(series: TrialSeries): TrialSeries {
  return { ...series, unit: 'deg', points: series.points.map(([t, rad]) => [t, convert(rad, 'rad', 'deg')] as const) };
}
