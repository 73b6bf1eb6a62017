/** Enough for a plot as wide as a screen. */
const MOST_POINTS = 3000;

/**
 * A force record thinned for a plot: of every stretch the samples of least and greatest summed force stay, in their
 * order, so that no peak is lost. A record short enough stays whole.
 * @param plates N, one array a column, all of one length
 */
export function thinTrace(
  plates: readonly (readonly number[])[],
  rateHz: number,
): { readonly timesS: number[]; readonly forcesN: number[][] } {
  const count = plates[0]?.length ?? 0;
  const sum = (sample: number) => plates.reduce((total, plate) => total + (plate[sample] ?? 0), 0);
  const stretch = Math.ceil((2 * count) / MOST_POINTS);
  const kept: number[] = [];
  for (let start = 0; start < count; start += stretch) {
    let [least, greatest] = [start, start];
    for (let sample = start + 1; sample < Math.min(start + stretch, count); sample++) {
      if (sum(sample) < sum(least)) least = sample;
      if (sum(sample) > sum(greatest)) greatest = sample;
    }
    kept.push(...new Set([Math.min(least, greatest), Math.max(least, greatest)]));
  }
  return {
    timesS: kept.map((sample) => sample / rateHz),
    forcesN: plates.map((plate) => kept.map((sample) => plate[sample] ?? 0)),
  };
}
