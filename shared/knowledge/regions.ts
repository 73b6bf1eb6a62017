import type { Region } from '../model/injury.ts';

export const REGION_GROUPS = ['head-neck', 'upper-limb', 'trunk', 'lower-limb', 'whole-body'] as const;
export type RegionGroup = (typeof REGION_GROUPS)[number];

/** Body regions of the IOC consensus on recording injury (Bahr et al. 2020, Br J Sports Med 54:372, table 2). */
const GROUP_OF: Readonly<Record<Region, RegionGroup>> = {
  head: 'head-neck',
  neck: 'head-neck',
  shoulder: 'upper-limb',
  'upper-arm': 'upper-limb',
  elbow: 'upper-limb',
  forearm: 'upper-limb',
  'wrist-hand': 'upper-limb',
  chest: 'trunk',
  'thoracic-spine': 'trunk',
  lumbosacral: 'trunk',
  abdomen: 'trunk',
  'hip-groin': 'lower-limb',
  thigh: 'lower-limb',
  knee: 'lower-limb',
  'lower-leg': 'lower-limb',
  ankle: 'lower-limb',
  foot: 'lower-limb',
  'whole-body': 'whole-body',
};

export function regionGroup(region: Region): RegionGroup {
  return GROUP_OF[region];
}

/** Two regions touch if they lie in one group, or if either is the whole body: load on one reaches the other. */
export function regionsTouch(a: Region, b: Region): boolean {
  const [one, other] = [GROUP_OF[a], GROUP_OF[b]];
  return one === other || one === 'whole-body' || other === 'whole-body';
}

/** The group in plain words, as the end of a sentence. */
export const GROUP_WORDS: Readonly<Record<RegionGroup, string>> = {
  'head-neck': 'the head or neck',
  'upper-limb': 'the shoulder or arm',
  trunk: 'the trunk',
  'lower-limb': 'the hip or leg',
  'whole-body': 'the whole body',
};
