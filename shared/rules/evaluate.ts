import type { Fact, Finding, Outcome, TestResult } from '../assess/assessment.ts';
import { ageOn, leastAge } from '../format/age.ts';
import { conditionEntry } from '../knowledge/conditions/index.ts';
import { measureById } from '../knowledge/measures/index.ts';
import { regionGroup, regionsTouch } from '../knowledge/regions.ts';
import type { Athlete } from '../model/athlete.ts';
import type { Injury } from '../model/injury.ts';
import { isKnown } from '../quantity.ts';
import { convert } from '../units.ts';
import { gradeWords, limitWords, numberWords, rangeWords } from './checks/words.ts';
import { limitsFor, runTest } from './checks/runTest.ts';
import { byReader } from './byReader.ts';
import { type Advice, applyEffects, changesOf } from './effects/applyEffects.ts';
import { type EffectsOfHistory, historyEffects } from './effects/historyEffects.ts';
import { type FactIndex, factFor, indexFacts, type Subject, subjectsOf } from './factIndex.ts';
import { type Reader, type Rule, RULE_KINDS } from './rule.ts';

export interface JudgingOptions {
  readonly referenceSex: Athlete['referenceSex'];
  readonly birthDate: string | null;
  /** The day the case speaks for; null: not known. */
  readonly asOf: string | null;
  /** Stands in where no date of birth is given. */
  readonly ageBand?: Athlete['ageBand'];
}

/** A rule whose tests have been run on one subject; nothing is suggested yet. */
interface Judged {
  readonly rule: Rule;
  readonly referenceSex: JudgingOptions['referenceSex'];
  readonly subject: Subject;
  readonly tests: readonly TestResult[];
  readonly isFired: boolean;
  readonly phase: string;
  /** What stands in braces in its wording, once it is asked for. */
  slots?: Readonly<Record<string, string>>;
}

/**
 * Judges facts and history by rules, in the order referral, caution, intervention, monitor, confirmation.
 * A rule fires only if all its tests are met; one test not met silences it; a missing one leaves it not assessed.
 * A referral hides what its region and movement would be advised; the injuries on file then stop, replace or modify
 * the rest; a confirmation stands only where nothing else fired, pain was recorded as 0 and nothing is withheld.
 * The answer depends on what is given and not on its order.
 * @throws DomainError 'not-found' for a rule over an unknown measure, 'input-out-of-range' for a fact that is not finite
 */
export function evaluateRules(
  rules: readonly Rule[],
  facts: readonly Fact[],
  history: readonly Injury[],
  options: JudgingOptions,
): Finding[] {
  const index = indexFacts(facts);
  const judged = once(inJudgingOrder(rules).flatMap((rule) => judge(rule, index, options)));
  const fired = judged.filter((one) => one.isFired);
  const referrals = fired.filter((one) => one.rule.kind === 'referral');
  // A caution too close to call questions its own number and nothing else.
  const alerts = fired.filter(
    (one) => one.rule.kind !== 'confirmation' && !(one.rule.kind === 'caution' && isBorderline(one)),
  );
  const listed = firstAskers(judged.filter((one) => !one.isFired));
  const effectsOf = new Map<Rule, EffectsOfHistory>();

  return judged.flatMap((one): Finding[] => {
    if (!one.isFired) return listed.has(one) ? [notAssessed(one, neededFor(one))] : [];
    const effects = effectsOf.get(one.rule) ?? historyEffects(one.rule, history, options.asOf);
    effectsOf.set(one.rule, effects);
    switch (one.rule.kind) {
      case 'referral':
      case 'caution':
        return [alert(one, effects)];
      case 'confirmation':
        return confirmation(one, effects, alerts, index);
      default:
        return [suggestion(one, effects, referrals)];
    }
  });
}

