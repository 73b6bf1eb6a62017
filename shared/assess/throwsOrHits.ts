import { NOT_THROWING, THROWING_MOVEMENTS, THROWING_SPORTS } from '../knowledge/throwing.ts';
import type { CaseFile } from '../model/records.ts';
import type { FactValue } from './assessment.ts';
import { unknown } from './makeFact.ts';

/**
 * Whether the athlete throws or hits overhead: yes by the sport or by a filmed movement; else not known, for a list of
 * sports is never whole.
 */
export function throwsOrHits({ athlete, movementTrials }: CaseFile): FactValue {
  const sport = NOT_THROWING.reduce((words, other) => words.replaceAll(other, ' '), athlete.sport.toLowerCase());
  const isThrower =
    THROWING_SPORTS.some((word) => sport.includes(word)) ||
    movementTrials.some(({ movementId }) => THROWING_MOVEMENTS.includes(movementId));
  if (isThrower) return { kind: 'flag', flag: true };
  return unknown(
    athlete.sport.trim() === ''
      ? 'no sport is entered'
      : `“${athlete.sport.trim()}” is not among the sports known for it, and no throw or hit is filmed`,
  );
}
