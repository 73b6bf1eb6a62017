import { convert, type Unit, UNITS } from '../units.ts';

/**
 * How numbers and dates are written, on every page and every screen. No locale is asked: the same case must give the
 * same text on every machine.
 */

export const NO_BREAK_SPACE = '\u00a0';
const MINUS = '\u2212';

/** Anything with a value, a unit and perhaps a standard uncertainty; a Quantity is one. */
export interface Quantified {
  readonly value: number;
  readonly unit: Unit;
  readonly u: number | null;
  /** A number taken as exact (u = 0) that names no source was computed, and is no constant. */
  readonly working?: { readonly source: object | null };
}

export interface FormattedQuantity {
  /** `41.2`, `−8.5`. */
  readonly value: string;
  /** Standard uncertainty to the same place; null where there is none, or none is needed (u = 0, exact). */
  readonly u: string | null;
  /** Empty for a plain ratio or a score. */
  readonly unit: string;
}

/** Decimals where nothing is known of the uncertainty: what the field usually reads off such an instrument. */
const USUAL_DECIMALS: Readonly<Partial<Record<Unit, number>>> = {
  '1': 2,
  '%': 0,
  m: 2,
  cm: 1,
  mm: 0,
  '[in_i]': 1,
  '[ft_i]': 2,
  kg: 1,
  g: 0,
  '[lb_av]': 1,
  '[oz_av]': 1,
  s: 3,
  ms: 0,
  Hz: 0,
  N: 0,
  '[lbf_av]': 0,
  kgf: 1,
  'N/s': 0,
  'N.s': 1,
  'N.m': 1,
  J: 0,
  W: 0,
  'W/kg': 1,
  'm/s': 2,
  'km/h': 1,
  '[mi_i]/h': 1,
  'm/s2': 2,
  rad: 3,
  deg: 1,
  'rad/s': 2,
  'deg/s': 0,
  'rad/s2': 1,
  'deg/s2': 0,
  'kg.m2': 3,
  'kg/m3': 3,
  m2: 4,
  '/m': 4,
  '{px}': 1,
  'm/{px}': 5,
};

/**
 * A quantity as text, in `displayUnit` if given. The uncertainty keeps two significant digits and the value stops at
 * the same place (JCGM 100:2008, 7.2.6). An exact value (u = 0) keeps up to six significant digits.
 * Without u: the usual decimals of its unit. Computed and taken as exact: these too, though never under three digits.
 * @throws DomainError 'unit-mismatch' if `displayUnit` measures something else
 */
export function formatQuantity(quantity: Quantified, displayUnit: Unit = quantity.unit): FormattedQuantity {
  const value = convert(quantity.value, quantity.unit, displayUnit);
  const unit = UNITS[displayUnit].label;
  if (quantity.u === null) return { value: toDecimals(value, usualDecimals(value, displayUnit)), u: null, unit };
  if (quantity.u === 0 && quantity.working?.source === null)
    return { value: takenAsExact(value, displayUnit), u: null, unit };
  if (quantity.u === 0) return { value: signed(String(Number(value.toPrecision(6)))), u: null, unit };
  // Uncertainties scale like differences; every unit here is a plain multiple of its SI unit.
  const u = convert(quantity.u, quantity.unit, displayUnit).toExponential(1);
  const decimals = 1 - Number(u.slice(u.indexOf('e') + 1));
  return { value: toDecimals(value, decimals), u: toDecimals(Number(u), decimals), unit };
}

/** `41.2 ± 1.3 cm` on one unbreakable line. */
export function quantityText(quantity: Quantified, displayUnit: Unit = quantity.unit): string {
  const { value, u, unit } = formatQuantity(quantity, displayUnit);
  const number = u === null ? value : `${value}${NO_BREAK_SPACE}±${NO_BREAK_SPACE}${u}`;
  return withUnit(number, unit);
}

/** Number and unit with the space that belongs between them: none before a degree sign (SI Brochure 9, 5.4.3). */
export function withUnit(number: string, unit: string): string {
  if (unit === '') return number;
  return unit === '°' ? `${number}${unit}` : `${number}${NO_BREAK_SPACE}${unit}`;
}

/** A number to so many decimals with a true minus sign; negative decimals round to tens, hundreds. Never `−0`. */
export function toDecimals(value: number, decimals: number): string {
  if (decimals >= 0) return signed(value.toFixed(Math.min(decimals, 100)));
  const place = 10 ** -decimals;
  return signed((Math.round(value / place) * place).toFixed(0));
}

function usualDecimals(value: number, unit: Unit): number {
  return USUAL_DECIMALS[unit] ?? (Number.isInteger(value) ? 0 : 1);
}

function takenAsExact(value: number, unit: Unit): string {
  if (Number.isInteger(value)) return signed(String(value));
  return toDecimals(value, Math.max(usualDecimals(value, unit), 2 - Math.floor(Math.log10(Math.abs(value)))));
}

function signed(digits: string): string {
  if (!digits.startsWith('-')) return digits;
  return /[1-9]/.test(digits) ? MINUS + digits.slice(1) : digits.slice(1);
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** A day, month, year or instant in words, as precisely as given: `25 November 2026`, `March 2024`, `2024`. Instants by their UTC day. */
export function formatDate(date: string): string {
  const [year = '', month, day] = date.slice(0, 10).split('-');
  const name = month === undefined ? undefined : MONTHS[Number(month) - 1];
  if (name === undefined) return year;
  const rest = `${name}${NO_BREAK_SPACE}${year}`;
  return day === undefined ? rest : `${Number(day)}${NO_BREAK_SPACE}${rest}`;
}

/** `1 day`, `42 days`: a count with its noun. */
export function counted(count: number, noun: string, plural = `${noun}s`): string {
  return `${count}${NO_BREAK_SPACE}${count === 1 ? noun : plural}`;
}

/** The day so many days after another, both `2026-11-25`; by the Gregorian calendar, without a time zone. */
export function addDays(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}
