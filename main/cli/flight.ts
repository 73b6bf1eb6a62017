import { apex } from '../../shared/kernel/flight/apex.ts';
import { dragFactor } from '../../shared/kernel/flight/dragFactor.ts';
import { forwardFlight } from '../../shared/kernel/flight/forwardFlight.ts';
import { leastSpeed } from '../../shared/kernel/flight/leastSpeed.ts';
import { leastSpeedAngle } from '../../shared/kernel/flight/leastSpeedAngle.ts';
import { type Aim, marginForError } from '../../shared/kernel/flight/marginForError.ts';
import { type AirQuantities, NO_AIR, type Release } from '../../shared/kernel/flight/release.ts';
import { speedToScore } from '../../shared/kernel/flight/speedToScore.ts';
import { derive } from '../../shared/kernel/quantity/derive.ts';
import type { Ball } from '../../shared/knowledge/balls/ball.ts';
import { BALLS, TARGETS } from '../../shared/knowledge/balls/index.ts';
import { inUnit, measured, type Quantity, type Reading } from '../../shared/quantity.ts';
import { choiceFrom, type Command, numberFrom, UsageError } from './command.ts';
import { readingsToJson, readingsToLines, type Row } from './readings.ts';

const GIVEN = 'it was given without one';

/** A ball by its id, or the usual one of a sport: `handball-3`, `handball`. */
export function ballNamed(name: string | boolean | undefined): Ball | null {
  if (name === undefined) return null;
  const wanted = String(name).toLowerCase();
  const ball = BALLS.find(({ id, sport }) => id === wanted || sport.toLowerCase() === wanted);
  if (ball === undefined) {
    throw new UsageError(`--ball needs one of ${BALLS.map(({ id }) => id).join(', ')}, got “${name}”.`);
  }
  return ball;
}

/** Drag is on where a ball is named, unless switched off. */
export function dragOf(ball: Ball | null, option: string | boolean | undefined): Quantity<'/m'> | null {
  const choice = choiceFrom(option, '--drag', ['on', 'off'], ball === null ? 'off' : 'on');
  if (choice === 'off') return null;
  if (ball === null) throw new UsageError('--drag on needs --ball, because drag depends on the ball.');
  return dragFactor(ball);
}

export const flight: Command = {
  name: 'flight',
  usage: '--speed V --angle DEG --height Y --to-distance D --to-height H [--ball NAME] [--drag on|off]',
  does: 'where a released ball goes (m, m/s), and what would score',
  words: 0,
  options: {
    speed: { type: 'string' },
    angle: { type: 'string' },
    height: { type: 'string' },
    'to-distance': { type: 'string' },
    'to-height': { type: 'string' },
    ball: { type: 'string' },
    drag: { type: 'string' },
  },
  run({ options }) {
    const given = <U extends 'm' | 'm/s' | 'deg'>(option: string, symbol: string, name: string, unit: U) =>
      measured(symbol, name, numberFrom(options[option], `--${option}`), unit, GIVEN);
    const release = {
      speed: given('speed', 'v', 'Release speed', 'm/s'),
      angle: inUnit(given('angle', 'θ', 'Release angle', 'deg'), 'rad'),
      height: given('height', 'y_0', 'Release height', 'm'),
    };
    const distance = given('to-distance', 'd', 'Distance to the target', 'm');
    const height = given('to-height', 'y_t', 'Height of the target', 'm');
    const ball = ballNamed(options['ball']);
    const drag = dragOf(ball, options['drag']);
    const air = { ...NO_AIR, drag };
    const rise = derive(
      {
        symbol: 'Δh',
        name: 'Rise to the target',
        unit: 'm',
        formula: 'Δh = y_t - y_0',
        source: { cite: 'Definition', status: 'derived' },
      },
      { y_t: height, y_0: release.height },
      (p) => p.y_t - p.y_0,
    );
    const aim = aimFor(ball, distance.value, height.value);
    // Without a ball whose target is known, something above the release is taken to be entered from above.
    const mustFall = aim === null ? rise.value > 0 : aim.kind === 'ring';

    const path = forwardFlight(release, air);
    const arrival = path.fallingTo(height);
    const passing = path.passing(distance);
    const missedBy = (
      where: typeof arrival,
      read: 'distance' | 'height',
      target: Quantity<'m'>,
      name: string,
    ): Reading<'m'> =>
      'unknown' in where
        ? where
        : derive(
            {
              symbol: 'e',
              name,
              unit: 'm',
              formula: 'e = reached - target',
              source: { cite: 'Definition', status: 'derived' },
            },
            { reached: where[read], target },
            (p) => p.reached - p.target,
          );
    const top = apex(release, air);
    const rows: readonly Row[] = [
      { key: 'entryAngle', label: 'Entry angle', reading: 'unknown' in arrival ? arrival : arrival.entryAngle },
      {
        key: 'missDistance',
        label: 'Past the target, at its height',
        reading: missedBy(arrival, 'distance', distance, 'Distance past the target'),
      },
      {
        key: 'missHeight',
        label: 'Above the target, at its distance',
        reading: missedBy(passing, 'height', height, 'Height above the target'),
      },
      { key: 'leastSpeed', label: 'Least speed that gets there', reading: leastSpeed(distance, rise) },
      { key: 'leastSpeedAngle', label: 'Angle of least speed', reading: leastSpeedAngle(distance, rise) },
      { key: 'apexHeight', label: 'Highest point', reading: top.height },
      { key: 'timeOfFlight', label: 'Time of flight', reading: 'unknown' in arrival ? arrival : arrival.time },
      {
        key: 'speedToScore',
        label: 'Speed to score at this angle',
        reading: speedToScore(distance, rise, release.angle, air, mustFall),
      },
    ];
    const margin = marginRows(release, ball, aim, air);
    return {
      json: { ...readingsToJson(rows), margin: readingsToJson(margin), ball: ball?.id ?? null, drag: drag !== null },
      lines: [
        ...readingsToLines(rows),
        'Least speed and its angle hold in a vacuum. Room for error, each alone:',
        ...readingsToLines(margin),
      ],
    };
  },
};

/** What the ball's sport aims at, put where the command says it is; null where the program knows no such target. */
function aimFor(ball: Ball | null, distance: number, height: number): Aim | null {
  const shape = TARGETS.find(({ sport }) => sport === ball?.sport)?.shape;
  switch (shape?.kind) {
    case 'ring':
      return { kind: 'ring', distance, height, diameter: middle(shape.diameterM) };
    case 'goal':
      return { kind: 'goal', distance, bottom: 0, top: shape.heightM };
    case 'net':
      return { kind: 'net', distance, height, courtEnd: distance + shape.courtLengthM / 2 };
    default:
      return null;
  }
}

function marginRows(release: Release, ball: Ball | null, aim: Aim | null, air: AirQuantities): readonly Row[] {
  const unknown = { unknown: 'room for error needs --ball with a ball whose target is known' };
  const margin = ball === null || aim === null ? null : marginForError(release, aim, middle(ball.diameterM) / 2, air);
  const row = (key: 'room' | 'slower' | 'faster' | 'flatter' | 'steeper', label: string): Row => ({
    key,
    label,
    reading: margin?.[key] ?? unknown,
  });
  return [
    row('room', 'Half the room along the path'),
    row('slower', 'Slower by'),
    row('faster', 'Faster by'),
    row('flatter', 'Flatter by'),
    row('steeper', 'Steeper by'),
  ];
}

function middle([least, most]: readonly [number, number]): number {
  return (least + most) / 2;
}