/** Two versions of one rule, as there are while an update waits, speak once of one subject: the one that fires. */
function once(judged: readonly Judged[]): readonly Judged[] {
  const heard = new Map<string, Judged>();
  for (const one of judged) {
    const key = keyOf(one);
    const before = heard.get(key);
    if (before === undefined || (one.isFired && !before.isFired)) heard.set(key, one);
  }
  return heard.size === judged.length ? judged : [...heard.values()];
}

function keyOf({ rule, subject, phase }: Judged): string {
  return `${rule.id}/${subject.recordId ?? 'case'}/${phase}/${subject.side}`;
}

/** Of several rules that lack the same measures in the same place, the first: what is missing is listed once. */
function firstAskers(open: readonly Judged[]): ReadonlySet<Judged> {
  const first = new Map<string, Judged>();
  for (const one of open) {
    const measures = new Set(openTests(one).map((test) => test.measure));
    const place = [one.subject.movement, one.phase, one.subject.recordId, one.subject.side, ...measures].join('/');
    if (!first.has(place)) first.set(place, one);
  }
  return new Set(first.values());
}

function openTests(one: Judged): TestResult[] {
  return one.tests.filter((test) => test.result === 'undetermined');
}

/** Putting a book of rules in order takes as long as judging a case by it, and most cases are judged by the same book. */
const ordered = new WeakMap<readonly Rule[], readonly Rule[]>();

/** The rules in force, by kind, then by id. */
function inJudgingOrder(rules: readonly Rule[]): readonly Rule[] {
  const known = ordered.get(rules);
  if (known !== undefined) return known;
  const sorted = rules
    .filter((rule) => rule.supersededBy === null)
    .toSorted(
      (a, b) => RULE_KINDS.indexOf(a.kind) - RULE_KINDS.indexOf(b.kind) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
    );
  ordered.set(rules, sorted);
  return sorted;
}

function judge(rule: Rule, index: FactIndex, options: JudgingOptions): Judged[] {
  return subjectsOf(rule, index).flatMap((subject): Judged[] => {
    const tests: TestResult[] = [];
    for (const [i, test] of rule.all.entries()) {
      const fact = i === 0 ? subject.fact : factFor(test.measure, rule, subject, index);
      const day = fact?.takenOn ?? null;
      const ageYears =
        day === null || options.birthDate === null ? leastAge(options.ageBand ?? null) : ageOn(options.birthDate, day);
      const result = runTest(test, fact, { referenceSex: options.referenceSex, ageYears });
      if (result.result === 'not-met') return [];
      tests.push(result);
    }
    const isFired = tests.every((test) => test.result === 'met');
    // A rule for any movement that found its fact in a trial speaks of that trial as a whole.
    const phase = rule.movement === 'any' && subject.movement !== null ? 'whole' : rule.phase;
    return [{ rule, subject, tests, isFired, phase, referenceSex: options.referenceSex }];
  });
}

/** What the injuries change is printed beside a referral or caution and takes nothing from it. A referral is never softened. */
function alert(one: Judged, history: EffectsOfHistory): Finding {
  const outcome = one.rule.kind === 'referral' ? 'referral' : isBorderline(one) ? 'borderline' : 'caution';
  return findingOf(
    one,
    outcome,
    history,
    byReader((reader) => ({
      intervention: fill(one.rule.wording[reader].intervention, one),
      adjustments: changesOf(history.effects, reader),
    })),
  );
}

function suggestion(one: Judged, history: EffectsOfHistory, referrals: readonly Judged[]): Finding {
  const texts = byReader((reader) => fill(one.rule.wording[reader].intervention, one));
  const referral = referrals.find((other) => hides(other, one));
  if (referral !== undefined) {
    const finding = findingOf(one, 'stopped', history);
    const reason = fill(referral.rule.wording.practitioner.finding, referral);
    return {
      ...finding,
      withheld: { text: texts.practitioner, because: [], referral: reason },
      trace: [...finding.trace, `Held back: a referral comes first (${reason}).`],
    };
  }
  const { effect, advice, withheld } = applyEffects(texts, history);
  const finding = findingOf(one, suggestionOutcome(one, effect), history, advice);
  return {
    ...finding,
    drill: effect === 'keep' || effect === 'modify' ? one.rule.drill : null,
    withheld,
    trace: isBorderline(one)
      ? [...finding.trace, 'Too close to the limit for one reading: measure again before acting on it.']
      : finding.trace,
  };
}

