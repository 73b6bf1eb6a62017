import type { Assessment } from '../../shared/assess/assessment.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { Placed, PlacedReport } from '../../shared/report/page.ts';
import { bodyOf } from './readPages.ts';

export interface PrintedNumber {
  /** As it stands: `46.6`. */
  readonly digits: string;
  readonly unit: string;
  /** With the words around it, to find it by. */
  readonly around: string;
}

/** How much of the unit inside one printed unit is: angles are kept in radians or degrees, lengths in metres. */
const PER_INSIDE: Readonly<Record<string, readonly number[]>> = {
  '°': [1, 180 / Math.PI],
  '°/s': [1, 180 / Math.PI],
  cm: [1, 100],
  mm: [1, 1000],
  ms: [1, 1000],
  '%': [1, 100],
};
const UNIT = '°/s|°|cm|mm|ms|m/s²|m/s|m|s|kg|N|Hz|W/kg|W|%';

/** Every number with a unit that stands in the body of a report; those of the scales of figures are not of the case. */
export function printedNumbers(report: PlacedReport): PrintedNumber[] {
  const text = report.pages.flatMap(bodyOf).map(wordsOf).join('\n');
  return [...text.matchAll(new RegExp(`(\\d+(?:\\.\\d+)?)\\s?(${UNIT})(?![\\w/])`, 'g'))].map((found) => ({
    digits: found[1] ?? '',
    unit: found[2] ?? '',
    around: text.slice(Math.max(0, found.index - 40), found.index + 20),
  }));
}

function wordsOf({ role, marks, children }: Placed): string {
  if (role === 'Figure') return '';
  return [
    ...marks.map((mark) => (mark.mark === 'text' ? mark.text : '')),
    ...children.map((one) => ` ${wordsOf(one)}`),
  ].join('');
}

/** Longer lists are films and force records: no report prints one of their samples, and among thousands any number is found. */
const LONGEST_LIST = 50;

/** Every number of a case and of what was made of it, those inside its texts too. */
export function numbersOfCase(file: CaseFile, assessment: Assessment): readonly number[] {
  const numbers: number[] = [];
  const walk = (value: unknown): void => {
    if (typeof value === 'number') numbers.push(Math.abs(value));
    else if (typeof value === 'string') numbers.push(...(value.match(/\d+(?:\.\d+)?/g) ?? []).map(Number));
    else if (Array.isArray(value)) {
      if (value.length <= LONGEST_LIST || typeof value[0] === 'object') for (const one of value) walk(one);
    } else if (value !== null && typeof value === 'object') {
      for (const [key, one] of Object.entries(value)) if (key !== 'points' && key !== 'curves') walk(one);
    }
  };
  walk(file);
  walk(assessment);
  return numbers;
}

/** Whether some number of the case reads so when it is rounded to as many digits. */
export function isOfTheCase({ digits, unit }: PrintedNumber, numbers: readonly number[]): boolean {
  const half = 0.5 * 10 ** -(digits.split('.')[1] ?? '').length;
  // A half may be rounded either way.
  const slack = half * (1 + 1e-4);
  return (PER_INSIDE[unit] ?? [1]).some((factor) =>
    numbers.some((value) => Math.abs(value * factor - Number(digits)) <= slack),
  );
}
