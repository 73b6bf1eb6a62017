import { apex } from '../../shared/kernel/flight/apex.ts';
import { forwardFlight } from '../../shared/kernel/flight/forwardFlight.ts';
import { leastSpeed } from '../../shared/kernel/flight/leastSpeed.ts';
import { leastSpeedAngle } from '../../shared/kernel/flight/leastSpeedAngle.ts';
import { type AimU, marginForError } from '../../shared/kernel/flight/marginForError.ts';
import { type Move, movedRelease } from '../../shared/kernel/flight/movedRelease.ts';
import type { Aim } from '../../shared/kernel/flight/passesAim.ts';
import type { AirQuantities, Release } from '../../shared/kernel/flight/release.ts';
import { releaseSpread, type Spread } from '../../shared/kernel/flight/releaseSpread.ts';
import { speedToScore } from '../../shared/kernel/flight/speedToScore.ts';
import { derive } from '../../shared/kernel/quantity/derive.ts';
import type { Ball } from '../../shared/knowledge/balls/ball.ts';
import { aimFor } from '../../shared/kernel/flight/aimFor.ts';
import { TARGETS, targetOf } from '../../shared/knowledge/balls/index.ts';
import type { Target } from '../../shared/knowledge/balls/target.ts';
import { inUnit, isKnown, measured, type Quantity, type Reading } from '../../shared/quantity.ts';
import type { Unit } from '../../shared/units.ts';
import { choiceFrom, type Command, type Invocation, numberFrom, optionalNumber, UsageError } from './command.ts';
import { ballNamed, dragOf, liftOf } from './namedBall.ts';
import { readingsToJson, readingsToLines, type Row } from './readings.ts';

const NO_U = 'it was given without one';
const DEFINITION = { cite: 'Definition', status: 'derived' } as const;
const NAMES = ['speed', 'angle', 'height', 'to-distance', 'to-height'] as const;
const WHAT_IFS = ['higher', 'later', 'body-up', 'body-forward'] as const;

