import { useState } from 'react';
import { counted } from '../../../shared/format/number.ts';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';

/** Starts and stops the landmark model, and confirms what it suggests: a frame or a span at a time. */
export function SuggestPanel(props: {
  frame: number;
  last: number;
  /** Suggestions not yet confirmed in the frame on the stage, and the frames that have any. */
  openHere: number;
  openFrames: readonly number[];
  words: string | null;
  outcome: string | null;
  onStart: (from: number, to: number) => void;
  onStop: () => void;
  onConfirm: (from: number, to: number) => void;
  onClear: () => void;
}) {
  const { frame, last, openHere, openFrames, words, outcome } = props;
  const [from, setFrom] = useState<number | null>(0);
  const [to, setTo] = useState<number | null>(last);
  const isSpan = from !== null && to !== null && from <= to;
  const inSpan = openFrames.filter((at) => isSpan && at >= from && at <= to);
  return (
    <fieldset className="bench-suggest">
      <legend>Suggested points</legend>
      <p>
        A landmark model can look for the joints of one person. It works on this computer alone. What it suggests is
        drawn as squares on their corner and counts for nothing until you confirm it; Enter on the stage confirms the
        point at hand. It knows neither the top of the head nor the neck. Suggestions not confirmed are gone when you
        leave the bench.
      </p>
      <div className="bench-own">
        <NumberField label="From frame" unit="1" isWhole possible={[0, last]} value={from} onChange={setFrom} />
        <NumberField label="To frame" unit="1" isWhole possible={[0, last]} value={to} onChange={setTo} />
      </div>
      <div className="row-of-buttons">
        <Button disabled={!isSpan || words !== null} onClick={() => isSpan && props.onStart(from, to)}>
          Suggest points in this span
        </Button>
        {words !== null && (
          <Button look="quiet" onClick={props.onStop}>
            Stop, and keep what was suggested
          </Button>
        )}
        <Button disabled={openHere === 0} onClick={() => props.onConfirm(frame, frame)}>
          {openHere === 0
            ? 'Nothing to confirm in this frame'
            : `Confirm ${counted(openHere, 'point')} of frame ${frame}`}
        </Button>
        <Button disabled={inSpan.length === 0 || words !== null} onClick={() => isSpan && props.onConfirm(from, to)}>
          {inSpan.length === 0
            ? 'Nothing to confirm in this span'
            : `Confirm all in ${counted(inSpan.length, 'frame')}`}
        </Button>
        {openFrames.length > 0 && words === null && (
          <Button look="quiet" onClick={props.onClear}>
            Drop what is not confirmed
          </Button>
        )}
      </div>
      <output className="import-state">{words ?? outcome}</output>
    </fieldset>
  );
}
