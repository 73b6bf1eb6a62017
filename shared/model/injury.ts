import { z } from 'zod';
import { day, id, line, nonNegative, roughDate, sideOrNone, text } from './parts.ts';

/** Conditions the rules know how to protect. Everything else is `other`: recorded and printed, without rules of its own. */
export const CONDITIONS = [
  'anterior-shoulder-instability',
  'posterior-shoulder-instability',
  'multidirectional-shoulder-instability',
  'rotator-cuff',
  'superior-labrum',
  'acromioclavicular-joint',
  'elbow-ulnar-collateral-ligament',
  'low-back-pain',
  'anterior-cruciate-ligament',
  'patellar-tendinopathy',
  'ankle-sprain',
  'hamstring',
  'groin',
  'bone-stress',
  'concussion',
  'pregnancy',
  'postpartum',
  'cardiac-red-flag',
  'other',
] as const;
export const condition = z.enum(CONDITIONS);
export type Condition = z.infer<typeof condition>;

/** Body areas of the IOC consensus on recording injury (Bahr et al. 2020, Br J Sports Med 54:372, table 2). */
export const REGIONS = [
  'head',
  'neck',
  'shoulder',
  'upper-arm',
  'elbow',
  'forearm',
  'wrist-hand',
  'chest',
  'thoracic-spine',
  'lumbosacral',
  'abdomen',
  'hip-groin',
  'thigh',
  'knee',
  'lower-leg',
  'ankle',
  'foot',
  'whole-body',
] as const;
export const region = z.enum(REGIONS);
export type Region = z.infer<typeof region>;

/** Tissue and pathology of the same consensus, in our own labels. */
export const TISSUES = [
  'muscle-injury',
  'muscle-contusion',
  'compartment-syndrome',
  'tendinopathy',
  'tendon-rupture',
  'brain-or-cord',
  'peripheral-nerve',
  'fracture',
  'bone-stress',
  'bone-contusion',
  'avascular-necrosis',
  'growth-plate',
  'cartilage',
  'arthritis',
  'synovitis',
  'bursitis',
  'joint-sprain',
  'chronic-instability',
  'skin-contusion',
  'laceration',
  'abrasion',
  'vessel',
  'stump',
  'internal-organ',
  'not-specified',
] as const;
export type Tissue = (typeof TISSUES)[number];

/** How it came on, and what was touched; the same consensus. */
export const MODES = ['acute-sudden', 'repetitive-sudden', 'repetitive-gradual'] as const;
export const CONTACTS = ['none', 'indirect-athlete', 'indirect-object', 'direct-athlete', 'direct-object'] as const;
/** The same diagnosis again: after a full return a recurrence, before it an exacerbation. */
export const RECURRENCES = ['first', 'recurrence', 'exacerbation'] as const;

export const injury = z.strictObject({
  id,
  athleteId: id,
  condition,
  region,
  side: sideOrNone,
  /** Diagnosis in the words of whoever made it. */
  diagnosis: line,
  onset: roughDate.nullable(),
  mechanism: text,
  /** `resolved` needs a clearance to lift any limit; the rules look at both. */
  status: z.enum(['current', 'recovering', 'resolved']),
  /** Episodes known, this one included. */
  episodes: z.int().min(1).max(999).nullable(),
  timeLossDays: nonNegative.max(36_500).nullable(),
  hadSurgery: z.boolean().nullable(),
  /** Limits in force, in words. */
  restrictions: text,
  clearedBy: line,
  clearedOn: day.nullable(),
  note: text,
  tissue: z.enum(TISSUES).nullable(),
  /** Code of whatever classification is used; any. */
  code: line,
  mode: z.enum(MODES).nullable(),
  contact: z.enum(CONTACTS).nullable(),
  recurrence: z.enum(RECURRENCES).nullable(),
  /** Which operation, when and by whom. */
  surgery: text,
  clearedRole: line,
  clearedFor: line,
  clearedUntil: day.nullable(),
});
export type Injury = z.infer<typeof injury>;
