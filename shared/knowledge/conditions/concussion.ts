import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const concussion = {
  id: 'concussion',
  label: 'Concussion',
  regions: ['whole-body'],
  clears: 'a physician',
  limits:
    'No contact, risk of a blow, maximal effort or early resistance work. Stop for the day if suspected; same-day signs are an emergency.',
  tolerated: 'Relative rest for 24 to 48 h, then one step of the graded return at a time, each at least 24 h.',
  evidence: 'strong',
  sources: [SOURCES.mccrory2017, SOURCES.patricios2023],
} as const satisfies ConditionEntry;
