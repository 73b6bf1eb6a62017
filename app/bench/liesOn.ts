import type { LandmarkTrack } from '../../shared/model/trial.ts';

/** Two points nearer than this are one mark to a person who looks, px: a convention. */
const ONE_MARK_PX = 3;
/** Markers that pass each other share a place for fewer frames than this: a convention. */
const MORE_THAN_PASSING = 5;

/** The other point of a trial that shares its place with the samples of one for longest, and for how many frames; null: none. */
export function liesOn(
  tracks: readonly LandmarkTrack[],
  point: string,
  samples: LandmarkTrack['samples'],
): { readonly point: string; readonly frames: number } | null {
  const places = new Map(samples.map(([frame, x, y]) => [frame, [x, y] as const]));
  const isShared = ([frame, x, y]: LandmarkTrack['samples'][number]) => {
    const place = places.get(frame);
    return place !== undefined && Math.hypot(x - place[0], y - place[1]) < ONE_MARK_PX;
  };
  const shared = new Map<string, number>();
  for (const other of tracks) {
    if (other.point === point) continue;
    shared.set(other.point, (shared.get(other.point) ?? 0) + other.samples.filter(isShared).length);
  }
  const [longest] = [...shared].toSorted(([, a], [, b]) => b - a);
  return longest === undefined || longest[1] < MORE_THAN_PASSING ? null : { point: longest[0], frames: longest[1] };
}
