import type { Fact, TestResult } from '../../assess/assessment.ts';
import { DomainError } from '../../errors.ts';
import { notOfReferenceAge } from '../../format/age.ts';
import { borderIn, measureById } from '../../knowledge/measures/index.ts';
import type { Measure } from '../../knowledge/measure.ts';
import type { Athlete } from '../../model/athlete.ts';
import { isKnown, type Quantity } from '../../quantity.ts';
import { convert, type Unit } from '../../units.ts';
import type { Test, Threshold } from '../rule.ts';
import { chancePast } from './chancePast.ts';
import { compare, type Limits } from './compare.ts';
import { askedWords, chanceWords, gradeWords, limitWords, numberWords } from './words.ts';

/** Whom the reference values are to fit. */
export interface Person {
  readonly referenceSex: Athlete['referenceSex'];
  /** On the day of the fact; null: not known. */
  readonly ageYears: number | null;
}

/**
 * One condition of a rule held against one fact, or against nothing: met, not met, or undetermined and why. What is not
 * met silences its rule, so it has no words.
 */
export function runTest(test: Test, fact: Fact | null, person: Person): TestResult {
  const measure = measureById(test.measure);
  if (measure === null) throw new DomainError('not-found', `There is no measure called "${test.measure}"`);
  const base = {
    measure: test.measure,
    label: fact?.label ?? measure.label,
    factKey: fact?.key ?? null,
    comparator: test.comparator,
    threshold: test.threshold,
    unit: test.unit,
  };
  const undetermined = (words: string): TestResult => ({
    ...base,
    result: 'undetermined',
    isBorderline: false,
    chance: null,
    words,
  });

  if (fact === null) return undetermined('not recorded');
  const { value } = fact;
  if (value.kind === 'unknown') return undetermined(value.reason);
  if (value.kind === 'number') {
    if (!isKnown(value.reading)) return undetermined(value.reading.unknown);
    if (test.unit === null) return undetermined(`a ${measure.kind} is needed, and this is a number`);
    const outside = measure.adultsOnly ? notOfReferenceAge(person.ageYears) : null;
    if (outside !== null) return undetermined(outside);
    const limits = limitsFor(test.threshold, person.referenceSex);
    if (typeof limits === 'string') return undetermined(`${bothBands(test, test.unit)}; ${limits}`);
    return { ...base, ...judgeNumber(value.reading, test, test.unit, limits, measure) };
  }
  if (typeof test.threshold !== 'boolean' && typeof test.threshold !== 'string') {
    return undetermined(`a number is needed, and this is a ${value.kind}`);
  }
  const found = value.kind === 'flag' ? value.flag : value.grade;
  const words = value.kind === 'flag' ? (value.flag ? 'yes' : 'no') : gradeWords(value.grade);
  return { ...base, result: found === test.threshold ? 'met' : 'not-met', isBorderline: false, chance: null, words };
}

/** The numbers a threshold comes to for this person, or the reason why none can be chosen. */
export function limitsFor(threshold: Threshold, sex: Person['referenceSex']): Limits | string {
  if (typeof threshold === 'number') return [threshold];
  if (typeof threshold !== 'object') return 'the threshold is not a number';
  if (!('female' in threshold)) return threshold;
  if (sex === 'female' || sex === 'male') return [threshold[sex]];
  return 'which reference values apply has not been chosen';
}

function bothBands(test: Test, unit: Unit): string {
  const { threshold } = test;
  if (typeof threshold !== 'object' || !('female' in threshold)) return '';
  return `female reference ${askedWords(test.comparator, [threshold.female], unit)}, male ${askedWords(test.comparator, [threshold.male], unit)}`;
}

function judgeNumber(
  reading: Quantity,
  test: Test,
  unit: Unit,
  limits: Limits,
  measure: Measure,
): Pick<TestResult, 'result' | 'isBorderline' | 'chance' | 'words'> {
  const value = convert(reading.value, reading.unit, unit);
  const ownU = reading.u === null ? null : convert(reading.u, reading.unit, unit);
  const published = borderIn(measure, unit);
  // The wider of the two: a precise reading of a movement that varies is still one reading of it.
  const own = ownU === null ? 0 : 1.96 * ownU;
  const border = Math.max(own, published ?? 0);
  const hasError = ownU !== null || published !== null;
  const { isMet, distance } = compare(value, test.comparator, limits);
  if (!isMet) return { result: 'not-met', isBorderline: false, chance: null, words: '' };
  const isBorderline = border > 0 && distance <= border;
  const chance = hasError ? chancePast(value, border / 1.96, test.comparator, limits) : null;

  const against = `${numberWords(value, unit)}, held against ${askedWords(test.comparator, limits, unit)}`;
  const errorSource =
    own >= (published ?? 0) ? 'its own uncertainty' : `the test's error, ${measure.error?.source.cite ?? ''}`;
  const margin =
    isBorderline && chance !== null
      ? `; within ${limitWords(Number(border.toPrecision(2)), unit)} of the limit (${errorSource}), chance of being past it ${chanceWords(chance)}`
      : '';
  return { result: 'met', isBorderline, chance, words: against + margin };
}
