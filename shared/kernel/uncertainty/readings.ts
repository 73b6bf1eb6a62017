import { DomainError } from '../../errors.ts';

/**
 * Guards a function that needs several finite readings.
 * @throws DomainError 'not-enough-data' or 'input-out-of-range'
 */
export function requireReadings(needer: string, readings: readonly number[], least: number): void {
  if (readings.length < least) {
    throw new DomainError('not-enough-data', `${needer} needs at least ${least} readings, got ${readings.length}`);
  }
  const bad = readings.findIndex((reading) => !Number.isFinite(reading));
  if (bad >= 0) {
    throw new DomainError(
      'input-out-of-range',
      `${needer} needs finite readings, got ${readings[bad]}`,
      `readings.${bad}`,
    );
  }
}

/** Arithmetic mean. */
export function meanOf(readings: readonly number[]): number {
  return readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
}

/** Sample standard deviation, n − 1 (JCGM 100:2008, 4.2.2). The caller sees to it that there are two readings or more. */
export function deviationOf(readings: readonly number[]): number {
  const mean = meanOf(readings);
  return Math.sqrt(readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0) / (readings.length - 1));
}
