import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { derivative } from '../../shared/kernel/signal/derivative.ts';
import { residualAnalysis } from '../../shared/kernel/signal/residualAnalysis.ts';
import { zeroLagButterworth } from '../../shared/kernel/signal/zeroLagButterworth.ts';

// Pezzack, Norman & Winter 1977, J Biomech 10:377-382, as reprinted in Vint & Hinrichs 1996, J Biomech 29:1637-1642. The
// reprint may not be passed on, so it is not here: point PEZZACK_FILE at a copy (columns time, raw, noisy, acceleration).
const file = process.env['PEZZACK_FILE'] ?? '';
const isHere = existsSync(file);
const notice = isHere ? '' : ' (skipped: PEZZACK_FILE names no copy of the record)';

describe.skipIf(!isHere)(`V9: Pezzack benchmark${notice}`, () => {
  const rows = isHere
    ? readFileSync(file, 'utf8')
        .split('\n')
        .map((line) => line.trim().split(/\s+/).map(Number))
        .filter((row) => row.length === 4 && row.every(Number.isFinite))
    : [];
  const RATE = 1 / 0.0201;
  const noisy = rows.map((row) => row[2] as number);
  const truth = rows.map((row) => row[3] as number);
  /** Root mean square off the measured acceleration, ten samples dropped at each end. */
  const rms = (angle: readonly number[]) => {
    const errors = derivative([...angle], RATE, 2).flatMap((a, i) =>
      a === null || i < 10 || i >= rows.length - 10 ? [] : [(a - (truth[i] as number)) ** 2],
    );
    return Math.sqrt(errors.reduce((sum, e) => sum + e, 0) / errors.length);
  };

  test('142 rows, from −96.002 to 68.352 rad/s²', () => {
    expect(rows).toHaveLength(142);
    expect(Math.min(...truth)).toBeCloseTo(-96.002, 3);
    expect(Math.max(...truth)).toBeCloseTo(68.352, 2);
  });
  test('unfiltered, the second difference errs by 34.0 rad/s² (±5 %, computed)', () =>
    expect(Math.abs(rms(noisy) / 34 - 1)).toBeLessThan(0.05));
  test.each([
    [3, 6.88],
    [4, 5.29],
    [5, 4.8],
    [6, 5.02],
    [8, 6.84],
    [10, 9.71],
  ])('cut-off %d Hz: %d rad/s² (±5 %%, computed with odd padding)', (cutoff, expected) =>
    expect(Math.abs(rms(zeroLagButterworth(noisy, RATE, cutoff)) / expected - 1)).toBeLessThan(0.05),
  );
  test('residual analysis suggests 4.5 ± 1 Hz', () => {
    const { suggestion } = residualAnalysis(noisy, RATE);
    const cutoff = 'cutoffHz' in suggestion ? suggestion.cutoffHz : Number.NaN;
    expect(Math.abs(cutoff - 4.5)).toBeLessThanOrEqual(1);
  });
});
