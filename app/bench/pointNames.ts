import { BALL, LANDMARKS, type LandmarkTrack } from '../../shared/model/trial.ts';

/** A point's name as people read it. */
export function pointLabel(point: string): string {
  const words = point.replace(/-(left|right)$/, ', $1').replaceAll('-', ' ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** The body, the ball, and whatever else was named in this trial. */
export function pointNames(tracks: readonly LandmarkTrack[]): readonly string[] {
  return [...new Set<string>([...LANDMARKS, BALL, ...tracks.map(({ point }) => point)])];
}
