import { expect, test } from 'vitest';
import { resample } from '../../../../shared/kernel/signal/resample.ts';
import { residualAnalysis } from '../../../../shared/kernel/signal/residualAnalysis.ts';
import { zeroLagButterworth } from '../../../../shared/kernel/signal/zeroLagButterworth.ts';
import { describeOpenData } from '../../../support/openData.ts';

/** Repeatable noise of standard deviation 1: twelve evenly spread numbers, summed (central limit). */
function noise(n: number): number[] {
  let seed = 12345;
  const even = () => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed / 2147483648;
  };
  return Array.from({ length: n }, () => Array.from({ length: 12 }, even).reduce((sum, u) => sum + u, -6));
}

test('Winter (from memory): the line of a noisy slow signal meets 0 Hz near the noise, and the cut-off keeps the signal', () => {
  const rate = 100;
  const [hz, sd] = [1.5, 0.01];
  const clean = Array.from({ length: 400 }, (_, i) => Math.sin((2 * Math.PI * hz * i) / rate));
  const raw = noise(400).map((e, i) => (clean[i] as number) + sd * e);
  const found = residualAnalysis(raw, rate);
  // The residual of white noise is not quite a line; its height at 0 Hz lies within a quarter of the noise.
  expect(found.line.noise / sd).toBeGreaterThan(0.75);
  expect(found.line.noise / sd).toBeLessThan(1.25);
  const cutoff = 'cutoffHz' in found.suggestion ? found.suggestion.cutoffHz : Number.NaN;
  expect(cutoff).toBeGreaterThan(hz);
  expect(cutoff).toBeLessThan(12);
  const rms = (xs: readonly number[]) =>
    Math.sqrt(xs.reduce((sum, x, i) => sum + (x - (clean[i] as number)) ** 2, 0) / xs.length);
  expect(rms(zeroLagButterworth(raw, rate, cutoff))).toBeLessThan(0.6 * rms(raw));
});

test('law: the residual only falls as the passband grows', () => {
  const { residuals } = residualAnalysis(noise(200), 60);
  residuals.slice(1).forEach(({ rms }, i) => expect(rms).toBeLessThanOrEqual((residuals[i]?.rms ?? 0) + 1e-9));
});

describeOpenData('gait-winter', 'residuals of the heel of Winter 2009, table A.1, by SciPy', (data) => {
  test('RMS of raw minus filtered at fifteen cut-offs', () => {
    const expected = data.json('expected.json') as {
      fs_hz: number;
      residual_analysis_right_heel_y_mm: { fc_hz: number[]; rms_residual_mm_corrected: number[] };
    };
    const [head = '', ...rows] = data.text('winter_raw_coordinates.csv').trim().split('\n');
    const column = head.split(',').indexOf('right_heel_y_cm');
    const heel = rows.map((row) => 10 * Number(row.split(',')[column]));
    const { fc_hz, rms_residual_mm_corrected: want } = expected.residual_analysis_right_heel_y_mm;
    fc_hz.forEach((cutoff, i) => {
      // The reference divides the cut-off before the tangent, which matters above a tenth of the rate.
      const c = (Math.SQRT2 - 1) ** 0.25;
      const same = (Math.atan(Math.tan((Math.PI * cutoff) / (0.802 * expected.fs_hz)) * c) * expected.fs_hz) / Math.PI;
      const smooth = zeroLagButterworth(heel, expected.fs_hz, same);
      const rms = Math.sqrt(heel.reduce((sum, x, j) => sum + (x - (smooth[j] as number)) ** 2, 0) / heel.length);
      // 1 % as stated; below 5 Hz the nine padding samples of the reference bend its ends.
      if (cutoff >= 5) expect(rms / (want[i] as number)).toBeCloseTo(1, 1.69);
    });
  });
});

const f = (t: number) => 1 + 2 * t - 3 * t * t + 0.5 * t ** 3;

test('law: resampling a cubic in time is exact, whatever the spacing, and says that it was uneven', () => {
  const times = [0, 0.03, 0.07, 0.1, 0.135, 0.165, 0.2, 0.24];
  const even = resample(times, times.map(f), 60);
  even.values.forEach((value, i) => expect(value).toBeCloseTo(f(i / 60), 12));
  expect(even.warnings).toHaveLength(1);
  expect(even.values).toHaveLength(15);
});

test('law: evenly timed samples come back as they were', () => {
  const values = noise(30);
  const even = resample(
    values.map((_, i) => i / 50),
    values,
    50,
  );
  expect(even.values).toEqual(values.map((value) => expect.closeTo(value, 9) as number));
  expect(even.warnings).toEqual([]);
});

test('refuses times that go back and too few samples', () => {
  expect(() => resample([0, 0.1, 0.05, 0.2], [1, 2, 3, 4], 60)).toThrow(/times that rise, got 0.05/);
  expect(() => resample([0, 1], [1, 2], 60)).toThrow(expect.objectContaining({ code: 'not-enough-data' }));
  expect(() => residualAnalysis([1, 2, 3], 60)).toThrow(expect.objectContaining({ code: 'not-enough-data' }));
});
