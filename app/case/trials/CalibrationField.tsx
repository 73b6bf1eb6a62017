import { useState } from 'react';
import type { Calibration, MovementTrial } from '../../../shared/model/trial.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { counted } from '../../../shared/format/number.ts';
import { patch, useEdit } from '../useEdit.ts';

type Length = Extract<Calibration, { kind: 'length' }>;
type Kind = Calibration['kind'];

/** One known length as it is typed: complete only when nothing needed is null. */
interface LengthDraft {
  readonly fromX: number | null;
  readonly fromY: number | null;
  readonly toX: number | null;
  readonly toY: number | null;
  readonly lengthM: number | null;
  readonly lengthUM: number | null;
  readonly pointUPx: number | null;
  readonly tiltDeg: number | null;
}

/** How coordinates in the picture become metres in the plane of motion. */
export function CalibrationField(props: {
  trial: MovementTrial;
  hasPoints: boolean;
  /** Both ends of a length as clicked on the picture, waiting for its true length. */
  ends?: Pick<Length, 'from' | 'to'> | null;
}) {
  const { trial, hasPoints, ends = null } = props;
  const edit = useEdit();
  const { calibration } = trial;
  const [kind, setKind] = useState<Kind | null>(ends === null ? (calibration?.kind ?? null) : 'length');
  const store = (next: Calibration | null) => edit([patch('movementTrial', trial.id, { calibration: next })]);
  const choose = (next: Kind | null) => {
    setKind(next);
    if (next === null) store(null);
    if (next === 'metres') store({ kind: 'metres', pointUM: null });
  };
  const choices = [
    { value: 'length', label: 'One known length' },
    { value: 'metres', label: 'Already in metres' },
    ...(calibration?.kind === 'plane' ? [{ value: 'plane', label: 'Points of a plane' } as const] : []),
  ] as const;
  return (
    <>
      {!hasPoints && (
        <p className="quiet">
          This trial has no landmarks. Measures typed in below need no scale; points taken later will.
        </p>
      )}
      <ChoiceField
        label="How the picture becomes metres"
        choices={choices}
        value={kind}
        empty="Not known"
        onChange={choose}
      />
      {kind === 'length' && (
        <LengthFields stored={calibration?.kind === 'length' ? calibration : null} ends={ends} onStore={store} />
      )}
      {kind === 'metres' && calibration?.kind === 'metres' && (
        <NumberField
          label="Standard uncertainty of one coordinate"
          unit="m"
          entry={['mm', 'cm']}
          possible={[0, 1]}
          value={calibration.pointUM}
          onChange={(pointUM) => store({ kind: 'metres', pointUM })}
        />
      )}
      {kind === 'plane' && calibration?.kind === 'plane' && (
        <p>Mapped through {counted(calibration.points.length, 'point')} of a plane, as imported.</p>
      )}
    </>
  );
}

function LengthFields(props: {
  stored: Length | null;
  ends: Pick<Length, 'from' | 'to'> | null;
  onStore: (next: Length) => void;
}) {
  const { stored, ends, onStore } = props;
  const [draft, setDraft] = useState<LengthDraft>(() => draftOf(stored, ends ?? stored));
  const change = (part: Partial<LengthDraft>) => {
    const next = { ...draft, ...part };
    setDraft(next);
    const complete = lengthOf(next);
    if (complete !== null) onStore(complete);
  };
  const pixel = (name: 'fromX' | 'fromY' | 'toX' | 'toY', label: string) => (
    <NumberField label={label} unit="{px}" value={draft[name]} onChange={(value) => change({ [name]: value })} />
  );
  return (
    <>
      <div className="form">
        {pixel('fromX', 'First end, x')}
        {pixel('fromY', 'First end, y (down)')}
        {pixel('toX', 'Second end, x')}
        {pixel('toY', 'Second end, y (down)')}
        <NumberField
          label="True length"
          unit="m"
          entry={['m', 'cm', 'ft and in']}
          possible={[0, 100]}
          isAbove
          value={draft.lengthM}
          onChange={(lengthM) => change({ lengthM })}
        />
        <NumberField
          label="Standard uncertainty of the length"
          unit="m"
          entry={['mm', 'cm']}
          possible={[0, 10]}
          value={draft.lengthUM}
          onChange={(lengthUM) => change({ lengthUM })}
        />
        <NumberField
          label="Standard uncertainty of one point"
          unit="{px}"
          possible={[0, 1000]}
          hint="Empty: not known."
          value={draft.pointUPx}
          onChange={(pointUPx) => change({ pointUPx })}
        />
        <NumberField
          label="Tilt of the camera"
          unit="deg"
          possible={[-45, 45]}
          hint="Degrees that the picture's down is turned from true vertical, anticlockwise positive. 0 if level."
          value={draft.tiltDeg}
          onChange={(tiltDeg) => change({ tiltDeg })}
        />
      </div>
      {lengthOf(draft) === null && (
        <output className="import-state">
          Not stored yet: both ends (apart from each other), the length with its uncertainty, and the tilt are needed.
        </output>
      )}
    </>
  );
}

function draftOf(stored: Length | null, ends: Pick<Length, 'from' | 'to'> | null): LengthDraft {
  return {
    fromX: ends?.from.xPx ?? null,
    fromY: ends?.from.yPx ?? null,
    toX: ends?.to.xPx ?? null,
    toY: ends?.to.yPx ?? null,
    lengthM: stored?.lengthM ?? null,
    lengthUM: stored?.lengthUM ?? null,
    pointUPx: stored?.pointUPx ?? null,
    tiltDeg: stored?.tiltDeg ?? 0,
  };
}

function lengthOf({ fromX, fromY, toX, toY, lengthM, lengthUM, pointUPx, tiltDeg }: LengthDraft): Length | null {
  if (fromX === null || fromY === null || toX === null || toY === null) return null;
  if (lengthM === null || lengthUM === null || tiltDeg === null || (fromX === toX && fromY === toY)) return null;
  return {
    kind: 'length',
    from: { xPx: fromX, yPx: fromY },
    to: { xPx: toX, yPx: toY },
    lengthM,
    lengthUM,
    pointUPx,
    tiltDeg,
  };
}
