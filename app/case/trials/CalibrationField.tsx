import { planeAdvice } from '../../../shared/assess/planeAdvice.ts';
import { toDecimals } from '../../../shared/format/number.ts';
import { planeFromCalibration } from '../../../shared/kernel/plane/planeFromCalibration.ts';
import { calibrationFrom, draftFrom, placed } from '../../../shared/model/calibrationDraft.ts';
import type { CalibrationDraft, MovementTrial } from '../../../shared/model/trial.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { ReadingText } from '../../parts/ReadingText.tsx';
import { patch, useEdit } from '../useEdit.ts';
import { type Aim, aimWords, keepDraft, tiltOfPlumb } from './calibrationEdits.ts';
import { FlightTilt } from './FlightTilt.tsx';

type Kind = 'length' | 'plane' | 'metres';
const KINDS = [
  { value: 'length', label: 'One known length' },
  { value: 'plane', label: 'Points of a plane' },
  { value: 'metres', label: 'Already in metres' },
] as const;

/** How places are clicked where there is a picture to click on. */
export interface Picker {
  readonly aim: Aim | null;
  /** Null: nothing; undefined: whatever is missing. */
  readonly onAim: (aim: Aim | null | undefined) => void;
  /** Of the picture, px. */
  readonly width: number;
  readonly height: number;
}

/** How coordinates in the picture become metres in the plane of motion. Everything is kept as it is entered, complete or not. */
export function CalibrationField(props: { trial: MovementTrial; hasPoints: boolean; picker?: Picker }) {
  const { trial, hasPoints, picker } = props;
  const edit = useEdit();
  const { calibration, calibrationDraft } = trial;
  const isEmpty = calibration === null && calibrationDraft === null;
  const kind: Kind | null =
    calibration?.kind === 'metres' ? 'metres' : isEmpty ? null : (calibrationDraft ?? draftFrom(calibration)).kind;
  const draft = calibrationDraft ?? draftFrom(calibration);
  const store = (next: CalibrationDraft) => edit(keepDraft(trial, next));
  const choose = (next: Kind | null) => {
    picker?.onAim(undefined);
    if (next === 'length' || next === 'plane') store({ ...draft, kind: next });
    else {
      const metres = next === null ? null : ({ kind: 'metres', pointUM: null } as const);
      edit([patch('movementTrial', trial.id, { calibration: metres, calibrationDraft: null })]);
    }
  };
  return (
    <>
      {!hasPoints && (
        <p className="quiet">
          This trial has no landmarks. Measures typed in below need no scale; points taken later will.
        </p>
      )}
      <ChoiceField
        label="How the picture becomes metres"
        choices={KINDS}
        value={kind}
        empty="Not known"
        onChange={choose}
      />
      {picker !== undefined && picker.aim !== null && (
        <output className="aim-words">
          {aimWords(picker.aim, draft)}{' '}
          <Button look="quiet" onClick={() => picker.onAim(null)}>
            Not now
          </Button>
        </output>
      )}
      {calibration?.kind === 'metres' && (
        <NumberField
          label="Standard uncertainty of one coordinate"
          unit="m"
          entry={['mm', 'cm']}
          possible={[0, 1]}
          value={calibration.pointUM}
          onChange={(pointUM) => edit([patch('movementTrial', trial.id, { calibration: { kind: 'metres', pointUM } })])}
        />
      )}
      {kind === 'length' && <LengthFields draft={draft} onStore={store} picker={picker} />}
      {kind === 'plane' && <PlaneFields draft={draft} onStore={store} picker={picker} />}
      {(kind === 'length' || kind === 'plane') && (
        <>
          <Standing trial={trial} draft={draft} picker={picker} />
          <Upright trial={trial} draft={draft} onStore={store} picker={picker} />
          <DepthFields draft={draft} onStore={store} picker={picker} />
        </>
      )}
    </>
  );
}

interface DraftProps {
  readonly draft: CalibrationDraft;
  readonly onStore: (next: CalibrationDraft) => void;
  readonly picker: Picker | undefined;
}

function PlaceFields(props: {
  label: string;
  place: CalibrationDraft['from'];
  onPlace: (next: CalibrationDraft['from']) => void;
}) {
  const { label, place, onPlace } = props;
  return (
    <>
      <NumberField label={`${label}, x`} unit="{px}" value={place.xPx} onChange={(xPx) => onPlace({ ...place, xPx })} />
      <NumberField
        label={`${label}, y (down)`}
        unit="{px}"
        value={place.yPx}
        onChange={(yPx) => onPlace({ ...place, yPx })}
      />
    </>
  );
}

