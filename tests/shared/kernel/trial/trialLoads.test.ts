import { describe, expect, test } from 'vitest';
import { scene, type TrialInput } from '../../../../shared/kernel/trial/scene.ts';
import { type TrialLoads, trialLoads } from '../../../../shared/kernel/trial/trialLoads.ts';
import { isKnown, type Reading } from '../../../../shared/quantity.ts';
import { BALL, FIGURE, FRAMES, inventedTrial, RATE, TAKEOFF } from './inventedTrial.ts';

const G = 9.80665;

function loadsOf(input: TrialInput): TrialLoads {
  const view = scene(input);
  if ('unknown' in view) throw new Error(view.unknown);
  const loads = trialLoads(view, input);
  if ('unknown' in loads) throw new Error(loads.unknown);
  return loads;
}
const known = (reading: Reading | null | undefined) => {
  if (!reading || !isKnown(reading)) throw new Error(JSON.stringify(reading));
  return reading;
};
const input: TrialInput = { ...inventedTrial(), massKg: 80, massUKg: 0.1, referenceSex: 'no-reference' };
const scenery = scene(input);
const loads = loadsOf(input);
const moment = (of: TrialLoads, event: string, joint: string, side: string, carries = 'hanging') =>
  of.moments.find((one) => one.event === event && one.joint === joint && one.side === side && one.carries === carries);
const other = input.trial.side === 'left' ? 'right' : 'left';

describe('static moments', () => {
  test('Winter 2009, table 4.1: forearm 0.016 m at 0.430, hand 0.006 m at 0.506: the empty hand, summed on paper', () => {
    const forearm = FIGURE.elbow[0] + 0.43 * (FIGURE.wrist[0] - FIGURE.elbow[0]);
    const hand = FIGURE.wrist[0] + 0.506 * (FIGURE.knuckle[0] - FIGURE.wrist[0]);
    const onPaper = 80 * G * (0.016 * (forearm - FIGURE.elbow[0]) + 0.006 * (hand - FIGURE.elbow[0]));
    const found = moment(loads, 'take-off', 'elbow', other);
    expect(found?.withBall).toBe(false);
    expect(known(found?.moment).value).toBeCloseTo(onPaper, 2);
    expect(known(found?.moment).u).toBeGreaterThan(0);
  });

  test('the hand that throws also holds the ball, up to its release and no longer', () => {
    const empty = known(moment(loads, 'take-off', 'elbow', other)?.moment).value;
    const full = moment(loads, 'take-off', 'elbow', input.trial.side);
    expect(full?.withBall).toBe(true);
    expect(known(full?.moment).value).toBeGreaterThan(empty + 1);
    expect(moment(loads, 'landing', 'elbow', input.trial.side)?.withBall).toBe(false);
  });

  test('any frame can be asked: that of take-off gives the moments of take-off; one out of the clip gives none', () => {
    if ('unknown' in scenery) throw new Error(scenery.unknown);
    const asked = trialLoads(scenery, input, FRAMES.takeoff);
    if ('unknown' in asked) throw new Error(asked.unknown);
    const [there, same] = ['frame', 'take-off'].map((event) => asked.moments.filter((one) => one.event === event));
    expect(there?.map(({ moment: one }) => known(one).value)).toEqual(same?.map(({ moment: one }) => known(one).value));
    expect(there?.[0]?.label).toBe(`Frame ${FRAMES.takeoff}`);
    const beyond = trialLoads(scenery, input, 100_000);
    expect('unknown' in beyond ? [] : beyond.moments.filter(({ event }) => event === 'frame')).toEqual([]);
  });

  test('law: seen from the other side, the same moments', () => {
    const turned = {
      ...input,
      tracks: input.tracks.map((track) => ({
        ...track,
        samples: track.samples.map(([frame, x, y]): [number, number, number] => [frame, -x, y]),
      })),
    };
    const there = loadsOf(turned);
    expect(there.moments).toHaveLength(loads.moments.length);
    there.moments.forEach(({ moment: one }, i) =>
      expect(known(one).value).toBeCloseTo(known(loads.moments[i]?.moment).value, 6),
    );
  });

  test('law of symmetry: two legs alike share alike', () => {
    const [left, right] = ['left', 'right'].map((side) =>
      known(moment(loads, 'start', 'knee', side, 'two legs')?.moment),
    );
    expect(right?.value).toBeCloseTo(left?.value ?? Number.NaN, 9);
    // The body's weight lies behind a bent knee.
    expect(left?.value).toBeLessThan(-10);
  });
});

/** How far a body dips before it takes off, m. */
const dip = (frame: number) =>
  frame < FRAMES.takeoff ? 0.3 * Math.sin((Math.PI * (FRAMES.takeoff - frame)) / FRAMES.takeoff) : 0;

describe('forces', () => {
  test('law: a stiff figure has no push-off to average over, and says so', () => {
    expect(loads.meanPushOffForce).toEqual({ unknown: expect.stringMatching(/less than 5 cm/) });
  });

  test('work and energy: dipping 0.3 m before the same jump, F = W (1 + h / s)', () => {
    const dipped = loadsOf({
      ...input,
      tracks: input.tracks.map((track) => ({
        ...track,
        samples: track.samples.map(([frame, x, y]): [number, number, number] => [frame, x, y - dip(frame)]),
      })),
    });
    const h = TAKEOFF.vy ** 2 / (2 * G);
    // The dip has a corner at take-off, which a low-pass of 10 Hz rounds off by a centimetre or two.
    expect(known(dipped.meanPushOffForce).value / (80 * G * (1 + h / 0.3))).toBeCloseTo(1, 1);
  });

  test('impulse and momentum: from the set point to release, F = m Δv / t with the ball’s own mass', () => {
    const setPoint = input.events.find(({ event }) => event === 'set-point');
    const t = FRAMES.release / RATE - (setPoint?.timeS ?? Number.NaN);
    const found = known(loads.meanBallForce);
    const inputs = Object.fromEntries(found.working.inputs.map(({ symbol, quantity }) => [symbol, quantity.value]));
    expect(inputs['v_2']).toBeCloseTo(BALL.speed, 1);
    expect(inputs['t']).toBeCloseTo(t, 6);
    expect(found.value).toBeCloseTo(((inputs['m'] as number) * (BALL.speed - (inputs['v_1'] as number))) / t, 1);
  });
});

test('without a mass or without metres there is a reason instead', () => {
  const view = scene(input);
  if ('unknown' in view) throw new Error(view.unknown);
  expect(trialLoads(view, { ...input, massKg: null })).toEqual({ unknown: 'the body mass is not entered' });
  const flat = { ...input, trial: { ...input.trial, calibration: null } };
  const unscaled = scene(flat);
  if ('unknown' in unscaled) throw new Error(unscaled.unknown);
  expect(trialLoads(unscaled, flat)).toEqual({ unknown: 'no calibration' });
});
