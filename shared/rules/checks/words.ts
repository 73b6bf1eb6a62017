import { type Unit, UNITS } from '../../units.ts';
import type { Comparator } from '../rule.ts';

/** Decimals a reading of each unit is worth on a page; two where nothing is said. */
const DECIMALS: Partial<Record<Unit, number>> = {
  deg: 1,
  cm: 1,
  ms: 0,
  '%': 1,
  N: 0,
  W: 0,
  kg: 1,
  wk: 0,
  a: 0,
  '{score}': 0,
  '{points}': 0,
  '{touches}': 0,
  '{errors}': 0,
  '{percentile}': 0,
};

/** `8.2 °`; pain reads `6 of 10`. A minus sign is a minus sign. */
export function numberWords(value: number, unit: Unit): string {
  const digits = value.toFixed(DECIMALS[unit] ?? 2);
  return withUnit(Number(digits) === 0 ? digits.replace('-', '') : digits, unit);
}

/** A limit as it was written: `10 °`, without decimals it does not have. */
export function limitWords(value: number, unit: Unit): string {
  return withUnit(String(Number(value.toPrecision(6))), unit);
}

function withUnit(digits: string, unit: Unit): string {
  const text = digits.replace('-', '−');
  if (unit === '{score}') return `${text} of 10`;
  const label = UNITS[unit].label;
  return label === '' ? text : `${text} ${label}`;
}

const AGAINST: Record<Exclude<Comparator, 'is'>, string> = {
  '<': 'less than',
  '<=': 'at most',
  '>': 'more than',
  '>=': 'at least',
  between: 'from',
  outside: 'outside',
};

/** `less than 45 °`, `from 48 to 56 °`: what the test asks for. */
export function askedWords(comparator: Comparator, limits: readonly number[], unit: Unit): string {
  const [low, high] = limits;
  if (low === undefined) return '';
  if (comparator === 'is') return `exactly ${limitWords(low, unit)}`;
  if (high === undefined) return `${AGAINST[comparator]} ${limitWords(low, unit)}`;
  return `${AGAINST[comparator]} ${String(low).replace('-', '−')} to ${limitWords(high, unit)}`;
}

const GRADE_WORDS: Record<string, string> = {
  met: 'met',
  'met-with-compensation': 'met with compensation',
  'not-met': 'not met',
};

export function gradeWords(grade: string): string {
  return GRADE_WORDS[grade] ?? grade;
}

/** A chance as people say it; never 0 or 100 %, which nobody can know. */
export function chanceWords(chance: number): string {
  const percent = Math.round(chance * 100);
  if (percent < 1) return 'under 1 %';
  if (percent > 99) return 'over 99 %';
  return `${percent} %`;
}
