import { analyseForceTrace } from '../../shared/kernel/jump/analyseForceTrace.ts';
import type { ForceJump } from '../../shared/kernel/jump/forceTrace.ts';
import { plateAsymmetry } from '../../shared/kernel/jump/plateAsymmetry.ts';
import { counted } from '../../shared/format/number.ts';
import { readForceFile } from '../exchange/readForceFile.ts';
import { choiceFrom, type Command, optionalNumber, readBytes } from './command.ts';
import { readingsToJson, readingsToLines, type Row } from './readings.ts';

const KINDS = { cmj: 'countermovement', squat: 'squat', drop: 'drop' } as const;

export const jumpForce: Command = {
  name: 'jump force',
  usage: 'FILE.csv|FILE.c3d [--rate HZ] [--columns a[,b]] [--mass KG] [--kind cmj|squat|drop]',
  does: 'every jump in a force-plate record',
  words: 1,
  options: {
    rate: { type: 'string' },
    columns: { type: 'string' },
    mass: { type: 'string' },
    kind: { type: 'string' },
  },
  run({ words: [file = ''], options }) {
    const kind = choiceFrom(options['kind'], '--kind', ['cmj', 'squat', 'drop'], 'cmj');
    const massKg = optionalNumber(options['mass'], '--mass');
    const record = readForceFile(readBytes(file), {
      columns: typeof options['columns'] === 'string' ? options['columns'].split(',') : [],
      rateHz: optionalNumber(options['rate'], '--rate'),
    });
    const analysis = analyseForceTrace({ rateHz: record.rateHz, plates: record.plates, massKg, kind: KINDS[kind] });
    const warnings = [...record.warnings, ...analysis.warnings];
    const several = analysis.jumps.length > 1;
    return {
      json: {
        ...jumpToJson(analysis, record.columns),
        warnings,
        jumps: analysis.jumps.map((jump) => ({ ...jumpToJson(jump, record.columns), warnings: jump.warnings })),
        rateHz: record.rateHz,
        columns: record.columns,
      },
      lines: [
        `${counted(analysis.jumps.length, 'jump')} in ${record.columns.join(' + ')} at ${Number(record.rateHz.toFixed(1))} Hz`,
        ...(several
          ? analysis.jumps.flatMap((jump, i) => ['', `Jump ${i + 1}`, ...readingsToLines(rowsOf(jump))])
          : readingsToLines(rowsOf(analysis))),
        ...warnings.map((warning) => `Look at: ${warning}`),
      ],
    };
  },
};

function jumpToJson(jump: ForceJump, columns: readonly string[]): Record<string, unknown> {
  const { phases } = jump;
  return {
    ...readingsToJson(rowsOf(jump)),
    phases:
      phases === null
        ? null
        : Object.fromEntries(
            (['unweighting', 'braking', 'propulsion'] as const).map((name) => [
              name,
              readingsToJson(
                (['start', 'duration', 'netImpulse'] as const).map((key) => ({
                  key,
                  label: key,
                  reading: phases[name][key],
                })),
              ),
            ]),
          ),
    plates: jump.plates.map((plate, i) => ({
      column: columns[i],
      ...readingsToJson([
        { key: 'impulse', label: 'Impulse', reading: plate.impulse },
        { key: 'peakLandingForce', label: 'Peak landing force', reading: plate.peakLandingForce },
      ]),
    })),
    asymmetry: sides(jump, columns),
  };
}

/** Two plates against each other, under the name of the formula. */
function sides({ plates }: ForceJump, columns: readonly string[]): Record<string, unknown> | null {
  const index = plateAsymmetry(plates.map(({ impulse }) => impulse));
  return index === null
    ? null
    : {
        formula: index.working.name,
        of: 'impulse from onset to take-off',
        positiveFor: columns[0],
        ...readingsToJson([{ key: 'value', label: 'Asymmetry', reading: index }]),
      };
}

function rowsOf(jump: ForceJump): readonly Row[] {
  const { phases } = jump;
  const noPhases = { unknown: 'only for a countermovement that starts from still standing' };
  return [
    { key: 'bodyWeight', label: 'Body weight', reading: jump.bodyWeight },
    { key: 'mass', label: 'Body mass', reading: jump.mass },
    { key: 'onset', label: 'Onset', reading: jump.onset },
    { key: 'takeoff', label: 'Take-off', reading: jump.takeoff },
    { key: 'landing', label: 'Landing', reading: jump.landing },
    { key: 'flightTime', label: 'Flight time', reading: jump.flightTime },
    { key: 'takeoffVelocity', label: 'Take-off velocity', reading: jump.takeoffVelocity },
    { key: 'jumpHeight', label: 'Jump height, impulse', reading: jump.jumpHeight, shownIn: 'cm' },
    {
      key: 'jumpHeightFlightTime',
      label: 'Jump height, flight time',
      reading: jump.jumpHeightFlightTime,
      shownIn: 'cm',
    },
    {
      key: 'riseAboveStanding',
      label: 'Rise above standing',
      reading: jump.riseAboveStanding ?? { unknown: 'the integration does not start from still standing' },
      shownIn: 'cm',
    },
    { key: 'timeToTakeoff', label: 'Time to take-off', reading: jump.timeToTakeoff },
    { key: 'rsiModified', label: 'Reactive strength index, modified', reading: jump.rsiModified },
    { key: 'peakForce', label: 'Peak force', reading: jump.peakForce },
    { key: 'peakPower', label: 'Peak power', reading: jump.peakPower },
    {
      key: 'countermovementDepth',
      label: 'Countermovement depth',
      reading: jump.countermovementDepth ?? noPhases,
      shownIn: 'cm',
    },
    {
      key: 'pushOffDistance',
      label: 'Push-off distance',
      reading: phases?.pushOffDistance ?? noPhases,
      shownIn: 'cm',
    },
    { key: 'meanPower', label: 'Mean power of the push-off', reading: phases?.meanPower ?? noPhases },
    {
      key: 'rateOfForceDevelopment',
      label: 'Rate of force development, lowest to highest',
      reading: jump.rateOfForceDevelopment ?? { unknown: 'the lowest force does not come before the highest' },
    },
    { key: 'peakLandingForce', label: 'Peak landing force', reading: jump.peakLandingForce },
    ...(jump.dropHeight === null
      ? []
      : [{ key: 'dropHeight', label: 'Height of fall found', reading: jump.dropHeight, shownIn: 'cm' } as const]),
  ];
}
