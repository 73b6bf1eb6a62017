import { useRef, useState } from 'react';
import type { Answer, Request } from '../../../shared/contract/channels.ts';
import { FORCE_UNITS, type ForceSummary, type JumpTest } from '../../../shared/model/jump.ts';
import { counted, quantityText } from '../../../shared/format/number.ts';
import { useForgetMappingMutation, useImportForceMutation, usePreviewForceMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { FileDoor, type TakenFile } from '../../parts/FileDoor.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { RememberedReadings } from '../../remembered/RememberedReadings.tsx';
import { useCase } from '../useCase.ts';
import { type ForceMarks, ForceTrace } from './ForceTrace.tsx';

type ForceFile = Request<'jump.importForce'>['file'];

/** One force file: read, analysed and drawn before anything is kept; then kept as a trial of the test. */
export function ForceImport({ test }: { test: JumpTest }) {
  const { file } = useCase();
  const [preview, previewed] = usePreviewForceMutation();
  const [keep, kept] = useImportForceMutation();
  const [forget] = useForgetMappingMutation();
  const [wanted, setWanted] = useState<ForceFile | null>(null);
  // What was found last stays on screen while it is looked at again, so that a mark keeps the focus as it is moved.
  const [found, setFound] = useState<Answer<'jump.previewForce'> | null>(null);
  // By the place of the jump in the record: what was put by hand, and what is not to be kept.
  const [placed, setPlaced] = useState<Placed>(new Map());
  const [leftOut, setLeftOut] = useState<ReadonlySet<number>>(new Set());
  const [shown, setShown] = useState(0);
  const asked = useRef(0);

  const look = async (next: ForceFile, marks: Placed = placed) => {
    const request = { ...next, marks: [...marks.values()] };
    setWanted(request);
    setPlaced(marks);
    kept.reset();
    asked.current += 1;
    const mine = asked.current;
    const answer = await preview({ kind: test.kind, file: request });
    if (mine !== asked.current) return;
    setFound(answer.data ?? null);
    // From here on every decision is on screen, whether it was made now or is kept from before.
    if (answer.data !== undefined) setWanted({ ...request, ...answer.data.reading });
  };
  const take = ({ name, text, isBase64 }: TakenFile) => {
    setFound(null);
    setLeftOut(new Set());
    setShown(0);
    const nothing = { columns: [], rateHz: null, forceUnit: null };
    void look({ fileName: name, text, isBase64, ...nothing, massKg: file.athlete.massKg }, new Map());
  };
  const place = (mark: keyof ForceMarks, timeS: number) => {
    if (wanted === null) return;
    void look(wanted, new Map(placed).set(shown, { ...(placed.get(shown) ?? NO_MARKS), [mark]: timeS }));
  };
  const close = () => {
    setWanted(null);
    setFound(null);
    previewed.reset();
  };
  const forgetReading = async () => {
    if (wanted === null || found === null) return;
    await forget({ door: 'force', heads: found.available });
    await look({ ...wanted, columns: [], rateHz: null, forceUnit: null });
  };
  const summaries = found?.summaries ?? [];
  const chosen = summaries.flatMap((_summary, i) => (leftOut.has(i) ? [] : [i]));
  const summary = summaries[shown] ?? summaries[0];
  const add = async () => {
    if (wanted === null) return;
    const answer = await keep({ caseId: test.caseId, testId: test.id, file: wanted, jumps: chosen });
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
      <RememberedReadings door="force" />
      <output className="import-state">
        {previewed.isLoading && <span className="appears-late">Reading and analysing {wanted?.fileName}…</span>}
        {kept.isLoading && <span className="appears-late">Keeping the jump…</span>}
        {kept.isSuccess && 'Kept, with the file, as the last rows above.'}
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
          {found === null || summary === undefined ? (
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
                      checked={summary.columns.includes(column)}
                      onChange={({ target }) => {
                        const now = summary.columns.filter((one) => one !== column);
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
            hint={found === null ? 'Empty: from the time column.' : `Read as ${summary?.rateHz} Hz.`}
            onChange={(rateHz) => setWanted({ ...wanted, rateHz })}
          />
          <ChoiceField
            label="Unit of the forces"
            look="list"
            value={wanted.forceUnit ?? null}
            choices={FORCE_UNITS.map((value) => ({ value, label: value }))}
            empty="As the heads say, else newtons"
            onChange={(forceUnit) => setWanted({ ...wanted, forceUnit })}
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
      {found?.isRemembered === true && (
        <p className="quiet">
          Columns, rate and unit are those kept from the last file with these heads.{' '}
          <Button look="quiet" onClick={() => void forgetReading()}>
            Forget them
          </Button>
        </p>
      )}
      {found !== null && wanted !== null && summary !== undefined && (
        <section className="import-preview" aria-label={`Preview of ${wanted.fileName}`}>
          {summaries.length > 1 && (
            <JumpsFound
              summaries={summaries}
              shown={shown}
              leftOut={leftOut}
              onShow={setShown}
              onLeaveOut={setLeftOut}
            />
          )}
          <ForceTrace
            kind={test.kind}
            summary={placedIn(summary, placed.get(shown))}
            trace={found.trace}
            onPlace={place}
          />
          <p className="quiet">
            Onset, take-off and landing can be dragged, or moved a sample at a time with the arrow keys, ten with Shift.
            What was placed by hand is kept and said with the jump.{' '}
            {placed.size > 0 && (
              <Button look="quiet" onClick={() => void look(wanted, new Map())}>
                Put all marks back where they were found
              </Button>
            )}
          </p>
          <p>
            Jump height by take-off velocity{' '}
            <strong>{quantityText({ ...summary.jumpHeightM, unit: 'm' }, 'cm')}</strong>, by flight time{' '}
            {quantityText({ ...summary.jumpHeightFlightTimeM, unit: 'm' }, 'cm')}; body weight{' '}
            {quantityText({ ...summary.bodyWeightN, unit: 'N' })}.
          </p>
          {kept.isError && (
            <p className="import-problem" role="alert">
              The jump was not kept. {failureWords(kept.error)}
            </p>
          )}
          <div className="row-of-buttons">
            <Button
              look="main"
              disabled={kept.isLoading || previewed.isLoading || chosen.length === 0}
              onClick={() => void add()}
            >
              {summaries.length === 1 ? 'Keep this jump' : `Keep ${counted(chosen.length, 'jump')}`}
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
function placedIn(summary: ForceSummary, marks: ForceMarks | undefined): ForceSummary {
  return {
    ...summary,
    onsetS: put(summary.onsetS, marks?.onsetS),
    takeoffS: put(summary.takeoffS, marks?.takeoffS),
    landingS: put(summary.landingS, marks?.landingS),
  };
}

/** The jumps of one record: which is drawn with its marks, and which are to be kept. */
function JumpsFound(props: {
  summaries: readonly ForceSummary[];
  shown: number;
  leftOut: ReadonlySet<number>;
  onShow: (jump: number) => void;
  onLeaveOut: (jumps: ReadonlySet<number>) => void;
}) {
  const { summaries, shown, leftOut, onShow, onLeaveOut } = props;
  return (
    <div className="jumps-found">
      <ChoiceField
        label="Jump whose marks are shown"
        value={String(shown)}
        choices={summaries.map((summary, i) => ({
          value: String(i),
          label: `Jump ${i + 1}, take-off at ${summary.takeoffS.value.toFixed(2)} s`,
        }))}
        onChange={(jump) => onShow(Number(jump))}
      />
      <fieldset className="field">
        <legend className="field-label">Jumps to keep, each as a trial</legend>
        <div className="choices">
          {summaries.map((summary, i) => (
            <label key={summary.takeoffS.value} className="choice">
              <input
                type="checkbox"
                checked={!leftOut.has(i)}
                onChange={({ target }) => {
                  const next = new Set(leftOut);
                  if (target.checked) next.delete(i);
                  else next.add(i);
                  onLeaveOut(next);
                }}
              />
              <span>
                Jump {i + 1}, {quantityText({ ...summary.jumpHeightM, unit: 'm' }, 'cm')}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
    </div>
  );
}

type Placed = ReadonlyMap<number, ForceMarks>;

const NO_MARKS: ForceMarks = { onsetS: null, takeoffS: null, landingS: null };

function columnsIn(names: string): string[] {
  return names
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '')
    .slice(0, 4);
}
