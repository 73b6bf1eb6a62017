import type { CaseFile } from '../model/records.ts';
import type { Fact } from './assessment.ts';
import { factsFromAthlete } from './factsFromAthlete.ts';
import { factsFromEntered } from './factsFromEntered.ts';
import { factsFromJumps } from './factsFromJumps.ts';
import { factsFromRetests } from './factsFromRetests.ts';
import { factsFromScreening } from './factsFromScreening.ts';
import { factsFromShoulder } from './factsFromShoulder.ts';
import { factsFromTrial } from './factsFromTrial.ts';
import { sideFacts } from './sideFacts.ts';

/** Everything a case file says, as facts: what was recorded, what is computed from it, and why something is not known. */
export function collectFacts(file: CaseFile): Fact[] {
  const entered = factsFromEntered(file);
  const standing = [...factsFromScreening(file), ...entered.filter((fact) => fact.movement === null)];
  return [
    ...factsFromAthlete(file),
    ...factsFromShoulder(file),
    ...standing,
    ...sideFacts(standing, file),
    ...factsFromRetests(standing),
    ...factsFromJumps(file),
    ...typedInPlaceOf(
      factsFromTrial(file),
      entered.filter((fact) => fact.movement !== null),
    ),
  ];
}

/** A value typed for a trial stands in place of the computed one, and the last typed in place of those before it. */
function typedInPlaceOf(computed: readonly Fact[], typed: readonly Fact[]): Fact[] {
  const slots = new Map<string, Fact>();
  for (const fact of [...computed, ...typed]) {
    slots.set(`${fact.from.id}/${fact.measure}/${fact.phase ?? 'whole'}/${fact.side}`, fact);
  }
  return [...slots.values()];
}
