import { expect, test } from 'vitest';
import { usualRateHz } from '../../../../shared/kernel/event/frameClock.ts';
import { eventKinematics } from '../../../../shared/kernel/trial/eventKinematics.ts';
import { measureTrial } from '../../../../shared/kernel/trial/measureTrial.ts';
import { proposeEvents } from '../../../../shared/kernel/trial/proposeEvents.ts';
import { type Scene, scene, type TrialInput } from '../../../../shared/kernel/trial/scene.ts';
import { trialCurve } from '../../../../shared/kernel/trial/trialCurves.ts';
import { isKnown } from '../../../../shared/quantity.ts';
import { BALL, FRAMES, inventedTrial, RATE, TAKEOFF } from './inventedTrial.ts';

/**
 * The invented trial as a phone takes it: every second of 120 instants a second, each up to a quarter of a frame early or
 * late, three pictures left out in flight and one in contact.
 */
const INSTANTS = Array.from({ length: 66 }, (_, i) => 2 * i + (i === 0 ? 0 : 0.5 * Math.sin(12.9898 * i)))
  .filter((_, i) => ![12, 24, 25, 40].includes(i))
  .map((frame) => Math.round(frame * 1000) / 1000);

function uneven(slowedBy = 1): TrialInput {
  const input = inventedTrial({ instants: INSTANTS });
  const frameTimesS = INSTANTS.map((frame) => (slowedBy * frame) / RATE);
  const captureRateHz = usualRateHz(frameTimesS) * slowedBy;
  return { ...input, trial: { ...input.trial, frameTimesS, captureRateHz } };
}

function value(input: TrialInput, measure: string, phase?: string) {
  const found = measureTrial(input).measures.find(
    (one) => one.measure === measure && (phase === undefined || one.phase === phase),
  )?.reading;
  if (found === undefined || !isKnown(found)) throw new Error(`${measure}: ${JSON.stringify(found)}`);
  return { value: found.value, u: found.u ?? 0 };
}

function seen(input: TrialInput): Scene {
  const view = scene(input);
  if ('unknown' in view) throw new Error(view.unknown);
  return view;
}

/** From the picture before an instant to the one after it, s. */
const gapAt = (frame: number) => {
  const after = INSTANTS.findIndex((instant) => instant > frame);
  return ((INSTANTS[after] as number) - (INSTANTS[after - 1] as number)) / RATE;
};

test('closed form: a body and a ball in free flight, taken at uneven instants, fly as they were made to', () => {
  const input = uneven();
  expect(value(input, 'takeoff.verticalVelocity').value).toBeCloseTo(TAKEOFF.vy, 5);
  expect(value(input, 'takeoff.horizontalVelocity').value).toBeCloseTo(TAKEOFF.vx, 5);
  expect(value(input, 'com.riseInSkill').value).toBeCloseTo(TAKEOFF.vy ** 2 / (2 * 9.80665), 5);
  expect(value(input, 'release.apexOffset').value).toBeCloseTo(-0.05, 5);
  expect(value(input, 'ball.releaseSpeed').value).toBeCloseTo(BALL.speed, 1);
  expect(value(input, 'ball.gravityFound').value).toBeCloseTo(9.81, 1);
});

test('the same read at a constant rate is wrong by many times what it states, which is why times are kept', () => {
  const input = uneven();
  const constant = { ...input, trial: { ...input.trial, frameTimesS: null } };
  // Events stay on the pictures they were seen in.
  const events = input.events.map((event) => ({
    ...event,
    timeS: INSTANTS.findIndex((frame) => frame >= event.timeS * RATE - 1e-9) / (constant.trial.captureRateHz ?? 1),
  }));
  const found = value({ ...constant, events }, 'takeoff.verticalVelocity');
  expect(Math.abs(found.value - TAKEOFF.vy)).toBeGreaterThan(3 * found.u);
  const off = (of: TrialInput) => Math.abs(value(of, 'ball.gravityFound').value / 9.80665 - 1);
  expect(off({ ...constant, events })).toBeGreaterThan(20 * off(input));
});

