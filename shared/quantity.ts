import { z } from 'zod';
import { DomainError } from './errors.ts';
import { type Unit, UNITS } from './units.ts';

/** Where a formula, threshold or table comes from, and how sure we are of it. Printed beside everything it supports. */
export interface Source {
  /** Author, year, journal, place. Or, for a convention, the words that say so. */
  readonly cite: string;
  readonly status: 'published' | 'derived' | 'convention' | 'from memory';
}

/** One step of working: the equation, the numbers put into it (each with working of its own), the variant, the source. */
export interface Working {
  readonly symbol: string;
  readonly name: string;
  /** Linear notation that the screen and the page typeset: `h = g t^2 / 8`. Null for something read off an instrument. */
  readonly formula: string | null;
  readonly inputs: readonly WorkingInput[];
  /** Which textbook variant, in words; null where there is only one. */
  readonly variant: string | null;
  readonly source: Source | null;
}

export interface WorkingInput {
  readonly symbol: string;
  readonly quantity: Quantity;
  /** What one standard uncertainty of the input moves the result by, in the unit of the result (JCGM 100, 5.1.3). */
  readonly moves?: number;
}

/**
 * A number that can be defended: value in `unit` (SI inside the kernel), standard uncertainty in the same unit
 * (JCGM 100), or null and the reason why there is none, and the working behind it.
 */
export interface Quantity<U extends Unit = Unit> {
  readonly value: number;
  readonly unit: U;
  readonly u: number | null;
  readonly uReason: string | null;
  readonly working: Working;
}

/** The third answer: no value, and why. */
export interface Unknown {
  readonly unknown: string;
}

export type Reading<U extends Unit = Unit> = Quantity<U> | Unknown;

export function isKnown<U extends Unit>(reading: Reading<U>): reading is Quantity<U> {
  return !('unknown' in reading);
}

/**
 * A quantity that was measured or entered rather than computed.
 * @param u standard uncertainty in `unit`; or a sentence that says why there is none
 * @throws DomainError 'input-out-of-range' if value or u is not finite, or u is negative
 */
export function measured<U extends Unit>(
  symbol: string,
  name: string,
  value: number,
  unit: U,
  u: number | string,
  source: Source | null = null,
): Quantity<U> {
  if (!Number.isFinite(value))
    throw new DomainError('input-out-of-range', `${name} needs a finite number, got ${value}`);
  if (typeof u === 'number' && !(Number.isFinite(u) && u >= 0)) {
    throw new DomainError('input-out-of-range', `${name} needs a standard uncertainty of 0 or more, got ${u}`);
  }
  return {
    value,
    unit,
    u: typeof u === 'number' ? u : null,
    uReason: typeof u === 'number' ? null : u,
    working: { symbol, name, formula: null, inputs: [], variant: null, source },
  };
}

/** The standard uncertainty of a quantity as `measured` takes it: a number, or why there is none. */
export function uOf({ u, uReason }: Quantity): number | string {
  return u ?? uReason ?? 'it has none';
}

/** The form in which a quantity leaves the program (CLI, contract, files). Unknown is null with a reason beside it. */
export const quantityJson = z.strictObject({
  value: z.number(),
  unit: z.string(),
  u: z.number().nullable(),
});
export type QuantityJson = z.infer<typeof quantityJson>;

export function quantityToJson(quantity: Quantity): QuantityJson {
  return { value: quantity.value, unit: quantity.unit, u: quantity.u };
}

/** The same quantity in another unit of its dimension; working stays as it was computed. */
export function inUnit<U extends Unit>(quantity: Quantity, unit: U): Quantity<U> {
  const from = UNITS[quantity.unit];
  const to = UNITS[unit];
  if (from.dimension !== to.dimension) {
    throw new DomainError(
      'unit-mismatch',
      `${quantity.working.name} is a ${from.dimension} and cannot be shown in ${unit}`,
    );
  }
  const factor = from.toSi / to.toSi;
  return {
    value: quantity.value * factor,
    unit,
    u: quantity.u === null ? null : quantity.u * factor,
    uReason: quantity.uReason,
    working: quantity.working,
  };
}
