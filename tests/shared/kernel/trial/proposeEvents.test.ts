import { expect, test } from 'vitest';
import { proposeEvents } from '../../../../shared/kernel/trial/proposeEvents.ts';
import { countermovementJump } from '../../../../shared/knowledge/movements/countermovement-jump.ts';
import { FRAMES, inventedTrial, RATE } from './inventedTrial.ts';

const input = inventedTrial();
const proposals = (over: Partial<typeof input> = {}) =>
  new Map(proposeEvents({ ...input, ...over }).map((proposal) => [proposal.event, proposal]));

test('closed form: take-off and landing within two frames, and clear because the body falls with g in between', () => {
  const found = proposals();
  // The foot has to be 3 cm up first: at 2.9 m/s that takes 1.2 frames.
  expect(Math.abs((found.get('take-off')?.timeS ?? 0) * RATE - FRAMES.takeoff)).toBeLessThanOrEqual(2);
  expect(Math.abs((found.get('landing')?.timeS ?? 0) * RATE - FRAMES.landing)).toBeLessThanOrEqual(2);
  expect(found.get('take-off')?.confidence).toBe('clear');
  expect(found.get('take-off')?.because).toMatch(/falls with 9\.8 m\/s²/);
});

test('closed form: the ball leaves the hand within a frame; the apex lies between frames', () => {
  expect(Math.abs((proposals().get('release')?.timeS ?? 0) * RATE - FRAMES.release)).toBeLessThanOrEqual(1);
  const apex = proposals({ movement: countermovementJump }).get('apex');
  expect((apex?.timeS ?? 0) * RATE).toBeCloseTo((FRAMES.takeoff + FRAMES.landing) / 2, 0);
});

test('a slowed clip makes them doubtful, with the fall that says so', () => {
  const found = proposals({ trial: { ...input.trial, captureRateHz: RATE / 2 } });
  expect(found.get('take-off')?.confidence).toBe('doubtful');
  expect(found.get('take-off')?.because).toMatch(/2\.5 m\/s²/);
});

test('with one foot digitised take-off is doubtful and says why: the other foot may still stand', () => {
  const tracks = input.tracks.filter(({ point }) => point !== 'toe-left' && point !== 'heel-left');
  const takeoff = proposals({ tracks }).get('take-off');
  expect(takeoff).toMatchObject({ confidence: 'doubtful', because: expect.stringContaining('only the right foot') });
});

test('proposes only events of the movement, in its order, and nothing without a scale or a clock', () => {
  const order = input.movement.events.map(({ id }) => id);
  const indices = [...proposals().keys()].map((event) => order.indexOf(event));
  expect(indices).toEqual(indices.toSorted((a, b) => a - b));
  expect(indices).not.toContain(-1);
  expect(proposeEvents({ ...input, trial: { ...input.trial, captureRateHz: null } })).toEqual([]);
  expect(proposeEvents({ ...input, trial: { ...input.trial, calibration: null } })).toEqual([]);
  expect(proposeEvents({ ...input, tracks: [] })).toEqual([]);
});

test.each([1, 4, 12, 5000])(
  'law: a rate of %i frames a second is answered, with proposals or none',
  (captureRateHz) => {
    for (const { timeS, uS } of proposals({ trial: { ...input.trial, captureRateHz } }).values()) {
      expect(Number.isFinite(timeS)).toBe(true);
      expect(uS).toBeGreaterThan(0);
    }
  },
);
