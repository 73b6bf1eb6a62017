import type { Tissue } from '../../../shared/model/injury.ts';

/** Tissue and pathology as people say them; categories of the consensus on recording injury of 2020. */
export const TISSUE_WORDS: Readonly<Record<Tissue, string>> = {
  'muscle-injury': 'Muscle: strain or tear',
  'muscle-contusion': 'Muscle: bruise',
  'compartment-syndrome': 'Muscle: pressure in its compartment',
  tendinopathy: 'Tendon: overload or partial tear',
  'tendon-rupture': 'Tendon: rupture',
  'brain-or-cord': 'Nerves: brain or spinal cord',
  'peripheral-nerve': 'Nerves: nerve of a limb',
  fracture: 'Bone: fracture',
  'bone-stress': 'Bone: stress injury',
  'bone-contusion': 'Bone: bruise',
  'avascular-necrosis': 'Bone: loss of blood supply',
  'growth-plate': 'Bone: growth plate',
  cartilage: 'Joint: cartilage, meniscus or labrum',
  arthritis: 'Joint: arthritis',
  synovitis: 'Joint: inflamed lining or pinching',
  bursitis: 'Joint: bursa',
  'joint-sprain': 'Ligament: sprain, or joint out for the first time',
  'chronic-instability': 'Ligament: lasting instability',
  'skin-contusion': 'Skin: bruise',
  laceration: 'Skin: cut',
  abrasion: 'Skin: graze',
  vessel: 'Blood vessel',
  stump: 'Stump',
  'internal-organ': 'Inner organ',
  'not-specified': 'Not specified',
};

export const MODES = [
  { value: 'acute-sudden', label: 'Suddenly, from one clear event' },
  { value: 'repetitive-sudden', label: 'Suddenly, after load had built up' },
  { value: 'repetitive-gradual', label: 'Gradually, from repeated load' },
] as const;

export const CONTACTS = [
  { value: 'none', label: 'None' },
  { value: 'indirect-athlete', label: 'Indirect, through an athlete' },
  { value: 'indirect-object', label: 'Indirect, through an object' },
  { value: 'direct-athlete', label: 'Direct, with an athlete' },
  { value: 'direct-object', label: 'Direct, with an object' },
] as const;

export const RECURRENCES = [
  { value: 'first', label: 'Never' },
  { value: 'recurrence', label: 'Again after a full return' },
  { value: 'exacerbation', label: 'Worse again before a full return' },
] as const;
