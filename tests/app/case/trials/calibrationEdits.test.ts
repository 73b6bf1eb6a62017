import { expect, test } from 'vitest';
import { aimAfter, firstAim, placeIn, tiltOfPlumb } from '../../../../app/case/trials/calibrationEdits.ts';
import { eventsOfFrames, rateEdits } from '../../../../app/case/trials/rateEdits.ts';
import { draftFrom } from '../../../../shared/model/calibrationDraft.ts';
import { EXAMPLES } from '../../../conformance/examples.ts';

const blank = draftFrom(null);

test('clicks go through a length, then set nothing more until asked', () => {
  expect(firstAim(blank)).toBe('from');
  const one = placeIn(blank, 'from', { xPx: 1, yPx: 2 });
  expect(aimAfter('from', one)).toBe('to');
  const two = placeIn(one, 'to', { xPx: 9, yPx: 2 });
  expect([aimAfter('to', two), firstAim(two)]).toEqual([null, null]);
});

test('clicks go through four points of a plane; one clicked later replaces its place and keeps its measured one', () => {
  let draft = { ...blank, kind: 'plane' as const };
  for (let i = 0; i < 4; i += 1) {
    expect(firstAim(draft)).toBe(i);
    draft = { ...placeIn(draft, i, { xPx: i, yPx: i }), kind: 'plane' };
  }
  expect(firstAim(draft)).toBeNull();
  const named = { ...draft, points: draft.points.map((point) => ({ ...point, xM: 7 })) };
  expect(placeIn(named, 2, { xPx: 5, yPx: 6 }).points[2]).toEqual({ image: { xPx: 5, yPx: 6 }, xM: 7, yM: null });
});

test('plane geometry: a plumb line that goes 1 to the right over 100 down turns the picture by atan(1/100)', () => {
  const top = placeIn(blank, 'top', { xPx: 100, yPx: 100 });
  expect(top.tiltDeg).toBe(0);
  const whole = placeIn(top, 'bottom', { xPx: 102, yPx: 300 });
  expect(whole.tiltDeg).toBeCloseTo((-Math.atan(1 / 100) * 180) / Math.PI, 3);
});

test('plane geometry: the same line in a plane whose own up leans says how far it leans', () => {
  const corners = [
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ] as const;
  const [cos, sin] = [Math.cos(0.05), Math.sin(0.05)];
  // The frame was measured along its own sides and stands turned by 0.05 rad anticlockwise in the picture.
  const points = corners.map(([xM, yM]) => ({
    image: { xPx: 400 + 100 * (xM * cos - yM * sin), yPx: 400 - 100 * (xM * sin + yM * cos) },
    xM,
    yM,
  }));
  const draft = { ...blank, kind: 'plane' as const, points };
  const tilt = tiltOfPlumb({ ...draft, plumb: { top: { xPx: 450, yPx: 200 }, bottom: { xPx: 450, yPx: 390 } } });
  expect(tilt).toMatchObject({ unit: 'rad' });
  expect('value' in tilt ? tilt.value : Number.NaN).toBeCloseTo(0.05, 6);
});

test('a new rate leaves events in their frames, and a first one leaves their times', () => {
  const [trial, event] = [EXAMPLES.movementTrial, EXAMPLES.trialEvent];
  const edits = rateEdits(trial, [event], 480, 'free-flight');
  expect(edits[0]).toMatchObject({ fields: { captureRateHz: 480, captureRateFrom: 'free-flight' } });
  const moved = edits[1];
  if (moved?.op !== 'patch' || moved.kind !== 'trialEvent') throw new Error('the event moves');
  expect((moved.fields.timeS ?? 0) * 480).toBeCloseTo(event.timeS * 240, 9);
  expect(rateEdits({ ...trial, captureRateHz: null }, [event], 240, 'entered')).toHaveLength(1);
});

test('events typed for a trial that was neither filmed nor digitised stand for no frames', () => {
  const file = { landmarkTracks: [], trialEvents: [EXAMPLES.trialEvent] } as unknown as Parameters<
    typeof eventsOfFrames
  >[0];
  expect(eventsOfFrames(file, { ...EXAMPLES.movementTrial, clipSha256: null })).toEqual([]);
  expect(eventsOfFrames(file, EXAMPLES.movementTrial)).toEqual([EXAMPLES.trialEvent]);
});
