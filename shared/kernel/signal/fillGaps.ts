import { DomainError } from '../../errors.ts';

/** A stretch of consecutive frames without a gap. */
export interface Run {
  readonly firstFrame: number;
  readonly values: readonly number[];
}

export interface Filled {
  readonly runs: readonly Run[];
  /** Frames whose values were made up by interpolation. */
  readonly filledFrames: readonly number[];
  /** Gaps left open, as [first missing, last missing]. */
  readonly openGaps: readonly (readonly [number, number])[];
}

/**
 * Closes short gaps in a digitised coordinate, and splits the rest into runs. A gap is filled by the cubic through the
 * two points on either side (exact for free flight), or by a line where a side has only one. Nothing is made up before
 * the first or after the last point.
 *
 * @param samples [frame, value], frames whole and rising, values finite
 * @param longestGap most missing frames in a row to fill, 0 or more
 * @throws DomainError 'input-out-of-range' for unsorted or repeated frames or a value that is not finite
 * @source Lagrange interpolation
 */
export function fillGaps(samples: readonly (readonly [number, number])[], longestGap: number): Filled {
  samples.forEach(([frame, value], i) => {
    const before = samples[i - 1]?.[0] ?? -Infinity;
    if (!Number.isInteger(frame) || frame <= before) {
      throw new DomainError(
        'input-out-of-range',
        `fillGaps needs whole frame numbers in rising order, got ${frame} after ${before}`,
        `samples.${i}`,
      );
    }
    if (!Number.isFinite(value)) {
      throw new DomainError(
        'input-out-of-range',
        `fillGaps needs finite values, got ${value} in frame ${frame}`,
        `samples.${i}`,
      );
    }
  });
  const runs: { firstFrame: number; values: number[] }[] = [];
  const filledFrames: number[] = [];
  const openGaps: (readonly [number, number])[] = [];
  samples.forEach(([frame, value], i) => {
    const before = samples[i - 1]?.[0];
    const run = runs.at(-1);
    if (before === undefined || run === undefined) {
      runs.push({ firstFrame: frame, values: [value] });
      return;
    }
    if (frame - before - 1 > longestGap) {
      openGaps.push([before + 1, frame - 1]);
      runs.push({ firstFrame: frame, values: [value] });
      return;
    }
    // Two points on either side where both stand close by; else the two beside the gap.
    const around = samples.slice(Math.max(0, i - 2), i + 2);
    const [start, end] = [around[0]?.[0] ?? before, around.at(-1)?.[0] ?? frame];
    const isClose = around.length === 4 && before - start <= longestGap + 1 && end - frame <= longestGap + 1;
    const through = isClose ? around : samples.slice(i - 1, i + 1);
    for (let missing = before + 1; missing < frame; missing += 1) {
      run.values.push(lagrange(through, missing));
      filledFrames.push(missing);
    }
    run.values.push(value);
  });
  return { runs, filledFrames, openGaps };
}

function lagrange(points: readonly (readonly [number, number])[], at: number): number {
  return points.reduce((sum, [xi, yi], i) => {
    const weight = points.reduce((w, [xj], j) => (i === j ? w : (w * (at - xj)) / (xi - xj)), 1);
    return sum + yi * weight;
  }, 0);
}
