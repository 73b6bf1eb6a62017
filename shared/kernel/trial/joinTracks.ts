import type { LandmarkTrack } from '../../model/trial.ts';

/** Whose word holds where two tracks of a point speak of one frame, from the last to the first. */
const TRUST: readonly LandmarkTrack['origin'][] = ['tracked', 'suggested-and-confirmed', 'imported', 'by-hand'];

/**
 * A point is digitised in as many tracks as there were ways of obtaining it: some frames by hand, the rest tracked.
 * @returns one track a point, frames rising; where two speak of one frame, what a person placed holds
 * @source convention: a person outweighs a tracker
 */
export function joinTracks(tracks: readonly LandmarkTrack[]): readonly LandmarkTrack[] {
  return [...Map.groupBy(tracks, ({ point }) => point).values()].flatMap((ofPoint) => {
    const [first, ...others] = ofPoint;
    if (first === undefined || others.length === 0) return ofPoint;
    const ordered = ofPoint.toSorted((a, b) => TRUST.indexOf(a.origin) - TRUST.indexOf(b.origin));
    const byFrame = new Map(ordered.flatMap(({ samples }) => samples.map((sample) => [sample[0], sample] as const)));
    return [{ ...first, samples: [...byFrame.values()].toSorted(([a], [b]) => a - b) }];
  });
}
