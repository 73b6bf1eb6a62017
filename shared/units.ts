import { DomainError } from './errors.ts';

/**
 * Units by their UCUM codes (the Unified Code for Units of Measure). The kernel works in the coherent SI unit of each
 * dimension (`si`); the others exist at the edges only: files, forms, pages.
 * `toSi` multiplies a value into SI. Factors for US customary units are exact by definition (NIST SP 811, appendix B).
 */
export const UNITS = {
  '1': { dimension: 'ratio', toSi: 1, label: '' },
  '%': { dimension: 'ratio', toSi: 0.01, label: '%' },
  m: { dimension: 'length', toSi: 1, label: 'm' },
  cm: { dimension: 'length', toSi: 0.01, label: 'cm' },
  mm: { dimension: 'length', toSi: 0.001, label: 'mm' },
  '[in_i]': { dimension: 'length', toSi: 0.0254, label: 'in' },
  '[ft_i]': { dimension: 'length', toSi: 0.3048, label: 'ft' },
  kg: { dimension: 'mass', toSi: 1, label: 'kg' },
  g: { dimension: 'mass', toSi: 0.001, label: 'g' },
  '[lb_av]': { dimension: 'mass', toSi: 0.45359237, label: 'lb' },
  '[oz_av]': { dimension: 'mass', toSi: 0.028349523125, label: 'oz' },
  s: { dimension: 'time', toSi: 1, label: 's' },
  ms: { dimension: 'time', toSi: 0.001, label: 'ms' },
  Hz: { dimension: 'frequency', toSi: 1, label: 'Hz' },
  N: { dimension: 'force', toSi: 1, label: 'N' },
  '[lbf_av]': { dimension: 'force', toSi: 4.4482216152605, label: 'lbf' },
  kgf: { dimension: 'force', toSi: 9.80665, label: 'kgf' },
  'N/s': { dimension: 'force rate', toSi: 1, label: 'N/s' },
  'N.s': { dimension: 'impulse', toSi: 1, label: 'N·s' },
  'N.m': { dimension: 'moment', toSi: 1, label: 'N·m' },
  J: { dimension: 'energy', toSi: 1, label: 'J' },
  W: { dimension: 'power', toSi: 1, label: 'W' },
  'W/kg': { dimension: 'specific power', toSi: 1, label: 'W/kg' },
  'm/s': { dimension: 'speed', toSi: 1, label: 'm/s' },
  'km/h': { dimension: 'speed', toSi: 1 / 3.6, label: 'km/h' },
  '[mi_i]/h': { dimension: 'speed', toSi: 0.44704, label: 'mph' },
  'm/s2': { dimension: 'acceleration', toSi: 1, label: 'm/s²' },
  rad: { dimension: 'angle', toSi: 1, label: 'rad' },
  deg: { dimension: 'angle', toSi: Math.PI / 180, label: '°' },
  'rad/s': { dimension: 'angular velocity', toSi: 1, label: 'rad/s' },
  'deg/s': { dimension: 'angular velocity', toSi: Math.PI / 180, label: '°/s' },
  'rad/s2': { dimension: 'angular acceleration', toSi: 1, label: 'rad/s²' },
  'deg/s2': { dimension: 'angular acceleration', toSi: Math.PI / 180, label: '°/s²' },
  'kg.m2': { dimension: 'moment of inertia', toSi: 1, label: 'kg·m²' },
  'kg/m3': { dimension: 'density', toSi: 1, label: 'kg/m³' },
  m2: { dimension: 'area', toSi: 1, label: 'm²' },
  '/m': { dimension: 'per length', toSi: 1, label: '/m' },
  '{px}': { dimension: 'image length', toSi: 1, label: 'px' },
  'm/{px}': { dimension: 'image scale', toSi: 1, label: 'm/px' },
  '{score}': { dimension: 'score', toSi: 1, label: '' },
  '{points}': { dimension: 'points', toSi: 1, label: 'points' },
  '{touches}': { dimension: 'touches', toSi: 1, label: 'touches' },
  '{errors}': { dimension: 'errors', toSi: 1, label: 'errors' },
  '{steps}': { dimension: 'steps', toSi: 1, label: 'steps' },
  '{repetitions}': { dimension: 'repetitions', toSi: 1, label: 'reps' },
  '{percentile}': { dimension: 'percentile', toSi: 1, label: 'percentile' },
  wk: { dimension: 'duration', toSi: 604800, label: 'weeks' },
  a: { dimension: 'duration', toSi: 31557600, label: 'years' },
} as const satisfies Record<string, { dimension: string; toSi: number; label: string }>;

export type Unit = keyof typeof UNITS;
export type Dimension = (typeof UNITS)[Unit]['dimension'];

export function isUnit(code: string): code is Unit {
  return Object.hasOwn(UNITS, code);
}

/** The SI unit of a unit's dimension, which the kernel and the store work in. */
export function siUnitOf(unit: Unit): Unit {
  const { dimension } = UNITS[unit];
  const units = Object.keys(UNITS) as Unit[];
  return units.find((one) => UNITS[one].dimension === dimension && UNITS[one].toSi === 1) ?? unit;
}

/**
 * A value in another unit of the same dimension.
 * @throws DomainError 'unit-mismatch' if the two units do not measure the same thing
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value;
  if (UNITS[from].dimension !== UNITS[to].dimension) {
    throw new DomainError(
      'unit-mismatch',
      `convert needs two units of one dimension, got ${from} (${UNITS[from].dimension}) and ${to} (${UNITS[to].dimension})`,
    );
  }
  return (value * UNITS[from].toSi) / UNITS[to].toSi;
}

/** Feet and inches from two boxes, so that 6 ft 2 in cannot become 6.2 ft. Exact: 1 ft = 0.3048 m, 1 in = 0.0254 m. */
export function feetAndInches(feet: number, inches: number): number {
  if (!Number.isFinite(feet) || !Number.isFinite(inches) || feet < 0 || inches < 0 || inches >= 12) {
    throw new DomainError(
      'input-out-of-range',
      `feetAndInches needs feet ≥ 0 and 0 ≤ inches < 12, got ${feet} ft ${inches} in`,
    );
  }
  return feet * 0.3048 + inches * 0.0254;
}
