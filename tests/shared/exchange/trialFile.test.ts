import { expect, test } from 'vitest';
import { readTrialFile, TRIAL_FILE_SCHEMA, trialFileToRecords } from '../../../shared/exchange/trialFile.ts';
import { enteredMeasure, landmarkTrack, movementTrial, trialEvent } from '../../../shared/model/trial.ts';

const FILE = {
  format: 'caseframe-trial',
  version: 1,
  movement: 'handball-jump-throw',
  filmedOn: '2026-03-04',
  side: 'right',
  captureRateHz: 120,
  playbackRateHz: 30,
  calibration: { kind: 'metres', pointUM: 0.004 },
  ball: 'handball-3',
  target: { distanceM: 9, heightM: 1.5 },
  points: {
    'knee-left': [
      [0, 1, 0.5],
      [1, 1.01, 0.5],
      [2, null, null],
      [5, 1.05, 0.5],
    ],
    ball: [
      [4, 2, 2.6],
      [5, 2.2, 2.6],
    ],
  },
  events: [
    { event: 'release', timeS: 0.03, uS: 0.002 },
    { event: 'plant', timeS: 0.01 },
  ],
  measures: [
    { measure: 'elbow.flexAtRelease', phase: 'release', side: 'right', value: 30, unit: 'deg', u: 2 },
    { measure: 'landing.onOneFoot', flag: true },
  ],
} as const;

function uuids(): () => string {
  let count = 0;
  return () => `00000000-0000-4000-8000-${String((count += 1)).padStart(12, '0')}`;
}

test('a trial file becomes records that their own schemas accept', () => {
  const { file } = readTrialFile(JSON.stringify(FILE));
  const records = trialFileToRecords(file, uuids(), '00000000-0000-4000-9000-000000000000');
  movementTrial.parse(records.movementTrial);
  records.landmarkTracks.forEach((track) => landmarkTrack.parse(track));
  records.trialEvents.forEach((event) => trialEvent.parse(event));
  records.enteredMeasures.forEach((entry) => enteredMeasure.parse(entry));
  expect(records.landmarkTracks.map(({ point, samples }) => [point, samples.length])).toEqual([
    ['knee-left', 3],
    ['ball', 2],
  ]);
  expect(records.trialEvents.map(({ event, uS }) => [event, uS])).toEqual([
    ['release', 0.002],
    ['plant', null],
  ]);
});

test('an entered angle in degrees is stored in radians, its uncertainty too; a yes or no stays one', () => {
  const { file } = readTrialFile(JSON.stringify(FILE));
  const [angle, flag] = trialFileToRecords(file, uuids(), '00000000-0000-4000-9000-000000000000').enteredMeasures;
  expect(angle?.valueSi).toBeCloseTo(Math.PI / 6, 12);
  expect(angle?.uSi).toBeCloseTo(Math.PI / 90, 12);
  expect(flag).toMatchObject({ valueSi: null, flag: true, side: 'none', phase: null });
});

test('missing frames are reported, not refused; the ball need not be in every frame', () => {
  expect(readTrialFile(JSON.stringify(FILE)).warnings).toEqual(['knee-left missing in 3 of 6 frames']);
});

test('what a trial can do without is said in words', () => {
  const { warnings } = readTrialFile(
    JSON.stringify({ ...FILE, movement: 'log-rolling', captureRateHz: null, calibration: null, points: {} }),
  );
  expect(warnings).toEqual([
    expect.stringMatching(/does not know the movement log-rolling/),
    expect.stringMatching(/capture rate/),
    expect.stringMatching(/no calibration/),
    'No point has been digitised.',
  ]);
});

test.each([
  ['text that is not JSON', '{ "format": ', null, /JSON/],
  ['another format', JSON.stringify({ ...FILE, format: 'x' }), 'format', /format/],
  ['a letter for a number', JSON.stringify({ ...FILE, captureRateHz: '120' }), 'captureRateHz', /captureRateHz/],
  [
    'a unit nobody knows',
    JSON.stringify({ ...FILE, measures: [{ measure: 'm', value: 1, unit: 'furlong' }] }),
    'measures.0',
    /measures/,
  ],
  [
    'frames out of order',
    JSON.stringify({
      ...FILE,
      points: {
        'knee-left': [
          [3, 1, 1],
          [3, 1, 1],
        ],
      },
    }),
    'points.knee-left.1',
    /rising order/,
  ],
  ['a field nobody knows', JSON.stringify({ ...FILE, colour: 'red' }), null, /colour/],
])('refuses %s with its place', (_, text, path, message) => {
  let thrown: unknown;
  try {
    readTrialFile(text);
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toMatchObject({ code: 'input-malformed' });
  expect((thrown as Error).message).toMatch(message);
  const at = (thrown as { path: string | null }).path;
  if (path === null) expect(at).toBeNull();
  else expect(at?.startsWith(path)).toBe(true);
});

test('an angle in centimetres is refused with its place, an unknown measure in any unit is kept', () => {
  const measure = { phase: 'release', side: 'right', value: 30, u: null };
  const text = (id: string) => JSON.stringify({ ...FILE, measures: [{ ...measure, measure: id, unit: 'cm' }] });
  expect(() => readTrialFile(text('elbow.flexAtRelease'))).toThrow(
    expect.objectContaining({
      code: 'unit-mismatch',
      path: 'measures.0.unit',
      message: expect.stringContaining('deg'),
    }),
  );
  expect(readTrialFile(text('hair.length')).file.measures).toHaveLength(1);
});

test('the format is published as JSON Schema', () => {
  expect(TRIAL_FILE_SCHEMA).toMatchObject({
    type: 'object',
    required: expect.arrayContaining(['format', 'version', 'points']) as unknown,
  });
});

const pixel = (xPx: number, yPx: number) => ({ xPx, yPx });

test('a target with its uncertainty, several lengths, points of a plane and the depth of both come in as they stand', () => {
  const depth = { cameraM: 9, bodyNearerM: 0.2, ballNearerM: -0.1, uM: 0.05, axis: pixel(960, 540) };
  const length = { from: pixel(0, 0), to: pixel(400, 0), lengthM: 1, lengthUM: 0.002 };
  const plane = [0, 4].flatMap((xM) => [0, 3].map((yM) => ({ image: pixel(100 * xM, 100 * yM), plane: { xM, yM } })));
  const target = { distanceM: 9, heightM: 1.5, distanceUM: 0.05, heightUM: null };
  for (const calibration of [
    { kind: 'length', ...length, pointUPx: 1, tiltDeg: 0, others: [length], depth },
    { kind: 'plane', points: plane, pointUPx: null, depth },
  ]) {
    const { file } = readTrialFile(JSON.stringify({ ...FILE, calibration, target }));
    const { movementTrial: trial } = trialFileToRecords(file, uuids(), '00000000-0000-4000-9000-000000000000');
    expect(movementTrial.parse(trial)).toMatchObject({ calibration, targetDistanceUM: 0.05, targetHeightUM: null });
  }
  expect(() => readTrialFile(JSON.stringify({ ...FILE, target: { ...target, distanceUM: -1 } }))).toThrow(/distanceUM/);
  expect(JSON.stringify(TRIAL_FILE_SCHEMA)).toContain('ballNearerM');
});
