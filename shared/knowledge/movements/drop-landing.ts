import type { Movement } from '../movement.ts';

/** Stepping off a low box, landing on two feet, with or without a jump after. */
export const dropLanding = {
  id: 'drop-landing',
  label: 'Drop landing',
  sport: 'Any',
  events: [
    { id: 'landing', label: 'Landing', means: 'A foot first touches the floor.' },
    { id: 'deepest', label: 'Deepest', means: 'The knees stop bending.' },
    { id: 'end', label: 'End', means: 'The athlete stands still, or leaves the floor again.' },
  ],
  phases: [
    {
      id: 'initial-contact',
      label: 'Initial contact',
      startsAt: 'landing',
      endsAt: 'landing',
      means: 'How the body meets the floor.',
    },
    {
      id: 'absorption',
      label: 'Absorption',
      startsAt: 'landing',
      endsAt: 'deepest',
      means: 'Ankles, knees and hips bend and take up the fall.',
    },
    {
      id: 'stabilisation',
      label: 'Stabilisation',
      startsAt: 'deepest',
      endsAt: 'end',
      means: 'The body comes to rest over the feet.',
    },
  ],
  checkpoints: [
    { phase: 'initial-contact', measure: 'knee.flexAtContact' },
    { phase: 'absorption', measure: 'phase.duration' },
    { phase: 'absorption', measure: 'landing.kneeFlexPeak' },
    { phase: 'stabilisation', measure: 'phase.duration' },
    { phase: 'stabilisation', measure: 'trunk.lean' },
    { phase: 'absorption', measure: 'fppa' },
    { phase: 'whole', measure: 'landing.errors' },
    { phase: 'whole', measure: 'segment.outOfPlane' },
  ],
  mayOverlap: [],
  aimsAtTarget: false,
  isAirborneSkill: false,
  source: { cite: 'Phases and boundaries are a convention of this program', status: 'convention' },
} as const satisfies Movement;
