interface Person {
  readonly name: string;
  readonly birthDate: string | null;
}

/** A name as it is compared: letter case, accents and spaces do not count. */
export function personName(name: string): string {
  return name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replaceAll(/\s+/g, ' ').trim();
}

/** Whether two entries may be one person: one name, and no dates of birth that tell them apart. */
export function samePerson(a: Person, b: Person): boolean {
  return personName(a.name) === personName(b.name) && mayShareBirth(a, b);
}

/** The same of two entries already known to share the name. */
export function mayShareBirth(a: Pick<Person, 'birthDate'>, b: Pick<Person, 'birthDate'>): boolean {
  return a.birthDate === null || b.birthDate === null || a.birthDate === b.birthDate;
}