function PointU({ draft, onStore }: DraftProps) {
  return (
    <NumberField
      label="Standard uncertainty of one point"
      unit="{px}"
      possible={[0, 1000]}
      hint="Empty: not known."
      value={draft.pointUPx}
      onChange={(pointUPx) => onStore({ ...draft, pointUPx })}
    />
  );
}

function LengthFields(props: DraftProps) {
  const { draft, onStore, picker } = props;
  return (
    <>
      <div className="form">
        <NumberField
          label="True length"
          unit="m"
          entry={['m', 'cm', 'ft and in']}
          possible={[0, 100]}
          isAbove
          value={draft.lengthM}
          onChange={(lengthM) => onStore({ ...draft, lengthM })}
        />
        <NumberField
          label="Standard uncertainty of the length"
          unit="m"
          entry={['mm', 'cm']}
          possible={[0, 10]}
          value={draft.lengthUM}
          onChange={(lengthUM) => onStore({ ...draft, lengthUM })}
        />
        <PlaceFields label="First end" place={draft.from} onPlace={(from) => onStore({ ...draft, from })} />
        <PlaceFields label="Second end" place={draft.to} onPlace={(to) => onStore({ ...draft, to })} />
        <PointU {...props} />
      </div>
      {picker !== undefined && (
        <div className="row-of-buttons">
          <Button look="quiet" onClick={() => picker.onAim('from')}>
            Click the first end again
          </Button>
          <Button look="quiet" onClick={() => picker.onAim('to')}>
            Click the second end again
          </Button>
        </div>
      )}
    </>
  );
}

function PlaneFields(props: DraftProps) {
  const { draft, onStore, picker } = props;
  const calibration = calibrationFrom(draft);
  const residuals = residualsOf(draft);
  const setPoint = (i: number, fields: Partial<CalibrationDraft['points'][number]>) => {
    const point = draft.points[i];
    if (point !== undefined) onStore({ ...draft, points: draft.points.with(i, { ...point, ...fields }) });
  };
  return (
    <>
      <p className="quiet">
        Four points or more whose places in the plane of motion were measured: the corners of a frame, marks on a wall.
        Across is to the right, up is up; begin anywhere.
      </p>
      {draft.points.map((point, i) => (
        // Points have no names; their number is what they are called.
        // oxlint-disable-next-line react/no-array-index-key
        <fieldset key={i} className="plane-point">
          <legend>
            Point {i + 1}
            {residuals[i] !== undefined && calibration?.kind === 'plane' && calibration.points.length > 4 && (
              <span className="quiet"> {toDecimals(residuals[i] * 1000, 1)} mm off the plane</span>
            )}
          </legend>
          <div className="form">
            <NumberField
              label={`Point ${i + 1}, across`}
              unit="m"
              entry={['m', 'cm']}
              possible={[-1000, 1000]}
              value={point.xM}
              onChange={(xM) => setPoint(i, { xM })}
            />
            <NumberField
              label={`Point ${i + 1}, up`}
              unit="m"
              entry={['m', 'cm']}
              possible={[-1000, 1000]}
              value={point.yM}
              onChange={(yM) => setPoint(i, { yM })}
            />
            <PlaceFields label={`Point ${i + 1}`} place={point.image} onPlace={(image) => setPoint(i, { image })} />
          </div>
          <div className="row-of-buttons">
            {picker !== undefined && (
              <Button look="quiet" aria-label={`Click point ${i + 1} in the picture`} onClick={() => picker.onAim(i)}>
                {placed(point.image) === null ? 'Click it in the picture' : 'Click it again'}
              </Button>
            )}
            <Button
              look="quiet"
              aria-label={`Remove point ${i + 1}`}
              onClick={() => onStore({ ...draft, points: draft.points.toSpliced(i, 1) })}
            >
              Remove
            </Button>
          </div>
        </fieldset>
      ))}
      <div className="row-of-buttons">
        <Button
          onClick={() => {
            const blank = { image: { xPx: null, yPx: null }, xM: null, yM: null };
            onStore({ ...draft, points: [...draft.points, blank] });
            picker?.onAim(draft.points.length);
          }}
        >
          Add a point
        </Button>
      </div>
      <PointU {...props} />
    </>
  );
}

/** By the number of the draft's point; absent where it is not part of the plane yet. */
function residualsOf(draft: CalibrationDraft): readonly (number | undefined)[] {
  const calibration = calibrationFrom(draft);
  if (calibration?.kind !== 'plane' || planeAdvice(calibration, null, null).refusal !== null) return [];
  const residuals = [...planeFromCalibration(calibration).residualsM];
  return draft.points.map(({ image, xM, yM }) =>
    placed(image) === null || xM === null || yM === null ? undefined : residuals.shift(),
  );
}

