import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const cardiacRedFlag = {
  id: 'cardiac-red-flag',
  label: 'Heart red flag, not cleared',
  regions: ['whole-body'],
  clears: 'a physician or cardiologist',
  limits: 'No maximal or competitive effort until seen.',
  tolerated: 'Rest and light daily activity as the doctor says.',
  evidence: 'moderate',
  sources: [SOURCES.maron2014],
} as const satisfies ConditionEntry;
