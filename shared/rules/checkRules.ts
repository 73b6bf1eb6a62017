import { conditionEntry, CONDITION_ENTRIES } from '../knowledge/conditions/index.ts';
import type { Measure } from '../knowledge/measure.ts';
import { measureById } from '../knowledge/measures/index.ts';
import type { Movement } from '../knowledge/movement.ts';
import { MOVEMENTS } from '../knowledge/movements/index.ts';
import { loadsNamedIn } from '../knowledge/namedLoads.ts';
import { NEVER_PRAISED } from '../knowledge/neverPraised.ts';
import { regionsTouch } from '../knowledge/regions.ts';
import { clinicianActsIn } from '../knowledge/wording/clinicianOnly.ts';
import { unexplainedIn } from '../knowledge/wording/tradeWords.ts';
import { CONDITIONS, REGIONS } from '../model/injury.ts';
import { GRADES } from '../model/screening.ts';
import { isUnit, UNITS } from '../units.ts';
import { doOverlap, spansOf } from './checks/span.ts';
import { strictestFor } from './effects/historyEffects.ts';
import { type InjuryEffect, READERS, type Reader, type Rule, type Test } from './rule.ts';

/** What of a rule a problem is about: where a form shows it. */
export const RULE_PARTS = ['name', 'place', 'tests', 'wording', 'drill', 'sources', 'effects'] as const;
export type RulePart = (typeof RULE_PARTS)[number];

export interface RuleProblem {
  /** Id of the rule, or of the movement and phase that lacks one. */
  readonly about: string;
  readonly problem: string;
  /** Left out where it is about no single rule. */
  readonly part?: RulePart;
}

/** Longest wording, in characters: what one line of a phone, two of a page and a margin hold. */
export const LONGEST = { finding: 160, intervention: 280, change: 280 } as const;
const PHASES_OF_ANY = ['session', 'profile'];
const SLOTS = ['{value}', '{threshold}', '{side}'];

/** Everything that must not be in a set of rules. Empty: they may be used. Says for each what is wrong, in words. */
export function checkRules(rules: readonly Rule[], movements: readonly Movement[] = MOVEMENTS): RuleProblem[] {
  return [
    ...duplicates(rules),
    ...rules.flatMap((rule) => {
      const found: Partial<Record<RulePart, readonly string[]>> = {
        place: place(rule, movements),
        tests: tests(rule),
        wording: [...wording(rule), ...praise(rule)],
        drill: dose(rule),
        sources: sources(rule),
        effects: [...effects(rule), ...namedLoads(rule)],
      };
      return RULE_PARTS.flatMap((part) =>
        (found[part] ?? []).map((problem): RuleProblem => ({ about: rule.id, problem, part })),
      );
    }),
    ...contradictions(rules),
    ...uncovered(rules, movements),
  ];
}

function duplicates(rules: readonly Rule[]): RuleProblem[] {
  const seen = new Set<string>();
  return rules.flatMap(({ id }) => {
    if (seen.has(id)) return [{ about: id, problem: 'the id is used twice', part: 'name' as const }];
    seen.add(id);
    return [];
  });
}

function place(rule: Rule, movements: readonly Movement[]): string[] {
  const problems = (REGIONS as readonly string[]).includes(rule.region) ? [] : [`there is no region "${rule.region}"`];
  if (rule.movement === 'any') {
    return PHASES_OF_ANY.includes(rule.phase) ? problems : [...problems, `any movement has no phase "${rule.phase}"`];
  }
  const movement = movements.find((one) => one.id === rule.movement);
  if (movement === undefined) return [...problems, `there is no movement "${rule.movement}"`];
  const isKnown = rule.phase === 'whole' || movement.phases.some((phase) => phase.id === rule.phase);
  return isKnown ? problems : [...problems, `${movement.label} has no phase "${rule.phase}"`];
}

function tests(rule: Rule): string[] {
  if (rule.all.length === 0) return ['it has no test'];
  const problems = rule.all.flatMap((test) => {
    const measure = measureById(test.measure);
    return measure === null ? [`there is no measure "${test.measure}"`] : testAgainst(test, measure);
  });
  if (rule.retest === null) return problems;
  if (measureById(rule.retest.measure) === null)
    problems.push(`there is no measure "${rule.retest.measure}" to test again`);
  if (!(rule.retest.afterDays >= 1)) problems.push('the re-test is not at least a day away');
  return problems;
}

