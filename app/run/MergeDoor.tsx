import { useState } from 'react';
import type { Answer, Request } from '../../shared/contract/channels.ts';
import { takenWithWords } from '../../shared/format/takenWithWords.ts';
import { trialsWords } from '../../shared/format/trialsWords.ts';
import { counted, quantityText } from '../../shared/format/number.ts';
import type { Battery } from '../../shared/knowledge/screening/battery.ts';
import { GRADE_WORDS, SIDE_WORDS } from '../../shared/report/words.ts';
import { convert } from '../../shared/units.ts';
import { useCompareRunMutation, useExportRunMutation, useMergeRunMutation } from '../api.ts';
import { failureWords } from '../failureWords.ts';
import { Button } from '../parts/Button.tsx';
import { CellChoice } from '../parts/CellChoice.tsx';
import { FileDoor } from '../parts/FileDoor.tsx';
import { saveBlob } from '../parts/saveBlob.ts';
import { type Column, Table } from '../parts/Table.tsx';
import type { RunKey } from '../workbench/route.ts';

type Compared = Answer<'run.compare'>;
type Conflict = Compared['athletes'][number]['conflicts'][number] & { readonly caseId: string; readonly name: string };
type Choice = Request<'run.merge'>['choices'][number];

/** One squad on two laptops: the run as a file for the other one, and the other one's file into this run. */
export function MergeDoor({ run, battery }: { run: RunKey; battery: Battery }) {
  const [exportRun, exported] = useExportRunMutation();
  const [compare, compared] = useCompareRunMutation();
  const [merge, merged] = useMergeRunMutation();
  const [file, setFile] = useState<{ fileName: string; text: string } | null>(null);
  const [choices, setChoices] = useState<readonly Choice[]>([]);

  const save = async () => {
    const { data } = await exportRun(run);
    if (data !== undefined) saveBlob(data.fileName, new Blob([data.text], { type: 'application/json' }));
  };
  const look = (next: { fileName: string; text: string }) => {
    setFile(next);
    setChoices([]);
    merged.reset();
    void compare(next);
  };
  const take = async () => {
    if (file === null) return;
    const answer = await merge({ ...file, choices: [...choices] });
    if (answer.error !== undefined) return;
    setFile(null);
    compared.reset();
  };
  const failure = exported.error ?? compared.error ?? merged.error;

  return (
    <section aria-labelledby="merge-heading" className="squad-item">
      <h2 id="merge-heading">Two laptops</h2>
      <p className="row-of-buttons">
        <Button onClick={() => void save()}>Save this run as a file</Button>
      </p>
      <FileDoor
        label="Merge the run of another laptop"
        accept=".json"
        hint="A file saved there with the button above. What only that laptop has is added; where both have a result you choose. Nothing is stored before you have seen it."
        isBusy={compared.isLoading || merged.isLoading}
        onFile={({ name, text }) => look({ fileName: name, text })}
      />
      {failure !== undefined && (
        <p className="import-problem" role="alert">
          {failureWords(failure)} Nothing was changed.
        </p>
      )}
      {merged.data !== undefined && (
        <output>
          {counted(merged.data.added, 'result')} added, {merged.data.replaced} replaced by the other laptop’s.
        </output>
      )}
      {file !== null && compared.data !== undefined && (
        <MergePreview
          compared={compared.data}
          battery={battery}
          choices={choices}
          isBusy={merged.isLoading}
          onChoices={setChoices}
          onTake={() => void take()}
          onLeave={() => setFile(null)}
        />
      )}
    </section>
  );
}

