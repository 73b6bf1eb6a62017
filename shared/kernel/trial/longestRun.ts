export interface Run<T> {
  readonly firstFrame: number;
  readonly values: readonly T[];
}

/**
 * The longest unbroken stretch of what is known frame by frame.
 * @returns null if none has three frames
 * @source convention: three tell a turning point
 */
export function longestRun<T>(byFrame: ReadonlyMap<number, T> | undefined): Run<T> | null {
  let best: { firstFrame: number; values: T[] } | null = null;
  let current: { firstFrame: number; values: T[] } | null = null;
  for (const [frame, value] of [...(byFrame ?? [])].toSorted(([a], [b]) => a - b)) {
    if (current === null || frame !== current.firstFrame + current.values.length)
      current = { firstFrame: frame, values: [] };
    current.values.push(value);
    if (best === null || current.values.length > best.values.length) best = current;
  }
  return best !== null && best.values.length >= 3 ? best : null;
}
