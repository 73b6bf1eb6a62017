import { useState } from 'react';
import { movementOf } from '../../../shared/assess/movementOf.ts';
import { measuresCsv } from '../../../shared/exchange/measuresCsv.ts';
import { toDecimals } from '../../../shared/format/number.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { useKeepExportMutation, useKeepStillMutation } from '../../api.ts';
import { useCase } from '../../case/useCase.ts';
import { patch, useEdit } from '../../case/useEdit.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { pngOf } from './drawStill.ts';

/** Frames kept as figures for the report, and what can be taken out of the trial as a file. */
export function StillPanel(props: {
  trial: MovementTrial;
  timeS: number | null;
  /** The frame on the stage with what is drawn on it; null while there is none. */
  draw: () => HTMLCanvasElement | null;
  /** The frames of the events side by side; null where no event is set. */
  sheet: (() => Promise<HTMLCanvasElement>) | null;
  onSeek: (timeS: number) => void;
}) {
  const { trial, timeS, draw, sheet, onSeek } = props;
  const { file, assessment } = useCase();
  const edit = useEdit();
  const [caption, setCaption] = useState('');
  const [alt, setAlt] = useState('');
  const [keepStill, keeping] = useKeepStillMutation();
  const [keepExport, exporting] = useKeepExportMutation();
  const caseId = file.case.id;
  const stills = file.stills.filter(({ trialId }) => trialId === trial.id);
  const fileName = (sha256: string) => file.media.find((one) => one.sha256 === sha256)?.fileName ?? 'still.png';
  const stem = `${file.case.number || 'case'}-${trial.label || trial.movementId}`;

  const keep = async () => {
    const canvas = draw();
    if (canvas === null || timeS === null) return;
    const said = { trialId: trial.id, timeS, caption: caption.trim(), alt: alt.trim() };
    const answer = await keepStill({ caseId, ...said, png: pngOf(canvas) });
    if (answer.error === undefined) {
      setCaption('');
      setAlt('');
    }
  };
  const facts = assessment.facts.filter(
    ({ from }) =>
      from.id === trial.id || file.enteredMeasures.some((one) => one.id === from.id && one.trialId === trial.id),
  );
  const exportCsv = () =>
    keepExport({
      caseId,
      fileName: `${stem}-measures.csv`,
      file: { kind: 'csv', text: measuresCsv(facts, movementOf(file, trial.movementId)) },
    });
  const exportSheet = async () => {
    if (sheet === null) return;
    await keepExport({ caseId, fileName: `${stem}-phases.png`, file: { kind: 'png', base64: pngOf(await sheet()) } });
  };
  const failure = keeping.error ?? exporting.error;
  const saved = exporting.data?.href ?? null;
  return (
    <section className="bench-stills" aria-labelledby="bench-stills">
      <h3 id="bench-stills">Stills and files</h3>
      <p>
        Keeps the frame on the stage with its points, angles, path and scale as a figure that the report can use. Elbow
        and knee angles on it are drawn as they look in the picture.
      </p>
      <TextField label="Caption" hint="Printed below the figure." value={caption} onChange={setCaption} />
      <TextField label="What it shows" hint="Read to those who cannot see it." value={alt} onChange={setAlt} />
      <div className="row-of-buttons">
        <Button
          disabled={timeS === null || caption.trim() === '' || alt.trim() === '' || keeping.isLoading}
          onClick={() => void keep()}
        >
          Keep this frame as a figure
        </Button>
        <Button disabled={sheet === null || exporting.isLoading} onClick={() => void exportSheet()}>
          Make a contact sheet of the events
        </Button>
        <Button disabled={exporting.isLoading} onClick={() => void exportCsv()}>
          Make a table of the measures (CSV)
        </Button>
      </div>
      {failure !== undefined && (
        <p className="questioned" role="alert">
          {'message' in failure ? failure.message : 'It could not be kept.'}
        </p>
      )}
      <output className="import-state">
        {saved !== null && (
          <a href={saved} download>
            Save {decodeURIComponent(saved.split('/').at(-1) ?? '')}
          </a>
        )}
      </output>
      {stills.length === 0 ? (
        <EmptyState title="No frame of this trial is kept yet." />
      ) : (
        <ul className="bench-still-list">
          {stills.map((still) => (
            <li key={still.id}>
              <img src={`/files/${still.mediaSha}/${encodeURIComponent(fileName(still.mediaSha))}`} alt={still.alt} />
              <TextField
                label={`Caption of the still at ${toDecimals(still.timeS, 3)} s`}
                value={still.caption}
                onChange={(next) => edit([patch('still', still.id, { caption: next })])}
              />
              <div className="row-of-buttons">
                <Button look="quiet" onClick={() => onSeek(still.timeS)}>
                  Go to its frame
                </Button>
                <Button look="quiet" onClick={() => edit([{ op: 'remove', kind: 'still', id: still.id }])}>
                  Remove the still at {toDecimals(still.timeS, 3)} s
                </Button>
              </div>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
