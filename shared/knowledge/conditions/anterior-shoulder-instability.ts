import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const anteriorShoulderInstability = {
  id: 'anterior-shoulder-instability',
  label: 'Shoulder instability, anterior',
  regions: ['shoulder', 'upper-arm', 'chest'],
  clears: 'a physiotherapist, and the surgeon if it was operated on',
  limits:
    'No loaded or fast arm out to the side with end-range external rotation, nothing behind the line of the body, no stretching into external rotation: no behind-neck or wide pressing, deep flyes, dips or late-cocking throws.',
  tolerated:
    'Neutral-grip rows, narrow short-range floor press, front-held squats, work in front of the body and below shoulder height, isometric rotation at the side, legs and trunk.',
  early: { days: 14, source: SOURCES.convention },
  evidence: 'expert',
  sources: [SOURCES.oldsUhl2024, SOURCES.jaggi2017, SOURCES.kolber2010, SOURCES.durall2001],
} as const satisfies ConditionEntry;
