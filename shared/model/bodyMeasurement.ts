import { z } from 'zod';
import { day, id, nonNegative, positive, sideOrNone } from './parts.ts';

export const BODY_MEASURES = ['mass', 'stature', 'leg-length', 'arm-length'] as const;
export type BodyMeasure = (typeof BODY_MEASURES)[number];

/** An earlier measurement of the body. What holds now stands in the athlete's record. */
export const bodyMeasurement = z.strictObject({
  id,
  athleteId: id,
  measure: z.enum(BODY_MEASURES),
  side: sideOrNone,
  /** kg for the mass, m for lengths. */
  valueSi: positive.max(400),
  uSi: nonNegative.max(20).nullable(),
  takenOn: day.nullable(),
});
export type BodyMeasurement = z.infer<typeof bodyMeasurement>;
