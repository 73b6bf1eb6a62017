import { useState } from 'react';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { formatDate } from '../../../shared/format/number.ts';
import { MOVEMENTS, movementById } from '../../../shared/knowledge/movements/index.ts';
import { useImportTrialMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { FileDoor, type TakenFile } from '../../parts/FileDoor.tsx';
import { newId, today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { TrialSheet } from './TrialSheet.tsx';
import './trials.css';

/** Filmed trials: the list, a door for files, and the one opened. */
export function TrialsSection() {
  const { file } = useCase();
  const edit = useEdit();
  const [openId, setOpenId] = useState<string | null>(null);
  const trials = file.movementTrials;
  const open = trials.find((trial) => trial.id === openId) ?? trials.at(-1) ?? null;

  const addByHand = () => {
    const trial = emptyTrial(file.case.id);
    edit([{ op: 'create', kind: 'movementTrial', record: trial }]);
    setOpenId(trial.id);
  };
  const doors = (
    <div className="trial-doors">
      <TrialImport onTaken={setOpenId} />
      <Button onClick={addByHand}>Add a trial by hand</Button>
    </div>
  );
  if (open === null) {
    return (
      <EmptyState title="No trials yet.">
        <p>
          A trial is one filmed movement. Take in a file with its landmarks, or add one by hand and type in the events
          and the measures you have.
        </p>
        {doors}
      </EmptyState>
    );
  }
  return (
    <div className="trials-section">
      <ul className="trial-list" aria-label="Trials">
        {trials.map((trial) => (
          <li key={trial.id}>
            <button
              type="button"
              className="trial-choice"
              aria-pressed={trial.id === open.id}
              onClick={() => setOpenId(trial.id)}
            >
              <strong>{nameOf(trial)}</strong>
              <span className="quiet">{formatDate(trial.filmedOn)}</span>
            </button>
          </li>
        ))}
      </ul>
      <TrialSheet key={open.id} trial={open} title={nameOf(open)} />
      <section aria-labelledby="more-trials">
        <h3 id="more-trials">Another trial</h3>
        {doors}
      </section>
    </div>
  );
}

function nameOf(trial: MovementTrial): string {
  const movement = movementById(trial.movementId)?.label ?? trial.movementId;
  return trial.label === '' ? movement : `${movement}, ${trial.label}`;
}

function TrialImport({ onTaken }: { onTaken: (trialId: string) => void }) {
  const { file } = useCase();
  const [take, taken] = useImportTrialMutation();
  const [name, setName] = useState('');
  const bringIn = async ({ name: fileName, text }: TakenFile) => {
    setName(fileName);
    const answer = await take({ caseId: file.case.id, fileName, text });
    if (answer.data !== undefined) onTaken(answer.data.trialId);
  };
  return (
    <div>
      <FileDoor
        label="Take in a trial file"
        accept=".json"
        hint="JSON with landmarks, calibration and events. Choose it or drop it here."
        isBusy={taken.isLoading}
        onFile={(chosen) => void bringIn(chosen)}
      />
      <output className="import-state">
        {taken.isLoading && <span className="appears-late">Reading {name}…</span>}
        {taken.isSuccess && `${name} is taken in. One step of undo takes it out again.`}
      </output>
      {taken.isSuccess && taken.data.warnings.length > 0 && (
        <ul className="warnings" aria-label={`Warnings about ${name}`}>
          {taken.data.warnings.map((warning) => (
            <li key={warning}>{warning}</li>
          ))}
        </ul>
      )}
      {taken.isError && (
        <p className="import-problem" role="alert">
          <strong>{name} is not taken in.</strong> {failureWords(taken.error)} Nothing was changed: mend the file and
          choose it again, or add the trial by hand.
        </p>
      )}
    </div>
  );
}

function emptyTrial(caseId: string): MovementTrial {
  return {
    id: newId(),
    caseId,
    movementId: MOVEMENTS[0]?.id ?? '',
    filmedOn: today(),
    label: '',
    side: 'none',
    captureRateHz: null,
    playbackRateHz: null,
    calibration: null,
    ballId: null,
    targetDistanceM: null,
    targetHeightM: null,
    painNrs: null,
    note: '',
  };
}