export const flight: Command = {
  name: 'flight',
  usage:
    '--speed V --angle DEG --height Y --to-distance D --to-height H [--<any of these>-u U] [--ball NAME] [--drag on|off] [--lift C_L] [--target NAME] [--higher M] [--later S --body-up V --body-forward V] [--seed N]',
  does: 'where a released ball goes (m, m/s), what would score, and what would do the same from elsewhere',
  words: 0,
  options: Object.fromEntries(
    [...NAMES, ...NAMES.map((name) => `${name}-u`), ...WHAT_IFS, 'ball', 'drag', 'lift', 'target', 'seed'].map(
      (name) => [name, { type: 'string' as const }],
    ),
  ),
  run({ options }) {
    const given = <U extends 'm' | 'm/s' | 'deg'>(
      option: (typeof NAMES)[number],
      symbol: string,
      name: string,
      unit: U,
    ) => {
      const u = optionalNumber(options[`${option}-u`], `--${option}-u`) ?? NO_U;
      return measured(symbol, name, numberFrom(options[option], `--${option}`), unit, u);
    };
    const release = {
      speed: given('speed', 'v', 'Release speed', 'm/s'),
      angle: inUnit(given('angle', 'θ', 'Release angle', 'deg'), 'rad'),
      height: given('height', 'y_0', 'Release height', 'm'),
    };
    const distance = given('to-distance', 'd', 'Distance to the target', 'm');
    const height = given('to-height', 'y_t', 'Height of the target', 'm');
    const ball = ballNamed(options['ball']);
    const air = { drag: dragOf(ball, options['drag']), lift: liftOf(ball, options['lift']) };
    const rise = derive(
      { symbol: 'Δh', name: 'Rise to the target', unit: 'm', formula: 'Δh = y_t - y_0', source: DEFINITION },
      { y_t: height, y_0: release.height },
      (p) => p.y_t - p.y_0,
    );
    const target = targetNamed(options['target'], ball);
    const aim = aimFor(target, distance.value, height.value);
    // Without a known target, something above the release is taken to be entered from above.
    const mustFall = aim === null ? rise.value > 0 : aim.kind === 'ring';
    const radius = ball === null ? null : middle(ball.diameterM) / 2;

    const path = forwardFlight(release, air);
    const arrival = path.fallingTo(height);
    const passing = path.passing(distance);
    const drawn = releaseSpread(
      release,
      { distance, height, mustFall, aim: aim === null || radius === null ? null : { shape: aim, ballRadius: radius } },
      air,
      { seed: seedOf(options['seed']) },
    );
    /** By random draws where every input has an uncertainty, since the path bends; else as it is. */
    const best = <U extends Unit>(
      key: 'entryAngle' | 'missDistance' | 'timeOfFlight' | 'speedToScore',
      first: Reading<U>,
    ) => ('unknown' in drawn ? first : (drawn[key] as unknown as Spread<U>).reading);
    const missed = (
      where: typeof arrival,
      read: 'distance' | 'height',
      from: Quantity<'m'>,
      name: string,
    ): Reading<'m'> =>
      'unknown' in where
        ? where
        : derive(
            { symbol: 'e', name, unit: 'm', formula: 'e = reached - target', source: DEFINITION },
            { reached: where[read], target: from },
            (p) => p.reached - p.target,
          );
    const rows: readonly Row[] = [
      {
        key: 'entryAngle',
        label: 'Entry angle',
        reading: best('entryAngle', 'unknown' in arrival ? arrival : arrival.entryAngle),
      },
      {
        key: 'missDistance',
        label: 'Past the target, at its height',
        reading: best('missDistance', missed(arrival, 'distance', distance, 'Distance past the target')),
      },
      {
        key: 'missHeight',
        label: 'Above the target, at its distance',
        reading: missed(passing, 'height', height, 'Height above the target'),
      },
      { key: 'leastSpeed', label: 'Least speed that gets there', reading: leastSpeed(distance, rise) },
      { key: 'leastSpeedAngle', label: 'Angle of least speed', reading: leastSpeedAngle(distance, rise) },
      { key: 'apexHeight', label: 'Highest point', reading: apex(release, air).height },
      {
        key: 'timeOfFlight',
        label: 'Time of flight',
        reading: best('timeOfFlight', 'unknown' in arrival ? arrival : arrival.time),
      },
      {
        key: 'speedToScore',
        label: 'Speed to score at this angle',
        reading: best('speedToScore', speedToScore(distance, rise, release.angle, air, mustFall)),
      },
    ];
    const margin = marginRows(release, radius, aim, air, {
      distance: distance.u ?? NO_U,
      height: height.u ?? NO_U,
    });
    const moves = movesFrom(options).map(({ words, move }) => ({
      words,
      rows: movedRows(movedRelease(release, distance, height, move, air, mustFall)),
    }));
    const chance: Row = {
      key: 'chance',
      label: 'Chance of passing the target',
      reading: 'unknown' in drawn ? drawn : drawn.chance,
    };
    return {
      json: {
        ...readingsToJson(rows),
        margin: readingsToJson(margin),
        monteCarlo: { ...readingsToJson([chance]), ...('unknown' in drawn ? { draws: null } : drawsToJson(drawn)) },
        instead: moves.map(({ words, rows: instead }) => ({ move: words, ...readingsToJson(instead) })),
        ball: ball?.id ?? null,
        target: target?.id ?? null,
        drag: air.drag !== null,
      },
      lines: [
        ...readingsToLines(rows),
        'Least speed and its angle hold in a vacuum. Room for error, each alone:',
        ...readingsToLines(margin),
        ...('unknown' in drawn ? [] : readingsToLines([chance])),
        ...moves.flatMap(({ words, rows: instead }) => [
          `To reach the same from ${words}, at the same angle or at the same speed:`,
          ...readingsToLines(instead),
        ]),
      ],
    };
  },
};

