/** A straight scale from numbers to points on the page. */
export type Scale = (value: number) => number;

export function linear([from, to]: readonly [number, number], [left, right]: readonly [number, number]): Scale {
  const span = to - from || 1;
  return (value) => left + ((value - from) / span) * (right - left);
}

/** Round numbers (1, 2 or 5 times a power of ten apart) inside a range, about `count` of them. */
export function ticks([from, to]: readonly [number, number], count: number): number[] {
  const rough = (to - from) / Math.max(1, count);
  if (!(rough > 0)) return [from];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((factor) => factor * power >= rough) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
}
