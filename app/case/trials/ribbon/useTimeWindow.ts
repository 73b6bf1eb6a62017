import { useState } from 'react';
import { following, panned, type TimeWindow, zoomed } from './timeWindow.ts';

/** Which part of the time axis is shown. It follows the playhead, and what has not been zoomed shows everything. */
export function useTimeWindow(all: TimeWindow, rateHz: number | null, playheadS: number | null) {
  const [chosen, setChosen] = useState<TimeWindow | null>(null);
  const [followed, setFollowed] = useState(playheadS);
  let shown = chosen === null ? all : panned(chosen, all, 0);
  if (playheadS !== followed) {
    // Seen while drawing, so that no picture shows the playhead outside.
    setFollowed(playheadS);
    if (chosen !== null && playheadS !== null) {
      shown = following(shown, all, playheadS);
      setChosen(shown);
    }
  }
  const isWhole = shown.fromS <= all.fromS && shown.toS >= all.toS;
  return {
    shown,
    isWhole,
    zoom: (factor: number, aroundS = playheadS ?? (shown.fromS + shown.toS) / 2) =>
      setChosen(zoomed(shown, all, factor, aroundS, rateHz)),
    pan: (share: number) => setChosen(panned(shown, all, share)),
    fit: () => setChosen(null),
    show: (next: TimeWindow) => setChosen(panned(next, all, 0)),
  };
}
