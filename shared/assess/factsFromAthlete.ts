import { ageOn } from '../format/age.ts';
import { weight } from '../kernel/force/weight.ts';
import { conditionEntry } from '../knowledge/conditions/index.ts';
import { CONDITIONS } from '../model/injury.ts';
import type { CaseFile } from '../model/records.ts';
import { measured, type Quantity } from '../quantity.ts';
import { liftedBy } from '../rules/effects/liftedBy.ts';
import { asOf } from './asOf.ts';
import type { Fact } from './assessment.ts';
import { computed, makeFact, number, unknown } from './makeFact.ts';
import { throwsOrHits } from './throwsOrHits.ts';

/** Who the athlete is and what is on file: mass, stature, age, weight, red flags, conditions not cleared. */
export function factsFromAthlete(file: CaseFile): Fact[] {
  const { athlete } = file;
  const from = { kind: 'athlete', id: athlete.id } as const;
  const day = asOf(file);
  const mass = massOf(file);
  const facts: Fact[] = [];

  if (mass !== null) {
    const taken = { from, provenance: 'as entered', takenOn: athlete.massOn };
    facts.push(makeFact({ ...taken, measure: 'body.mass', value: number(mass) }));
    facts.push(
      makeFact({ ...taken, measure: 'body.weight', value: computed(() => weight(mass)), provenance: 'from body mass' }),
    );
  }
  const stature = statureOf(file);
  if (stature !== null) {
    const value = number(stature);
    facts.push(
      makeFact({ measure: 'body.stature', value, from, provenance: 'as entered', takenOn: athlete.statureOn }),
    );
  }
  if (athlete.birthDate !== null) {
    const years = ageOn(athlete.birthDate, day);
    const value = computed(() => measured('age', 'age', years, 'a', 'counted in whole years'));
    facts.push(makeFact({ measure: 'body.age', value, from, provenance: 'from date of birth', takenOn: day }));
  }
  const throws = throwsOrHits(file);
  facts.push(
    makeFact({ measure: 'athlete.throws', value: throws, from, provenance: 'from sport and trials', takenOn: null }),
  );
  facts.push(makeFact({ measure: 'flag.preparticipation', ...redFlag(file), from, takenOn: null }));
  return [...facts, ...onFile(file, day)];
}

/** Body mass with the uncertainty of the scale; null where none is entered. */
export function massOf({ athlete }: CaseFile): Quantity<'kg'> | null {
  if (athlete.massKg === null) return null;
  return measured(
    'm',
    'body mass',
    athlete.massKg,
    'kg',
    athlete.massUKg ?? 'the uncertainty of the scale is not recorded',
  );
}

export function statureOf({ athlete }: CaseFile): Quantity<'m'> | null {
  if (athlete.statureM === null) return null;
  return measured(
    'H',
    'stature',
    athlete.statureM,
    'm',
    athlete.statureUM ?? 'the uncertainty of the measure is not recorded',
  );
}

function redFlag({ athlete }: CaseFile): Pick<Fact, 'value' | 'provenance'> {
  const clearedBy = athlete.redFlagsClearedBy.trim();
  if (athlete.hasRedFlags === null) return { value: unknown('not asked yet'), provenance: 'not asked' };
  if (athlete.hasRedFlags && clearedBy !== '') {
    return { value: { kind: 'flag', flag: false }, provenance: `answered yes, cleared by ${clearedBy}` };
  }
  return { value: { kind: 'flag', flag: athlete.hasRedFlags }, provenance: 'as answered' };
}

function onFile(file: CaseFile, day: string): Fact[] {
  const inForce = file.injuries.filter((injury) => liftedBy(injury, day) === null);
  const facts = CONDITIONS.filter((condition) => condition !== 'other').map((condition) => {
    const injury = inForce.find((one) => one.condition === condition);
    return makeFact({
      measure: `history.${condition}`,
      label: `On file and not cleared: ${conditionEntry(condition).label}`,
      value: { kind: 'flag', flag: injury !== undefined },
      from: injury === undefined ? { kind: 'athlete', id: file.athlete.id } : { kind: 'injury', id: injury.id },
      provenance: 'from the injuries on file',
      takenOn: day,
    });
  });
  const birth = inForce.find((injury) => injury.condition === 'postpartum');
  if (birth === undefined) return facts;
  const isDay = birth.onset !== null && birth.onset.length === 10;
  const value = isDay
    ? computed(() =>
        measured('t', 'time since birth', daysBetween(birth.onset ?? day, day) / 7, 'wk', 'counted in whole days'),
      )
    : unknown('the day of birth is not recorded');
  return [
    ...facts,
    makeFact({
      measure: 'history.weeksSincePostpartum',
      value,
      from: { kind: 'injury', id: birth.id },
      provenance: 'from the date on file',
      takenOn: day,
    }),
  ];
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}
