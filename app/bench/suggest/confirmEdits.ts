import type { Edit } from '../../../shared/model/edit.ts';
import type { LandmarkTrack } from '../../../shared/model/trial.ts';
import { putSamples } from '../pointEdits.ts';
import type { SuggestedFrame, Suggestion } from './suggestion.ts';

/** The suggestions of a frame for points that are not in it. */
export function openSuggestions(
  suggested: SuggestedFrame | undefined,
  tracks: readonly LandmarkTrack[],
): readonly Suggestion[] {
  if (suggested === undefined) return [];
  const held = new Set(
    tracks.filter(({ samples }) => samples.some(([at]) => at === suggested.frame)).map(({ point }) => point),
  );
  return suggested.points.filter(({ point }) => !held.has(point));
}

/**
 * Edits that confirm suggestions. A point that is in a frame already stays as it is.
 * @param of only this point; null: all
 */
export function confirmEdits(
  trialId: string,
  tracks: readonly LandmarkTrack[],
  frames: readonly SuggestedFrame[],
  of: string | null,
  newId: () => string,
): Edit[] {
  const open = frames.flatMap((suggested) =>
    openSuggestions(suggested, tracks).map(({ point, x, y }) => ({
      point,
      uPx: suggested.uPx,
      sample: [suggested.frame, x, y] as LandmarkTrack['samples'][number],
    })),
  );
  const wanted = of === null ? open : open.filter(({ point }) => point === of);
  return [...Map.groupBy(wanted, ({ point }) => point)].flatMap(([point, ofPoint]) =>
    putSamples(
      { trialId, point, tracks, newId },
      'suggested-and-confirmed',
      ofPoint.map(({ sample }) => sample),
      Math.max(...ofPoint.map(({ uPx }) => uPx)),
    ),
  );
}
