interface Person {
  readonly name: string;
  readonly birthDate: string | null;
}

/** A name as it is compared: letter case, accents and spaces do not count. */
export function personName(name: string): string {
  return name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replaceAll(/\s+/g, ' ').trim();
}

export interface People<T> {
  add(one: T): void;
  /** Those who may be this person, in the order they were added: one name, and no dates of birth that tell them apart. */
  same(person: Person): T[];
}

/** People by their names, which are read once each: a squad is compared with a squad. */
export function peopleOf<T>(all: Iterable<T>, person: (one: T) => Person): People<T> {
  const byName = new Map<string, T[]>();
  const add = (one: T) => {
    const name = personName(person(one).name);
    const named = byName.get(name);
    if (named === undefined) byName.set(name, [one]);
    else named.push(one);
  };
  for (const one of all) add(one);
  return {
    add,
    same: ({ name, birthDate }) =>
      (byName.get(personName(name)) ?? []).filter((one) => mayShareBirth(person(one).birthDate, birthDate)),
  };
}

function mayShareBirth(a: string | null, b: string | null): boolean {
  return a === null || b === null || a === b;
}
