/**
 * Round numbers that divide [from, to] into about `count` steps of 1, 2 or 5 times a power of ten.
 * Empty where the range is empty or not finite.
 */
export function ticks(from: number, to: number, count: number): readonly number[] {
  const span = to - from;
  if (!(span > 0) || !Number.isFinite(span) || count < 1) return [];
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((factor) => factor * power >= rough) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  // Multiplying by a whole count and rounding keeps 0.1 + 0.2 from showing as 0.30000000000000004.
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}
