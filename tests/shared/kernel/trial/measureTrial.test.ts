import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { measureTrial, type TrialMeasures } from '../../../../shared/kernel/trial/measureTrial.ts';
import { handballJumpThrow } from '../../../../shared/knowledge/movements/handball-jump-throw.ts';
import type { SideOrNone } from '../../../../shared/model/parts.ts';
import type { Calibration } from '../../../../shared/model/trial.ts';
import { isKnown, type Reading } from '../../../../shared/quantity.ts';
import { BALL, FRAMES, inventedTrial, RATE, TAKEOFF } from './inventedTrial.ts';

const degrees = (rad: number) => (rad * 180) / Math.PI;

function reading(result: TrialMeasures, measure: string, phase?: string, side?: SideOrNone): Reading {
  const found = result.measures.find(
    (one) =>
      one.measure === measure &&
      (phase === undefined || one.phase === phase) &&
      (side === undefined || one.side === side),
  );
  if (found === undefined) throw new Error(`no ${measure}`);
  return found.reading;
}

function value(result: TrialMeasures, measure: string, phase?: string, side?: SideOrNone): number {
  const found = reading(result, measure, phase, side);
  if (!isKnown(found)) throw new Error(`${measure}: ${found.unknown}`);
  return found.value;
}

function why(result: TrialMeasures, measure: string): string {
  const found = reading(result, measure);
  return isKnown(found) ? '' : found.unknown;
}

const whole = measureTrial(inventedTrial());

test('closed form: the body flies as it was made to', () => {
  expect(value(whole, 'takeoff.verticalVelocity')).toBeCloseTo(TAKEOFF.vy, 6);
  expect(value(whole, 'takeoff.horizontalVelocity')).toBeCloseTo(TAKEOFF.vx, 6);
  expect(value(whole, 'com.riseInSkill')).toBeCloseTo(TAKEOFF.vy ** 2 / (2 * 9.80665), 6);
  expect(value(whole, 'com.riseAboveStanding')).toBeCloseTo(TAKEOFF.vy ** 2 / (2 * 9.80665), 6);
  expect(value(whole, 'release.apexOffset')).toBeCloseTo(-0.05, 6);
  expect(value(whole, 'landing.drift')).toBeCloseTo((TAKEOFF.vx * (FRAMES.landing - FRAMES.takeoff)) / RATE, 2);
});

test('closed form: the ball leaves as it was thrown, its own drag allowed for', () => {
  expect(value(whole, 'ball.releaseSpeed')).toBeCloseTo(BALL.speed, 1);
  expect(degrees(value(whole, 'ball.releaseAngle'))).toBeCloseTo(52, 0);
  expect(value(whole, 'ball.gravityFound')).toBeCloseTo(9.81, 1);
  const h = TAKEOFF.vy * 0.25 - (9.80665 * 0.25 ** 2) / 2;
  expect(value(whole, 'ball.releaseHeight')).toBeCloseTo(1.5 + h, 2);
  const rise = 3.05 - 1.5 - h;
  expect(value(whole, 'ball.leastSpeed')).toBeCloseTo(Math.sqrt(9.80665 * (rise + Math.hypot(rise, 4.225))), 2);
});

test('stick figure (computed by general-purpose tools): the angles of the stiff body at every checkpoint', () => {
  for (const side of ['left', 'right'] as const) {
    expect(degrees(value(whole, 'knee.flexPeak', 'preparation', side))).toBeCloseTo(180 - 146.352, 1);
    expect(degrees(value(whole, 'knee.flexAtTakeoff', undefined, side))).toBeCloseTo(180 - 146.352, 1);
    expect(degrees(value(whole, 'landing.kneeFlexPeak', undefined, side))).toBeCloseTo(180 - 146.352, 1);
  }
  expect(degrees(value(whole, 'elbow.flexAtRelease', undefined, 'right'))).toBeCloseTo(180 - 71.663, 1);
  expect(degrees(value(whole, 'trunk.lean', 'preparation'))).toBeCloseTo(5.492, 1);
});

test('every duration carries half a frame at each end: u = Δt/√6', () => {
  const duration = reading(whole, 'phase.duration', 'ball-elevation');
  expect(isKnown(duration) && duration.value).toBeCloseTo(10 / RATE, 12);
  expect(isKnown(duration) && duration.u).toBeCloseTo(1 / RATE / Math.sqrt(6), 12);
});

const tags = (measure: string) => whole.measures.find((one) => one.measure === measure)?.height;

test('heights say what they may be compared with', () => {
  expect(tags('com.riseInSkill')).toMatchObject({ reference: 'take-off', method: 'video centre of mass' });
  expect(tags('com.riseAboveStanding')).toMatchObject({ reference: 'standing' });
  expect(tags('landing.drift')).toBeNull();
});

test('every measured number has an uncertainty, or says why not', () => {
  for (const { measure, reading: found } of whole.measures) {
    if (isKnown(found)) expect(found.u === null ? found.uReason : measure).toBeTruthy();
  }
});

