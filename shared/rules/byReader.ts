import type { Reader } from './rule.ts';

/** The same thing made for each of the three readers. */
export function byReader<T>(of: (reader: Reader) => T): Record<Reader, T> {
  return { athlete: of('athlete'), practitioner: of('practitioner'), clinician: of('clinician') };
}
