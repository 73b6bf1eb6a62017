import type { RuleEntry } from '../../ruleEntry.ts';

export const leansFarSideways = {
  id: 'tennis-serve/leans-far-sideways',
  kind: 'intervention',
  movement: 'tennis-serve',
  phase: 'acceleration',
  region: 'whole-body',
  all: [{ measure: 'trunk.contralateralLean', comparator: '>', threshold: 45, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You lean far to the side on the way up: {value}.',
      intervention: 'Toss a little differently and push up from your legs first. Serve flat at half speed.',
    },
    practitioner: {
      finding: 'The trunk leans far to the other side on the way up: {value}.',
      intervention: 'Adjust the toss and reach with the legs first; flat serves at half speed.',
    },
    clinician: {
      finding: 'Excessive contralateral trunk lean in acceleration: {value} (criterion above {threshold}).',
      intervention: 'Adjust the toss, legs first; flat serves at half speed.',
    },
  },
  drill: 'half-speed-serves',
  retest: { measure: 'trunk.contralateralLean', afterDays: 28 },
  loads: ['throwing-overhead', 'leg-strength', 'trunk', 'practice'],
  effects: [
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
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
