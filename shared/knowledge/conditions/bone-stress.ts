import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const boneStress = {
  id: 'bone-stress',
  label: 'Bone stress injury',
  regions: ['hip-groin', 'thigh', 'knee', 'lower-leg', 'ankle', 'foot'],
  clears: 'a sports doctor',
  limits:
    'No impact until the bone is not tender and walking is free of pain; at high-risk sites no impact without imaging and a doctor.',
  tolerated: 'Pool, bicycle and upper body if free of pain. Ask about energy intake.',
  evidence: 'limited',
  sources: [SOURCES.george2024, SOURCES.warden2014],
} as const satisfies ConditionEntry;
