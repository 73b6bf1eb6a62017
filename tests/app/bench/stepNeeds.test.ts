import { expect, test } from 'vitest';
import { type Standing, stepNeeds, STEPS } from '../../../app/bench/stepNeeds.ts';
import { movementById } from '../../../shared/knowledge/movements/index.ts';
import type { TrialEvent } from '../../../shared/model/trial.ts';
import { EXAMPLES } from '../../conformance/examples.ts';

const movement = movementById('handball-jump-throw');
const bare: Standing = {
  trial: { ...EXAMPLES.movementTrial, captureRateHz: null, calibration: null },
  movement,
  tracks: [],
  events: [],
};

test('with nothing entered every step says what it needs, and measures what they wait for', () => {
  for (const step of STEPS) expect(stepNeeds(step, bare)).not.toBe('');
  expect(stepNeeds('clip', bare)).toContain('true capture rate');
  expect(stepNeeds('measures', bare)).toContain('plane');
});

test('with all of it no step needs anything', () => {
  const events = (movement?.events ?? []).map(({ id: event }): TrialEvent => ({ ...EXAMPLES.trialEvent, event }));
  const all = { trial: EXAMPLES.movementTrial, movement, tracks: [EXAMPLES.landmarkTrack], events };
  expect(STEPS.map((step) => stepNeeds(step, all))).toEqual(['', '', '', '', '']);
  expect(stepNeeds('events', { ...all, events: events.slice(1) })).toMatch(/needs 1\sevent of/);
});

test('a movement of another version says so instead of asking for events', () => {
  expect(stepNeeds('events', { ...bare, movement: null })).toContain('does not know the movement');
});
