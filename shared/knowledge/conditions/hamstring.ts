import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const hamstring = {
  id: 'hamstring',
  label: 'Hamstring',
  regions: ['hip-groin', 'thigh', 'knee', 'lower-leg', 'ankle', 'foot'],
  clears: 'a physiotherapist',
  limits:
    'No maximal sprint or fast lengthened load until strength and range are free of pain and graded runs are done.',
  tolerated: 'Lengthening exercise, bridges, tempo running.',
  early: { days: 5, source: SOURCES.convention },
  evidence: 'moderate',
  sources: [SOURCES.paton2023, SOURCES.ishoi2020],
} as const satisfies ConditionEntry;
