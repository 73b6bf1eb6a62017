import type { RuleBody } from '../model/ownRule.ts';

/** A rule of one's own before anything is written: a convention until its sources say otherwise. */
export function blankRule(number: number): RuleBody {
  const nothing = { finding: '', intervention: '' };
  return {
    id: `own/rule-${number}`,
    kind: 'intervention',
    movement: 'any',
    phase: 'session',
    region: 'knee',
    all: [{ measure: 'fppa', comparator: '>', threshold: 10, unit: 'deg' }],
    wording: { athlete: nothing, practitioner: nothing, clinician: nothing },
    drill: null,
    retest: null,
    loads: [],
    effects: [],
    sources: [{ cite: 'Own convention of this practice', status: 'convention' }],
    evidence: 'convention',
    basis: 'convention',
    defersTo: ['whoever wrote it'],
    since: 'own',
    supersededBy: null,
    replaces: null,
  };
}
