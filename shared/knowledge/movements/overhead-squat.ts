import type { Movement } from '../movement.ts';

export const overheadSquat = {
  id: 'overhead-squat',
  label: 'Squat with arms overhead',
  sport: 'Any',
  events: [
    { id: 'start', label: 'Start', means: 'The hips begin to go down.' },
    { id: 'bottom', label: 'Bottom', means: 'The hips are lowest.' },
    { id: 'end', label: 'End', means: 'The athlete stands upright again.' },
  ],
  phases: [
    { id: 'descent', label: 'Descent', startsAt: 'start', endsAt: 'bottom', means: 'Down, arms overhead.' },
    { id: 'bottom', label: 'Bottom', startsAt: 'bottom', endsAt: 'bottom', means: 'The deepest point.' },
    { id: 'ascent', label: 'Ascent', startsAt: 'bottom', endsAt: 'end', means: 'Up again.' },
  ],
  checkpoints: [
    { phase: 'descent', measure: 'phase.duration' },
    { phase: 'descent', measure: 'squat.trunkTibiaDiff' },
    { phase: 'bottom', measure: 'knee.flexPeak' },
    { phase: 'bottom', measure: 'squat.heelLift' },
    { phase: 'bottom', measure: 'squat.armDrift' },
    { phase: 'ascent', measure: 'phase.duration' },
    { phase: 'ascent', measure: 'fppa' },
    { phase: 'whole', measure: 'squat.faultCount' },
    { phase: 'whole', measure: 'segment.outOfPlane' },
  ],
  mayOverlap: [],
  aimsAtTarget: false,
  isAirborneSkill: false,
  source: { cite: 'Phases and boundaries are a convention of this program', status: 'convention' },
} as const satisfies Movement;
