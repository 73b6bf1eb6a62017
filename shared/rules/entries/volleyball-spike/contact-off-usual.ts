import type { RuleEntry } from '../../ruleEntry.ts';

export const contactOffUsual = {
  id: 'volleyball-spike/contact-off-usual',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'contact',
  region: 'shoulder',
  all: [{ measure: 'arm.abductionAtContact', comparator: 'outside', threshold: [115, 145], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your arm is higher or lower at the hit than in healthy college players: {value}.',
      intervention: 'Stand, toss the ball low and hit it softly above your hitting shoulder.',
    },
    practitioner: {
      finding: 'Arm height at contact is away from that of healthy college players: {value}.',
      intervention: 'Contact point over the hitting shoulder with standing hits off a low toss, off-speed.',
    },
    clinician: {
      finding: 'Shoulder abduction at contact outside {threshold}, the range of healthy college players: {value}.',
      intervention: 'Standing submaximal hits off a low toss, contact above the hitting shoulder.',
    },
  },
  drill: 'standing-hits',
  retest: { measure: 'arm.abductionAtContact', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['reeser2010', 'convention'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
