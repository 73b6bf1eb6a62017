import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const posteriorShoulderInstability = {
  id: 'posterior-shoulder-instability',
  label: 'Shoulder instability, posterior',
  regions: ['shoulder', 'upper-arm', 'chest'],
  clears: 'a physiotherapist, and the surgeon if it was operated on',
  limits:
    'No load with the arm forward, across and turned in: no push-ups, bench lock-out, straight-arm blocking, plank, cross-body or side-lying stretches, and no fast cross-body finish.',
  tolerated: 'Rows, external rotation, raises in the plane of the shoulder blade, legs.',
  early: { days: 14, source: SOURCES.convention },
  evidence: 'expert',
  sources: [SOURCES.watson2023, SOURCES.jaggi2017],
} as const satisfies ConditionEntry;
