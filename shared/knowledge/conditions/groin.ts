import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const groin = {
  id: 'groin',
  label: 'Groin',
  regions: ['hip-groin', 'thigh', 'knee', 'lower-leg', 'ankle', 'foot'],
  clears: 'a physiotherapist',
  limits: 'No side-stepping, kicking or wide squats with squeeze pain of 3 or more of 10; stop at 6.',
  tolerated: 'Graded adductor work, trunk, straight running.',
  early: { days: 5, source: SOURCES.convention },
  evidence: 'moderate',
  sources: [SOURCES.thorborg2017, SOURCES.ishoi2020],
} as const satisfies ConditionEntry;
