import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const ankleSprain = {
  id: 'ankle-sprain',
  label: 'Ankle sprain',
  regions: ['hip-groin', 'thigh', 'knee', 'lower-leg', 'ankle', 'foot'],
  clears: 'a physiotherapist',
  limits: 'No early hopping, uneven cuts or forced bending. Cannot take four steps, or pain high in the ankle: X-ray.',
  tolerated: 'Balance, bicycle, two-leg jumps; brace or tape on return.',
  early: { days: 5, source: SOURCES.convention },
  evidence: 'moderate',
  sources: [SOURCES.smith2021],
} as const satisfies ConditionEntry;
