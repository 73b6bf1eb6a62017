import { describe, expect, test } from 'vitest';
import { motionThrough } from '../../../main/demo/curves.ts';
import { filmJumpThrow, RATE_HZ } from '../../../main/demo/jumpThrow.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { trialFileToRecords } from '../../../shared/exchange/trialFile.ts';
import { measureTrial } from '../../../shared/kernel/trial/measureTrial.ts';
import { handballJumpThrow } from '../../../shared/knowledge/movements/handball-jump-throw.ts';
import { isKnown } from '../../../shared/quantity.ts';

// The figure is made with known numbers; the kernel has to find them in its points. No other oracle is needed.

const invented = {
  statureM: 1.9,
  rise: 2.7,
  run: 2.1,
  releaseBeforeApexS: 0.05,
  ballSpeedMPerS: 21,
  ballDragPerM: 0.0185,
  targetDistanceM: 8,
  targetHeightM: 1.5,
  forearmBackDeg: -40,
  noiseM: 0.003,
};

describe('law: what the kernel measures in an invented throw is what it was made with', () => {
  const film = filmJumpThrow(invented, randomSource(11));
  const random = randomSource(12);
  const records = trialFileToRecords(
    {
      format: 'caseframe-trial',
      version: 1,
      movement: handballJumpThrow.id,
      label: '',
      filmedOn: '2026-01-01',
      side: 'right',
      captureRateHz: RATE_HZ,
      playbackRateHz: null,
      frameTimesS: null,
      calibration: { kind: 'metres', pointUM: invented.noiseM },
      ball: 'handball-3',
      target: {
        distanceM: invented.targetDistanceM,
        heightM: invented.targetHeightM,
        distanceUM: null,
        heightUM: null,
      },
      painNrs: null,
      points: Object.fromEntries(film.tracks),
      events: Object.entries(film.events).map(([event, timeS]) => ({ event, timeS, uS: null })),
      measures: [],
      note: '',
    },
    random.id,
    random.id(),
  );
  const { measures } = measureTrial({
    trial: records.movementTrial,
    tracks: records.landmarkTracks,
    events: records.trialEvents,
    movement: handballJumpThrow,
    massKg: 90,
    statureM: invented.statureM,
    referenceSex: 'male',
  });

  // Three standard uncertainties: missed by chance once in 370 draws, and this draw is always the same.
  test.each([
    ['takeoff.verticalVelocity', invented.rise],
    ['takeoff.horizontalVelocity', invented.run],
    ['com.riseInSkill', invented.rise ** 2 / (2 * 9.80665)],
    ['ball.releaseSpeed', invented.ballSpeedMPerS],
    ['ball.gravityFound', 9.80665],
    ['release.apexOffset', -invented.releaseBeforeApexS],
  ])('%s is %f within three standard uncertainties', (id, truth) => {
    const reading = measures.find(({ measure }) => measure === id)?.reading;
    if (reading === undefined || !isKnown(reading)) throw new Error(`${id} is not measured`);
    expect(reading.u).not.toBeNull();
    expect(Math.abs(reading.value - truth)).toBeLessThan(3 * (reading.u ?? 0));
  });
});

test('a polynomial of fifth degree meets place, velocity and acceleration at both ends', () => {
  const states = [
    { t: 0, x: 1, v: 2, a: -3 },
    { t: 0.5, x: 1.4, v: -1, a: 4 },
  ];
  const motion = motionThrough(states);
  for (const state of states) {
    const found = motion(state.t);
    for (const key of ['x', 'v', 'a'] as const) expect(found[key], key).toBeCloseTo(state[key], 10);
  }
});

function draw(number: number) {
  const random = randomSource(number);
  return [random.uniform(), random.normal(1), random.id()];
}

test('one number, one sequence; another number, another', () => {
  expect(draw(4)).toEqual(draw(4));
  expect(draw(4)).not.toEqual(draw(5));
});
