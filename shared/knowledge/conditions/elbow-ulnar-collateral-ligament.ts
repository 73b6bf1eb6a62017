import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const elbowUlnarCollateralLigament = {
  id: 'elbow-ulnar-collateral-ligament',
  label: 'Elbow, ulnar collateral ligament',
  regions: ['elbow', 'forearm', 'upper-arm', 'shoulder'],
  clears: 'a surgeon or sports doctor',
  limits: 'No throwing, heavy balls, long throws, side-arm hits or presses that force the elbow inward.',
  tolerated: 'Trunk, legs, cuff, forearm flexors, gripping if free of pain; graded throwing later.',
  evidence: 'expert',
  sources: [SOURCES.redler2016, SOURCES.reinold2018],
} as const satisfies ConditionEntry;
