import { z } from 'zod';
import { athlete } from '../model/athlete.ts';
import { line } from '../model/parts.ts';

/** What a column of a roster may hold. */
export const ROSTER_FIELDS = [
  'name',
  'first-name',
  'last-name',
  'pseudonym',
  'birth-date',
  'reference-sex',
  'mass',
  'stature',
  'dominant-side',
  'sport',
  'position',
  'level',
] as const;
export type RosterField = (typeof ROSTER_FIELDS)[number];

export const ROSTER_FIELD_WORDS = {
  name: 'name',
  'first-name': 'first name',
  'last-name': 'last name',
  pseudonym: 'pseudonym',
  'birth-date': 'date of birth',
  'reference-sex': 'sex for reference values',
  mass: 'body mass',
  stature: 'stature',
  'dominant-side': 'dominant side',
  sport: 'sport',
  position: 'position',
  level: 'level',
} as const satisfies Record<RosterField, string>;

/** How a column of numbers or dates is to be read where its head does not say so. */
export const ROSTER_READINGS = {
  mass: ['kg', '[lb_av]', 'g'],
  stature: ['cm', 'm', 'mm', '[in_i]', '[ft_i]'],
  'birth-date': ['year-first', 'day-first', 'month-first'],
} as const;
const readings = Object.values(ROSTER_READINGS).flat();
export type RosterReading = (typeof readings)[number];
const reading = z.enum(readings);

/** One decision about one column, by its head. `ignore` leaves the column out. */
export const rosterColumn = z.strictObject({
  column: line,
  field: z.enum([...ROSTER_FIELDS, 'ignore']),
  reading: reading.nullable(),
});
export type RosterColumn = z.infer<typeof rosterColumn>;

/** A roster is read in one piece and taken in by one transaction. */
export const MOST_ATHLETES = 10_000;

export const rosterAthlete = athlete.pick({
  name: true,
  isPseudonym: true,
  birthDate: true,
  referenceSex: true,
  massKg: true,
  statureM: true,
  dominantSide: true,
  sport: true,
  position: true,
  level: true,
});
export type RosterAthlete = z.infer<typeof rosterAthlete>;

export const rosterRow = z.strictObject({
  /** Line of the file, from 1. */
  line: z.int(),
  athlete: rosterAthlete,
  /** Unusual values, in words: stored as written. */
  questions: z.array(z.string()),
  /** Line of the first row that says the same of the same person; null for the first. */
  repeats: z.int().nullable(),
});
export type RosterRow = z.infer<typeof rosterRow>;

/** Something that keeps the roster from being taken in, at its place in the file. */
export const rosterProblem = z.strictObject({ path: z.string(), words: z.string() });
export type RosterProblem = z.infer<typeof rosterProblem>;

export const roster = z.strictObject({
  /** Every column of the file in order: what it is taken for, null if it is not taken in. */
  columns: z.array(
    z.strictObject({ column: line, field: z.enum(ROSTER_FIELDS).nullable(), reading: reading.nullable() }),
  ),
  rows: z.array(rosterRow),
  /** Empty: the roster can be taken in. */
  problems: z.array(rosterProblem),
});
export type Roster = z.infer<typeof roster>;
