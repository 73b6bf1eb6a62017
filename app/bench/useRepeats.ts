import { useState } from 'react';
import type { Place } from '../../shared/kernel/track/image.ts';
import type { LandmarkTrack, PointRepeat } from '../../shared/model/trial.ts';
import { newId } from '../case/newRecord.ts';
import { useEdit } from '../case/useEdit.ts';

/** Frames put down again in one round: enough for an error known to a quarter of itself. */
const ROUND = 10;

/** Putting points down a second time, the first hidden meanwhile, to learn how far the same person's two clicks lie apart. */
export function useRepeats(trialId: string, tracks: readonly LandmarkTrack[], goTo: (frame: number) => void) {
  const edit = useEdit();
  const [round, setRound] = useState<{ readonly point: string; readonly left: readonly number[] } | null>(null);
  const [held, setHeld] = useState<Place | null>(null);
  const byHand = (point: string) =>
    tracks.filter((track) => track.point === point && track.origin === 'by-hand').flatMap(({ samples }) => samples);

  const start = (point: string) => {
    const frames = byHand(point).map(([frame]) => frame);
    // Spread over the film, so that easy and hard frames are among them.
    const step = Math.max(1, frames.length / ROUND);
    const left = frames.filter((_frame, i) => Math.floor(i / step) !== Math.floor((i - 1) / step)).slice(0, ROUND);
    const [first] = left;
    if (first === undefined) return;
    setRound({ point, left });
    goTo(first);
  };
  const stop = () => {
    setRound(null);
    setHeld(null);
  };
  /** Takes the second place of the frame at hand and goes on to the next. */
  const place = ({ x, y }: Place, frame: number) => {
    const first = round === null ? undefined : byHand(round.point).find(([at]) => at === frame);
    if (round === null || first === undefined || !round.left.includes(frame)) return;
    const again = { xPx: Math.round(x * 100) / 100, yPx: Math.round(y * 100) / 100 };
    const record: PointRepeat = {
      id: newId(),
      trialId,
      point: round.point,
      frame,
      first: { xPx: first[1], yPx: first[2] },
      again,
    };
    edit([{ op: 'create', kind: 'pointRepeat', record }]);
    const left = round.left.filter((at) => at !== frame);
    setHeld(null);
    const [next] = left;
    if (next === undefined) return stop();
    setRound({ point: round.point, left });
    goTo(next);
  };
  return {
    /** The point that is put down again; its own places are not to be shown meanwhile. */
    point: round?.point ?? null,
    left: round?.left.length ?? 0,
    canStart: (point: string) => byHand(point).length > 0,
    held,
    start,
    stop,
    place,
    /** By the keyboard: Enter takes it up at a place, arrows move it, Enter again puts it down. */
    enter: (at: Place, frame: number) => (held === null ? setHeld(at) : place(held, frame)),
    nudge: ({ x, y }: Place) => setHeld((from) => (from === null ? null : { x: from.x + x, y: from.y + y })),
  };
}
