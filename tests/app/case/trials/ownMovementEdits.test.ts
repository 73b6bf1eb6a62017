import { expect, test } from 'vitest';
import {
  addEvent,
  missingOf,
  moveEvent,
  phasesBetweenAll,
  removeEvent,
  removePhase,
} from '../../../../app/case/trials/ownMovementEdits.ts';
import { EXAMPLES } from '../../../conformance/examples.ts';

const own = EXAMPLES.ownMovement;

test('an instant taken twice gets an id of its own each time', () => {
  const once = addEvent(own, { id: 'landing', label: 'Landing', means: '' });
  expect(once.events?.at(-1)?.id).toBe('landing');
  const twice = addEvent({ ...own, ...once }, { id: 'landing', label: 'Landing', means: '' });
  expect(twice.events?.at(-1)?.id).toBe('landing-2');
});

test('moving an instant keeps them all; past the end it does nothing', () => {
  expect(moveEvent(own, 'release', -1).events?.map(({ id }) => id)).toEqual(['release', 'plant']);
  expect(moveEvent(own, 'release', 1)).toEqual({});
});

test('a phase that loses an instant stays, and the movement says what it needs', () => {
  const left = { ...own, ...removeEvent(own, 'release') };
  expect(left.phases[0]).toMatchObject({ startsAt: 'plant', endsAt: '' });
  expect(missingOf(left)).toBe('needs two instants');
  expect(missingOf({ ...own, phases: left.phases })).toBe('Step: needs both instants');
  expect(missingOf(own)).toBeNull();
});

test('a phase goes with what was to be measured in it', () => {
  expect(removePhase(own, 'step')).toEqual({ phases: [], checkpoints: [] });
});

test('phases are laid between instants that none joins yet', () => {
  const three = { ...own, events: [...own.events, { id: 'end', label: 'End', means: '' }] };
  const phases = phasesBetweenAll(three, () => 'new');
  expect(phases.map(({ startsAt, endsAt }) => [startsAt, endsAt])).toEqual([
    ['plant', 'release'],
    ['release', 'end'],
  ]);
});
