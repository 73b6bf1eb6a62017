import { jumpDrills } from './jumps.ts';
import { landingDrills } from './landings.ts';
import { loadChanges } from './load.ts';
import { mobilityDrills } from './mobility.ts';
import { runningDrills } from './running.ts';
import { shotDrills } from './shots.ts';
import { strengthDrills } from './strength.ts';
import { throwDrills } from './throws.ts';

/** Every drill a rule may name, by id. */
export const DRILLS = {
  ...landingDrills,
  ...jumpDrills,
  ...strengthDrills,
  ...throwDrills,
  ...shotDrills,
  ...mobilityDrills,
  ...runningDrills,
  ...loadChanges,
} as const;

export type DrillId = keyof typeof DRILLS;
