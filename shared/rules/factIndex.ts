import type { Fact } from '../assess/assessment.ts';
import { OWN_CLEARING } from '../knowledge/screening/readBattery.ts';
import type { SideOrNone } from '../model/parts.ts';
import type { Rule } from './rule.ts';

/** What one judgment is about: a trial, a jump test, a screening result, or the case as a whole. */
export interface Subject {
  /** Record the facts come from; null: the case as a whole. */
  readonly recordId: string | null;
  readonly isTrial: boolean;
  readonly movement: string | null;
  readonly side: SideOrNone;
  readonly fact: Fact | null;
}

/** Facts arranged for judging. Facts outside any movement count only as they stand newest. */
export interface FactIndex {
  /** Facts of one trial or test, by record and measure. */
  readonly inRecord: ReadonlyMap<string, ReadonlyMap<string, readonly Fact[]>>;
  /** Records of one movement, in order. */
  readonly recordsOf: ReadonlyMap<string, readonly string[]>;
  /** Newest facts outside any movement, by measure. */
  readonly standing: ReadonlyMap<string, readonly Fact[]>;
  /** Facts of a measure within movements. */
  readonly moving: ReadonlyMap<string, readonly Fact[]>;
}

export function indexFacts(facts: readonly Fact[]): FactIndex {
  const inRecord = new Map<string, Map<string, Fact[]>>();
  const recordsOf = new Map<string, string[]>();
  const moving = new Map<string, Fact[]>();
  const newest = new Map<string, Fact>();

  // Trials of a jump test are judged together, by the facts of their test.
  const judged = facts.filter((fact) => fact.from.kind !== 'jumpTrial');
  for (const fact of judged.toSorted((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0))) {
    if (fact.movement === null) {
      const slot = `${fact.measure}/${fact.phase ?? ''}/${fact.side}`;
      const held = newest.get(slot);
      if (held === undefined || (fact.takenOn ?? '') >= (held.takenOn ?? '')) newest.set(slot, fact);
      continue;
    }
    let ofRecord = inRecord.get(fact.from.id);
    if (ofRecord === undefined) {
      ofRecord = new Map();
      inRecord.set(fact.from.id, ofRecord);
      push(recordsOf, fact.movement, fact.from.id);
    }
    push(ofRecord, fact.measure, fact);
    push(moving, fact.measure, fact);
  }
  const standing = new Map<string, Fact[]>();
  for (const fact of newest.values()) push(standing, fact.measure, fact);
  return { inRecord, recordsOf, standing, moving };
}

/**
 * What a rule has to be judged on. Its first test names the subject: each fact of that measure, in each trial of the
 * movement (or standing newest for the athlete), is judged by itself.
 */
export function subjectsOf(rule: Rule, index: FactIndex): Subject[] {
  const measure = rule.all[0]?.measure;
  if (measure === undefined) return [];
  if (rule.movement === 'any') {
    const facts = [...(index.standing.get(measure) ?? []), ...(index.moving.get(measure) ?? [])];
    // Nobody is asked for a test that only some battery of one's own has.
    if (facts.length === 0 && measure === OWN_CLEARING) return [];
    if (facts.length === 0) return [{ recordId: null, isTrial: false, movement: null, side: 'none', fact: null }];
    return facts.map((fact) => ({ ...placeOf(fact), side: fact.side, fact }));
  }
  const subjects = (index.recordsOf.get(rule.movement) ?? []).flatMap((recordId): Subject[] => {
    const place = { recordId, isTrial: isTrialRecord(recordId, index), movement: rule.movement };
    const inPhase = factsInPhase(index.inRecord.get(recordId)?.get(measure) ?? [], rule.phase);
    const facts = inPhase.length > 0 ? inPhase : (index.standing.get(measure) ?? []);
    if (facts.length === 0) return [{ ...place, side: 'none', fact: null }];
    return facts.map((fact) => ({ ...place, side: fact.side, fact }));
  });
  return withoutEmptyTests(subjects, rule.movement);
}

/**
 * A jump test is not asked for what only a film shows, nor a film for what only a plate shows: what no record has is
 * missing once, and what a trial lacks counts only if another one has it.
 */
function withoutEmptyTests(subjects: readonly Subject[], movement: string): Subject[] {
  const known = subjects.filter((subject) => subject.fact !== null);
  if (subjects.length === 0) return [];
  if (known.length === 0) return [{ recordId: null, isTrial: false, movement, side: 'none', fact: null }];
  const isInTrials = known.some((subject) => subject.isTrial);
  return subjects.filter((subject) => subject.fact !== null || (subject.isTrial && isInTrials));
}

/** The fact that a further test of the rule is to read: same trial and phase, same side, else the athlete's newest. */
export function factFor(measure: string, rule: Rule, subject: Subject, index: FactIndex): Fact | null {
  const ofRecord = subject.recordId === null ? undefined : index.inRecord.get(subject.recordId)?.get(measure);
  const inPhase = ofSide(factsInPhase(ofRecord ?? [], rule.phase), subject.side);
  return inPhase ?? ofSide(index.standing.get(measure) ?? [], subject.side);
}

/** Facts of the rule's phase; those of no phase serve any; those of one other phase serve where there is no choice. */
function factsInPhase(facts: readonly Fact[], phase: string): readonly Fact[] {
  const exact = facts.filter((fact) => fact.phase === phase);
  if (exact.length > 0) return exact;
  const ofWhole = facts.filter((fact) => fact.phase === null || fact.phase === 'whole');
  if (ofWhole.length > 0) return ofWhole;
  return new Set(facts.map((fact) => fact.phase)).size === 1 ? facts : [];
}

function ofSide(facts: readonly Fact[], side: SideOrNone): Fact | null {
  return facts.find((fact) => fact.side === side) ?? facts.find((fact) => fact.side === 'none') ?? null;
}

function placeOf(fact: Fact): Omit<Subject, 'side' | 'fact'> {
  return { recordId: fact.from.id, isTrial: fact.from.kind === 'movementTrial', movement: fact.movement };
}

function isTrialRecord(recordId: string, index: FactIndex): boolean {
  const facts = index.inRecord.get(recordId)?.values().next().value;
  return facts?.[0]?.from.kind === 'movementTrial';
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
