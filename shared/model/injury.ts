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
});
export type Injury = z.infer<typeof injury>;
