import { useState } from 'react';
import type { Request } from '../../../shared/contract/channels.ts';
import type { JumpTest } from '../../../shared/model/jump.ts';
import { quantityText } from '../../../shared/format/number.ts';
import { useImportForceMutation, usePreviewForceMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { FileDoor, type TakenFile } from '../../parts/FileDoor.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useCase } from '../useCase.ts';
import { ForceTrace } from './ForceTrace.tsx';

type ForceFile = Request<'jump.importForce'>['file'];

/** One force file: read, analysed and drawn before anything is kept; then kept as a trial of the test. */
export function ForceImport({ test }: { test: JumpTest }) {
  const { file } = useCase();
  const [preview, previewed] = usePreviewForceMutation();
  const [keep, kept] = useImportForceMutation();
  const [wanted, setWanted] = useState<ForceFile | null>(null);

  const look = (next: ForceFile) => {
    setWanted(next);
    kept.reset();
    void preview({ kind: test.kind, file: next });
  };
  const take = ({ name, text }: TakenFile) =>
    look({ fileName: name, text, columns: [], rateHz: null, massKg: file.athlete.massKg });
  const close = () => {
    setWanted(null);
    previewed.reset();
  };
  const add = async () => {
    if (wanted === null) return;
    const answer = await keep({ caseId: test.caseId, testId: test.id, file: wanted });
    if (answer.error === undefined) close();
  };
  const found = previewed.data;

  return (
    <div className="force-import">
      <FileDoor
        label="Add a jump from a force file"
        accept=".csv,.txt,.tsv"
        hint="CSV with vertical force in newtons, one row a sample, and a time column or a known rate. Choose it or drop it here; it is analysed and shown before it is kept."
        isBusy={previewed.isLoading || kept.isLoading}
        onFile={take}
      />
      <output className="import-state">
        {previewed.isLoading && <span className="appears-late">Reading and analysing {wanted?.fileName}…</span>}
        {kept.isLoading && <span className="appears-late">Keeping the jump…</span>}
        {kept.isSuccess && 'The jump is kept, with its file. It is the last row above.'}
      </output>
      {previewed.isError && wanted !== null && (
        <div className="import-problem" role="alert">
          <p>
            <strong>{wanted.fileName} is not taken in.</strong> {failureWords(previewed.error)}
          </p>
          <p>
            Nothing was changed. If the file itself is right, say below which columns hold vertical force and at what
            rate it was sampled, and look again; otherwise choose another file.
          </p>
        </div>
      )}
      {wanted !== null && (
        <div className="import-settings">
          {found === undefined ? (
            <TextField
              label="Force columns, by name, with commas between"
              value={wanted.columns.join(', ')}
              hint="Empty: recognised by name. Up to four; several are added up."
              onChange={(names) => setWanted({ ...wanted, columns: columnsIn(names) })}
            />
          ) : (
            <fieldset className="field">
              <legend className="field-label">Columns added up</legend>
              <div className="choices">
                {found.available.map((column) => (
                  <label key={column} className="choice">
                    <input
                      type="checkbox"
                      checked={found.summary.columns.includes(column)}
                      onChange={({ target }) => {
                        const now = found.summary.columns.filter((one) => one !== column);
                        const columns = target.checked ? [...now, column].slice(0, 4) : now;
                        if (columns.length > 0) look({ ...wanted, columns });
                      }}
                    />
                    <span>{column}</span>
                  </label>
                ))}
              </div>
            </fieldset>
          )}
          <NumberField
            label="Samples a second"
            unit="Hz"
            value={wanted.rateHz}
            possible={[0, 100_000]}
            isAbove
            hint={found === undefined ? 'Empty: from the time column.' : `Read as ${found.summary.rateHz} Hz.`}
            onChange={(rateHz) => setWanted({ ...wanted, rateHz })}
          />
          <NumberField
            label="Body mass"
            unit="kg"
            value={wanted.massKg}
            possible={[0, 400]}
            isAbove
            hint="Empty: from the quiet stance on the plate."
            onChange={(massKg) => setWanted({ ...wanted, massKg })}
          />
          <Button disabled={previewed.isLoading} onClick={() => look(wanted)}>
            Look again with these
          </Button>
        </div>
      )}
      {found !== undefined && wanted !== null && (
        <section className="import-preview" aria-label={`Preview of ${wanted.fileName}`}>
          <ForceTrace kind={test.kind} summary={found.summary} trace={found.trace} />
          <p>
            Jump height by take-off velocity{' '}
            <strong>{quantityText({ ...found.summary.jumpHeightM, unit: 'm' }, 'cm')}</strong>, by flight time{' '}
            {quantityText({ ...found.summary.jumpHeightFlightTimeM, unit: 'm' }, 'cm')}; body weight{' '}
            {quantityText({ ...found.summary.bodyWeightN, unit: 'N' })}.
          </p>
          {kept.isError && (
            <p className="import-problem" role="alert">
              The jump was not kept. {failureWords(kept.error)}
            </p>
          )}
          <div className="row-of-buttons">
            <Button look="main" disabled={kept.isLoading || previewed.isLoading} onClick={() => void add()}>
              Keep this jump
            </Button>
            <Button onClick={close}>Leave it</Button>
          </div>
        </section>
      )}
    </div>
  );
}

function columnsIn(names: string): string[] {
  return names
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '')
    .slice(0, 4);
}