function isBorderline(one: Judged): boolean {
  return one.tests.some((test) => test.isBorderline);
}

function suggestionOutcome(one: Judged, effect: 'stop' | 'replace' | 'modify' | 'keep'): Outcome {
  if (effect === 'stop') return 'stopped';
  if (effect === 'replace') return 'replaced';
  if (isBorderline(one)) return 'borderline';
  if (effect === 'modify') return 'modified';
  return one.rule.kind === 'monitor' ? 'monitor' : 'intervention';
}

function confirmation(one: Judged, history: EffectsOfHistory, alerts: readonly Judged[], index: FactIndex): Finding[] {
  if (alerts.some((other) => blocks(other, one))) return [];
  if (history.effects.some((effect) => effect.effect === 'stop' || effect.effect === 'replace')) return [];
  const pain = painAbout(one, index);
  if (pain === 'some') return [];
  if (pain === 'not recorded') return [notAssessed(one, 'Pain, recorded as a number from 0 to 10.')];
  const finding = findingOf(
    one,
    isBorderline(one) ? 'borderline' : 'confirmed',
    history,
    byReader((reader) => ({ intervention: null, adjustments: changesOf(history.effects, reader) })),
  );
  return [{ ...finding, trace: [...finding.trace, 'Pain was recorded as 0.'] }];
}

function hides(referral: Judged, other: Judged): boolean {
  return (
    (referral.rule.movement === 'any' || referral.rule.movement === other.rule.movement) &&
    regionsTouch(referral.rule.region, other.rule.region)
  );
}

/** Whether something that fired forbids calling this part of the movement, or this region, in order. */
function blocks(other: Judged, one: Judged): boolean {
  if (other.rule.kind === 'referral' && hides(other, one)) return true;
  if (other.rule.movement === 'any' && other.subject.movement === null) {
    const speaksOfAll = one.rule.movement === 'any' || other.rule.kind === 'caution';
    return speaksOfAll && regionsTouch(other.rule.region, one.rule.region);
  }
  return (
    other.subject.movement === one.subject.movement &&
    other.subject.recordId === one.subject.recordId &&
    (other.phase === one.phase || other.phase === 'whole' || one.phase === 'whole')
  );
}

/** Pain within a movement: rated for a filmed trial, or the worst of a jump test. */
const PAIN_IN_MOVEMENT = ['pain.nrs', 'pain.jumpTest'];

/** Pain recorded with the same trial or test; for the athlete as a whole, in tests of the region. */
function painAbout(one: Judged, index: FactIndex): 'none' | 'some' | 'not recorded' {
  const inTrial = one.rule.movement !== 'any' && one.subject.recordId !== null;
  const facts = inTrial
    ? PAIN_IN_MOVEMENT.flatMap((measure) => index.inRecord.get(one.subject.recordId ?? '')?.get(measure) ?? [])
    : [`pain.${regionGroup(one.rule.region)}`, 'pain.nrs'].flatMap((measure) => index.standing.get(measure) ?? []);
  const values = facts.map(numberOf).filter((value) => value !== null);
  if (values.length === 0) return 'not recorded';
  return values.every((value) => value === 0) ? 'none' : 'some';
}

function numberOf(fact: Fact): number | null {
  return fact.value.kind === 'number' && isKnown(fact.value.reading) ? fact.value.reading.value : null;
}

