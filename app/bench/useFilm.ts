import { useEffect, useState } from 'react';
import { toFailure } from '../../shared/errors.ts';
import { createFrameStore, type FrameStore } from './frameStore.ts';
import { type Film, openFilm } from './film.ts';

export type OpenFilm =
  | { readonly state: 'opening' }
  | { readonly state: 'open'; readonly film: Film; readonly frames: FrameStore }
  | { readonly state: 'failed'; readonly words: string };

/** Opens a film for as long as it is on screen. */
export function useFilm(href: string, name: string): OpenFilm {
  const [open, setOpen] = useState<OpenFilm>({ state: 'opening' });
  useEffect(() => {
    let isLeft = false;
    let close = () => {};
    openFilm(href, name).then(
      (film) => {
        const frames = createFrameStore(film);
        close = () => {
          frames.close();
          film.close();
        };
        if (isLeft) close();
        else setOpen({ state: 'open', film, frames });
      },
      (thrown: unknown) => {
        if (!isLeft) setOpen({ state: 'failed', words: toFailure(thrown).message });
      },
    );
    return () => {
      isLeft = true;
      close();
    };
  }, [href, name]);
  return open;
}
