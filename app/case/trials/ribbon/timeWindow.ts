/** The part of the time axis that is shown. */
export interface TimeWindow {
  readonly fromS: number;
  readonly toS: number;
}

/** Nothing is shown closer than this many frames wide. */
const LEAST_FRAMES = 5;
const LEAST_S = 0.01;

/** Makes the window `factor` times as wide around an instant, which keeps its place. Never wider than all, never nothing. */
export function zoomed(
  shown: TimeWindow,
  all: TimeWindow,
  factor: number,
  aroundS: number,
  rateHz: number | null,
): TimeWindow {
  const span = shown.toS - shown.fromS;
  const least = rateHz === null ? LEAST_S : LEAST_FRAMES / rateHz;
  const next = Math.min(all.toS - all.fromS, Math.max(least, span * factor));
  const centre = Math.min(shown.toS, Math.max(shown.fromS, aroundS));
  const share = span > 0 ? (centre - shown.fromS) / span : 0.5;
  return within({ fromS: centre - share * next, toS: centre + (1 - share) * next }, all);
}

/** Moves the window by a share of its width. */
export function panned(shown: TimeWindow, all: TimeWindow, share: number): TimeWindow {
  const by = share * (shown.toS - shown.fromS);
  return within({ fromS: shown.fromS + by, toS: shown.toS + by }, all);
}

/** The window moved so that an instant is in it, no further than needed; itself if it is already. */
export function following(shown: TimeWindow, all: TimeWindow, timeS: number): TimeWindow {
  if (timeS >= shown.fromS && timeS <= shown.toS) return shown;
  const by = timeS < shown.fromS ? timeS - shown.fromS : timeS - shown.toS;
  return within({ fromS: shown.fromS + by, toS: shown.toS + by }, all);
}

/** Pushed back inside, keeping its width as far as there is room. */
function within({ fromS, toS }: TimeWindow, all: TimeWindow): TimeWindow {
  const span = Math.min(toS - fromS, all.toS - all.fromS);
  const from = Math.min(Math.max(fromS, all.fromS), all.toS - span);
  return { fromS: from, toS: from + span };
}