/** Whether the calibration is in use, why not, and what looks wrong. */
function Standing(props: { trial: MovementTrial; draft: CalibrationDraft; picker: Picker | undefined }) {
  const { trial, draft, picker } = props;
  const { calibration } = trial;
  if (calibration === null) {
    return (
      <output className="import-state">
        Kept as far as it goes, not used yet:{' '}
        {draft.kind === 'length'
          ? 'both ends (apart from each other) and the length with its uncertainty are needed.'
          : 'at least four points are needed, each with its place in the picture and in the plane.'}
      </output>
    );
  }
  const { refusal, advice } = planeAdvice(calibration, draft, picker ?? null);
  return (
    <>
      {refusal !== null && (
        <p className="questioned" role="alert">
          <strong>Refused:</strong> {refusal}. Nothing in metres is computed from it.
        </p>
      )}
      {advice.length > 0 && (
        <ul className="warnings" aria-label="Advice about the plane">
          {advice.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
    </>
  );
}

function Upright(props: DraftProps & { trial: MovementTrial }) {
  const { trial, draft, onStore, picker } = props;
  const tilt = tiltOfPlumb(draft);
  return (
    <>
      <NumberField
        label="Tilt of the camera"
        unit="deg"
        possible={[-45, 45]}
        hint="Degrees that down, in the picture or as the plane was measured, is turned from true down, anticlockwise positive. 0 if level."
        value={draft.tiltDeg}
        onChange={(tiltDeg) => tiltDeg !== null && onStore({ ...draft, tiltDeg })}
      />
      {isKnown(tilt) && (
        <p>
          The plumb line says <ReadingText reading={tilt} unit="deg" />.
        </p>
      )}
      <div className="row-of-buttons">
        {picker !== undefined && (
          <Button onClick={() => picker.onAim('top')}>
            {isKnown(tilt) ? 'Click the plumb line again' : 'Click along a plumb line'}
          </Button>
        )}
        <FlightTilt trial={trial} onTilt={(tiltDeg) => onStore({ ...draft, tiltDeg })} />
      </div>
    </>
  );
}

function DepthFields({ draft, onStore, picker }: DraftProps) {
  const { depth } = draft;
  const set = (fields: Partial<CalibrationDraft['depth']>) => {
    const middle =
      placed(depth.axis) === null && picker !== undefined
        ? { axis: { xPx: (picker.width - 1) / 2, yPx: (picker.height - 1) / 2 } }
        : {};
    onStore({ ...draft, depth: { ...depth, ...middle, ...fields } });
  };
  const entered = [depth.cameraM, depth.bodyNearerM, depth.ballNearerM, depth.uM];
  const isOpen = entered.some((value) => value !== null);
  const isWhole = entered.every((value) => value !== null) && placed(depth.axis) !== null;
  return (
    <details className="depth" open={isOpen}>
      <summary>Nearer or farther than the scale</summary>
      <p className="quiet">
        What is nearer the camera than the scale looks larger than it is. Nothing entered: body and ball are taken to
        move where the scale was.
      </p>
      <div className="form">
        <NumberField
          label="Camera to the scale"
          unit="m"
          possible={[0, 1000]}
          isAbove
          value={depth.cameraM}
          onChange={(cameraM) => set({ cameraM })}
        />
        <NumberField
          label="Body nearer to the camera by"
          unit="m"
          entry={['m', 'cm']}
          possible={[-100, 100]}
          hint="Negative: farther."
          value={depth.bodyNearerM}
          onChange={(bodyNearerM) => set({ bodyNearerM })}
        />
        <NumberField
          label="Ball nearer to the camera by"
          unit="m"
          entry={['m', 'cm']}
          possible={[-100, 100]}
          hint="Negative: farther."
          value={depth.ballNearerM}
          onChange={(ballNearerM) => set({ ballNearerM })}
        />
        <NumberField
          label="Standard uncertainty of these distances"
          unit="m"
          entry={['m', 'cm']}
          possible={[0, 100]}
          value={depth.uM}
          onChange={(uM) => set({ uM })}
        />
        <PlaceFields label="Middle of the picture" place={depth.axis} onPlace={(axis) => set({ axis })} />
      </div>
      {isOpen && !isWhole && <p className="quiet">Kept, and used once all of it is known.</p>}
    </details>
  );
}
