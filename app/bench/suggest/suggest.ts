import { allowOwnWorkers } from '../ownWorkers.ts';
import type { SuggestedFrame } from './suggestion.ts';

export interface SuggestRequest {
  /** Where the film is served. */
  readonly href: string;
  readonly name: string;
  /** First and last frame to look at. */
  readonly from: number;
  readonly to: number;
}

/** `end`: why it stopped, null if it came as far as it was asked to. */
export type SuggestReport = SuggestedFrame | { readonly end: string | null };

/**
 * Looks for body landmarks in a worker.
 * @returns the function that stops it, after which nothing more is reported
 */
export function suggest(request: SuggestRequest, onReport: (report: SuggestReport) => void): () => void {
  allowOwnWorkers();
  const worker = new Worker(new URL('./suggestWorker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<SuggestReport>) => {
    onReport(data);
    if ('end' in data) worker.terminate();
  });
  worker.addEventListener('error', ({ message }) => {
    worker.terminate();
    onReport({ end: `The landmark model stopped: ${message === '' ? 'it could not be loaded' : message}.` });
  });
  // A worker has one listener and no origin to name.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  worker.postMessage(request);
  return () => worker.terminate();
}