test('law: slowed eight times and said so, the film gives the same numbers', () => {
  for (const measure of ['takeoff.verticalVelocity', 'ball.releaseSpeed', 'ball.gravityFound', 'landing.drift']) {
    expect([measure, value(uneven(8), measure).value.toFixed(9)]).toEqual([
      measure,
      value(uneven(), measure).value.toFixed(9),
    ]);
  }
});

test('an event is known to half of the frame it falls in: beside pictures left out, to that much less', () => {
  const view = seen(uneven());
  const u = (event: string) => {
    const time = view.eventAt(event);
    return isKnown(time) ? (time.u ?? 0) : Number.NaN;
  };
  for (const [event, frame] of [
    ['take-off', FRAMES.takeoff],
    ['set-point', 25],
    ['landing', FRAMES.landing],
  ] as const) {
    expect([event, u(event)]).toEqual([event, expect.closeTo(gapAt(frame) / Math.sqrt(12), 9)]);
  }
  expect(u('set-point')).toBeGreaterThan(1.5 * u('landing'));
});

test('curves are at real times: the centre of mass on its parabola, the speed of the body sideways as it was', () => {
  const view = seen(uneven());
  expect(view.rateHz).toBeCloseTo((INSTANTS.length - 1) / ((INSTANTS.at(-1) as number) / RATE), 9);
  const height = trialCurve(view, 'height:hip-left')?.raw ?? [];
  const inFlight = height.filter(([t]) => t > (FRAMES.takeoff + 4) / RATE && t < (FRAMES.landing - 4) / RATE);
  expect(inFlight.length).toBeGreaterThan(20);
  for (const [t, y] of inFlight) {
    const since = t - FRAMES.takeoff / RATE;
    expect(y).toBeCloseTo(0.92 + TAKEOFF.vy * since - (9.80665 * since ** 2) / 2, 6);
  }
  const takeoff = eventKinematics(view).find(({ event }) => event === 'release');
  const hip = takeoff?.speeds.find(({ point }) => point === 'hip-left')?.speed;
  const rising = TAKEOFF.vy - 9.80665 * 0.25;
  expect(hip !== undefined && isKnown(hip) && Math.abs(hip.value - Math.hypot(TAKEOFF.vx, rising)) < 0.02).toBe(true);
});

test('proposed events come at real times, within what they state of themselves', () => {
  const proposed = proposeEvents(uneven());
  const at = { 'take-off': FRAMES.takeoff, release: FRAMES.release, landing: FRAMES.landing } as const;
  for (const [event, frame] of Object.entries(at)) {
    const found = proposed.find((one) => one.event === event);
    expect([event, Math.abs((found?.timeS ?? Number.NaN) - frame / RATE) < 3 * (found?.uS ?? 0)]).toEqual([
      event,
      true,
    ]);
  }
});

test('a hole in time too long to fill is not bridged, and points on few frames keep their places', () => {
  const input = inventedTrial({ instants: INSTANTS.filter((frame) => frame < 60 || frame > 84) });
  const frameTimesS = INSTANTS.filter((frame) => frame < 60 || frame > 84).map((frame) => frame / RATE);
  const trial = { ...input.trial, frameTimesS, captureRateHz: 60 };
  const view = seen({ ...input, trial });
  const hip = view.points.get('hip-left')?.raw;
  const times = [...(hip?.keys() ?? [])].map((step) => step / view.rateHz);
  expect(times.some((t) => t > 62 / RATE && t < 82 / RATE)).toBe(false);
  const few = input.tracks.map((track) => ({ ...track, samples: track.samples.slice(0, 3) }));
  const alone = seen({ ...input, trial, tracks: few }).points.get('hip-left');
  expect([...(alone?.raw.values() ?? [])]).toEqual(few[10]?.samples.map(([, x, y]) => ({ x, y })));
});

test('it says that frames are uneven, and questions a rate that is neither the film’s nor slow motion', () => {
  const input = uneven();
  expect(seen(input).warnings.join(' ')).toContain('Frames are unevenly spaced, up to 47.1 ms apart');
  expect(seen(input).warnings.join(' ')).not.toContain('Unless it was slowed');
  const other = { ...input, trial: { ...input.trial, captureRateHz: 54 } };
  expect(seen(other).warnings.join(' ')).toContain('Unless it was slowed by that much');
});
