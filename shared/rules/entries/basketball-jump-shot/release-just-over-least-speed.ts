import type { RuleEntry } from '../../ruleEntry.ts';

export const releaseJustOverLeastSpeed = {
  id: 'basketball-jump-shot/release-just-over-least-speed',
  kind: 'confirmation',
  movement: 'basketball-jump-shot',
  phase: 'release',
  region: 'shoulder',
  all: [{ measure: 'ball.angleAboveLeastSpeed', comparator: 'between', threshold: [0, 8.5], unit: 'deg' }],
  wording: {
    athlete: {
      finding:
        'Your shot leaves at a good angle: {value} above the easiest one, as in skilled shooters. Keep your arc.',
      intervention: '',
    },
    practitioner: {
      finding:
        'The ball leaves {value} above the angle of least speed, as in skilled shooters. No change to arc needed.',
      intervention: '',
    },
    clinician: {
      finding:
        'Release {value} above the angle of least speed, as reported in skilled shooters. No intervention indicated.',
      intervention: '',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [],
  sources: ['slegers2022'],
  evidence: 'limited',
  basis: 'derived',
  defersTo: ['a qualified coach, within scope'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
