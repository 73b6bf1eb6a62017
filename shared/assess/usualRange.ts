import { ageOn, leastAge, notOfReferenceAge } from '../format/age.ts';
import type { BatteryItem } from '../knowledge/screening/battery.ts';
import type { Athlete } from '../model/athlete.ts';

type Who = Pick<Athlete, 'birthDate' | 'ageBand' | 'referenceSex'>;

/**
 * The usual range of a test for those it was taken from: one of men is none for women, nor for whom no values are chosen,
 * and one of adults is none for the young and the old.
 */
export function usualRange({ reference }: BatteryItem, who: Who, on: string): BatteryItem['reference'] {
  const age = who.birthDate === null ? leastAge(who.ageBand) : ageOn(who.birthDate, on);
  const isOfOthers = reference !== null && reference.sex !== null && reference.sex !== who.referenceSex;
  return isOfOthers || notOfReferenceAge(age) !== null ? null : reference;
}
