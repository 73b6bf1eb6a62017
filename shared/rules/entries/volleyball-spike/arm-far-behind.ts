import type { RuleEntry } from '../../ruleEntry.ts';

export const armFarBehind = {
  id: 'volleyball-spike/arm-far-behind',
  kind: 'intervention',
  movement: 'volleyball-spike',
  phase: 'arm-cocking',
  region: 'shoulder',
  all: [{ measure: 'arm.horizontalAbduction', comparator: '>', threshold: 30, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'You draw your upper arm far behind your shoulder: {value}.',
      intervention: 'Turn your body more and draw your arm back less. Make few hard swings while you learn it.',
    },
    practitioner: {
      finding: 'The upper arm is drawn far behind the shoulder line: {value}.',
      intervention: 'Turn the trunk more and draw the arm less; few hard swings while learning.',
    },
    clinician: {
      finding: 'Excessive horizontal abduction: {value} (criterion above {threshold}).',
      intervention: 'More trunk rotation, less horizontal abduction; few maximal swings while learning.',
    },
  },
  drill: 'slow-arm-path',
  retest: { measure: 'arm.horizontalAbduction', afterDays: 28 },
  loads: ['throwing-overhead', 'trunk', 'practice'],
  effects: [
    {
      condition: 'anterior-shoulder-instability',
      effect: 'stop',
      change: 'No spiking until cleared: refer. Legs, trunk and setting below shoulder height only.',
      unsafeFor: [],
    },
    { condition: 'superior-labrum', effect: 'stop', change: 'No hard swings until seen: refer.', unsafeFor: [] },
  ],
  sources: ['reeser2010', 'convention'],
  evidence: 'expert',
  basis: 'convention',
  defersTo: ['a physiotherapist or athletic trainer', 'a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
