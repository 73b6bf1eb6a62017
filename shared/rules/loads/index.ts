import type { Load } from '../load.ts';
import { ankleMobility } from './ankleMobility.ts';
import { armSupport } from './armSupport.ts';
import { effort } from './effort.ts';
import { jumping } from './jumping.ts';
import { legStrength } from './legStrength.ts';
import { overheadLight } from './overheadLight.ts';
import { practice } from './practice.ts';
import { running } from './running.ts';
import { shoulderStrength } from './shoulderStrength.ts';
import { shoulderStretch } from './shoulderStretch.ts';
import { throwingOverhead } from './throwingOverhead.ts';
import { trunk } from './trunk.ts';

/** Every load a rule may name. */
export const LOADS = {
  'throwing-overhead': throwingOverhead,
  'overhead-light': overheadLight,
  'shoulder-strength': shoulderStrength,
  'arm-support': armSupport,
  'shoulder-stretch': shoulderStretch,
  jumping: jumping,
  running: running,
  'leg-strength': legStrength,
  'ankle-mobility': ankleMobility,
  trunk: trunk,
  effort: effort,
  practice: practice,
} as const satisfies Record<string, Load>;

export type LoadId = keyof typeof LOADS;
