import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading } from '../../quantity.ts';

/** What every answer of one check has in common. */
export type Base = Pick<CaseCheck, 'id' | 'about' | 'source'>;
type Shown = CaseCheck['numbers'][number];

/** Nothing is wrong, with what was looked at. */
export function fine(base: Base, sentence: string): CaseCheck {
  return { ...base, verdict: 'fine', sentence, numbers: [] };
}

/** @param sentence says what is missing */
export function cannotTell(base: Base, sentence: string): CaseCheck {
  return { ...base, verdict: 'cannot tell', sentence, numbers: [] };
}

/** @param numbers those that disagree: as stated first, then what it is held against */
export function questioned(base: Base, sentence: string, ...numbers: readonly Shown[]): CaseCheck {
  return { ...base, verdict: 'questioned', sentence, numbers };
}

/** Whether two numbers agree to a share of the second. */
export function isNear(value: number, target: number, share: number): boolean {
  return Math.abs(value - target) <= share * Math.abs(target);
}

/** An angle as it is read: rad in, degrees out. */
export function inDegrees(rad: number): string {
  return withMinus((rad * 180) / Math.PI, 1);
}

/** A share as it is read: ratio in, per cent out. */
export function inPercent(share: number, digits = 1): string {
  return withMinus(share * 100, digits);
}

/** With a minus, not the hyphen of a program. */
function withMinus(value: number, digits: number): string {
  return value.toFixed(digits).replace('-', '−');
}

/** Why the first of some readings is unknown; null where all are known. */
export function whyUnknown(...readings: readonly Reading[]): string | null {
  for (const reading of readings) if (!isKnown(reading)) return reading.unknown;
  return null;
}
