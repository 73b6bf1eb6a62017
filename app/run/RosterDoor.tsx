import { useState } from 'react';
import { ROSTER_FIELD_WORDS, ROSTER_FIELDS, ROSTER_READINGS, type RosterColumn } from '../../shared/exchange/roster.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import { counted, formatDate, quantityText } from '../../shared/format/number.ts';
import { isUnit, UNITS } from '../../shared/units.ts';
import { onCaseChanged, useForgetMappingMutation, useImportRosterMutation, usePreviewRosterMutation } from '../api.ts';
import { today } from '../case/newRecord.ts';
import { Button } from '../parts/Button.tsx';
import { CellChoice } from '../parts/CellChoice.tsx';
import { ErrorBar } from '../parts/ErrorBar.tsx';
import { RememberedReadings } from '../remembered/RememberedReadings.tsx';
import { FileDoor, type TakenFile } from '../parts/FileDoor.tsx';
import { type Column, Table } from '../parts/Table.tsx';
import { MOST_IN_RUN } from './mostInRun.ts';
import { TakenRosters } from './TakenRosters.tsx';

type Preview = Answer<'roster.preview'>;

/** A squad from a file: how it is read first, then all of it or none of it. */
export function RosterDoor(props: {
  onTaken: (caseIds: readonly string[]) => void;
  onTakenBack: (caseIds: readonly string[]) => void;
}) {
  const { onTaken, onTakenBack } = props;
  const [preview, { isLoading }] = usePreviewRosterMutation();
  const [take, { isLoading: isTaking }] = useImportRosterMutation();
  const [forget] = useForgetMappingMutation();
  const [read, setRead] = useState<{ file: TakenFile; mapping: RosterColumn[]; roster: Preview } | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [taken, setTaken] = useState<string | null>(null);
  const [judged, setJudged] = useState(0);

  const look = async (file: TakenFile, mapping: RosterColumn[]) => {
    const answer = await preview({ fileName: file.name, text: file.text, mapping });
    setTaken(null);
    setRead(answer.data === undefined ? null : { file, mapping, roster: answer.data });
    setRefusal(answer.error === undefined ? null : `${file.name} is not taken in. ${wordsOf(answer.error)}`);
  };
  const forgetReading = async () => {
    if (read === null) return;
    await forget({ door: 'roster', heads: read.roster.columns.map(({ column }) => column) });
    await look(read.file, []);
  };
  const accept = async () => {
    if (read === null) return;
    const { file, mapping } = read;
    setJudged(0);
    const stopCounting = onCaseChanged(() => setJudged((so) => so + 1));
    const answer = await take({ fileName: file.name, text: file.text, mapping, openedOn: today() });
    stopCounting();
    if (answer.data === undefined) {
      setRefusal(wordsOf(answer.error));
      return;
    }
    const { cases } = answer.data;
    const made = cases.filter(({ isNew }) => isNew).length;
    const isSquad = cases.length <= MOST_IN_RUN;
    setTaken(
      `${file.name}: ${counted(made, 'case')} opened, ${cases.length - made} on the shelf already. ${isSquad ? 'All are chosen below.' : 'Choose below who takes part in a run.'}`,
    );
    setRead(null);
    if (isSquad) onTaken(cases.map(({ caseId }) => caseId));
  };

  return (
    <div className="roster-door">
      <FileDoor
        label="Athletes from a list (CSV)"
        accept=".csv,.txt,.tsv"
        hint="One row an athlete, column heads in the first row, units in the heads: Name, Date of birth, Body mass (kg). Nothing is stored before you have seen how it is read."
        isBusy={isLoading || isTaking}
        onFile={(file) => void look(file, [])}
      />
      {refusal !== null && (
        <ErrorBar actions={<Button onClick={() => setRefusal(null)}>Close this notice</Button>}>
          {refusal} Nothing was changed.
        </ErrorBar>
      )}
      {taken !== null && <output>{taken}</output>}
      {isTaking && (
        <output>
          Taking in {counted(athletesOf(read?.roster).length, 'athlete')}: {judged} done. All of them are kept, or none.
        </output>
      )}
      <RememberedReadings door="roster" />
      <TakenRosters isOpen={taken !== null} onTakenBack={onTakenBack} />
      {read !== null && (
        <RosterPreview
          fileName={read.file.name}
          roster={read.roster}
          isBusy={isLoading || isTaking}
          onMap={(column) => void look(read.file, withColumn(read.roster, column))}
          onForget={() => void forgetReading()}
          onTake={() => void accept()}
          onLeave={() => setRead(null)}
        />
      )}
    </div>
  );
}

/** A table of thousands of rows helps nobody. */
const MOST_SHOWN = 100;

/** All that is decided about the columns, as shown, with one decided anew. */
function withColumn(roster: Preview, decided: RosterColumn): RosterColumn[] {
  return roster.columns.map(({ column, field, reading }) =>
    column === decided.column ? decided : { column, field: field ?? 'ignore', reading },
  );
}

function athletesOf(roster: Preview | undefined): readonly Preview['rows'][number][] {
  return roster?.rows.filter(({ repeats }) => repeats === null) ?? [];
}

function wordsOf(error: object | undefined): string {
  if (error === undefined || !('message' in error) || typeof error.message !== 'string') return 'It could not be read.';
  const path = 'path' in error && typeof error.path === 'string' ? ` (${error.path})` : '';
  return `${error.message.replace(/\.?$/, '')}${path}.`;
}

