import { type RefObject, useEffect, useRef, useState } from 'react';
import { toFailure } from '../../shared/errors.ts';
import type { Film } from './film.ts';
import type { FrameStore } from './frameStore.ts';
import { paint } from './paint.ts';

export interface Shown {
  /** The frame now on the canvas; null before the first. */
  readonly frame: number | null;
  /** Why the frame asked for cannot be shown. */
  readonly problem: string | null;
}

/**
 * Keeps a canvas on the frame asked for. While one picture is decoded others may be asked for: only the latest is shown
 * then, so that scrubbing never runs behind.
 */
export function usePicture(
  canvas: RefObject<HTMLCanvasElement | null>,
  film: Film,
  frames: FrameStore,
  frame: number,
): Shown {
  const [shown, setShown] = useState<Shown>({ frame: null, problem: null });
  const wanted = useRef(frame);
  const isBusy = useRef(false);
  useEffect(() => {
    wanted.current = frame;
    const run = async () => {
      if (isBusy.current) return;
      isBusy.current = true;
      let last: number | null = null;
      while (last !== wanted.current && canvas.current !== null) {
        const next: number = wanted.current;
        last = next;
        try {
          const picture = await frames.get(next);
          const isPainted = await paint(canvas.current, picture, film.rotation, () => wanted.current === next);
          if (isPainted) setShown({ frame: next, problem: null });
        } catch (thrown) {
          setShown({ frame: null, problem: toFailure(thrown).message });
        }
      }
      isBusy.current = false;
    };
    void run();
  }, [canvas, film, frames, frame]);
  return shown;
}
