import { useState } from 'react';
import type { Answer } from '../../../shared/contract/channels.ts';

import { formatDate } from '../../../shared/format/number.ts';
import { movementOf } from '../../../shared/assess/movementOf.ts';
import { MOVEMENTS } from '../../../shared/knowledge/movements/index.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { useImportTrialMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { FileDoor, type TakenFile } from '../../parts/FileDoor.tsx';
import { blankTrial } from '../../../shared/model/blank.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { RememberedReadings } from '../../remembered/RememberedReadings.tsx';
import { newId, today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { MarkerImport } from './MarkerImport.tsx';
import { OwnMovements } from './OwnMovements.tsx';
import { TrialSheet } from './TrialSheet.tsx';
import './trials.css';

/** Filmed trials: the list, a door for files, and the one opened. */
export function TrialsSection() {
  const { file } = useCase();
  const edit = useEdit();
  const [openId, setOpenId] = useState<string | null>(null);
  const [take, taken] = useImportTrialMutation();
  const [fileName, setFileName] = useState('');
  const [markers, setMarkers] = useState<{ fileName: string; base64: string } | null>(null);
  const [said, setSaid] = useState('');
  const trials = file.movementTrials;
  const open = trials.find((trial) => trial.id === openId) ?? trials.at(-1) ?? null;

  const bringIn = async ({ name, text, isBase64 }: TakenFile) => {
    setSaid('');
    if (isBase64) {
      setMarkers({ fileName: name, base64: text });
      return;
    }
    setMarkers(null);
    setFileName(name);
    const answer = await take({ caseId: file.case.id, fileName: name, text });
    if (answer.data !== undefined) setOpenId(answer.data.trialId);
  };
  const addByHand = () => {
    const trial = blankTrial(newId(), file.case.id, MOVEMENTS[0]?.id ?? '', today());
    edit([{ op: 'create', kind: 'movementTrial', record: trial }]);
    setOpenId(trial.id);
  };
  const doors = (
    <div className="trial-doors">
      <FileDoor
        label="Take in a trial file"
        accept=".json,.c3d"
        hint="JSON with landmarks, calibration and events, or a C3D with markers, which you look over first. Choose it or drop it here."
        isBusy={taken.isLoading}
        onFile={(chosen) => void bringIn(chosen)}
      />
      {markers !== null && (
        <MarkerImport
          key={`${markers.fileName} ${markers.base64.length}`}
          file={markers}
          onClose={() => setMarkers(null)}
          onTaken={(trialId) => {
            setMarkers(null);
            setSaid(`The markers of ${markers.fileName} are taken in. One step of undo takes them out again.`);
            setOpenId(trialId);
          }}
        />
      )}
      <Button onClick={addByHand}>Add a trial by hand</Button>
      <RememberedReadings door="markers" />
    </div>
  );
  if (open === null) {
    return (
      <>
        <EmptyState title="No trials yet.">
          <p>
            A trial is one filmed movement. Take in a file with its landmarks, or add one by hand and type in the events
            and the measures you have.
          </p>
          <ImportOutcome name={fileName} taken={taken} />
          {doors}
        </EmptyState>
        <OwnMovements />
      </>
    );
  }
  return (
    <div className="trials-section">
      <ImportOutcome name={fileName} taken={taken} />
      <output className="import-state">{said}</output>
      <ul className="trial-list" aria-label="Trials">
        {trials.map((trial) => (
          <li key={trial.id}>
            <button
              type="button"
              className="trial-choice"
              aria-pressed={trial.id === open.id}
              onClick={() => setOpenId(trial.id)}
            >
              <strong>{nameOf(trial, file)}</strong>
              <span className="quiet">{formatDate(trial.filmedOn)}</span>
            </button>
          </li>
        ))}
      </ul>
      <TrialSheet key={open.id} trial={open} title={nameOf(open, file)} />
      <section aria-labelledby="more-trials">
        <h3 id="more-trials">Another trial</h3>
        {doors}
      </section>
      <OwnMovements />
    </div>
  );
}

function nameOf(trial: MovementTrial, file: CaseFile): string {
  const movement = movementOf(file, trial.movementId)?.label ?? trial.movementId;
  return trial.label === '' ? movement : `${movement}, ${trial.label}`;
}

interface Taken {
  readonly isLoading: boolean;
  readonly data?: Answer<'trial.import'> | undefined;
  readonly error?: { readonly message?: string | undefined } | undefined;
}

/** How the last import went. It stands above the trials, wherever the door it came through is now. */
function ImportOutcome({ name, taken }: { name: string; taken: Taken }) {
  return (
    <>
      <output className="import-state">
        {taken.isLoading && <span className="appears-late">Reading {name}…</span>}
        {taken.data !== undefined && `${name} is taken in. One step of undo takes it out again.`}
      </output>
      {taken.data !== undefined && taken.data.warnings.length > 0 && (
        <ul className="warnings" aria-label={`Warnings about ${name}`}>
          {taken.data.warnings.map((warning) => (
            <li key={warning}>{warning}</li>
          ))}
        </ul>
      )}
      {taken.error !== undefined && (
        <p className="import-problem" role="alert">
          <strong>{name} is not taken in.</strong> {failureWords(taken.error)} Nothing was changed: mend the file and
          choose it again, or add the trial by hand.
        </p>
      )}
    </>
  );
}