test('law: pixels with y down and one known length give the same answers as metres', () => {
  const scale = 240;
  const filmed = measureTrial(
    inventedTrial({
      calibration: {
        kind: 'length',
        from: { xPx: 100, yPx: 900 },
        to: { xPx: 100, yPx: 900 - 2 * scale },
        lengthM: 2,
        lengthUM: 0.002,
        pointUPx: 1,
        tiltDeg: 0,
      },
      toFile: (x, y) => [300 + scale * x, 900 - scale * y],
    }),
  );
  for (const [measure, digits] of [
    ['takeoff.verticalVelocity', 6],
    ['com.riseInSkill', 6],
    ['ball.releaseSpeed', 6],
    ['ball.releaseAngle', 6],
    ['elbow.flexAtRelease', 6],
    ['trunk.lean', 6],
    // The floor is the lowest toe here, 1 cm up.
    ['ball.releaseHeight', 1],
  ] as const) {
    expect(value(filmed, measure)).toBeCloseTo(value(whole, measure), digits);
  }
});

test('law: a film seen from the other side says the same', () => {
  const mirrored = measureTrial(inventedTrial({ toFile: (x, y) => [-x, y] }));
  for (const { measure, phase, side, reading: found } of whole.measures) {
    if (isKnown(found)) expect(value(mirrored, measure, phase ?? undefined, side)).toBeCloseTo(found.value, 6);
  }
});

test('what is missing makes only its own measures unknown, and says what', () => {
  const input = inventedTrial();
  const without = (event: string) =>
    measureTrial({ ...input, events: input.events.filter((one) => one.event !== event) });
  expect(why(without('release'), 'ball.releaseSpeed')).toBe('no release event');
  expect(value(without('release'), 'takeoff.verticalVelocity')).toBeCloseTo(TAKEOFF.vy, 6);
  expect(why(without('landing'), 'landing.drift')).toBe('no landing event');

  const ball = input.tracks.find(({ point }) => point === 'ball');
  const short = {
    ...input,
    tracks: [
      ...input.tracks.filter((track) => track !== ball),
      { ...ball, samples: ball?.samples.slice(0, FRAMES.release + 4) } as never,
    ],
  };
  expect(why(measureTrial(short), 'ball.releaseSpeed')).toMatch(/not digitised for 6 frames after release/);

  const legless = { ...input, tracks: input.tracks.filter(({ point }) => !point.startsWith('knee')) };
  expect(why(measureTrial(legless), 'knee.flexPeak')).toMatch(/digitised on neither side/);
});

test('with only the near side digitised the body still flies as it was made to, and the report says what it rests on', () => {
  const input = inventedTrial();
  const near = measureTrial({ ...input, tracks: input.tracks.filter(({ point }) => !point.endsWith('left')) });
  // Both limbs coincide, so leaving one out moves the centre but not its flight.
  expect(value(near, 'takeoff.verticalVelocity')).toBeCloseTo(TAKEOFF.vy, 6);
  expect(near.warnings.join(' ')).toMatch(/Only the right hip is digitised/);
  expect(near.warnings.join(' ')).toMatch(/not digitised: upper-arm left/);
});

test('without a true capture rate nothing that needs time is computed; without a calibration angles still are', () => {
  const input = inventedTrial();
  const timeless = measureTrial({ ...input, trial: { ...input.trial, captureRateHz: null } });
  expect(
    timeless.measures.every((one) => !isKnown(one.reading) && one.reading.unknown === 'true capture rate not entered'),
  ).toBe(true);
  const scaleless = measureTrial(inventedTrial({ calibration: null }));
  expect(why(scaleless, 'ball.releaseSpeed')).toBe('no calibration');
  expect(isKnown(reading(scaleless, 'elbow.flexAtRelease'))).toBe(true);
});

test('a slowed clip taken as real is found by the fall of ball and body', () => {
  const input = inventedTrial();
  const slowed = measureTrial({
    ...input,
    trial: { ...input.trial, captureRateHz: RATE / 4 },
    events: input.events.map((one) => ({ ...one, timeS: one.timeS * 4 })),
  });
  expect(value(slowed, 'ball.gravityFound')).toBeCloseTo(9.80665 / 16, 1);
  expect(slowed.warnings.join(' ')).toMatch(/Gravity check/);
  expect(slowed.warnings.join(' ')).toMatch(/centre of mass falls with 0\.6/);
});

test('an empty trial never throws', () => {
  const input = inventedTrial();
  const nothing = measureTrial({ ...input, tracks: [], events: [], statureM: null, referenceSex: null });
  expect(nothing.measures.length).toBeGreaterThan(20);
  expect(nothing.measures.every((one) => !isKnown(one.reading))).toBe(true);
  expect(nothing.series).toEqual([]);
});

test('a scale that makes the body twice as tall is questioned', () => {
  expect(measureTrial(inventedTrial({ toFile: (x, y) => [2 * x, 2 * y] })).warnings.join(' ')).toMatch(/stature/);
  expect(whole.warnings.join(' ')).not.toMatch(/stature/);
});

