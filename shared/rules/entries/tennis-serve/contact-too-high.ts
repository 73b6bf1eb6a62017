import type { RuleEntry } from '../../ruleEntry.ts';

export const contactTooHigh = {
  id: 'tennis-serve/contact-too-high',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'contact',
  region: 'shoulder',
  all: [{ measure: 'arm.abductionAtContact', comparator: '>', threshold: 125, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your arm is very high next to your body at the hit: {value}.',
      intervention:
        'Move your toss or tilt your body, so that the height comes from your body and not from your shoulder. Serve at half speed.',
    },
    practitioner: {
      finding: 'The arm is very high against the trunk at contact: {value}.',
      intervention:
        'Move the toss or let the trunk tilt, so that height comes from the trunk and not from the shoulder: serves at half speed.',
    },
    clinician: {
      finding: 'Shoulder abduction at contact relative to the trunk: {value} (criterion above {threshold}).',
      intervention:
        'Reposition the toss or allow trunk tilt, so that height derives from the trunk; serves at half speed.',
    },
  },
  drill: 'half-speed-serves',
  retest: { measure: 'arm.abductionAtContact', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'stop', change: 'No serving until cleared.', unsafeFor: [] },
    {
      condition: 'low-back-pain',
      effect: 'replace',
      change: 'No added tilt or extension of the trunk. Fewer serves, flat only, and adjust the toss.',
      plain: 'Do not tilt or arch your back more. Fewer serves, flat ones only, and toss a little differently.',
      unsafeFor: [
        'anterior-shoulder-instability',
        'posterior-shoulder-instability',
        'multidirectional-shoulder-instability',
        'superior-labrum',
        'elbow-ulnar-collateral-ligament',
      ],
    },
  ],
  sources: ['fleisig2003', 'kovacs2011', 'convention'],
  evidence: 'limited',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
