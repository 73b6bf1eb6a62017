import { openPoseModel } from './poseModel.ts';
import { toFailure } from '../../../shared/errors.ts';
import { openFilm } from '../film.ts';
import { createFrameStore } from '../frameStore.ts';
import { contextOf, paint } from '../paint.ts';
import type { SuggestReport, SuggestRequest } from './suggest.ts';
import { suggestedFrame } from './suggestion.ts';

/** Looks for body landmarks in a film, off the page. One request a worker; ended by ending the worker. */
self.addEventListener('message', (event: MessageEvent<SuggestRequest>) => {
  void suggest(event.data).catch((thrown: unknown) => report({ end: toFailure(thrown).message }));
});

function report(message: SuggestReport): void {
  // The compiler takes this for a page, whose messages go to other pages; a worker's go to who started it.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  (self as unknown as { postMessage(message: SuggestReport): void }).postMessage(message);
}

async function suggest({ href, name, from, to }: SuggestRequest): Promise<void> {
  const model = await openPoseModel(new URL('../models/', self.location.href).href);
  const film = await openFilm(href, name);
  const store = createFrameStore(film);
  const canvas = new OffscreenCanvas(film.width, film.height);
  for (let frame = from; frame <= to; frame++) {
    await paint(canvas, await store.get(frame), film.rotation, () => true);
    const image = contextOf(canvas)?.getImageData(0, 0, canvas.width, canvas.height);
    if (image === undefined) return report({ end: 'This window has no memory left for a picture.' });
    report(suggestedFrame(frame, await model.find(image), canvas.width, canvas.height));
  }
  report({ end: null });
}
