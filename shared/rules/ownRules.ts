import { MOVEMENTS } from '../knowledge/movements/index.ts';
import type { Movement } from '../knowledge/movement.ts';
import { movementNamed, movementsOf } from '../assess/movementOf.ts';
import type { CaseFile } from '../model/records.ts';
import { toFailure } from '../errors.ts';
import { RULES_VERSION } from '../versions.ts';
import { checkRules, type RulePart } from './checkRules.ts';
import { interimRules } from './interimRules.ts';
import { keptRules, parsePackRule } from './rulePack.ts';
import type { Rule } from './rule.ts';
import { SHIPPED_RULES } from './shippedRules.ts';

export interface RuleBook {
  /** What a case is judged by: the rules of the program without those replaced, and own ones that are on and sound. */
  readonly rules: readonly Rule[];
  /** Own rules that are on and keep from being used, by the id of their record. */
  readonly refused: ReadonlyMap<string, readonly OwnRuleProblem[]>;
}

type Judging = Pick<CaseFile, 'ownRules' | 'ownMovements' | 'judgedBy'>;

/** The last book made on each set of rules: most cases of a store are judged by the same one. */
const made = new WeakMap<readonly Rule[], { readonly from: string; readonly book: RuleBook }>();

/**
 * The rules of a case: those of the program, or the earlier ones while an update waits; then own ones, for every case and
 * for this one. An own rule is held to everything a shipped one is; one that fails judges nothing, and one over a
 * movement that this case does not have is not asked.
 */
export function ruleBook(file: Judging, base: readonly Rule[] = baseRules(file)): RuleBook {
  const on = [...file.judgedBy.shared.filter((one) => isAsked(one.rule, file)), ...file.ownRules].filter(
    ({ isOn }) => isOn,
  );
  if (on.length === 0) return { rules: base, refused: new Map() };
  const from = JSON.stringify([on, file.ownMovements]);
  const known = made.get(base);
  if (known?.from === from) return known.book;
  const read = readOwnRules(on, movementsOf(file));
  const book = {
    rules: beside(
      read.flatMap(({ sound }) => sound ?? []),
      base,
    ),
    refused: new Map(read.flatMap(({ of, sound, problems }) => (sound === null ? [[of.id, problems]] : []))),
  };
  made.set(base, { from, book });
  return book;
}

function isAsked({ movement }: { readonly movement?: unknown }, file: Judging): boolean {
  return typeof movement !== 'string' || movement === 'any' || movementNamed(movement, movementsOf(file)) !== null;
}

/** Sets of rules that updates hold back, each read once. */
const held = new WeakMap<object, { readonly earlier: readonly Rule[]; readonly interim: readonly Rule[] } | null>();

function readHeld({ judgedBy }: Pick<CaseFile, 'judgedBy'>) {
  if (judgedBy.held === null) return null;
  const { rules } = judgedBy.held;
  const known = held.get(rules);
  if (known !== undefined) return known;
  const earlier = keptRules(rules);
  const read = earlier === null ? null : { earlier, interim: interimRules(earlier, SHIPPED_RULES) };
  held.set(rules, read);
  return read;
}

/** The rules of the program from before an update that waits; null: none waits, or they cannot be read any more. */
export function heldRules(file: Pick<CaseFile, 'judgedBy'>): readonly Rule[] | null {
  return readHeld(file)?.earlier ?? null;
}

function baseRules(file: Pick<CaseFile, 'judgedBy'>): readonly Rule[] {
  return readHeld(file)?.interim ?? SHIPPED_RULES;
}

/** The version of the rules that a case is judged by, as it is printed. */
export function rulesVersionOf(file: Pick<CaseFile, 'judgedBy'>): string {
  const { held } = file.judgedBy;
  if (held === null || heldRules(file) === null) return RULES_VERSION;
  return `${held.version} with the cautions and stops of ${RULES_VERSION}`;
}

/** What keeps an own rule from being used, and which part of it that is about. */
export interface OwnRuleProblem {
  readonly part: RulePart;
  readonly words: string;
}

const PART_OF_FIELD: Readonly<Record<string, RulePart>> = {
  kind: 'place',
  movement: 'place',
  phase: 'place',
  region: 'place',
  all: 'tests',
  wording: 'wording',
  drill: 'drill',
  retest: 'drill',
  sources: 'sources',
  loads: 'effects',
  effects: 'effects',
};

/**
 * An own rule with all that keeps it from being used beside the shipped rules and others of the user's own. Its movement
 * is the one of that name among those given.
 */
export function readOwnRule(
  body: unknown,
  others: readonly Rule[] = [],
  movements: readonly Movement[] = MOVEMENTS,
): { readonly rule: Rule | null; readonly problems: readonly OwnRuleProblem[] } {
  try {
    const written = parsePackRule(body, 'the rule');
    const rule = { ...written, movement: movementNamed(written.movement, movements)?.id ?? written.movement };
    const found = checkRules(beside([...others, rule]), movements);
    // Coverage of own movements is not asked for; a contradiction names both rules.
    const problems = found.filter(({ about, problem }) => about === rule.id || problem.includes(rule.id));
    return { rule, problems: problems.map(({ problem, part }) => ({ part: part ?? 'place', words: problem })) };
  } catch (thrown) {
    const { message, path } = toFailure(thrown);
    return { rule: null, problems: [{ part: PART_OF_FIELD[path?.split('.')[0] ?? ''] ?? 'name', words: message }] };
  }
}

export interface ReadOwnRule<T> {
  readonly of: T;
  /** Null: it judges nothing, for these problems. */
  readonly sound: Rule | null;
  readonly problems: readonly OwnRuleProblem[];
}

/** Own rules one after the other, each as beside those before it that are on and sound. */
export function readOwnRules<T extends { readonly isOn: boolean; readonly rule: unknown }>(
  own: readonly T[],
  movements: readonly Movement[],
): ReadOwnRule<T>[] {
  const before: Rule[] = [];
  return own.map((of) => {
    const { rule, problems } = readOwnRule(of.rule, before, movements);
    const sound = problems.length > 0 ? null : rule;
    if (sound !== null && of.isOn) before.push(sound);
    return { of, sound, problems };
  });
}

/** Rules of the program with own ones beside them, or in place of those they name. */
export function beside(own: readonly Rule[], base: readonly Rule[] = SHIPPED_RULES): readonly Rule[] {
  const replaced = new Set(own.flatMap(({ replaces }) => replaces ?? []));
  return [...base.filter(({ id }) => !replaced.has(id)), ...own];
}

/** Whether a finding comes of a rule of the user's own: said wherever it is shown or printed. */
export function isOwnRule(ruleId: string): boolean {
  return ruleId.startsWith('own/');
}

export const OWN_RULE_WORDS = 'A rule of one’s own, not one that comes with the program';
