import { useRef, useState } from 'react';
import type { Answer, Request } from '../../../shared/contract/channels.ts';
import type { ForceSummary, JumpTest } from '../../../shared/model/jump.ts';
import { quantityText } from '../../../shared/format/number.ts';
import { useImportForceMutation, usePreviewForceMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { FileDoor, type TakenFile } from '../../parts/FileDoor.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useCase } from '../useCase.ts';
import { type ForceMarks, ForceTrace } from './ForceTrace.tsx';

type ForceFile = Request<'jump.importForce'>['file'];

/** One force file: read, analysed and drawn before anything is kept; then kept as a trial of the test. */
export function ForceImport({ test }: { test: JumpTest }) {
  const { file } = useCase();
  const [preview, previewed] = usePreviewForceMutation();
  const [keep, kept] = useImportForceMutation();
  const [wanted, setWanted] = useState<ForceFile | null>(null);
  // What was found last stays on screen while it is looked at again, so that a mark keeps the focus as it is moved.
  const [found, setFound] = useState<Answer<'jump.previewForce'> | null>(null);
  const asked = useRef(0);

  const look = async (next: ForceFile) => {
    setWanted(next);
    kept.reset();
    asked.current += 1;
    const mine = asked.current;
    const answer = await preview({ kind: test.kind, file: next });
    if (mine === asked.current) setFound(answer.data ?? null);
  };
  const take = ({ name, text, isBase64 }: TakenFile) => {
    setFound(null);
    void look({ fileName: name, text, isBase64, marks: null, columns: [], rateHz: null, massKg: file.athlete.massKg });
  };
  const place = (mark: keyof ForceMarks, timeS: number) => {
    if (wanted !== null) void look({ ...wanted, marks: { ...(wanted.marks ?? NO_MARKS), [mark]: timeS } });
  };
  const close = () => {
    setWanted(null);
    setFound(null);
    previewed.reset();
  };
  const add = async () => {
    if (wanted === null) return;
    const answer = await keep({ caseId: test.caseId, testId: test.id, file: wanted });
    if (answer.error === undefined) close();
  };
  return (
    <div className="force-import">
      <FileDoor
        label="Add a jump from a force file"
        accept=".csv,.txt,.tsv,.c3d"
        hint="CSV with vertical force in newtons, one row a sample, and a time column or a known rate; or a C3D with force plates. Choose it or drop it here; it is analysed and shown before it is kept."
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
          {found === null ? (
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
                        if (columns.length > 0) void look({ ...wanted, columns });
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
            hint={found === null ? 'Empty: from the time column.' : `Read as ${found.summary.rateHz} Hz.`}
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
          <Button disabled={previewed.isLoading} onClick={() => void look(wanted)}>
            Look again with these
          </Button>
        </div>
      )}
      {found !== null && wanted !== null && (
        <section className="import-preview" aria-label={`Preview of ${wanted.fileName}`}>
          <ForceTrace
            kind={test.kind}
            summary={placedIn(found.summary, wanted.marks)}
            trace={found.trace}
            onPlace={place}
          />
          <p className="quiet">
            Onset, take-off and landing can be dragged, or moved a sample at a time with the arrow keys, ten with Shift.
            What was placed by hand is kept and said with the jump.{' '}
            {(wanted.marks ?? null) !== null && (
              <Button look="quiet" onClick={() => void look({ ...wanted, marks: null })}>
                Put all marks back where they were found
              </Button>
            )}
          </p>
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

function put(found: ForceSummary['onsetS'], timeS: number | null | undefined): ForceSummary['onsetS'] {
  return typeof timeS === 'number' ? { value: timeS, u: null } : found;
}

/** A mark stands where it was put at once; the numbers follow when the record has been looked at again. */
function placedIn(summary: ForceSummary, marks: ForceFile['marks']): ForceSummary {
  return {
    ...summary,
    onsetS: put(summary.onsetS, marks?.onsetS),
    takeoffS: put(summary.takeoffS, marks?.takeoffS),
    landingS: put(summary.landingS, marks?.landingS),
  };
}

const NO_MARKS: ForceMarks = { onsetS: null, takeoffS: null, landingS: null };

function columnsIn(names: string): string[] {
  return names
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '')
    .slice(0, 4);
}
