import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const superiorLabrum = {
  id: 'superior-labrum',
  label: 'Superior labrum or biceps anchor',
  regions: ['shoulder', 'upper-arm'],
  clears: 'a physiotherapist or the surgeon',
  limits: 'No fast late cocking, heavy or lowering biceps load, pull on the arm or forceful follow-through.',
  tolerated: 'Cuff, shoulder blade and trunk work; mobility of the back of the shoulder if it is short.',
  evidence: 'expert',
  sources: [SOURCES.manske2010],
} as const satisfies ConditionEntry;
