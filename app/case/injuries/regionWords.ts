import type { Region } from '../../../shared/model/injury.ts';

/** Body regions as people say them. */
export const REGION_WORDS: Readonly<Record<Region, string>> = {
  head: 'Head',
  neck: 'Neck',
  shoulder: 'Shoulder',
  'upper-arm': 'Upper arm',
  elbow: 'Elbow',
  forearm: 'Forearm',
  'wrist-hand': 'Wrist and hand',
  chest: 'Chest',
  'thoracic-spine': 'Upper back',
  lumbosacral: 'Lower back',
  abdomen: 'Abdomen',
  'hip-groin': 'Hip and groin',
  thigh: 'Thigh',
  knee: 'Knee',
  'lower-leg': 'Lower leg',
  ankle: 'Ankle',
  foot: 'Foot',
  'whole-body': 'Whole body',
};