const FIELD_CHOICES = ROSTER_FIELDS.map((value) => ({ value, label: ROSTER_FIELD_WORDS[value] }));
const READING_WORDS: Readonly<Record<string, string>> = {
  'year-first': 'year first',
  'day-first': 'day first',
  'month-first': 'month first',
};

const PREVIEW_COLUMNS: readonly Column<Preview['rows'][number]>[] = [
  {
    id: 'name',
    head: 'Name',
    cell: ({ athlete }) => `${athlete.name}${athlete.isPseudonym ? ' (pseudonym)' : ''}`,
  },
  {
    id: 'born',
    head: 'Born',
    cell: ({ athlete }) => (athlete.birthDate === null ? '' : formatDate(athlete.birthDate)),
  },
  { id: 'sex', head: 'Reference', cell: ({ athlete }) => athlete.referenceSex ?? '' },
  {
    id: 'mass',
    head: 'Mass',
    isNumber: true,
    cell: ({ athlete }) =>
      athlete.massKg === null ? '' : quantityText({ value: athlete.massKg, unit: 'kg', u: null }),
  },
  {
    id: 'stature',
    head: 'Stature',
    isNumber: true,
    cell: ({ athlete }) =>
      athlete.statureM === null ? '' : quantityText({ value: athlete.statureM, unit: 'm', u: null }, 'cm'),
  },
  { id: 'side', head: 'Side', cell: ({ athlete }) => athlete.dominantSide ?? '' },
  {
    id: 'sport',
    head: 'Sport, position, level',
    cell: ({ athlete }) => [athlete.sport, athlete.position, athlete.level].filter((word) => word !== '').join(', '),
  },
  {
    id: 'state',
    head: 'On the shelf',
    cell: (row) => <RowState row={row} />,
  },
];

function RosterPreview(props: {
  fileName: string;
  roster: Preview;
  isBusy: boolean;
  onMap: (column: RosterColumn) => void;
  onForget: () => void;
  onTake: () => void;
  onLeave: () => void;
}) {
  const { fileName, roster, isBusy, onMap, onForget, onTake, onLeave } = props;
  const { columns, rows, problems } = roster;
  const athletes = athletesOf(roster);
  const shown = rows.filter(({ questions }, i) => i < MOST_SHOWN || questions.length > 0).slice(0, 2 * MOST_SHOWN);
  return (
    <section className="roster-preview" aria-label={`Preview of ${fileName}`}>
      <h3>How {fileName} is read</h3>
      <ul className="roster-columns">
        {columns.map(({ column, field, reading }) => (
          <li key={column}>
            <span>{column}</span>
            <CellChoice
              label={`What ${column} holds`}
              value={field}
              choices={FIELD_CHOICES}
              empty="not taken in"
              onChange={(chosen) => onMap({ column, field: chosen ?? 'ignore', reading: null })}
            />
            {(field === 'mass' || field === 'stature' || field === 'birth-date') && (
              <CellChoice
                label={`How ${column} is written`}
                value={reading}
                choices={ROSTER_READINGS[field].map((value) => ({
                  value,
                  label: READING_WORDS[value] ?? (isUnit(value) ? UNITS[value].label : value),
                }))}
                empty="not known"
                onChange={(chosen) => onMap({ column, field, reading: chosen })}
              />
            )}
          </li>
        ))}
      </ul>
      {roster.isRemembered && (
        <p className="quiet">
          The columns are read as in the last list with these heads.{' '}
          <Button look="quiet" onClick={onForget}>
            Forget that
          </Button>
        </p>
      )}
      {problems.length > 0 && (
        <div role="alert" className="roster-problems">
          <p>
            <strong>Not taken in as it is:</strong>
          </p>
          <ul>
            {problems.map(({ path, words }) => (
              <li key={`${path} ${words}`}>
                <strong>{path}</strong> {words}
              </li>
            ))}
          </ul>
        </div>
      )}
      <div className="roster-rows">
        <Table
          caption={`${counted(athletes.length, 'athlete')} read`}
          rows={shown}
          rowKey={({ line }) => String(line)}
          columns={PREVIEW_COLUMNS}
        />
      </div>
      {shown.length < rows.length && (
        <p className="quiet">
          The first {MOST_SHOWN} rows and those with a question are shown, {shown.length} of {rows.length}. All are
          read.
        </p>
      )}
      <p className="row-of-buttons">
        <Button disabled={isBusy || problems.length > 0 || athletes.length === 0} onClick={onTake}>
          Take in {counted(athletes.length, 'athlete')}
        </Button>
        <Button look="quiet" onClick={onLeave}>
          Leave this file
        </Button>
      </p>
    </section>
  );
}

/** Whom a row stands for, and what is unusual in it. */
function RowState({ row }: { row: Preview['rows'][number] }) {
  const { repeats, caseId, athleteId, questions } = row;
  return (
    <>
      {repeats !== null
        ? `as line ${repeats}, left out`
        : caseId !== null
          ? 'yes, this intake case is used'
          : athleteId !== null
            ? 'yes, a new intake case with their history'
            : 'new'}
      {questions.map((question) => (
        <span key={question} className="roster-question">
          {question}
        </span>
      ))}
    </>
  );
}
