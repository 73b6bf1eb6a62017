import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const other = {
  id: 'other',
  label: 'Other condition',
  regions: ['whole-body'],
  clears: 'the treating clinician',
  limits:
    'Caseframe knows no rules for it: it is recorded and printed, and advice for its region is marked to be agreed first.',
  tolerated: 'As the treating clinician says.',
  evidence: 'convention',
  sources: [SOURCES.convention],
} as const satisfies ConditionEntry;
