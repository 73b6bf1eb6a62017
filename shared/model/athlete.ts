import { z } from 'zod';
import { day, id, line, nonNegative, positive, text } from './parts.ts';

const limbLength = positive.max(1.6).nullable();

export const REFERENCE_SEXES = ['female', 'male', 'no-reference'] as const;

/** For whoever does not give a date of birth. The ends are those at which reference values for adults begin and end. */
export const AGE_BANDS = ['under-12', '12-15', '16-17', '18-39', '40-64', '65-over'] as const;

export const athlete = z.strictObject({
  id,
  name: line,
  /** True where `name` stands for the person without naming them. */
  isPseudonym: z.boolean(),
  birthDate: day.nullable(),
  /** Which published reference values to use. `no-reference` is an answer; null is none given yet. */
  referenceSex: z.enum(REFERENCE_SEXES).nullable(),
  massKg: positive.max(400).nullable(),
  /** Standard uncertainty of the scale used. Null: not known. */
  massUKg: nonNegative.max(20).nullable(),
  massOn: day.nullable(),
  statureM: positive.max(2.8).nullable(),
  statureUM: nonNegative.max(0.2).nullable(),
  statureOn: day.nullable(),
  dominantSide: z.enum(['left', 'right', 'both']).nullable(),
  sport: line,
  position: line,
  level: line,
  goals: text,
  consentFor: text,
  consentOn: day.nullable(),
  consentToImages: z.boolean().nullable(),
  /** The practitioner's own yes/no summary of pre-participation red flags. Null: not asked. */
  hasRedFlags: z.boolean().nullable(),
  redFlagsClearedBy: line,
  note: text,
  /** One more way to tell the person from others: a number in someone's files. */
  identifier: line,
  /** Stands in where no date of birth is given. */
  ageBand: z.enum(AGE_BANDS).nullable(),
  /** Front of the hip bone to the inner ankle. */
  legLengthLeftM: limbLength,
  legLengthRightM: limbLength,
  /** Seventh neck vertebra to the tip of the middle finger, arm out to the side. */
  armLengthLeftM: limbLength,
  armLengthRightM: limbLength,
  limbsOn: day.nullable(),
  trainingYears: nonNegative.max(90).nullable(),
  weeklySessions: z.int().min(0).max(50).nullable(),
  weeklyHours: nonNegative.max(168).nullable(),
  consentWithdrawnOn: day.nullable(),
  /** Under age: who agreed for the athlete, and when. */
  guardianName: line,
  guardianConsentOn: day.nullable(),
  redFlagsClearedOn: day.nullable(),
  /** With dose. Empty: not recorded; none is written as a word. */
  medicines: text,
  allergies: text,
  /** Illnesses and conditions beside the injuries. */
  otherHistory: text,
  /** Interpreter, access. */
  accessNeeds: line,
});
export type Athlete = z.infer<typeof athlete>;
