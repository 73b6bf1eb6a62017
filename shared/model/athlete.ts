import { z } from 'zod';
import { day, id, line, nonNegative, positive, text } from './parts.ts';

export const REFERENCE_SEXES = ['female', 'male', 'no-reference'] as const;

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
});
export type Athlete = z.infer<typeof athlete>;
