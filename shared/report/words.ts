import type { Grade } from '../model/screening.ts';
import type { CaseRecord, Purpose } from '../model/case.ts';
import type { Injury, Region } from '../model/injury.ts';
import type { JumpTest } from '../model/jump.ts';
import type { FindingDecision } from '../model/outcome.ts';
import type { SideOrNone } from '../model/parts.ts';
import type { Source } from '../quantity.ts';

/** Answers of the records in the words that pages print. */

export const GRADE_WORDS = {
  met: 'met',
  'met-with-compensation': 'met with compensation',
  'not-met': 'not met',
} as const satisfies Record<Grade, string>;

export const SIDE_WORDS = { left: 'left', right: 'right', none: '' } as const satisfies Record<SideOrNone, string>;

export const PURPOSE_WORDS = {
  intake: 'intake assessment',
  study: 'case study',
  referral: 'referral',
} as const satisfies Record<Purpose, string>;

export const URGENCY_WORDS = {
  emergency: 'Emergency: today, by the emergency service',
  urgent: 'Urgent: within days',
  soon: 'Soon: within weeks',
  routine: 'Routine',
} as const satisfies Record<NonNullable<CaseRecord['urgency']>, string>;

export const INJURY_STATUS_WORDS = {
  current: 'current',
  recovering: 'recovering',
  resolved: 'resolved',
} as const satisfies Record<Injury['status'], string>;

export const REGION_WORDS = {
  head: 'head',
  neck: 'neck',
  shoulder: 'shoulder',
  'upper-arm': 'upper arm',
  elbow: 'elbow',
  forearm: 'forearm',
  'wrist-hand': 'wrist and hand',
  chest: 'chest',
  'thoracic-spine': 'upper back',
  lumbosacral: 'lower back',
  abdomen: 'abdomen',
  'hip-groin': 'hip and groin',
  thigh: 'thigh',
  knee: 'knee',
  'lower-leg': 'lower leg',
  ankle: 'ankle',
  foot: 'foot',
  'whole-body': 'whole body',
} as const satisfies Record<Region, string>;

export const JUMP_KIND_WORDS = {
  countermovement: 'Countermovement jump',
  squat: 'Squat jump',
  drop: 'Drop jump',
} as const satisfies Record<JumpTest['kind'], string>;

export const JUMP_METHOD_WORDS = {
  'flight-time': 'from flight time',
  'jump-and-reach': 'by jump and reach',
  'force-plate': 'on a force plate',
  'contact-mat': 'on a contact mat',
  'filmed-trial': 'from a filmed trial',
} as const satisfies Record<JumpTest['method'], string>;

export const ARMS_WORDS = { free: 'arms free', hips: 'hands on hips' } as const satisfies Record<
  NonNullable<JumpTest['arms']>,
  string
>;

export const DECISION_WORDS = {
  accepted: 'accepted by the practitioner',
  reworded: 'reworded by the practitioner',
  'set-aside': 'set aside by the practitioner',
} as const satisfies Record<FindingDecision['decision'], string>;

export const SOURCE_STATUS_WORDS = {
  published: 'published',
  derived: 'derived here from what is published',
  convention: 'convention, no published source',
  'from memory': 'from memory, not checked again',
} as const satisfies Record<Source['status'], string>;

/** How sure we are of a source; what merely says what a word means needs none. */
export function statusWords({ cite, status }: Source): string {
  return cite === 'Definition' ? 'by definition' : SOURCE_STATUS_WORDS[status];
}

/** Printed in short at the foot of every page. */
export const CAUTION_LINE =
  'Screening is not diagnosis. A licensed clinician and local protocols decide. Stop and seek care if there is pain.';

/** Printed in full at the end of every report. */
export const CAUTIONS: readonly string[] = [
  'Screening is not diagnosis. These pages describe what was recorded and what follows from it by stated rules; they do not name a disease or an injury.',
  'A licensed clinician and local protocols decide. Where these pages and a clinician differ, the clinician is right.',
  'Nothing here is a clearance to train or to play. Limits set for an injury hold until the person named beside them lifts them.',
  'Stop and be seen by a clinician if there is pain, numbness, weakness, giving way, chest pain, fainting or breathlessness out of proportion.',
  'A number without an uncertainty says so. A convention without a published source says so. Neither is evidence.',
];
