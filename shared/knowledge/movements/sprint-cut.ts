import type { Movement } from '../movement.ts';

export const sprintCut = {
  id: 'sprint-cut',
  label: 'Sprint and cut',
  sport: 'Any',
  events: [
    { id: 'start', label: 'Start', means: 'The last strides before the change of direction begin.' },
    { id: 'penultimate', label: 'Last step but one', means: 'The foot before the planting foot touches the floor.' },
    { id: 'plant', label: 'Plant', means: 'The planting foot touches the floor.' },
    { id: 'deepest', label: 'Deepest', means: 'The knee of the planting leg is bent the most.' },
    { id: 'take-off', label: 'Toe-off', means: 'The planting foot leaves the floor.' },
    { id: 'end', label: 'End', means: 'The first stride in the new direction is done.' },
  ],
  phases: [
    {
      id: 'approach',
      label: 'Approach',
      startsAt: 'start',
      endsAt: 'penultimate',
      means: 'Running up to the change of direction.',
    },
    {
      id: 'penultimate-contact',
      label: 'Last step but one',
      startsAt: 'penultimate',
      endsAt: 'plant',
      means: 'The step that brakes.',
    },
    {
      id: 'plant',
      label: 'Plant',
      startsAt: 'plant',
      endsAt: 'deepest',
      means: 'The planting leg takes the change of direction.',
    },
    {
      id: 'push-off',
      label: 'Push-off',
      startsAt: 'deepest',
      endsAt: 'take-off',
      means: 'The planting leg drives into the new direction.',
    },
    { id: 'sprint', label: 'Sprint', startsAt: 'take-off', endsAt: 'end', means: 'The first stride away.' },
  ],
  checkpoints: [
    { phase: 'approach', measure: 'trunk.lean' },
    { phase: 'penultimate-contact', measure: 'cut.brakingStep' },
    { phase: 'plant', measure: 'trunk.lateralLean' },
    { phase: 'plant', measure: 'fppa' },
    { phase: 'plant', measure: 'knee.flexAtContact' },
    { phase: 'push-off', measure: 'takeoff.contactTime' },
    { phase: 'sprint', measure: 'trunk.lean' },
    { phase: 'whole', measure: 'cut.score' },
    { phase: 'whole', measure: 'segment.outOfPlane' },
  ],
  mayOverlap: [],
  aimsAtTarget: false,
  isAirborneSkill: false,
  source: {
    cite: 'Traits: Dos’Santos et al. 2019, Phys Ther Sport 38:152. Phases and boundaries are a convention of this program.',
    status: 'convention',
  },
} as const satisfies Movement;
