import type { RuleEntry } from '../../ruleEntry.ts';

export const lowElbow = {
  id: 'volleyball-spike/low-elbow',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'arm-cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.elevation', comparator: '<', threshold: 80, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your elbow stays low as you draw your arm back: {value}.',
      intervention:
        'Lift your arm earlier and let your body turn first. Practise the swing without a ball, slowly, then a little faster.',
    },
    practitioner: {
      finding: 'The elbow stays below the shoulder line as the arm is drawn back: {value}.',
      intervention: 'Earlier arm lift and a swing led by the trunk, without a ball, slow then medium.',
    },
    clinician: {
      finding: 'Reduced humeral elevation in cocking: {value} (criterion below {threshold}).',
      intervention: 'Earlier arm elevation and trunk-led swing without a ball, slow to moderate speed.',
    },
  },
  drill: 'slow-arm-path',
  retest: { measure: 'arm.elevation', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [],
  sources: ['reeser2010', 'convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