function testAgainst({ measure: id, comparator, threshold, unit }: Test, measure: Measure): string[] {
  if (measure.unit === null) {
    if (unit !== null || comparator !== 'is')
      return [`${id} is a ${measure.kind}: it is compared with "is" and has no unit`];
    const fits =
      measure.kind === 'flag' ? typeof threshold === 'boolean' : (GRADES as readonly unknown[]).includes(threshold);
    return fits ? [] : [`${id} is a ${measure.kind}, which ${JSON.stringify(threshold)} is not`];
  }
  if (unit === null || !isUnit(unit) || UNITS[unit].dimension !== UNITS[measure.unit].dimension) {
    return [`${id} is measured in ${measure.unit}, its threshold in ${unit ?? 'no unit'}`];
  }
  const isRange = Array.isArray(threshold);
  if (typeof threshold === 'boolean' || typeof threshold === 'string')
    return [`${id} needs a number to be held against`];
  if ((comparator === 'between' || comparator === 'outside') !== isRange) {
    return [`${id}: "${comparator}" ${isRange ? 'takes one limit' : 'takes two limits'}`];
  }
  const numbers = typeof threshold === 'number' ? [threshold] : Object.values<number>(threshold);
  if (!numbers.every(Number.isFinite)) return [`${id}: a limit is not a number`];
  const [low = 0, high = 0] = numbers;
  return isRange && low > high ? [`${id}: the range is the wrong way round`] : [];
}

function wording(rule: Rule): string[] {
  const problems: string[] = [];
  const texts: readonly (readonly [keyof typeof LONGEST, string, Reader])[] = [
    ...READERS.flatMap((reader) => [
      ['finding', rule.wording[reader].finding, reader] as const,
      ['intervention', rule.wording[reader].intervention, reader] as const,
    ]),
    ...rule.effects.flatMap(({ change, plain = change }) => [
      ['change', change, 'practitioner'] as const,
      ['change', plain, 'athlete'] as const,
    ]),
  ];
  for (const [kind, text, reader] of texts) {
    if (reader === 'athlete') {
      for (const word of unexplainedIn(text)) problems.push(`the ${kind} for the athlete does not explain “${word}”`);
    }
    if (kind !== 'finding') {
      for (const act of clinicianActsIn(text)) problems.push(`the ${kind} coaches what only a clinician does: ${act}`);
    }
    if (text.length > LONGEST[kind]) problems.push(`the ${kind} is longer than ${LONGEST[kind]} characters`);
    if (text.includes('!')) problems.push(`the ${kind} has an exclamation mark`);
    for (const slot of text.match(/\{[^}]*\}/g) ?? []) {
      if (!SLOTS.includes(slot)) problems.push(`the ${kind} has an unknown slot ${slot}`);
    }
  }
  const isConfirmation = rule.kind === 'confirmation';
  for (const reader of READERS) {
    const { finding, intervention } = rule.wording[reader];
    if (finding.trim() === '') problems.push(`it says nothing to the ${reader}`);
    if (isConfirmation && intervention !== '') problems.push('a confirmation suggests nothing');
    if (!isConfirmation && intervention.trim() === '') problems.push(`it does not say to the ${reader} what to do`);
  }
  if (rule.defersTo.length === 0) problems.push('it does not say who decides');
  return problems;
}

/** An intervention says how much, how it gets harder and what to measure again; nothing else has a dose. */
function dose({ kind, drill, retest }: Rule): string[] {
  if (kind !== 'intervention') return drill === null ? [] : [`a ${kind} has no dose`];
  const problems = retest === null ? ['it does not say what to measure again, and when'] : [];
  if (drill === null) return [...problems, 'it names no drill'];
  const { dose: amount, progression } = drill;
  if (!/\d/.test(amount)) problems.push('the dose names no number');
  if (progression.trim() === '') problems.push('it does not say how the drill gets harder');
  return [
    ...problems,
    ...unexplainedIn(`${drill.label} ${amount} ${progression}`).map((word) => `the drill does not explain “${word}”`),
  ];
}

function sources(rule: Rule): string[] {
  if (rule.sources.length === 0) return ['it has no source'];
  const has = (status: string): boolean => rule.sources.some((source) => source.status === status);
  if (rule.basis === 'convention' && !has('convention')) return ['a convention must be named as one among its sources'];
  if (rule.basis === 'published' && !has('published')) return ['its basis is called published, and no source is'];
  return [];
}

/** Interventions and monitors load a region: every condition this reaches must have its say, if only to keep. */
function effects(rule: Rule): string[] {
  const problems = rule.effects.flatMap(({ condition, effect, change, unsafeFor }) => {
    const unknown = [condition, ...unsafeFor].filter((one) => !(CONDITIONS as readonly string[]).includes(one));
    if (unknown.length > 0) return unknown.map((one) => `there is no condition "${one}"`);
    if ((effect === 'keep') !== (change === ''))
      return [`${condition}: ${effect} ${change === '' ? 'needs a wording' : 'changes nothing'}`];
    return unsafeFor.includes(condition) ? [`${condition}: its own change is called unsafe for it`] : [];
  });
  problems.push(...rule.effects.flatMap((effect) => replacementProblems(rule, effect)));
  const twice = rule.effects.filter(
    (one, i) => rule.effects.findIndex((other) => other.condition === one.condition) < i,
  );
  problems.push(...twice.map(({ condition }) => `${condition} has two effects`));
  if (rule.kind !== 'intervention' && rule.kind !== 'monitor') return problems;
  const reached = CONDITION_ENTRIES.filter(
    (entry) => entry.id !== 'other' && entry.regions.some((region) => regionsTouch(region, rule.region)),
  );
  const silent = reached.filter((entry) => !rule.effects.some((effect) => effect.condition === entry.id));
  return [...problems, ...silent.map((entry) => `it says nothing for ${conditionEntry(entry.id).label}`)];
}

