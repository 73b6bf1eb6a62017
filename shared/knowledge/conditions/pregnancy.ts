import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const pregnancy = {
  id: 'pregnancy',
  label: 'Pregnancy',
  regions: ['whole-body'],
  clears: 'the obstetric provider',
  limits:
    'No contact, fall risk, heat or maximal lifts with held breath. Stop on bleeding, fluid loss, chest pain, dizziness or contractions.',
  tolerated: 'Moderate aerobic and resistance work on at least three days, pelvic floor.',
  evidence: 'strong',
  sources: [SOURCES.mottola2018],
} as const satisfies ConditionEntry;
