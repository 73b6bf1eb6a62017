import { useEffect, useRef, useState } from 'react';
import { counted } from '../../shared/format/number.ts';
import type { Place } from '../../shared/kernel/track/image.ts';
import { joinTracks } from '../../shared/kernel/trial/joinTracks.ts';
import type { LandmarkTrack } from '../../shared/model/trial.ts';
import { newId } from '../case/newRecord.ts';
import { useCaseNow, useEdit, useIsTurning } from '../case/useEdit.ts';
import { follow } from './follow.ts';
import { liesOn } from './liesOn.ts';
import { putSamples } from './pointEdits.ts';
import { pointLabel } from './pointNames.ts';

/** What was tracked is stored this often: so much is lost at most when the program is ended in the middle. */
const STORE_EVERY_MS = 1000;

interface Job {
  readonly point: string;
  readonly frame: number;
  readonly here: Place;
  readonly step: 1 | -1;
  readonly halfPx: number;
  /** Number of the film's last frame. */
  readonly last: number;
}

/**
 * Follows a point through the film and stores what is followed as it goes, as one step of undo. It goes no further than
 * the next frame in which a person placed the point: theirs is the better word, and the place to start from again.
 */
export function useTracker(
  trialId: string,
  source: { readonly href: string; readonly name: string },
  onFrame: (frame: number) => void,
) {
  const caseNow = useCaseNow();
  const edit = useEdit();
  const isTurning = useIsTurning();
  const [words, setWords] = useState<string | null>(null);
  const [outcome, setOutcome] = useState<string | null>(null);
  const stop = useRef<(() => void) | null>(null);
  useEffect(() => () => stop.current?.(), []);

  const tracksNow = () => caseNow().landmarkTracks.filter((track) => track.trialId === trialId);
  const start = ({ point, frame, here, step, halfPx, last }: Job) => {
    const framesOf = (isTracked: boolean) =>
      tracksNow()
        .filter((track) => track.point === point && (track.origin === 'tracked') === isTracked)
        .flatMap(({ samples }) => samples.map(([at]) => at));
    /** The next frame ahead in which a person placed the point. */
    const nextPlaced = () =>
      framesOf(false)
        .filter((at) => (at - frame) * step > 0)
        .reduce((nearest, at) => ((at - nearest) * step < 0 ? at : nearest), step * Infinity);
    const fresh: LandmarkTrack['samples'] = [];
    const kept: LandmarkTrack['samples'] = [];
    const stored = () => kept.at(-1)?.[0] ?? null;
    let storedAtMs = performance.now();
    let endFollowing: (() => void) | null = null;

    /** @returns why tracking must end here, null if it need not */
    const store = (): string | null => {
      storedAtMs = performance.now();
      const followed = fresh.splice(0);
      const before = stored();
      if (before !== null && !framesOf(true).includes(before)) {
        return 'Stopped, because what it had tracked was taken back.';
      }
      const met = nextPlaced();
      const samples = followed.filter(([at]) => (at - met) * step < 0);
      if (samples.length > 0) {
        edit(putSamples({ trialId, point, tracks: tracksNow(), newId }, 'tracked', samples), before !== null);
        kept.push(...samples);
      }
      return samples.length < followed.length ? metWords(met) : null;
    };
    const finish = (why: string) => {
      stop.current = null;
      endFollowing?.();
      setWords(null);
      const how = store() ?? why;
      const twin = liesOn(tracksNow(), point, kept);
      const onTwin =
        twin === null
          ? ''
          : ` In ${counted(twin.frames, 'frame')} it lies on ${pointLabel(twin.point).toLowerCase()}: look whether one follows the other’s mark.`;
      setOutcome(`${pointLabel(point)} tracked in ${counted(kept.length, 'frame')}. ${how}${onTwin}`);
      const end = stored();
      if (end !== null) onFrame(end);
    };

    setOutcome(null);
    setWords(`Tracking ${pointLabel(point).toLowerCase()}…`);
    const met = nextPlaced();
    const until = Number.isFinite(met) ? met - step : step === 1 ? last : 0;
    const arrived = Number.isFinite(met) ? metWords(met) : 'It came to the end of the film.';
    if (until === frame) return finish(arrived);
    const past = placesBefore(tracksNow(), point, frame, step);
    endFollowing = follow({ ...source, frame, x: here.x, y: here.y, past, step, until, halfPx }, (report) => {
      if ('end' in report) return finish(report.end ?? arrived);
      const [at, x, y, u = 0] = report.sample;
      fresh.push([at, thousandths(x), thousandths(y), thousandths(u)]);
      // An undo on its way may be taking back what is tracked: whether it does shows once it is through.
      const why = performance.now() - storedAtMs < STORE_EVERY_MS || isTurning() ? null : store();
      if (why !== null) return finish(why);
      // Words for every frame would cost more than the tracking.
      const done = kept.length + fresh.length;
      if (done % 10 === 0)
        setWords(`Tracking ${pointLabel(point).toLowerCase()}: ${done} of ${Math.abs(until - frame)} frames.`);
    });
    stop.current = () => finish('Stopped as asked.');
  };
  return { words, outcome, start, stop: () => stop.current?.() };
}

/** Where a point was in the frames just before one, as far as it is known in every one of them; three tell its motion. */
function placesBefore(tracks: readonly LandmarkTrack[], point: string, frame: number, step: 1 | -1): Place[] {
  const [joined] = joinTracks(tracks.filter((track) => track.point === point));
  const known = new Map(joined?.samples.map(([at, x, y]) => [at, { x, y }]));
  const places: Place[] = [];
  for (let at = frame - step; places.length < 3; at -= step) {
    const place = known.get(at);
    if (place === undefined) break;
    places.push(place);
  }
  return places;
}

function thousandths(px: number): number {
  return Math.round(px * 1000) / 1000;
}

function metWords(frame: number): string {
  return `It came to frame ${frame}, which a person placed.`;
}
