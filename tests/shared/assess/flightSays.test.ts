import { expect, test } from 'vitest';
import { dragFactor } from '../../../shared/kernel/flight/dragFactor.ts';
import { ballById } from '../../../shared/knowledge/balls/index.ts';
import { flightSays, proposedRate } from '../../../shared/assess/flightSays.ts';
import type { Calibration, MovementTrial } from '../../../shared/model/trial.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { flown } from '../../support/flown.ts';
import { tiltOfFlight } from '../../../shared/assess/tiltOfFlight.ts';
import { sampleCase } from '../../support/sampleCase.ts';

const G = 9.80665;

/** A ball thrown at 12 m/s and 30° up as in a vacuum, filmed at `trueHz`; the trial says it was filmed at `saidHz`. Coordinates in metres. */
function thrown(
  trueHz: number,
  saidHz: number,
  calibration: Calibration = { kind: 'metres', pointUM: 0.002 },
  ballId: string | null = null,
) {
  const turn = calibration.kind === 'length' ? (calibration.tiltDeg * Math.PI) / 180 : 0;
  const samples = Array.from({ length: Math.round(0.6 * trueHz) }, (_, frame): [number, number, number] => {
    const t = frame / trueHz;
    // Reading error of 2 mm that repeats itself, so that the test does.
    const [x, y] = [12 * Math.cos(0.52) * t, 2 + 12 * Math.sin(0.52) * t - (G * t * t) / 2];
    const off = 0.002 * Math.sin(frame * 2.4);
    if (calibration.kind === 'metres') return [frame, x, y + off];
    // Into a picture of 100 px a metre that is turned against true down.
    const [u, v] = [x * Math.cos(turn) + y * Math.sin(turn), -x * Math.sin(turn) + y * Math.cos(turn)];
    return [frame, 100 * u, -100 * v];
  });
  return said({ captureRateHz: saidHz, calibration, ballId }, samples);
}

/** What the flight of these samples, frame and place, says in a trial with these facts. */
function said(facts: Partial<MovementTrial>, samples: [number, number, number][]) {
  const file = sampleCase();
  const [first] = file.movementTrials;
  if (first === undefined) throw new Error('the sample has a trial');
  const trial: MovementTrial = { ...first, ...facts };
  const track = {
    id: '00000000-0000-4000-8000-000000000901',
    trialId: trial.id,
    point: 'ball',
    origin: 'by-hand',
    samples,
    uPx: null,
  } as const;
  const release = {
    id: '00000000-0000-4000-8000-000000000902',
    trialId: trial.id,
    event: 'release',
    timeS: 0,
    uS: null,
    origin: 'by-hand',
  } as const;
  const made: CaseFile = { ...file, movementTrials: [trial], landmarkTracks: [track], trialEvents: [release] };
  const says = flightSays(made, trial);
  if ('unknown' in says) throw new Error(says.unknown);
  const turned = tiltOfFlight(made, trial);
  if ('unknown' in turned) throw new Error(turned.unknown);
  return { trial, says, tilt: turned.tilt };
}

test('3rd CGPM 1901 standard gravity: an honest clip is found fine, and no other rate is proposed', () => {
  const { trial, says } = thrown(240, 240);
  expect(says.check.gravity.value).toBeCloseTo(G, 0);
  expect(says.check.verdict).toBe('fine');
  expect(proposedRate(trial, says)).toBeNull();
});

test('free fall: container 30, captured 240: the flight proposes 240 Hz, eight times the rate entered', () => {
  const { trial, says } = thrown(240, 30);
  expect(says.check.verdict).toBe('questioned');
  expect(proposedRate(trial, says)).toMatchObject({ rateHz: 240, factor: 8 });
});

test('free fall: a rate entered four times too high is brought down', () => {
  const { trial, says } = thrown(60, 240);
  expect(proposedRate(trial, says)?.rateHz).toBe(60);
});

test('free fall points down, and air does little to a shot: a picture turned by 4° says so, whatever tilt is entered already', () => {
  const length = {
    kind: 'length',
    from: { xPx: 0, yPx: 0 },
    to: { xPx: 100, yPx: 0 },
    lengthM: 1,
    lengthUM: 0,
    pointUPx: 0.2,
  } as const;
  const { says, tilt } = thrown(240, 240, { ...length, tiltDeg: 4 }, 'shot-7-26');
  expect(isKnown(tilt) && Math.abs((tilt.value * 180) / Math.PI - 4)).toBeLessThan(0.5);
  expect(isKnown(says.check.slowMotionFactor)).toBe(false);
});

test('where nothing flies, the reason is said', () => {
  const file = sampleCase();
  const [trial] = file.movementTrials;
  if (trial === undefined) throw new Error('the sample has a trial');
  expect(flightSays(file, { ...trial, calibration: { kind: 'metres', pointUM: null } })).toHaveProperty('unknown');
});

/** A handball as fast as one is thrown, 22.4 m/s and 5° down, in air; 4 mm of reading error that repeats itself. */
function throwInAir(saidHz: number, ballId: string | null) {
  const { value: k } = dragFactor(ballById('handball-3')!); // it ships with the program
  const samples = flown(22.4, -0.087, k, 30, 125);
  return said(
    { captureRateHz: saidHz, calibration: { kind: 'metres', pointUM: 0.004 }, ballId },
    samples.map(({ x, y }, frame) => [frame, x, y + 0.004 * Math.sin(frame * 2.4)]),
  );
}

test('a flight in air by Runge-Kutta: with its ball named the clock is fine; without, air passes for a slowed clock', () => {
  const { trial, says } = throwInAir(125, 'handball-3');
  expect(says.check.verdict).toBe('fine');
  expect(Math.abs(says.check.gravity.value - G)).toBeLessThan(2 * (says.check.gravity.u ?? 0));
  expect(proposedRate(trial, says)).toBeNull();
  // Which is why the screen says that no drag is taken off.
  expect(throwInAir(125, null).says.check.gravity.value).toBeLessThan(0.9 * G);
});

test('a flight in air by Runge-Kutta, four times slowed: the factor is found with the same drag, whatever the clock', () => {
  const { trial, says } = throwInAir(31.25, 'handball-3');
  expect(says.check.verdict).toBe('questioned');
  const { slowMotionFactor } = says.check;
  expect(isKnown(slowMotionFactor) && Math.abs(slowMotionFactor.value - 4)).toBeLessThan(0.2);
  expect(proposedRate(trial, says)?.factor).toBeCloseTo(4, 1);
});

test('a fast throw in air tells no tilt; nor does a ball that is not named', () => {
  expect(throwInAir(125, 'handball-3').tilt).toEqual({ unknown: expect.stringMatching(/air slows this ball/) });
  expect(throwInAir(125, null).tilt).toEqual({ unknown: expect.stringMatching(/no ball is named/) });
});
