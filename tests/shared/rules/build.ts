import type { Fact, FactValue } from '../../../shared/assess/assessment.ts';
import { measureById } from '../../../shared/knowledge/measures/index.ts';
import { blankInjury } from '../../../shared/model/blank.ts';
import type { Condition, Injury } from '../../../shared/model/injury.ts';
import { measured } from '../../../shared/quantity.ts';
import type { JudgingOptions } from '../../../shared/rules/evaluate.ts';
import { byReader } from '../../../shared/rules/byReader.ts';
import type { Rule, Wording } from '../../../shared/rules/rule.ts';
import { convert } from '../../../shared/units.ts';

/** Builders that make each case a sketch: numbers are given in the measure's display unit. */

export const ADULT_WOMAN: JudgingOptions = { referenceSex: 'female', birthDate: '2000-01-01', asOf: '2026-11-18' };
export const ADULT_MAN: JudgingOptions = { referenceSex: 'male', birthDate: '2000-01-01', asOf: '2026-11-18' };

interface Where {
  readonly movement?: string;
  readonly phase?: string;
  readonly side?: Fact['side'];
  readonly record?: string;
  readonly takenOn?: string;
  /** Standard uncertainty in display unit. */
  readonly u?: number;
}

export function fact(measure: string, value: number | boolean | string | FactValue, where: Where = {}): Fact {
  const entry = measureById(measure);
  if (entry === null) throw new Error(`no measure ${measure}`);
  const record = where.record ?? (where.movement === undefined ? 'session' : 'trial');
  const side = where.side ?? 'none';
  return {
    key: [measure, record, where.phase ?? '', side].join('/'),
    measure,
    label: entry.label,
    movement: where.movement ?? null,
    phase: where.phase ?? null,
    side,
    value: valueOf(measure, value, where.u),
    displayUnit: entry.displayUnit,
    height: null,
    takenOn: where.takenOn ?? '2026-11-18',
    from: { kind: where.movement === undefined ? 'screeningSession' : 'movementTrial', id: record },
    provenance: 'made up for a test',
    takenAs: null,
  };
}

function valueOf(measure: string, value: number | boolean | string | FactValue, u: number | undefined): FactValue {
  if (typeof value === 'boolean') return { kind: 'flag', flag: value };
  if (typeof value === 'string') return { kind: 'grade', grade: value };
  if (typeof value !== 'number') return value;
  const { unit, displayUnit, label } = measureById(measure) ?? {};
  if (unit === undefined || unit === null || displayUnit === undefined || displayUnit === null) {
    throw new Error(`${measure} is not a number`);
  }
  const uSi = u === undefined ? 'not given' : convert(u, displayUnit, unit);
  return { kind: 'number', reading: measured('x', label ?? measure, convert(value, displayUnit, unit), unit, uSi) };
}

export function injury(condition: Condition, more: Partial<Injury> = {}): Injury {
  return {
    ...blankInjury(
      { id: `injury-${condition}`, athleteId: 'athlete' },
      { region: REGION_OF[condition], side: 'right' },
    ),
    condition,
    onset: '2025-03',
    ...more,
  };
}

const REGION_OF: Record<Condition, Injury['region']> = {
  'anterior-shoulder-instability': 'shoulder',
  'posterior-shoulder-instability': 'shoulder',
  'multidirectional-shoulder-instability': 'shoulder',
  'rotator-cuff': 'shoulder',
  'superior-labrum': 'shoulder',
  'acromioclavicular-joint': 'shoulder',
  'elbow-ulnar-collateral-ligament': 'elbow',
  'low-back-pain': 'lumbosacral',
  'anterior-cruciate-ligament': 'knee',
  'patellar-tendinopathy': 'knee',
  'ankle-sprain': 'ankle',
  hamstring: 'thigh',
  groin: 'hip-groin',
  'bone-stress': 'lower-leg',
  concussion: 'head',
  pregnancy: 'whole-body',
  postpartum: 'whole-body',
  'cardiac-red-flag': 'chest',
  other: 'wrist-hand',
};

/** A small rule on the landing of the countermovement jump, to be bent for one test each. */
export function rule(bent: Bent = {}): Rule {
  return bend(
    {
      id: 'test/stiff',
      kind: 'intervention',
      movement: 'countermovement-jump',
      phase: 'landing',
      region: 'knee',
      all: [{ measure: 'landing.kneeFlexPeak', comparator: '<', threshold: 45, unit: 'deg' }],
      wording: sameForAll({
        finding: 'The {side} knee bends to {value}, less than {threshold}.',
        intervention: 'Land softly.',
      }),
      drill: null,
      retest: null,
      effects: [],
      sources: [{ cite: 'Convention made for a test', status: 'convention' }],
      evidence: 'convention',
      basis: 'convention',
      defersTo: ['a coach'],
      since: '0.1.0',
      supersededBy: null,
    },
    bent,
  );
}

/** A change of a rule; a finding or an intervention named in it is said to every reader. */
export type Bent = Partial<Rule> & Partial<Wording>;

export function bend(rule: Rule, { finding, intervention, ...more }: Bent): Rule {
  const wording = byReader((reader) => ({
    finding: finding ?? rule.wording[reader].finding,
    intervention: intervention ?? rule.wording[reader].intervention,
  }));
  return { ...rule, wording, ...more };
}

export function sameForAll(wording: Wording): Rule['wording'] {
  return byReader(() => wording);
}
