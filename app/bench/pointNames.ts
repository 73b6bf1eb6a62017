import { sentenceCase } from '../../shared/format/letterCase.ts';
import { pointWords } from '../../shared/kernel/trial/trialCurves.ts';
import { BALL, LANDMARKS, type LandmarkTrack } from '../../shared/model/trial.ts';

/** A point's name as people read it. */
export function pointLabel(point: string): string {
  return sentenceCase(pointWords(point));
}

/** The body, the ball, and whatever else was named in this trial. */
export function pointNames(tracks: readonly LandmarkTrack[]): readonly string[] {
  return [...new Set<string>([...LANDMARKS, BALL, ...tracks.map(({ point }) => point)])];
}