type Options = Invocation['options'];

function seedOf(option: Options[string]): number {
  const seed = optionalNumber(option, '--seed') ?? 1;
  if (!Number.isInteger(seed)) throw new UsageError(`--seed needs a whole number, got “${option}”.`);
  return seed;
}

function ends({ reading, interval }: Spread<Unit>): [number, number] | null {
  if (interval === null || !isKnown(reading)) return null;
  const degrees = reading.unit === 'rad' ? 180 / Math.PI : 1;
  return [interval[0] * degrees, interval[1] * degrees];
}

function drawsToJson(drawn: Exclude<ReturnType<typeof releaseSpread>, { unknown: string }>): Record<string, unknown> {
  const { draws, isStable, seed } = drawn;
  return {
    draws,
    isStable,
    seed,
    coverage: 0.95,
    intervals: {
      entryAngle: ends(drawn.entryAngle),
      missDistance: ends(drawn.missDistance),
      timeOfFlight: ends(drawn.timeOfFlight),
      speedToScore: ends(drawn.speedToScore),
    },
  };
}

/** What the ball's sport aims at, unless another target is named; null where the program knows none. */
function targetNamed(name: Options[string], ball: Ball | null): Target | null {
  if (name === undefined) return targetOf(ball);
  const id = choiceFrom(
    name,
    '--target',
    TARGETS.map((target) => target.id),
  );
  return TARGETS.find((target) => target.id === id) ?? null;
}

function marginRows(
  release: Release,
  radius: number | null,
  aim: Aim | null,
  air: AirQuantities,
  aimU: AimU,
): readonly Row[] {
  const unknown = { unknown: 'room for error needs --ball, and a target that is known' };
  const margin = radius === null || aim === null ? null : marginForError(release, aim, radius, air, aimU);
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

function exact<U extends Unit>(symbol: string, name: string, value: number, unit: U): Quantity<U> {
  return measured(symbol, name, value, unit, 0);
}

/** A release from elsewhere: higher, or later in a jump whose body moves as given. */
function movesFrom(options: Options): { words: string; move: Move }[] {
  const number = (name: (typeof WHAT_IFS)[number]) => optionalNumber(options[name], `--${name}`);
  const [higher, later] = [number('higher'), number('later')];
  return [
    ...(higher === null
      ? []
      : [
          {
            words: `${Math.abs(higher)} m ${higher < 0 ? 'lower' : 'higher'}`,
            move: { kind: 'higher', by: exact('Δy', 'Higher by', higher, 'm') } as const,
          },
        ]),
    ...(later === null
      ? []
      : [
          {
            words: `${Math.abs(later)} s ${later < 0 ? 'earlier' : 'later'}`,
            move: {
              kind: 'later',
              by: exact('δt', 'Later by', later, 's'),
              bodyUp: exact('v_b', 'Body upwards', number('body-up') ?? 0, 'm/s'),
              bodyForward: exact('v_f', 'Body forwards', number('body-forward') ?? 0, 'm/s'),
            } as const,
          },
        ]),
  ];
}

function movedRows(moved: ReturnType<typeof movedRelease>): readonly Row[] {
  return [
    { key: 'height', label: 'Release height', reading: moved.height },
    { key: 'distance', label: 'Distance left', reading: moved.distance },
    { key: 'speed', label: 'Speed, at the angle as it was', reading: moved.speed },
    { key: 'angle', label: 'Angle, at the speed as it was', reading: moved.angle },
    { key: 'leastSpeed', label: 'Least speed there', reading: moved.leastSpeed },
    { key: 'leastSpeedAngle', label: 'Its angle', reading: moved.leastSpeedAngle },
  ];
}

function middle([least, most]: readonly [number, number]): number {
  return (least + most) / 2;
}
