import { useEffect, useRef, useState } from 'react';
import { counted } from '../../shared/format/number.ts';
import type { Place } from '../../shared/kernel/track/image.ts';
import type { LandmarkTrack } from '../../shared/model/trial.ts';
import { newId } from '../case/newRecord.ts';
import { useCase } from '../case/useCase.ts';
import { useEdit } from '../case/useEdit.ts';
import { follow } from './follow.ts';
import { putSamples } from './pointEdits.ts';
import { pointLabel } from './pointNames.ts';

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
 * Follows a point through the film and stores what was followed as one step of undo. It goes no further than the next
 * frame in which a person placed the point: theirs is the better word, and the place to start from again.
 */
export function useTracker(
  trialId: string,
  source: { readonly href: string; readonly name: string },
  onFrame: (frame: number) => void,
) {
  const { file } = useCase();
  const edit = useEdit();
  const [words, setWords] = useState<string | null>(null);
  const [outcome, setOutcome] = useState<string | null>(null);
  const stop = useRef<(() => void) | null>(null);
  const latest = useRef(file);
  useEffect(() => {
    latest.current = file;
  }, [file]);
  useEffect(() => () => stop.current?.(), []);

  const tracksNow = () => latest.current.landmarkTracks.filter((track) => track.trialId === trialId);
  const start = ({ point, frame, here, step, halfPx, last }: Job) => {
    const placed = tracksNow()
      .filter((track) => track.point === point && track.origin !== 'tracked')
      .flatMap(({ samples }) => samples.map(([at]) => at))
      .filter((at) => (at - frame) * step > 0);
    const edge = step === 1 ? last : 0;
    const met =
      placed.length === 0 ? null : placed.reduce((a, b) => (Math.abs(a - frame) < Math.abs(b - frame) ? a : b));
    const samples: LandmarkTrack['samples'] = [];
    const finish = (why: string | null) => {
      stop.current = null;
      setWords(null);
      edit(putSamples({ trialId, point, tracks: tracksNow(), newId }, 'tracked', samples));
      const how =
        why ?? (met === null ? 'It came to the end of the film.' : `It came to frame ${met}, which a person placed.`);
      setOutcome(`${pointLabel(point)} tracked in ${counted(samples.length, 'frame')}. ${how}`);
      const end = samples.at(-1);
      if (end !== undefined) onFrame(end[0]);
    };
    setOutcome(null);
    setWords(`Tracking ${pointLabel(point).toLowerCase()}…`);
    const until = met === null ? edge : met - step;
    if (until === frame) return finish(null);
    const end = follow({ ...source, frame, x: here.x, y: here.y, step, until, halfPx }, (report) => {
      if ('end' in report) return finish(report.end);
      const [at, x, y] = report.sample;
      samples.push([at, Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000]);
      // Words for every frame would cost more than the tracking.
      if (samples.length % 10 === 0)
        setWords(
          `Tracking ${pointLabel(point).toLowerCase()}: ${samples.length} of ${Math.abs(until - frame)} frames.`,
        );
    });
    stop.current = () => {
      end();
      finish('Stopped as asked.');
    };
  };
  return { words, outcome, start, stop: () => stop.current?.() };
}
