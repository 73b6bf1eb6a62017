import { z } from 'zod';

/** Small schemas that several records share. Limits keep a mistyped or hostile value out of the store. */

export const id = z.uuid();

/** Half of a surrogate pair is no character: files and databases keep U+FFFD in its place, so every record does. */
const typed = z.string().overwrite((value) => value.toWellFormed());

/** Free text as typed. Empty means nothing was entered. */
export const text = typed.max(10_000);
export const line = typed.max(300);

/** A calendar day, `2026-11-25`. */
export const day = z.iso.date();

/** A day, a month or a year, as precisely as it is remembered: `2024`, `2024-03`, `2024-03-09`. */
export const roughDate = z.union([
  z.string().regex(/^\d{4}(-(0[1-9]|1[0-2]))?$/, 'a year, a month like 2024-03 or a day like 2024-03-09'),
  z.iso.date(),
]);

/** An instant in UTC with milliseconds. */
export const instant = z.iso.datetime({ precision: 3 });

export const side = z.enum(['left', 'right']);
export type Side = z.infer<typeof side>;

/** Side of a result: tests of the whole body have none. */
export const sideOrNone = z.enum(['left', 'right', 'none']);
export type SideOrNone = z.infer<typeof sideOrNone>;

/** 0 none to 10 worst imaginable. Pain is its own field everywhere, never a grade. */
export const pain = z.int().min(0).max(10);

export const finite = z.number();
export const positive = z.number().positive();
export const nonNegative = z.number().min(0);

export const sha256 = z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 in lower-case hexadecimal');