function MergePreview(props: {
  compared: Compared;
  battery: Battery;
  choices: readonly Choice[];
  isBusy: boolean;
  onChoices: (choices: readonly Choice[]) => void;
  onTake: () => void;
  onLeave: () => void;
}) {
  const { compared, battery, choices, isBusy, onChoices, onTake, onLeave } = props;
  const conflicts = compared.athletes.flatMap(({ caseId, name, conflicts: all }): Conflict[] =>
    caseId === null ? [] : all.map((conflict) => ({ ...conflict, caseId, name })),
  );
  const leftOut = compared.athletes.filter(({ reason }) => reason !== null);
  const added = compared.athletes.reduce((sum, one) => sum + one.added.length, 0);
  const alike = compared.athletes.reduce((sum, one) => sum + one.alike, 0);
  const choose = (at: Conflict, taken: Choice['take'] | null) => {
    const others = choices.filter((choice) => !isAt(choice, at));
    const { caseId, itemId, side } = at;
    onChoices(taken === null ? others : [...others, { caseId, itemId, side, take: taken }]);
  };
  const all = (taken: Choice['take']) =>
    onChoices(conflicts.map(({ caseId, itemId, side }) => ({ caseId, itemId, side, take: taken })));

  return (
    <div className="merge-preview">
      <p>
        {counted(added, 'result')} only there, {alike} alike, {counted(conflicts.length, 'conflict')}.
      </p>
      {leftOut.length > 0 && (
        <ul className="warnings" aria-label="Left out">
          {leftOut.map(({ name, reason }) => (
            <li key={name}>
              <strong>{name}</strong> {reason}.
            </li>
          ))}
        </ul>
      )}
      {conflicts.length > 0 && (
        <>
          <Table
            caption="Both laptops have a result, and not the same one"
            rows={conflicts}
            rowKey={({ caseId, itemId, side }) => `${caseId} ${itemId} ${side}`}
            columns={conflictColumns(battery, choices, choose)}
          />
          <p className="row-of-buttons">
            <Button look="quiet" onClick={() => all('ours')}>
              Keep all from here
            </Button>
            <Button look="quiet" onClick={() => all('theirs')}>
              Take all from there
            </Button>
          </p>
        </>
      )}
      <p className="row-of-buttons">
        <Button look="main" disabled={isBusy || choices.length < conflicts.length} onClick={onTake}>
          Merge into this run
        </Button>
        <Button look="quiet" onClick={onLeave}>
          Leave this file
        </Button>
        {choices.length < conflicts.length && (
          <span className="quiet">{counted(conflicts.length - choices.length, 'conflict')} to decide first.</span>
        )}
      </p>
    </div>
  );
}

function isAt(choice: Choice, at: Conflict): boolean {
  return choice.caseId === at.caseId && choice.itemId === at.itemId && choice.side === at.side;
}

function conflictColumns(
  battery: Battery,
  choices: readonly Choice[],
  choose: (at: Conflict, taken: Choice['take'] | null) => void,
): readonly Column<Conflict>[] {
  return [
    { id: 'name', head: 'Athlete', cell: ({ name }) => name },
    { id: 'test', head: 'Test', cell: (one) => whatWords(battery, one) },
    { id: 'ours', head: 'Here', cell: ({ itemId, ours }) => resultWords(battery, itemId, ours) },
    { id: 'theirs', head: 'There', cell: ({ itemId, theirs }) => resultWords(battery, itemId, theirs) },
    {
      id: 'take',
      head: 'Keep',
      cell: (one) => (
        <CellChoice
          label={`Keep, ${one.name}, ${whatWords(battery, one)}`}
          value={choices.find((choice) => isAt(choice, one))?.take ?? null}
          choices={KEEP}
          empty="choose"
          onChange={(taken) => choose(one, taken)}
        />
      ),
    },
  ];
}

const KEEP = [
  { value: 'ours', label: 'here' },
  { value: 'theirs', label: 'there' },
] as const;

function whatWords(battery: Battery, { itemId, side }: Conflict): string {
  const label = battery.items.find(({ id }) => id === itemId)?.label ?? itemId;
  return side === 'none' ? label : `${label}, ${SIDE_WORDS[side]}`;
}

function resultWords(
  battery: Battery,
  itemId: string,
  { valueSi, grade, isPositive, painNrs, note, trialsSi, ...taken }: Conflict['ours'],
): string {
  const item = battery.items.find(({ id }) => id === itemId);
  const unit = item?.unit ?? null;
  const shown = item?.displayUnit ?? unit;
  const value =
    valueSi === null || unit === null || shown === null
      ? valueSi
      : quantityText({ value: convert(valueSi, unit, shown), unit: shown, u: null });
  const trials = trialsSi === null || unit === null || shown === null ? null : trialsWords(trialsSi, unit, shown);
  const answer = grade !== null ? GRADE_WORDS[grade] : isPositive === null ? null : isPositive ? 'yes, it hurts' : 'no';
  return [
    value ?? answer ?? 'no result',
    trials,
    painNrs === null ? null : `pain ${painNrs}`,
    takenWithWords(taken),
    note,
  ]
    .filter((part) => part !== null && part !== '')
    .join(', ');
}
