import { withUnit } from '../format/number.ts';
import { parseNumber, type Typed } from '../format/typed.ts';
import { combineTrials } from '../knowledge/screening/combineTrials.ts';
import type { BatteryItem } from '../knowledge/screening/battery.ts';
import type { SideOrNone } from '../model/parts.ts';
import { GRADES, type ScreeningResult } from '../model/screening.ts';
import { GRADE_WORDS } from '../report/words.ts';
import { convert, UNITS } from '../units.ts';

/** What one result of one side says; pain is read apart. */
export type EnteredResult = Pick<ScreeningResult, 'valueSi' | 'grade' | 'isPositive' | 'trialsSi'>;

export const NO_RESULT: EnteredResult = { valueSi: null, grade: null, isPositive: null, trialsSi: null };

/** The one letter that stands for each answer, shown wherever it can be typed. */
const GRADE_LETTERS = { met: 'm', 'met-with-compensation': 'c', 'not-met': 'n' } as const;

/** What may be typed for an item, in words. */
export function entryHint(item: BatteryItem): string {
  if (item.kind === 'graded') {
    return GRADES.map((grade) => `${GRADE_LETTERS[grade]} ${GRADE_WORDS[grade]}`).join(', ');
  }
  if (item.kind === 'clearing') return 'y yes, it hurts; n no';
  const unit = item.displayUnit === null ? '' : UNITS[item.displayUnit].label;
  const one = unit === '' ? 'a number' : `a number in ${unit}`;
  if (item.trials === undefined) return one;
  const { most, combine } = item.trials;
  return `${one}, or up to ${most} trials with + between them, 41+42.5, of which the ${combine} counts`;
}

/** One side of one entry. */
export interface EntrySide<T> {
  readonly side: SideOrNone;
  /** Null: nothing entered, or something refused. */
  readonly value: T | null;
  readonly refusal: string | null;
  /** Kept as typed, but unusual. */
  readonly question: string | null;
}

export interface Entry<T> {
  readonly sides: readonly EntrySide<T>[];
  /** Why the entry as a whole cannot be divided into sides. Nothing of it is kept. */
  readonly refusal: string | null;
}

/**
 * A cell of the run as results: `41.5 43` is left, then right; `- 43` right alone; `r43` says its side; `41+42 43+44`
 * are two trials of each side. Grades and answers are one letter each, with or without a space between the sides.
 */
export function readEntry(item: BatteryItem, text: string): Entry<EnteredResult> {
  return readSides(
    item,
    text,
    (part) => readResult(item, part),
    (value) => questionOf(item, value),
  );
}

/** Pain 0 to 10, of one side or both as above. */
export function readPain(item: BatteryItem, text: string): Entry<number> {
  return readSides(
    item,
    text,
    (part) => (/^(10|\d)$/.test(part) ? { value: Number(part) } : { refusal: 'pain is a whole number from 0 to 10.' }),
    () => null,
  );
}

function readSides<T>(
  item: BatteryItem,
  text: string,
  read: (part: string) => Typed<T | null>,
  question: (value: T) => string | null,
): Entry<T> {
  const sides: readonly SideOrNone[] = item.hasSides ? ['left', 'right'] : ['none'];
  const parts = new Map<SideOrNone, string>();
  let next: SideOrNone | undefined = sides[0];
  let refusal: string | null = null;
  for (const part of partsOf(item, text)) {
    const said = item.hasSides && /^[lr]/i.test(part) ? (/^l/i.test(part) ? 'left' : 'right') : null;
    const side: SideOrNone | undefined = said ?? next;
    const rest = said === null ? part : part.slice(1);
    if (side === undefined || parts.has(side)) {
      refusal = item.hasSides ? 'two entries at most: left, then right.' : 'one entry: this test has no sides.';
      break;
    }
    // `r 43`: the side was said, its value comes next.
    if (rest === '') next = side;
    else {
      parts.set(side, rest);
      next = side === 'left' ? 'right' : undefined;
    }
  }
  return {
    refusal,
    sides: sides.map((side) => {
      const part = parts.get(side);
      const isNothing = part === undefined || part === '-' || part === '\u2212' || refusal !== null;
      const typed: Typed<T | null> = isNothing ? { value: null } : read(part);
      const value = 'value' in typed ? typed.value : null;
      return {
        side,
        value,
        refusal: 'refusal' in typed ? typed.refusal : null,
        question: value === null ? null : question(value),
      };
    }),
  };
}

function partsOf(item: BatteryItem, text: string): string[] {
  const parts = text
    .trim()
    .split(/[\s/;]+/)
    .filter((part) => part !== '');
  const isLetters = item.kind === 'graded' || item.kind === 'clearing';
  const [only = ''] = parts;
  return isLetters && item.hasSides && parts.length === 1 && /^[mcny-]{2}$/i.test(only) ? only.split('') : parts;
}

