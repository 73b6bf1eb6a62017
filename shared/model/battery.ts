import { z } from 'zod';
import { condition, region } from './injury.ts';
import { finite, id, line, nonNegative, text } from './parts.ts';

export const ITEM_KINDS = ['graded', 'measured', 'counted', 'clearing'] as const;
export type ItemKind = (typeof ITEM_KINDS)[number];

/** Units that an item of one's own may be taken in, as it is written down. */
export const ITEM_UNITS = [
  'cm',
  'm',
  'mm',
  'deg',
  's',
  'kg',
  'kgf',
  'N',
  '%',
  '1',
  '{repetitions}',
  '{touches}',
  '{steps}',
  '{errors}',
  '{points}',
  '{score}',
] as const;

/** How several trials of one side become its result. Best is the highest or the lowest. */
export const COMBINES = ['highest', 'lowest', 'mean'] as const;
export const MOST_TRIALS = 10;

/** Limbs whose length the athlete's record holds. */
export const DIVIDED_BY = ['leg-length', 'arm-length'] as const;

const source = z.strictObject({ cite: line, status: z.enum(['published', 'derived', 'convention', 'from memory']) });
/** Ends in the unit of the item; null while one is being typed. */
const range = z.tuple([finite.nullable(), finite.nullable()]);

/** A short name that results refer to: small letters, digits and hyphens. */
const itemId = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'small letters, digits and hyphens, as in knee-to-wall');

export const ownItem = z.strictObject({
  id: itemId,
  /** The item of the program it was copied from; null: of one's own from the start. */
  from: z.strictObject({ batteryId: line.min(1), version: line.min(1), itemId: line.min(1) }).nullable(),
  /** What it measures. */
  label: line,
  kind: z.enum(ITEM_KINDS),
  region,
  hasSides: z.boolean(),
  /** Of measured and counted items. */
  unit: z.enum(ITEM_UNITS).nullable(),
  /** Null: one value a side. */
  trials: z.strictObject({ most: z.int().min(2).max(MOST_TRIALS), combine: z.enum(COMBINES) }).nullable(),
  instructions: z.array(line).max(20),
  /** The written standard of a graded item, by grade. */
  standard: z.strictObject({ met: line, metWithCompensation: line, notMet: line }).nullable(),
  /** Beside what the program says of the item it was copied from, never in its place. */
  caution: text,
  /** Likewise: injuries for which it is left out beside those of the item it was copied from. */
  skipFor: z.array(condition).max(40),
  /** Outside: refused. */
  possible: range.nullable(),
  /** Outside, yet possible: asked about. */
  plausible: range.nullable(),
  /** Smallest change beyond error, and half-width around one value, both 95 %, in the unit of the item. */
  error: z.strictObject({ mdc: nonNegative.nullable(), border: nonNegative.nullable(), source }).nullable(),
  /** A usual range of a named group. Never a pass mark. */
  reference: z
    .strictObject({
      low: finite.nullable(),
      high: finite.nullable(),
      group: line,
      sex: z.enum(['female', 'male']).nullable(),
      source,
    })
    .nullable(),
  source,
  /** Also shown as a share of the length of that limb of the athlete, on the same side. Null: not. */
  dividedBy: z.enum(DIVIDED_BY).nullable().default(null),
});
export type OwnItem = z.infer<typeof ownItem>;

/** A battery as data. It may be unfinished; what keeps it from being used is said by `batteryProblems`. */
export const batteryBody = z.strictObject({
  id,
  /** Counts up from 1; a saved version is never changed. */
  version: z.string().regex(/^[1-9]\d{0,5}$/, 'a whole number from 1'),
  label: line,
  description: line,
  items: z.array(ownItem).max(60),
});
export type BatteryBody = z.infer<typeof batteryBody>;

/** A battery of one's own as the store keeps it: what is being written, and every version saved so far, oldest first. */
export const ownBattery = z.strictObject({
  id,
  /** Null: nothing was changed since the last version. */
  draft: batteryBody.nullable(),
  versions: z.array(batteryBody),
  /** Offered no more; results taken with it stay as they are. */
  isRetired: z.boolean(),
});
export type OwnBattery = z.infer<typeof ownBattery>;
