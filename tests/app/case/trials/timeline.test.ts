import { expect, test } from 'vitest';
import { partsOf, timelineOf } from '../../../../app/case/trials/timeline.ts';
import { movementById } from '../../../../shared/knowledge/movements/index.ts';
import { sampleCase } from '../../../support/sampleCase.ts';

const file = sampleCase();
const [trial] = file.movementTrials;
if (trial === undefined) throw new Error('the sample case needs a trial');
const movement = movementById(trial.movementId);
const { events, tracks } = partsOf(file, trial.id);

test('law: phases lie inside the axis, in the order of the movement, each starting no later than it ends', () => {
  const { phases, fromS, toS } = timelineOf(trial, movement, events, tracks);
  const order = movement?.phases.map((phase) => phase.id) ?? [];
  expect(phases.length).toBeGreaterThan(1);
  expect(phases.map((phase) => phase.id)).toEqual(order.filter((id) => phases.some((phase) => phase.id === id)));
  for (const phase of phases) {
    expect(phase.toS).toBeGreaterThanOrEqual(phase.fromS);
    expect(phase.fromS).toBeGreaterThanOrEqual(fromS);
    expect(phase.toS).toBeLessThanOrEqual(toS);
  }
});

test('without an event both phases that it bounds are gone, and the event is named as not set', () => {
  const [first] = movement?.phases ?? [];
  const without = events.filter((event) => event.event !== first?.endsAt);
  const { phases, unset } = timelineOf(trial, movement, without, tracks);
  const bounded = movement?.phases.filter((p) => p.startsAt === first?.endsAt || p.endsAt === first?.endsAt) ?? [];
  expect(bounded.length).toBeGreaterThan(1);
  for (const phase of bounded) expect(phases.map(({ id }) => id)).not.toContain(phase.id);
  expect(unset).toContain(movement?.events.find((event) => event.id === first?.endsAt)?.label);
});

test('a movement this version does not know keeps its events, without phases', () => {
  const timeline = timelineOf(trial, null, events, tracks);
  expect(timeline.phases).toEqual([]);
  expect(timeline.events.map((event) => event.label)).toEqual(events.map((event) => event.event));
});
