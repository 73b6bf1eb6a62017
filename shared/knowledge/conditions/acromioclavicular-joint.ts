import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const acromioclavicularJoint = {
  id: 'acromioclavicular-joint',
  label: 'Acromioclavicular joint',
  regions: ['shoulder', 'chest'],
  clears: 'a physiotherapist, and a surgeon for a high grade',
  limits: 'No cross-body reach, wide or deep bench press, dips, heavy hanging carries or upright rows.',
  tolerated: 'Neutral-grip rows, short-range floor press, legs.',
  early: { days: 5, source: SOURCES.convention },
  evidence: 'expert',
  sources: [SOURCES.convention],
} as const satisfies ConditionEntry;
