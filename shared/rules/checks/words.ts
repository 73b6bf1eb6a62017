import { formatQuantity, withUnit } from '../../format/number.ts';
import { type Unit, UNITS } from '../../units.ts';
import type { Comparator } from '../rule.ts';

/** A reading as a sentence needs it, without its uncertainty: `8.2°`; pain reads `6 of 10`. */
export function numberWords(value: number, unit: Unit): string {
  return inWords(formatQuantity({ value, unit, u: null }).value, unit);
}

/** A limit as it was written: `10°`, without decimals it does not have. */
export function limitWords(value: number, unit: Unit): string {
  return inWords(exactly(value, unit), unit);
}

function exactly(value: number, unit: Unit): string {
  return formatQuantity({ value, unit, u: 0 }).value;
}

function inWords(digits: string, unit: Unit): string {
  return unit === '{score}' ? `${digits} of 10` : withUnit(digits, UNITS[unit].label);
}

const AGAINST: Record<Exclude<Comparator, 'is'>, string> = {
  '<': 'less than',
  '<=': 'at most',
  '>': 'more than',
  '>=': 'at least',
  between: 'a range of',
  outside: 'outside',
};

/** `less than 45°`, `a range of 48 to 56°`: what the test asks for. */
export function askedWords(comparator: Comparator, limits: readonly number[], unit: Unit): string {
  const [low, high] = limits;
  if (low === undefined) return '';
  if (comparator === 'is') return `exactly ${limitWords(low, unit)}`;
  return `${AGAINST[comparator]} ${high === undefined ? limitWords(low, unit) : rangeWords(low, high, unit)}`;
}

/** `48 to 56°`. */
export function rangeWords(low: number, high: number, unit: Unit): string {
  return `${exactly(low, unit)} to ${limitWords(high, unit)}`;
}

/** Grades are ids made of their own words. */
export function gradeWords(grade: string): string {
  return grade.replaceAll('-', ' ');
}

/** A chance as people say it; never 0 or 100 %, which nobody can know. */
export function chanceWords(chance: number): string {
  const percent = Math.round(chance * 100);
  if (percent < 1) return `under ${withUnit('1', '%')}`;
  if (percent > 99) return `over ${withUnit('99', '%')}`;
  return withUnit(String(percent), '%');
}
