import { type ReactNode, useState } from 'react';
import { counted } from '../../shared/format/number.ts';
import type { LandmarkTrack } from '../../shared/model/trial.ts';
import { Button } from '../parts/Button.tsx';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { pointLabel, pointNames } from './pointNames.ts';

/** Discs the tracker may recognise: radius in px. Only marker and limb should lie in it, not what stands still. */
const DISCS = [
  { value: '6', label: '13 px across: a small marker' },
  { value: '10', label: '21 px across' },
  { value: '14', label: '29 px across: a ball' },
  { value: '24', label: '49 px across: a large ball' },
] as const;
type Disc = (typeof DISCS)[number]['value'];

const ORIGIN_WORDS: Record<LandmarkTrack['origin'], string> = {
  'by-hand': 'by hand',
  tracked: 'tracked',
  'suggested-and-confirmed': 'suggested, then confirmed',
  imported: 'imported',
};

/** Which point is at hand, what there is of it, and the tracker. */
export function PointsStep(props: {
  tracks: readonly LandmarkTrack[];
  active: string;
  onActive: (point: string) => void;
  advances: boolean;
  onAdvances: (advances: boolean) => void;
  isHere: boolean;
  onRemove: () => void;
  /** What the tracker does now, in words; null while it rests. */
  tracking: string | null;
  /** How it ended last. */
  tracked: string | null;
  onTrack: (step: 1 | -1, halfPx: number) => void;
  onLook: (frame: number) => void;
  onStop: () => void;
  /** What the step offers besides: suggestions, repeats. */
  children: ReactNode;
}) {
  const { tracks, active, isHere, tracking } = props;
  const [own, setOwn] = useState('');
  const [disc, setDisc] = useState<Disc>('10');
  const names = pointNames([...tracks]);
  const choices = (names.includes(active) ? names : [...names, active]).map((name) => ({
    value: name,
    label: `${pointLabel(name)}${tracks.some(({ point }) => point === name) ? `, ${counted(countOf(tracks, name), 'frame')}` : ''}`,
  }));
  const least = leastSure(tracks, active);
  const ownName = own.trim().toLowerCase().replaceAll(/\s+/g, '-');
  return (
    <>
      <p>
        Click on the picture to put the point at hand down in this frame, or to move it. Arrow keys move it by a quarter
        of a pixel, with Shift by two; Page Up and Page Down change the frame.
      </p>
      <ChoiceField label="Point at hand" look="list" choices={choices} value={active} onChange={props.onActive} />
      <div className="bench-own">
        <TextField label="A point of your own" hint="Any name: stick tip." value={own} onChange={setOwn} />
        <Button
          look="quiet"
          disabled={ownName === ''}
          onClick={() => {
            props.onActive(ownName);
            setOwn('');
          }}
        >
          Take it in hand
        </Button>
      </div>
      <label className="choice">
        <input type="checkbox" checked={props.advances} onChange={({ target }) => props.onAdvances(target.checked)} />
        <span>After a click, go on to the next frame</span>
      </label>
      <p>{heldWords(tracks, active)}</p>
      {least !== null && (
        <p>
          <Button look="quiet" onClick={() => props.onLook(least.frame)}>
            Look at frame {least.frame}, where the tracker is least sure: {least.uPx.toFixed(1)} px
          </Button>
        </p>
      )}
      <ChoiceField label="Disc the tracker recognises" look="list" choices={DISCS} value={disc} onChange={setDisc} />
      <div className="row-of-buttons">
        <Button disabled={!isHere || tracking !== null} onClick={() => props.onTrack(1, Number(disc))}>
          Track forward
        </Button>
        <Button disabled={!isHere || tracking !== null} onClick={() => props.onTrack(-1, Number(disc))}>
          Track back
        </Button>
        <Button look="quiet" disabled={!isHere || tracking !== null} onClick={props.onRemove}>
          Remove it from this frame
        </Button>
        {tracking !== null && (
          <Button look="quiet" onClick={props.onStop}>
            Stop, and keep what was tracked
          </Button>
        )}
      </div>
      {!isHere && tracking === null && (
        <p className="quiet">The tracker starts from the point at hand: put it down in this frame.</p>
      )}
      <output className="import-state">{tracking ?? props.tracked}</output>
      {props.children}
    </>
  );
}

/** The tracked place of a point that says of itself that it is the least certain; null where none says so. */
function leastSure(tracks: readonly LandmarkTrack[], name: string): { frame: number; uPx: number } | null {
  const said = tracks
    .filter(({ point }) => point === name)
    .flatMap(({ samples }) => samples.flatMap(([frame, , , uPx]) => (uPx === undefined ? [] : [{ frame, uPx }])));
  return said.reduce<(typeof said)[number] | null>((most, one) => (one.uPx > (most?.uPx ?? 0) ? one : most), null);
}

function countOf(tracks: readonly LandmarkTrack[], name: string): number {
  return tracks.filter(({ point }) => point === name).reduce((sum, { samples }) => sum + samples.length, 0);
}

function heldWords(tracks: readonly LandmarkTrack[], name: string): string {
  const held = tracks.filter(({ point }) => point === name);
  if (held.length === 0) return `${pointLabel(name)} is in no frame yet.`;
  const parts = held.map(({ origin, samples }) => `${counted(samples.length, 'frame')} ${ORIGIN_WORDS[origin]}`);
  return `${pointLabel(name)}: ${parts.join(', ')}.`;
}
