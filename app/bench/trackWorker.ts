import { toFailure } from '../../shared/errors.ts';
import type { Place } from '../../shared/kernel/track/image.ts';
import { pointTracker, TRACK_OPTIONS } from '../../shared/kernel/track/pointTracker.ts';
import { openFilm } from './film.ts';
import { createFrameStore } from './frameStore.ts';
import { lumaOf } from './lumaOf.ts';
import type { FollowRequest, FollowReport } from './follow.ts';
import { toDecoded, toShown } from './turn.ts';

/** Follows one point through a film, off the page. One request a worker; ended by ending the worker. */
self.addEventListener('message', (event: MessageEvent<FollowRequest>) => {
  void follow(event.data).catch((thrown: unknown) => report({ end: toFailure(thrown).message }));
});

function report(message: FollowReport): void {
  // The compiler takes this for a page, whose messages go to other pages; a worker's go to who started it.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  (self as unknown as { postMessage(message: FollowReport): void }).postMessage(message);
}

async function follow({ href, name, frame, x, y, past, step, until, halfPx }: FollowRequest): Promise<void> {
  const film = await openFilm(href, name);
  const store = createFrameStore(film);
  const first = await store.get(frame);
  const { codedWidth, codedHeight } = first.init;
  const decoded = (shown: Place) => toDecoded(shown, film.rotation, codedWidth, codedHeight);
  const options = { ...TRACK_OPTIONS, halfPx };
  const tracker = pointTracker(lumaOf(first), decoded({ x, y }), options, past.map(decoded));
  for (let at = frame + step; at !== until + step && at >= 0 && at < film.times.length; at += step) {
    const found = tracker.next(lumaOf(await store.get(at)));
    if ('lost' in found) return report({ end: `In frame ${at} the point was lost: ${found.lost}.` });
    const place = toShown(found, film.rotation, codedWidth, codedHeight);
    report({ sample: [at, place.x, place.y, found.uPx] });
  }
  report({ end: null });
}
