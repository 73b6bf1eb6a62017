import { expect, test } from 'vitest';
import { planeAdvice } from '../../../shared/assess/planeAdvice.ts';
import { calibrationFrom, draftFrom } from '../../../shared/model/calibrationDraft.ts';
import type { Calibration, CalibrationDraft } from '../../../shared/model/trial.ts';

type PlaneOf = Extract<Calibration, { kind: 'plane' }>;

/** A frame of 2 m by 1 m seen squarely at 200 px a metre; `bend` moves the fifth point, in the middle, down by so many px. */
function frame(bend = 0, corners = 4): PlaneOf {
  const places = [
    [0, 0],
    [2, 0],
    [2, 1],
    [0, 1],
    [1, 0.5],
  ].slice(0, corners) as [number, number][];
  return {
    kind: 'plane',
    points: places.map(([xM, yM], i) => ({
      image: { xPx: 300 + 200 * xM, yPx: 500 - 200 * yM + (i === 4 ? bend : 0) },
      plane: { xM, yM },
    })),
    pointUPx: 0.5,
  };
}

test('four points cannot show a misread one, and that is said', () => {
  expect(planeAdvice(frame(), null, null).advice.join(' ')).toMatch(/Four points fit a plane exactly/);
});

test('law: a fifth point in its place is not questioned; one 12 px (6 cm) out of it is, with the lens named', () => {
  expect(planeAdvice(frame(0, 5), null, null).advice).toEqual([]);
  const { advice, refusal } = planeAdvice(frame(12, 5), null, null);
  expect(refusal).toBeNull();
  expect(advice.join(' ')).toMatch(/off the plane of all.*lens/);
});

test('points in one line are refused, with what to do', () => {
  const line = frame();
  const points = line.points.map((point, i) => ({ ...point, image: { xPx: 300 + 100 * i, yPx: 400 } }));
  expect(planeAdvice({ ...line, points }, null, null).refusal).toMatch(/move one of them off the line/);
});

test('perspective (a trapezium): the scale changes across the points, which one length would not allow for', () => {
  const tilted = frame();
  const points = tilted.points.map((point, i) =>
    i < 2 ? point : { ...point, image: { ...point.image, xPx: i === 2 ? 640 : 360 } },
  );
  expect(planeAdvice({ ...tilted, points }, null, null).advice.join(' ')).toMatch(/does not face the plane squarely/);
});

test('a length without anything vertical, near the edge of the picture', () => {
  const draft: CalibrationDraft = {
    ...draftFrom(null),
    from: { xPx: 5, yPx: 200 },
    to: { xPx: 305, yPx: 200 },
    lengthM: 1,
    lengthUM: 0.002,
  };
  const calibration = calibrationFrom(draft);
  if (calibration === null) throw new Error('complete');
  const words = planeAdvice(calibration, draft, { width: 640, height: 360 }).advice.join(' ');
  expect(words).toMatch(/which way is down/);
  expect(words).toMatch(/near the edge/);
  const plumbed = { ...draft, plumb: { ...draft.plumb, top: { xPx: 9, yPx: 9 } } };
  expect(planeAdvice(calibration, plumbed, null).advice).toEqual([]);
});

test('inverse: a stored calibration becomes a draft and the same calibration again', () => {
  const depth = { cameraM: 8, bodyNearerM: 0, ballNearerM: 0.4, uM: 0.05, axis: { xPx: 320, yPx: 180 } };
  const length = {
    kind: 'length',
    from: { xPx: 1, yPx: 2 },
    to: { xPx: 301, yPx: 2 },
    lengthM: 1,
    lengthUM: 0.002,
    pointUPx: 1,
    tiltDeg: -1,
    depth,
  } as const satisfies Calibration;
  for (const calibration of [length, frame(), { ...frame(), tiltDeg: 2, depth }])
    expect(calibrationFrom(draftFrom(calibration))).toEqual(calibration);
});

test('what is complete of a draft is used; three points or half a length are too little', () => {
  const draft = draftFrom(frame());
  const open = { image: { xPx: 1, yPx: null }, xM: 1, yM: 1 };
  expect(calibrationFrom({ ...draft, points: [...draft.points, open] })).toEqual(frame());
  expect(calibrationFrom({ ...draft, points: draft.points.slice(1) })).toBeNull();
  expect(calibrationFrom({ ...draft, kind: 'length' })).toBeNull();
});
