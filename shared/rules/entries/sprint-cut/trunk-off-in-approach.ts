import type { RuleEntry } from '../../ruleEntry.ts';

export const trunkOffInApproach = {
  id: 'sprint-cut/trunk-off-in-approach',
  kind: 'intervention',
  movement: 'sprint-cut',
  phase: 'approach',
  region: 'whole-body',
  all: [{ measure: 'trunk.lean', comparator: 'outside', threshold: [-5, 35], unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your upper body is tipped too far before you cut: {value}.',
      intervention: 'Run at half speed into a marked stop with your upper body over your hips.',
    },
    practitioner: {
      finding: 'The trunk is far off the running line before the cut: {value}.',
      intervention: 'Run-throughs at half speed into a marked stop, trunk over the hips.',
    },
    clinician: {
      finding: 'Trunk inclination in the approach outside {threshold}: {value}.',
      intervention: 'Half-speed run-throughs to a marked stop, trunk over the pelvis.',
    },
  },
  drill: 'run-and-stop',
  retest: { measure: 'trunk.lean', afterDays: 42 },
  loads: ['running', 'trunk', 'effort'],
  effects: [
    { condition: 'anterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'posterior-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'multidirectional-shoulder-instability', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'rotator-cuff', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'superior-labrum', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'acromioclavicular-joint', effect: 'keep', change: '', unsafeFor: [] },
    { condition: 'elbow-ulnar-collateral-ligament', effect: 'keep', change: '', unsafeFor: [] },
  ],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
