import type { RuleEntry } from '../../ruleEntry.ts';

export const legsNotStraightAtTakeoff = {
  id: 'countermovement-jump/legs-not-straight-at-takeoff',
  kind: 'intervention',
  movement: 'countermovement-jump',
  phase: 'propulsion',
  region: 'knee',
  all: [{ measure: 'knee.flexAtTakeoff', comparator: '>', threshold: 25, unit: 'deg' }],
  wording: {
    athlete: {
      finding: 'Your {side} knee is still bent when you leave the floor: {value}.',
      intervention: 'Practise easy jumps and push until you are tall on your toes.',
    },
    practitioner: {
      finding: 'The {side} knee is still bent at take-off: {value}.',
      intervention: 'Submaximal jumps that finish tall on the toes.',
    },
    clinician: {
      finding: 'Incomplete knee extension at take-off, {side}: {value} of flexion (criterion above {threshold}).',
      intervention: 'Submaximal jumps with complete triple extension.',
    },
  },
  drill: 'tall-jumps',
  retest: { measure: 'knee.flexAtTakeoff', afterDays: 28 },
  loads: ['jumping', 'effort'],
  effects: [],
  sources: ['convention'],
  evidence: 'convention',
  basis: 'convention',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