function notAssessed(one: Judged, needed: string): Finding {
  const finding = findingOf(one, 'not-assessed', { effects: [], restrictions: [], trace: [] });
  const open = [...new Set(openTests(one).map((test) => test.label))];
  const words = `Not assessed: ${open.length > 0 ? open.join(', ') : 'pain'}`;
  return { ...finding, finding: words, wording: byReader(() => ({ ...NO_ADVICE, finding: words })), needed };
}

function neededFor(one: Judged): string {
  return [...new Set(openTests(one).map((test) => `${test.label}: ${test.words}.`))].join(' ');
}

const NO_ADVICE: Advice = { intervention: null, adjustments: [] };

function findingOf(
  one: Judged,
  outcome: Outcome,
  history: EffectsOfHistory,
  advice: Readonly<Record<Reader, Advice>> = byReader(() => NO_ADVICE),
): Finding {
  const { rule, subject, tests, phase } = one;
  const wording = byReader((reader) => ({ finding: fill(rule.wording[reader].finding, one), ...advice[reader] }));
  const fact = subject.fact;
  const retestLabel = rule.retest === null ? null : (measureById(rule.retest.measure)?.label ?? rule.retest.measure);
  return {
    key: keyOf(one),
    ruleId: rule.id,
    kind: rule.kind,
    outcome,
    movement: subject.movement ?? rule.movement,
    phase,
    side: subject.side,
    trialId: subject.isTrial ? subject.recordId : null,
    takenOn: fact?.takenOn ?? null,
    ...wording.practitioner,
    wording,
    drill: null,
    withheld: null,
    effects: history.effects,
    tests,
    needed: null,
    sources: sourcesOf(rule, history),
    evidence: rule.evidence,
    basis: rule.basis,
    defersTo: rule.defersTo,
    retest:
      rule.retest === null || retestLabel === null
        ? null
        : { measure: rule.retest.measure, label: retestLabel, afterDays: rule.retest.afterDays },
    trace: [...tests.map((test) => `${test.label}: ${test.words}.`), ...history.trace],
  };
}

/** The rule's own sources, then those of the conditions that changed what it says. */
function sourcesOf(rule: Rule, history: EffectsOfHistory): Finding['sources'] {
  const changing = history.effects.filter((effect) => effect.effect !== 'keep');
  if (changing.length === 0) return rule.sources;
  const all = [...rule.sources, ...changing.flatMap((effect) => conditionEntry(effect.condition).sources)];
  return [...new Map(all.map((source) => [source.cite, source])).values()];
}

/** Puts the first test's reading, limit and side into the wording. */
function fill(text: string, one: Judged): string {
  if (!text.includes('{')) return text;
  one.slots ??= {
    '{value}': valueWords(one),
    '{threshold}': thresholdWords(one),
    '{side}': one.subject.side === 'none' ? '' : one.subject.side,
  };
  const { slots } = one;
  const filled = text.replaceAll(/\{[a-z]+\}/g, (slot) => slots[slot] ?? slot);
  return filled.replaceAll(/ {2,}/g, ' ').trim();
}

function valueWords({ subject }: Judged): string {
  const fact = subject.fact;
  if (fact === null || fact.value.kind === 'unknown') return 'not known';
  if (fact.value.kind === 'flag') return fact.value.flag ? 'yes' : 'no';
  if (fact.value.kind === 'grade') return gradeWords(fact.value.grade);
  const { reading } = fact.value;
  if (!isKnown(reading)) return 'not known';
  const unit = fact.displayUnit ?? reading.unit;
  return numberWords(convert(reading.value, reading.unit, unit), unit);
}

function thresholdWords({ rule, referenceSex }: Judged): string {
  const test = rule.all[0];
  if (test === undefined || test.unit === null) return '';
  const limits = limitsFor(test.threshold, referenceSex);
  if (typeof limits === 'string') return '';
  const [low, high] = limits;
  return high === undefined ? limitWords(low, test.unit) : rangeWords(low, high, test.unit);
}
