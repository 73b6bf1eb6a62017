import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { randomSource } from '../../main/demo/randomSource.ts';
import { butterworthCoefficients } from '../../shared/kernel/signal/butterworthCoefficients.ts';
import { zeroLagButterworth } from '../../shared/kernel/signal/zeroLagButterworth.ts';

// A general filter library from the registry; it has no types, and gives −b1 and −b2 as a.
interface Fili {
  CalcCascades: new () => { lowpass(of: object): [{ a: [number, number]; b: [number, number, number] }] };
  IirFilter: new (cascades: unknown) => { multiStep(samples: readonly number[]): number[] };
}
const fili = createRequire(import.meta.url)('fili') as Fili;
const lowpass = (rateHz: number, cutoffHz: number) =>
  new fili.CalcCascades().lowpass({
    order: 1,
    characteristic: 'butterworth',
    Fs: rateHz,
    Fc: cutoffHz,
    preGain: false,
  });

const RATES = [
  [60, 6],
  [120, 10],
  [240, 12],
  [1000, 50],
] as const;

describe('fili 2.0.3, a general filter library', () => {
  test.each(RATES)('the same coefficients for one pass, %d Hz cut at %d Hz', (rateHz, cutoffHz) => {
    const ours = butterworthCoefficients(cutoffHz, rateHz, 1);
    const [{ a, b }] = lowpass(rateHz, cutoffHz);
    [ours.a0, ours.a1, ours.a2].forEach((value, i) => expect(value).toBeCloseTo(b[i] as number, 12));
    [ours.b1, ours.b2].forEach((value, i) => expect(value).toBeCloseTo(-(a[i] as number), 12));
  });

  test.each(RATES)(
    'its filter run forwards and backwards smooths a noisy record alike, %d Hz cut at %d Hz',
    (rateHz, cutoffHz) => {
      // Winter's correction for two passes, put into the library's cut-off: tan(π f'/fs) = tan(π f/fs) / (√2 − 1)^¼.
      const widened = Math.tan((Math.PI * cutoffHz) / rateHz) / (Math.SQRT2 - 1) ** 0.25;
      const once = (samples: readonly number[]) =>
        new fili.IirFilter(lowpass(rateHz, (Math.atan(widened) * rateHz) / Math.PI)).multiStep(samples);
      const noise = randomSource(7);
      const record = Array.from({ length: 2000 }, (_, i) => Math.sin(i / 40) + noise.normal(0.1));
      const theirs = once(once(record).toReversed()).toReversed();
      const ours = zeroLagButterworth(record, rateHz, cutoffHz);
      // Ends are treated otherwise; three hundred samples in, nothing of that is left.
      for (let i = 300; i < 1700; i += 1) expect(ours[i]).toBeCloseTo(theirs[i] as number, 9);
    },
  );
});
