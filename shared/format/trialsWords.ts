import { convert, type Unit } from '../units.ts';

/** Every trial as it was taken, in the unit shown: `trials 41, 42.5, 40`. */
export function trialsWords(trialsSi: readonly number[], unit: Unit, shown: Unit): string {
  return `trials ${trialsSi.map((value) => Number(convert(value, unit, shown).toPrecision(10))).join(', ')}`;
}
