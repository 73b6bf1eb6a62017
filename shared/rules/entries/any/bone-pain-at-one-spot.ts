import type { RuleEntry } from '../../ruleEntry.ts';

export const bonePainAtOneSpot = {
  id: 'any/bone-pain-at-one-spot',
  kind: 'referral',
  movement: 'any',
  phase: 'session',
  region: 'lower-leg',
  all: [{ measure: 'flag.focalBonePain', comparator: 'is', threshold: true, unit: null }],
  wording: {
    athlete: {
      finding: 'A bone hurts at one spot, and you run or jump.',
      intervention:
        'No running and no jumping today. See a doctor before you do either again. Pain in the groin or front of the thigh when you hop is urgent.',
    },
    practitioner: {
      finding: 'Bone pain at one spot in a runner or jumper.',
      intervention:
        'Stop running and jumping today; medical review before any impact. Pain in groin or front of thigh on hopping is urgent.',
    },
    clinician: {
      finding: 'Focal bone pain in a running or jumping athlete: bone stress injury to be excluded.',
      intervention:
        'No running or jumping today; medical review before any impact. Groin or anterior thigh pain on hopping is urgent.',
    },
  },
  drill: null,
  retest: null,
  loads: [],
  effects: [
    {
      condition: 'postpartum',
      effect: 'stop',
      change: 'Ask about energy intake and feeding.',
      plain: 'You will be asked how much you eat and how you feed your child.',
      unsafeFor: [],
    },
    {
      condition: 'pregnancy',
      effect: 'stop',
      change: 'Tell the obstetric provider.',
      plain: 'Tell your midwife or doctor.',
      unsafeFor: [],
    },
  ],
  sources: ['george2024', 'warden2014'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a sports or family physician'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
