import type { ConditionEntry } from '../condition.ts';
import { SOURCES } from '../sources/index.ts';

export const rotatorCuff = {
  id: 'rotator-cuff',
  label: 'Rotator cuff pain or tear',
  regions: ['shoulder', 'upper-arm'],
  clears: 'a physiotherapist, and a doctor if the arm is weak',
  limits:
    'No loaded painful arc, heavy overhead work or sudden rises in load. New loss of lifting after an injury is urgent.',
  tolerated: 'Isometrics, then slow cuff and shoulder-blade work guided by pain, below shoulder height.',
  evidence: 'moderate',
  sources: [SOURCES.schwank2022, SOURCES.murphy2023],
} as const satisfies ConditionEntry;
