import type { Place } from '../../shared/kernel/track/image.ts';
import type { LandmarkTrack } from '../../shared/model/trial.ts';
import { allowOwnWorkers } from './ownWorkers.ts';

export interface FollowRequest {
  /** Where the film is served. */
  readonly href: string;
  readonly name: string;
  /** Where it was in up to three frames before this one, in the direction of tracking, the latest first, px as shown. */
  readonly past: readonly Place[];
  /** The frame the point was put down in, and where, px as shown. */
  readonly frame: number;
  readonly x: number;
  readonly y: number;
  /** Forward or back. */
  readonly step: 1 | -1;
  /** The last frame to go to. */
  readonly until: number;
  /** Radius of the disc that is recognised, px. */
  readonly halfPx: number;
}

/** `end`: why it stopped, null if it came as far as it was asked to. */
export type FollowReport = { readonly sample: LandmarkTrack['samples'][number] } | { readonly end: string | null };

/**
 * Follows a point in a worker.
 * @returns the function that stops it, after which nothing more is reported
 */
export function follow(request: FollowRequest, onReport: (report: FollowReport) => void): () => void {
  allowOwnWorkers();
  const worker = new Worker(new URL('./trackWorker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FollowReport>) => {
    onReport(data);
    if ('end' in data) worker.terminate();
  });
  worker.addEventListener('error', ({ message }) => {
    worker.terminate();
    onReport({ end: `The tracker stopped: ${message === '' ? 'it could not be loaded' : message}.` });
  });
  // A worker has one listener and no origin to name.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  worker.postMessage(request);
  return () => worker.terminate();
}