/** What waits for a clearance is not asked for now: `throws return last, when cleared`. */
const ONLY_LATER = /[^.;]*\b(returns?|comes? back|cleared|clearance|allows)\b[^.;]*/gi;

/** What is done instead must be safe for every other injury too: each that it reaches stops it, or is named as unsafe. */
function replacementProblems(rule: Rule, { condition, effect, change, plain = '', unsafeFor }: InjuryEffect): string[] {
  if (effect !== 'replace') return [];
  return loadsNamedIn(`${change} ${plain}`.replaceAll(ONLY_LATER, '')).flatMap(({ load, conditions }) =>
    conditions
      .filter((one) => one !== condition && !unsafeFor.includes(one) && strictestFor(rule, one)?.effect !== 'stop')
      .map(
        (one) =>
          `instead, for ${condition}, it asks for ${load}, which is not called unsafe for ${conditionEntry(one).label}`,
      ),
  );
}

/** A drill that names a throw or a landing must answer for the injuries that a throw or a landing reaches. */
function namedLoads(rule: Rule): string[] {
  if (rule.kind !== 'intervention' && rule.kind !== 'monitor') return [];
  const asked = READERS.map((reader) => rule.wording[reader].intervention).join(' ');
  return loadsNamedIn(asked).flatMap(({ load, conditions }) =>
    conditions
      .filter((condition) => (strictestFor(rule, condition)?.effect ?? 'keep') === 'keep')
      .map((condition) => `it asks for ${load} and does not limit it for ${conditionEntry(condition).label}`),
  );
}

function praise(rule: Rule): string[] {
  if (rule.kind !== 'confirmation') return [];
  return NEVER_PRAISED.filter(({ test }) =>
    rule.all.some((own) => own.measure === test.measure && meet(own, test)),
  ).map(({ because }) => `it confirms ${because}`);
}

function meet(a: Test, b: Test): boolean {
  return spansOf(a).some((one) => spansOf(b).some((other) => doOverlap(one, other)));
}

/** A confirmation and an intervention of one place that both hold for the same reading. */
function contradictions(rules: readonly Rule[]): RuleProblem[] {
  const alone = rules.filter((rule) => rule.all.length === 1 && rule.supersededBy === null);
  const confirmations = alone.filter((rule) => rule.kind === 'confirmation');
  const others = alone.filter((rule) => rule.kind === 'intervention');
  return confirmations.flatMap((rule) =>
    others
      .filter((other) => isSamePlace(rule, other) && agreeOnMeasure(rule, other))
      .map((other) => ({
        about: rule.id,
        problem: `it confirms what ${other.id} would change`,
        part: 'tests' as const,
      })),
  );
}

function isSamePlace(a: Rule, b: Rule): boolean {
  return a.movement === b.movement && a.phase === b.phase;
}

function agreeOnMeasure(a: Rule, b: Rule): boolean {
  const [one, other] = [a.all[0], b.all[0]];
  if (one === undefined || other === undefined || one.measure !== other.measure) return false;
  if (one.unit === null || other.unit === null) return one.threshold === other.threshold;
  if (!isSexSpecific(one) || !isSexSpecific(other)) return meet(one, other);
  return (['female', 'male'] as const).some((sex) => meet(forSex(one, sex), forSex(other, sex)));
}

function isSexSpecific({ threshold }: Test): boolean {
  return typeof threshold === 'object' && 'female' in threshold;
}

function forSex(test: Test, sex: 'female' | 'male'): Test {
  const { threshold } = test;
  return typeof threshold === 'object' && 'female' in threshold ? { ...test, threshold: threshold[sex] } : test;
}

function uncovered(rules: readonly Rule[], movements: readonly Movement[]): RuleProblem[] {
  return movements.flatMap((movement) =>
    movement.phases.flatMap((phase) =>
      (['intervention', 'confirmation'] as const)
        .filter(
          (kind) =>
            !rules.some((rule) => rule.movement === movement.id && rule.phase === phase.id && rule.kind === kind),
        )
        .map((kind) => ({ about: `${movement.id}/${phase.id}`, problem: `the phase has no ${kind}` })),
    ),
  );
}
