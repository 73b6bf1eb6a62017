import type { RuleEntry } from '../../ruleEntry.ts';

export const throwingLoadRisingAndWeak = {
  id: 'any/throwing-load-rising-and-weak',
  kind: 'monitor',
  movement: 'any',
  phase: 'profile',
  region: 'shoulder',
  all: [
    { measure: 'throw.weeklyRise', comparator: 'between', threshold: [20, 60], unit: '%' },
    { measure: 'shoulder.erIrRatio', comparator: '<', threshold: 0.75, unit: '1' },
  ],
  wording: {
    athlete: {
      finding:
        'You throw {value} more, and the muscles that turn your arm out are weak. In young players the two together went with more shoulder trouble.',
      intervention: 'Do not throw more for now. Train turning your arm out. Count your throws again next week.',
    },
    practitioner: {
      finding:
        'Throwing rises by {value} while the external rotators are weak: together they went with more shoulder trouble in young players.',
      intervention: 'Hold the load where it is, see to external rotation strength, and count again next week.',
    },
    clinician: {
      finding:
        'Throwing load up {value} with external-rotation weakness: associated with shoulder problems in young players.',
      intervention: 'Hold the load; address external-rotation strength; recount next week.',
    },
  },
  drill: null,
  retest: { measure: 'throw.weeklyRise', afterDays: 7 },
  loads: ['shoulder-strength', 'practice'],
  effects: [],
  eases: ['throwing'],
  sources: ['moller2017', 'cools2015'],
  evidence: 'moderate',
  basis: 'published',
  defersTo: ['a qualified coach, within scope', 'a physiotherapist or athletic trainer'],
  since: '0.1.0',
  supersededBy: null,
} as const satisfies RuleEntry;
