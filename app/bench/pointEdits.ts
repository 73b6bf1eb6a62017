import type { Edit } from '../../shared/model/edit.ts';
import type { LandmarkTrack } from '../../shared/model/trial.ts';

type Sample = LandmarkTrack['samples'][number];
type Origin = LandmarkTrack['origin'];

interface Target {
  readonly trialId: string;
  readonly point: string;
  /** Every track of the trial. */
  readonly tracks: readonly LandmarkTrack[];
  readonly newId: () => string;
}

/**
 * Edits that put samples of one point into the track of one origin, and take the same frames out of its other tracks:
 * a point is in one place, obtained in one way. One step of undo.
 * @param uPx standard uncertainty of one coordinate where it is known apart from the trial's
 */
export function putSamples(
  { trialId, point, tracks, newId }: Target,
  origin: Origin,
  samples: readonly Sample[],
  uPx: number | null = null,
): Edit[] {
  if (samples.length === 0) return [];
  const frames = new Set(samples.map(([frame]) => frame));
  const ofPoint = tracks.filter((track) => track.point === point);
  const home = ofPoint.find((track) => track.origin === origin);
  const others = ofPoint.filter((track) => track !== home).flatMap((track) => without(track, frames));
  if (home === undefined) {
    const record: LandmarkTrack = { id: newId(), trialId, point, origin, samples: sorted(samples), uPx };
    return [...others, { op: 'create', kind: 'landmarkTrack', record }];
  }
  const kept = home.samples.filter(([frame]) => !frames.has(frame));
  const fields = {
    samples: sorted([...kept, ...samples]),
    // One figure stands for the whole track, so the larger of the two.
    ...(uPx !== null && uPx > (home.uPx ?? 0) ? { uPx } : {}),
  };
  return [...others, { op: 'patch', kind: 'landmarkTrack', id: home.id, fields }];
}

/** Edits that take a point out of one frame. */
export function removeSample(tracks: readonly LandmarkTrack[], point: string, frame: number): Edit[] {
  return tracks.filter((track) => track.point === point).flatMap((track) => without(track, new Set([frame])));
}

/** A track that would be left without a sample goes, so that the case holds no empty ones. */
function without(track: LandmarkTrack, frames: ReadonlySet<number>): Edit[] {
  const samples = track.samples.filter(([frame]) => !frames.has(frame));
  if (samples.length === track.samples.length) return [];
  if (samples.length === 0) return [{ op: 'remove', kind: 'landmarkTrack', id: track.id }];
  return [{ op: 'patch', kind: 'landmarkTrack', id: track.id, fields: { samples } }];
}

function sorted(samples: readonly Sample[]): Sample[] {
  return samples.toSorted(([a], [b]) => a - b);
}
