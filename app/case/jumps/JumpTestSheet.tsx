import type { Fact } from '../../../shared/assess/assessment.ts';
import { type KeyboardEvent, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { JumpTest, JumpTrial } from '../../../shared/model/jump.ts';
import { counted, formatDate, toDecimals, withUnit } from '../../../shared/format/number.ts';
import { JUMP_KIND_WORDS, JUMP_METHOD_WORDS } from '../../../shared/report/words.ts';
import { UNITS } from '../../../shared/units.ts';
import { useTraceQuery } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { CELL_KEYS_WORDS, moveBetweenCells } from '../../parts/cellKeys.ts';
import { NumberField } from '../../parts/NumberField.tsx';
import { PainCell } from '../../parts/PainCell.tsx';
import { TrialDots } from '../../plots/TrialDots.tsx';
import { FactText } from '../FactText.tsx';
import { StopWords } from '../StopWords.tsx';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';
import { useFields } from '../useFields.ts';
import { ForceImport } from './ForceImport.tsx';
import { ForceTrace } from './ForceTrace.tsx';
import {
  columnsOf,
  factsFrom,
  type MeasureColumn,
  shownNumber,
  coefficientOfVariation,
  spreadOf,
  trialsOf,
} from './jumpFacts.ts';
import { emptyTrial } from './emptyTrial.ts';
import { JumpConditions } from './JumpConditions.tsx';
import { filmedName, TakeFromTrial } from './TakeFromTrial.tsx';

/** Measures a coach reads first; the rest stands under each trial. */
const IN_TABLE = ['jump.rsi', 'jump.rsiModified', 'jump.rsr'];

/** One test: its conditions, its trials with what each yields, and what they say together. */
export function JumpTestSheet({ test }: { test: JumpTest }) {
  const { file, assessment } = useCase();
  const edit = useEdit();
  const trials = trialsOf(file, test);
  const columns = columnsOf(assessment.facts, trials);
  const tabled = columns.filter((column) => column.isHeight || IN_TABLE.includes(column.measure));
  const ofTest = factsFrom(assessment.facts, test.id);
  const others = ofTest.filter((fact) => tabled.every((column) => column.measure !== fact.measure));
  const title = `${JUMP_KIND_WORDS[test.kind]}, ${JUMP_METHOD_WORDS[test.method]}`;
  const headingId = `test-${test.id}`;

  return (
    <section className="jump-test" aria-labelledby={headingId}>
      <header className="test-head">
        <h3 id={headingId}>
          {title} <span className="quiet">{formatDate(test.heldOn)}</span>
        </h3>
        <Button look="quiet" onClick={() => edit([{ op: 'remove', kind: 'jumpTest', id: test.id }])}>
          Remove this test
        </Button>
      </header>
      <JumpConditions test={test} />
      <TrialTable test={test} trials={trials} columns={tabled} title={title} />
      <StopWords about={test.id} />
      {test.method === 'force-plate' && <ForceImport test={test} />}
      {test.method === 'filmed-trial' && <TakeFromTrial test={test} trials={trials} />}
      {tabled.map((column) => (
        <Together
          key={column.measure}
          column={column}
          trials={trials}
          mean={ofTest.find((fact) => fact.measure === column.measure) ?? null}
        />
      ))}
      {others.length > 0 && (
        <dl className="fact-list" aria-label="From all trials of this test">
          {others.map((fact) => (
            <div key={fact.key}>
              <dt>{fact.label}</dt>
              <dd>
                <FactText fact={fact} />
              </dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}

function TrialTable(props: {
  test: JumpTest;
  trials: readonly JumpTrial[];
  columns: readonly MeasureColumn[];
  title: string;
}) {
  const { test, trials, columns, title } = props;
  const edit = useEdit();
  const table = useRef<HTMLTableElement>(null);
  const takesTyping = test.method !== 'force-plate' && test.method !== 'filmed-trial';

  const add = () => {
    const record = emptyTrial(test.id, (trials.at(-1)?.number ?? 0) + 1);
    // The row must stand before its first box can be entered.
    flushSync(() => edit([{ op: 'create', kind: 'jumpTrial', record }]));
    table.current?.querySelector<HTMLElement>('tbody:last-of-type input')?.focus();
  };

  const onKeyDown = (event: KeyboardEvent<HTMLTableElement>) => {
    moveBetweenCells(event);
    const isInput = event.target instanceof HTMLInputElement && event.target.type === 'text';
    // Enter in the last row: nothing below to go to, so a row is made.
    if (event.key === 'Enter' && !event.shiftKey && isInput && takesTyping && !event.defaultPrevented) add();
  };

  return (
    <>
      {trials.length > 0 && (
        <div className="table-room">
          {/* The table moves the focus between the controls in its cells; it is not one itself. */}
          {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
          <table className="table trial-table" ref={table} onKeyDown={onKeyDown}>
            <caption className="only-heard">Trials of {title}</caption>
            <thead>
              <tr>
                <th scope="col">Trial</th>
                {takesTyping && <InputHeads test={test} />}
                {columns.map((column) => (
                  <th key={column.measure} scope="col" className="number">
                    {column.label}
                  </th>
                ))}
                <th scope="col">Pain</th>
                <th scope="col">Set aside</th>
                <th scope="col">
                  <span className="only-heard">Remove</span>
                </th>
              </tr>
            </thead>
            {trials.map((trial) => (
              <TrialRows key={trial.id} test={test} trial={trial} columns={columns} />
            ))}
          </table>
        </div>
      )}
      {takesTyping && (
        <div className="row-of-buttons">
          <Button onClick={add}>{trials.length === 0 ? 'Enter the first trial' : 'Add a trial'}</Button>
          {trials.length > 0 && <p className="quiet">{CELL_KEYS_WORDS} Enter in the last row adds one.</p>}
        </div>
      )}
    </>
  );
}

function InputHeads({ test }: { test: JumpTest }) {
  if (test.method === 'jump-and-reach') return <th scope="col">Reach at the top</th>;
  return (
    <>
      <th scope="col">Flight time</th>
      {test.kind === 'drop' && <th scope="col">Contact time</th>}
    </>
  );
}

function TrialRows({ test, trial, columns }: { test: JumpTest; trial: JumpTrial; columns: readonly MeasureColumn[] }) {
  const edit = useEdit();
  const field = useFields('jumpTrial', trial);
  const [isOpen, setOpen] = useState(false);
  const name = `trial ${trial.number}`;
  const span = columns.length + 6;
  const isTimed = test.method === 'flight-time' || test.method === 'contact-mat';
  return (
    <tbody className={trial.isSetAside ? 'set-aside' : undefined}>
      <tr>
        <th scope="row" className="number">
          {trial.number}
          {trial.movementTrialId !== null && <FilmedTrial id={trial.movementTrialId} />}
        </th>
        {test.method === 'jump-and-reach' && (
          <td className="cell">
            <NumberField
              label={`Reach at the top, ${name}`}
              unit="m"
              entry={['cm', 'm']}
              possible={[0, 5]}
              isAbove
              {...field('jumpReachM')}
            />
          </td>
        )}
        {isTimed && (
          <td className="cell">
            <NumberField
              label={`Flight time, ${name}`}
              unit="s"
              entry={['s', 'ms']}
              possible={[0, 1.5]}
              isAbove
              {...field('flightTimeS')}
            />
          </td>
        )}
        {isTimed && test.kind === 'drop' && (
          <td className="cell">
            <NumberField
              label={`Contact time, ${name}`}
              unit="s"
              entry={['s', 'ms']}
              possible={[0, 5]}
              isAbove
              {...field('contactTimeS')}
            />
          </td>
        )}
        {columns.map((column) => {
          const fact = column.byTrial.get(trial.id);
          return (
            <td key={column.measure} className="number">
              {fact !== undefined && <FactText fact={fact} />}
            </td>
          );
        })}
        <td>
          <PainCell label={`Pain, ${name}`} {...field('painNrs')} />
        </td>
        <td>
          <input
            type="checkbox"
            aria-label={`Set aside, ${name}`}
            checked={trial.isSetAside}
            onChange={({ target }) => edit([patch('jumpTrial', trial.id, { isSetAside: target.checked })])}
          />
        </td>
        <td>
          <Button
            look="quiet"
            aria-label={`Remove ${name}`}
            onClick={() => edit([{ op: 'remove', kind: 'jumpTrial', id: trial.id }])}
          >
            Remove
          </Button>
        </td>
      </tr>
      {trial.force !== null && (
        <tr className="trace-row">
          <td colSpan={span}>
            <Button look="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
              {isOpen ? 'Hide' : 'Show'} the trace and all measures of {name}
            </Button>
            {isOpen && <TraceDetail test={test} trial={trial} />}
          </td>
        </tr>
      )}
    </tbody>
  );
}

/** Which filmed trial a jump was taken from, and the way there. */
function FilmedTrial({ id }: { id: string }) {
  const { file } = useCase();
  const filmed = file.movementTrials.find((one) => one.id === id);
  return <span className="quiet"> {filmed === undefined ? 'from a trial removed since' : filmedName(filmed)}</span>;
}

function TraceDetail({ test, trial }: { test: JumpTest; trial: JumpTrial }) {
  const { assessment } = useCase();
  const trace = useTraceQuery({ caseId: test.caseId, jumpTrialId: trial.id });
  return (
    <div className="trace-detail">
      {trace.isLoading && <p className="appears-late">Reading the trace…</p>}
      {trace.isError && <p className="import-problem">The trace cannot be shown. {failureWords(trace.error)}</p>}
      {trace.data !== undefined && trial.force !== null && (
        <ForceTrace kind={test.kind} summary={trial.force} trace={trace.data} />
      )}
      <dl className="fact-list">
        {factsFrom(assessment.facts, trial.id).map((fact) => (
          <div key={fact.key}>
            <dt>{fact.label}</dt>
            <dd>
              <FactText fact={fact} />
            </dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

/** Best, mean and spread of the trials not set aside, and every trial as a point. */
function Together(props: { column: MeasureColumn; trials: readonly JumpTrial[]; mean: Fact | null }) {
  const { column, trials, mean } = props;
  const dots = trials.flatMap((trial) => {
    const shown = shownNumber(column.byTrial.get(trial.id));
    return shown === null
      ? []
      : [{ id: trial.id, label: `trial ${trial.number}`, isSetAside: trial.isSetAside, ...shown }];
  });
  const spread = spreadOf(dots.filter((dot) => !dot.isSetAside).map((dot) => dot.value));
  if (spread === null || dots.length < 2) return null;
  const unit = column.unit === null ? '' : UNITS[column.unit].label;
  const decimals = decimalsFor(spread.best);
  const say = (value: number) => withUnit(toDecimals(value, decimals), unit);
  return (
    <section className="together" aria-label={`${column.label}, all trials`}>
      <h4>{column.label}</h4>
      <p>
        Best <strong>{say(spread.best)}</strong>, mean {mean === null ? say(spread.mean) : <FactText fact={mean} />} of{' '}
        {counted(spread.count, 'trial')}
        {spread.sd === null
          ? ''
          : `, standard deviation ${say(spread.sd)} (n − 1), coefficient of variation ${toDecimals(coefficientOfVariation(spread), 1)} %`}
        .
      </p>
      <TrialDots dots={dots} unit={unit} quantity={column.label} mean={spread.mean} sd={spread.sd} />
    </section>
  );
}

/** Three figures are what a jump of a few tens of centimetres, or an index near one, deserves. */
function decimalsFor(value: number): number {
  return Math.max(0, 2 - Math.floor(Math.log10(Math.max(Math.abs(value), 1e-9))));
}
