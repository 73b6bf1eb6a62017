import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const lowBackPain = {
  id: 'low-back-pain',
  label: 'Low back pain',
  regions: ['lumbosacral', 'thoracic-spine', 'abdomen', 'chest'],
  clears: 'a doctor or physiotherapist',
  limits:
    'No repeated end-range bending under load; in the young no extension with rotation. Bladder, bowel, saddle or leg-weakness change is an emergency.',
  tolerated: 'Graded activity, hip hinge in range, walking, split squats.',
  evidence: 'moderate',
  sources: [SOURCES.finucane2020],
} as const satisfies ConditionEntry;