/** One result as written: a number in the item's display unit, a grade or a yes or no as letter or words. */
export function readResult(item: BatteryItem, text: string): Typed<EnteredResult | null> {
  const word = text.trim().toLowerCase();
  if (word === '') return { value: null };
  if (item.kind === 'graded') {
    const grade = GRADES.find((one) => [GRADE_LETTERS[one], GRADE_WORDS[one], one].some((known) => known === word));
    return grade === undefined ? { refusal: `type ${entryHint(item)}.` } : { value: { ...NO_RESULT, grade } };
  }
  if (item.kind === 'clearing') {
    if (['y', 'yes'].includes(word)) return { value: { ...NO_RESULT, isPositive: true } };
    if (['n', 'no'].includes(word)) return { value: { ...NO_RESULT, isPositive: false } };
    return { refusal: `type ${entryHint(item)}.` };
  }
  return readTrials(item, word);
}

/** One value, or several trials with `+` between them and what the item makes of them. */
function readTrials(item: BatteryItem, word: string): Typed<EnteredResult | null> {
  const trials: number[] = [];
  // A plus at the very front is a sign; one at the end waits for its trial.
  for (const part of word.replace(/\+$/, '').split(/(?<=[^+])\+/)) {
    const typed = readNumber(item, part);
    if ('refusal' in typed) return typed;
    if (typed.value !== null) trials.push(typed.value);
  }
  const [first] = trials;
  if (first === undefined) return { value: null };
  if (trials.length === 1) return { value: { ...NO_RESULT, valueSi: first } };
  if (item.trials === undefined) return { refusal: 'one value: this test takes no repeated trials.' };
  if (trials.length > item.trials.most) return { refusal: `at most ${item.trials.most} trials of one side.` };
  return { value: { ...NO_RESULT, valueSi: combineTrials(item.trials.combine, trials), trialsSi: trials } };
}

function readNumber(item: BatteryItem, text: string): Typed<number | null> {
  const typed = parseNumber(text);
  if ('refusal' in typed) return typed;
  const { unit, displayUnit, possible } = item;
  if (typed.value === null || unit === null || displayUnit === null) return { value: null };
  if (item.kind === 'counted' && !Number.isInteger(typed.value)) return { refusal: 'a whole number is needed.' };
  if (possible !== null && (typed.value < possible[0] || typed.value > possible[1])) {
    return { refusal: `must lie ${rangeWords(possible, item)}.` };
  }
  return { value: convert(typed.value, displayUnit, unit) };
}

function questionOf(
  { plausible, unit, displayUnit, ...item }: BatteryItem,
  { valueSi, trialsSi }: EnteredResult,
): string | null {
  if (valueSi === null || plausible === null || unit === null || displayUnit === null) return null;
  const shown = (trialsSi ?? [valueSi]).map((value) => inDisplayUnit(value, unit, displayUnit));
  if (shown.every((value) => value >= plausible[0] && value <= plausible[1])) return null;
  const source = item.own?.plausibleSource ?? item.source;
  return `unusual: most lie ${rangeWords(plausible, { displayUnit })} (${source.status}: ${source.cite}). Kept as typed; is it right?`;
}

function rangeWords([low, high]: readonly [number, number], { displayUnit }: Pick<BatteryItem, 'displayUnit'>): string {
  return `between ${low} and ${withUnit(String(high), displayUnit === null ? '' : UNITS[displayUnit].label)}`;
}

/** Without the tail that binary arithmetic leaves. */
function inDisplayUnit(
  value: number,
  ...units: [from: NonNullable<BatteryItem['unit']>, to: NonNullable<BatteryItem['unit']>]
): number {
  return Number(convert(value, ...units).toPrecision(10));
}

/** A result as it would be typed. Empty for none. */
export function writeResult({ unit, displayUnit }: BatteryItem, result: EnteredResult | null): string {
  if (result === null) return '';
  if (result.grade !== null) return GRADE_LETTERS[result.grade];
  if (result.isPositive !== null) return result.isPositive ? 'y' : 'n';
  if (result.valueSi === null || unit === null || displayUnit === null) return '';
  return (result.trialsSi ?? [result.valueSi])
    .map((value) => String(inDisplayUnit(value, unit, displayUnit)))
    .join('+');
}

/** Both sides as they would be typed: `41.5 43`, `- 43`. */
export function writeSides(parts: readonly string[]): string {
  const last = parts.findLastIndex((part) => part !== '');
  return parts
    .slice(0, last + 1)
    .map((part) => part || '-')
    .join(' ');
}