test('a throw off one foot: up to take-off only the foot opposite the throwing arm is read, after it both', () => {
  const input = inventedTrial();
  const at = (event: string, frame: number) => ({
    ...(input.events[0] as (typeof input.events)[number]),
    event,
    timeS: frame / RATE,
  });
  const thrown = measureTrial({
    ...input,
    trial: { ...input.trial, movementId: handballJumpThrow.id, ballId: 'handball-3' },
    movement: handballJumpThrow,
    events: [
      at('approach-start', 2),
      at('plant', 20),
      at('take-off', FRAMES.takeoff),
      at('cocked', 60),
      at('release', FRAMES.release),
      at('landing', FRAMES.landing),
      at('end', 125),
    ],
  });
  const sides = (measure: string, phase: string) =>
    thrown.measures.filter((one) => one.measure === measure && one.phase === phase).map(({ side }) => side);
  expect(sides('knee.flexAtContact', 'take-off')).toEqual(['left']);
  expect(sides('knee.flexAtContact', 'follow-through-and-landing')).toEqual(['left', 'right']);
  expect(sides('arm.elevation', 'cocking')).toEqual(['right']);
  expect(value(thrown, 'takeoff.contactTime')).toBeCloseTo(20 / RATE, 12);
  expect(why(thrown, 'com.riseAboveStanding')).toMatch(/starts on the move/);
});

test('law: whatever is missing or misplaced, it never throws, and every measure has a value or a reason', () => {
  const input = inventedTrial();
  const rate = fc.option(fc.constantFrom(1, 25, 60, 120, 1000), { nil: null });
  fc.assert(
    fc.property(
      fc.uint8Array({ minLength: 40, maxLength: 40 }),
      fc.array(fc.double({ min: -1, max: 3, noNaN: true }), { minLength: 8, maxLength: 8 }),
      rate,
      fc.constantFrom<'left' | 'right' | 'none'>('left', 'right', 'none'),
      (chance, times, captureRateHz, side) => {
        const tracks = input.tracks.flatMap((track, i) => {
          const kept = chance[i] as number;
          if (kept < 60) return [];
          return [{ ...track, samples: track.samples.filter((_, frame) => (frame * 7919 + kept) % 256 < kept + 20) }];
        });
        const events = input.events.flatMap((event, i) =>
          (chance[30 + i] as number) < 80 ? [] : [{ ...event, timeS: times[i] as number }],
        );
        const found = measureTrial({ ...input, trial: { ...input.trial, captureRateHz, side }, tracks, events });
        for (const { reading: one } of found.measures) {
          if (isKnown(one)) expect(Number.isFinite(one.value)).toBe(true);
          else expect(one.unknown.length).toBeGreaterThan(3);
        }
      },
    ),
    { numRuns: 60 },
  );
});

test('what is known of the target goes through to least speed and entry angle; without it they say why there is none', () => {
  const input = inventedTrial();
  const sure = { ...input.trial, targetDistanceUM: 0.05, targetHeightUM: 0.01 };
  for (const measure of ['ball.leastSpeed', 'ball.leastSpeedAngle', 'ball.entryAngle']) {
    const [without, withU] = [reading(whole, measure), reading(measureTrial({ ...input, trial: sure }), measure)];
    expect(isKnown(without) && without.uReason).toContain('without one');
    expect(isKnown(withU) && withU.u).toBeGreaterThan(0);
  }
});

test('V5: a film whose scale lies 0.5 m behind body and ball says the same once that is entered, and 6.7 % more without', () => {
  const pixels = { x: 960, y: 540 };
  // Camera 8 m from the scale, 1.2 m up, opposite x = 2; the movement 0.5 m nearer.
  const toFile = (x: number, y: number): [number, number] => [
    pixels.x + ((x - 2) * 1200) / 7.5,
    pixels.y - ((y - 1.2) * 1200) / 7.5,
  ];
  const scale = {
    kind: 'length',
    from: { xPx: 500, yPx: 900 },
    to: { xPx: 800, yPx: 900 },
    lengthM: 2,
    lengthUM: 0,
    pointUPx: 0.5,
    tiltDeg: 0,
  } as const;
  const depth = { cameraM: 8, bodyNearerM: 0.5, ballNearerM: 0.5, uM: 0.05, axis: { xPx: 960, yPx: 540 } };
  const speed = (calibration: Calibration) =>
    value(measureTrial(inventedTrial({ calibration, toFile })), 'ball.releaseSpeed');
  expect(speed({ ...scale, depth })).toBeCloseTo(BALL.speed, 1);
  expect(
    value(measureTrial(inventedTrial({ calibration: { ...scale, depth }, toFile })), 'ball.releaseHeight'),
  ).toBeCloseTo(value(whole, 'ball.releaseHeight'), 1.5);
  expect(value(measureTrial(inventedTrial({ calibration: scale, toFile })), 'takeoff.horizontalVelocity')).toBeCloseTo(
    (TAKEOFF.vx * 8) / 7.5,
    6,
  );
});
