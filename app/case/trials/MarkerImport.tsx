import { useEffect, useRef, useState } from 'react';
import type { Answer } from '../../../shared/contract/channels.ts';
import {
  AXES,
  type Axis,
  MARKER_UNITS,
  type MarkerReading,
  type MarkerUnit,
} from '../../../shared/exchange/markerReading.ts';
import { plainLabel } from '../../../shared/exchange/suggestPoints.ts';
import { counted } from '../../../shared/format/number.ts';
import { sentenceCase } from '../../../shared/format/letterCase.ts';
import { pointWords } from '../../../shared/kernel/trial/trialCurves.ts';
import { MOVEMENTS } from '../../../shared/knowledge/movements/index.ts';
import type { SideOrNone } from '../../../shared/model/parts.ts';
import { BALL, LANDMARKS } from '../../../shared/model/trial.ts';
import { useImportMarkersMutation, usePreviewMarkersMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { type Column, Table } from '../../parts/Table.tsx';
import { today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';

const SIDES: readonly { value: SideOrNone; label: string }[] = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
  { value: 'none', label: 'No side' },
];
const UNITS = (Object.keys(MARKER_UNITS) as MarkerUnit[]).map((value) => ({ value, label: value }));
const AXIS_CHOICES = AXES.map((value) => ({ value, label: value.replace('-', '−') }));
const BODY = [...LANDMARKS, BALL].map((point) => ({ value: point, label: sentenceCase(pointWords(point)) }));

/** The markers of a C3D file: which point each is, and in which plane, looked over before anything is kept. */
export function MarkerImport(props: {
  file: { readonly fileName: string; readonly base64: string };
  onClose: () => void;
  onTaken: (trialId: string) => void;
}) {
  const { file, onClose, onTaken } = props;
  const opened = useCase().file;
  const [preview, previewed] = usePreviewMarkersMutation();
  const [take, taken] = useImportMarkersMutation();
  const [found, setFound] = useState<Answer<'trial.previewMarkers'> | null>(null);
  const [movementId, setMovementId] = useState<string | null>(null);
  const [side, setSide] = useState<SideOrNone>('none');
  const [pointUM, setPointUM] = useState<number | null>(null);
  const asked = useRef(0);

  const look = async (reading: MarkerReading | null) => {
    // What was decided stands on screen at once; the words about it follow.
    if (reading !== null) setFound((so) => (so === null ? so : { ...so, reading }));
    asked.current += 1;
    const mine = asked.current;
    const answer = await preview({ file: { ...file, reading } });
    if (mine === asked.current && answer.data !== undefined) setFound(answer.data);
  };
  const begin = useRef(look);
  useEffect(() => {
    void begin.current(null);
  }, []);

  if (previewed.isError && found === null) {
    return (
      <p className="import-problem" role="alert">
        <strong>{file.fileName} is not taken in.</strong> {failureWords(previewed.error)} Nothing was changed: choose
        another file. <Button onClick={onClose}>Close this notice</Button>
      </p>
    );
  }
  if (found === null) {
    return (
      <output className="import-state">
        <span className="appears-late">Reading {file.fileName}…</span>
      </output>
    );
  }
  const { reading, markers, open, words } = found;
  const decide = (fields: Partial<MarkerReading>) => void look({ ...reading, ...fields });
  // Two axes differ: whichever is moved onto the other, the other takes its place.
  const turn = (which: 'forward' | 'up', axis: Axis) => {
    const other = which === 'up' ? 'forward' : 'up';
    decide({ [which]: axis, ...(reading[other][1] === axis[1] ? { [other]: reading[which] } : {}) });
  };
  const add = async () => {
    if (movementId === null) return;
    const answer = await take({
      caseId: opened.case.id,
      file: { ...file, reading },
      movementId,
      side,
      filmedOn: today(),
      pointUM,
    });
    if (answer.data !== undefined) onTaken(answer.data.trialId);
  };
  const rows = markers.map((marker, i) => ({ ...marker, i, point: reading.points[i] ?? null }));
  return (
    <section className="marker-import" aria-label={`Markers of ${file.fileName}`}>
      <p>
        {file.fileName}: {counted(markers.length, 'marker')} in {counted(found.frames, 'frame')} at {found.rateHz} Hz,
        unit {found.units === '' ? 'not said' : found.units}.{' '}
        {found.isRemembered
          ? 'Points and plane are those kept from the last file with these markers.'
          : 'Points and plane are suggested from the labels and the places of the markers: look them over. A marker on the skin is not the joint.'}
      </p>
      <div className="import-settings">
        <ChoiceField
          label="Movement of the markers"
          look="list"
          value={movementId}
          neededFor="taking them in"
          choices={[...MOVEMENTS, ...opened.ownMovements].map(({ id, label }) => ({ value: id, label }))}
          onChange={setMovementId}
        />
        <ChoiceField label="Side of the movement" choices={SIDES} value={side} onChange={setSide} />
        <ChoiceField
          label="Axis that points forward"
          look="list"
          value={reading.forward}
          choices={AXIS_CHOICES}
          onChange={(axis) => turn('forward', axis)}
        />
        <ChoiceField
          label="Axis that points up"
          look="list"
          value={reading.up}
          choices={AXIS_CHOICES}
          onChange={(axis) => turn('up', axis)}
        />
        <ChoiceField
          label="Unit of length in the file"
          look="list"
          value={reading.unit}
          neededFor="taking them in"
          choices={UNITS}
          onChange={(unit) => decide({ unit })}
        />
        <NumberField
          label="Uncertainty of one coordinate"
          unit="m"
          entry={['mm', 'm']}
          possible={[0, 1]}
          value={pointUM}
          hint="As one standard uncertainty, marker on the skin included. Empty: not known, and measures say so."
          onChange={setPointUM}
        />
      </div>
      <MarkerTable
        rows={rows}
        frames={found.frames}
        onPoint={(i, chosen) => decide({ points: reading.points.map((one, k) => (k === i ? chosen : one)) })}
      />
      {open === null ? (
        <ul className="marker-words" aria-label="What is done with the markers">
          {words.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : (
        <p className="questioned">{failureWords({ message: open })}</p>
      )}
      {taken.isError && (
        <p className="import-problem" role="alert">
          The markers were not taken in. {failureWords(taken.error)}
        </p>
      )}
      <div className="row-of-buttons">
        <Button
          look="main"
          disabled={open !== null || movementId === null || taken.isLoading || previewed.isLoading}
          onClick={() => void add()}
        >
          Take in as a trial
        </Button>
        <Button onClick={onClose}>Leave it</Button>
      </div>
    </section>
  );
}

interface Row {
  readonly label: string;
  readonly framesSeen: number;
  readonly i: number;
  readonly point: string | null;
}

function MarkerTable(props: {
  rows: readonly Row[];
  frames: number;
  onPoint: (marker: number, point: string | null) => void;
}) {
  const { rows, frames, onPoint } = props;
  return (
    <div className="marker-table">
      <Table
        caption="Which point each marker is; of several the point is their middle"
        rowKey={({ i }) => String(i)}
        rows={rows}
        columns={columnsOf(frames, onPoint)}
      />
    </div>
  );
}

function columnsOf(frames: number, onPoint: (marker: number, point: string | null) => void): Column<Row>[] {
  return [
    { id: 'marker', head: 'Marker', cell: ({ label }) => label },
    { id: 'seen', head: 'Seen in', isNumber: true, cell: ({ framesSeen }) => `${framesSeen} of ${frames}` },
    {
      id: 'point',
      head: 'Point',
      cell: ({ label, i, point }) => (
        <CellChoice
          label={`Point of ${label}, marker ${i + 1}`}
          value={point}
          empty="Not taken"
          choices={choicesFor(plainLabel(label), point)}
          onChange={(chosen) => onPoint(i, chosen)}
        />
      ),
    },
  ];
}

/** The body, the ball, the marker as a point of its own, and whatever it is now. */
function choicesFor(label: string, point: string | null): { value: string; label: string }[] {
  const own = [label, point].filter(
    (name) => name !== null && name !== '' && BODY.every(({ value }) => value !== name),
  );
  return [...BODY, ...[...new Set(own)].map((name) => ({ value: name as string, label: `Point of its own: ${name}` }))];
}
