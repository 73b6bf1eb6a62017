import { memo } from 'react';
import type { Fact } from '../../../shared/assess/assessment.ts';
import type { Movement } from '../../../shared/knowledge/movement.ts';
import { MEASURES, measureById, possibleRangeSi } from '../../../shared/knowledge/measures/index.ts';
import type { EnteredMeasure, MovementTrial } from '../../../shared/model/trial.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { Button } from '../../parts/Button.tsx';
import { moveBetweenCells } from '../../parts/cellKeys.ts';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { FactText } from '../FactText.tsx';
import { newId } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';

const SIDES = [
  { value: 'left', label: 'left' },
  { value: 'right', label: 'right' },
] as const;
const YES_NO = [
  { value: 'yes', label: 'yes' },
  { value: 'no', label: 'no' },
] as const;

/** What the movement asks for in each phase, what is known of it, and the values typed in by hand. */
export const MeasureTables = memo(function MeasureTables(props: {
  trial: MovementTrial;
  movement: Movement | null;
  entered: readonly EnteredMeasure[];
}) {
  const { trial, movement, entered } = props;
  const { assessment } = useCase();
  const edit = useEdit();
  const sources = new Set([trial.id, ...entered.map((one) => one.id)]);
  const facts = assessment.facts.filter((fact) => sources.has(fact.from.id));
  const enter = (measureId: string, phase: string | null) => {
    const record: EnteredMeasure = {
      id: newId(),
      caseId: trial.caseId,
      trialId: trial.id,
      measureId,
      phase,
      side: trial.side,
      takenOn: trial.filmedOn,
      valueSi: null,
      uSi: null,
      flag: null,
      note: '',
    };
    edit([{ op: 'create', kind: 'enteredMeasure', record }]);
  };
  const phases = [
    ...(movement?.phases ?? []),
    { id: 'whole', label: 'Whole movement', means: 'Taken over the movement as a whole.' },
  ];
  const blocks = phases.map((phase) => ({ phase, rows: rowsOf(movement, phase.id, facts) }));
  return (
    <>
      {blocks
        .filter(({ rows }) => rows.length > 0)
        .map(({ phase, rows }) => (
          <table key={phase.id} className="table measure-table">
            <caption>
              <strong>{phase.label}</strong> <span className="quiet">{phase.means}</span>
            </caption>
            <thead>
              <tr>
                <th scope="col">Measure</th>
                <th scope="col">Value</th>
                <th scope="col">How</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ measureId, label, fact }) => (
                <tr key={fact?.key ?? measureId}>
                  <th scope="row">
                    {label}
                    {fact !== null && fact.side !== 'none' && <span className="quiet">, {fact.side}</span>}
                  </th>
                  <td>
                    {fact === null ? (
                      <span className="reading-unknown">not known: nothing recorded gives it yet</span>
                    ) : (
                      <FactText fact={fact} />
                    )}
                  </td>
                  <td className="measure-how">
                    {fact !== null && <span className="quiet">{howOf(fact)}</span>}
                    <Button
                      look="quiet"
                      aria-label={`Enter a value of ${label}, ${phase.label}`}
                      onClick={() => enter(measureId, phase.id)}
                    >
                      Enter a value
                    </Button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      <EnteredTable entered={entered} phases={phases} />
      <CellChoice
        label="Enter another measure"
        value={null}
        empty="Enter another measure…"
        choices={MEASURES.filter((measure) => measure.kind !== 'grade').map(({ id, label }) => ({ value: id, label }))}
        onChange={(id) => {
          if (id !== null) enter(id, 'whole');
        }}
      />
    </>
  );
});

interface Row {
  readonly measureId: string;
  readonly label: string;
  readonly fact: Fact | null;
}

/** In two words; the margin tells the whole of it. */
function howOf({ from, value }: Fact): string {
  if (from.kind === 'enteredMeasure') return 'by hand';
  return value.kind === 'number' && isKnown(value.reading) ? 'from the film' : '';
}

/** Every checkpoint of the phase, known or not, then whatever else is known there. */
function rowsOf(movement: Movement | null, phase: string, facts: readonly Fact[]): readonly Row[] {
  const here = facts.filter((fact) => (fact.phase ?? 'whole') === phase);
  const asked = (movement?.checkpoints ?? []).filter((checkpoint) => checkpoint.phase === phase);
  const askedIds = new Set(asked.map(({ measure }) => measure));
  const rows = asked.flatMap(({ measure }): Row[] => {
    const known = here.filter((fact) => fact.measure === measure);
    const label = measureById(measure)?.label ?? measure;
    if (known.length === 0) return [{ measureId: measure, label, fact: null }];
    return known.map((fact) => ({ measureId: measure, label: fact.label, fact }));
  });
  const others = here.filter((fact) => !askedIds.has(fact.measure));
  return [...rows, ...others.map((fact) => ({ measureId: fact.measure, label: fact.label, fact }))];
}

function EnteredTable(props: {
  entered: readonly EnteredMeasure[];
  phases: readonly { readonly id: string; readonly label: string }[];
}) {
  const { entered, phases } = props;
  const edit = useEdit();
  if (entered.length === 0) return null;
  return (
    // The table moves the focus between the controls in its cells; it is not one itself.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
    <table className="table entered-table" onKeyDown={moveBetweenCells}>
      <caption>
        <strong>Entered by hand</strong>
      </caption>
      <thead>
        <tr>
          <th scope="col">Measure</th>
          <th scope="col">Phase</th>
          <th scope="col">Side</th>
          <th scope="col">Value</th>
          <th scope="col">Standard uncertainty</th>
          <th scope="col">Taken with</th>
          <th scope="col">
            <span className="only-heard">Remove</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {entered.map((one) => {
          const measure = measureById(one.measureId);
          const label = measure?.label ?? one.measureId;
          const change = (fields: Partial<EnteredMeasure>) => edit([patch('enteredMeasure', one.id, fields)]);
          const units = measure?.displayUnit === null || measure === null ? [] : [measure.displayUnit];
          const possible = measure === null ? null : possibleRangeSi(measure.id);
          return (
            <tr key={one.id}>
              <th scope="row">{label}</th>
              <td>
                <CellChoice
                  label={`Phase, ${label}`}
                  value={one.phase}
                  empty="whole"
                  choices={phases.map((phase) => ({ value: phase.id, label: phase.label }))}
                  onChange={(phase) => change({ phase })}
                />
              </td>
              <td>
                <CellChoice
                  label={`Side, ${label}`}
                  value={one.side === 'none' ? null : one.side}
                  empty="no side"
                  choices={SIDES}
                  onChange={(side) => change({ side: side ?? 'none' })}
                />
              </td>
              <td className="cell">
                {measure?.kind === 'flag' ? (
                  <CellChoice
                    label={label}
                    value={one.flag === null ? null : one.flag ? 'yes' : 'no'}
                    empty="not answered"
                    choices={YES_NO}
                    onChange={(answer) => change({ flag: answer === null ? null : answer === 'yes' })}
                  />
                ) : (
                  <NumberField
                    label={label}
                    unit={measure?.unit ?? '1'}
                    {...(units.length > 0 ? { entry: units } : {})}
                    {...(possible === null ? {} : { possible })}
                    value={one.valueSi}
                    onChange={(valueSi) => change({ valueSi })}
                  />
                )}
              </td>
              <td className="cell">
                {measure?.kind !== 'flag' && (
                  <NumberField
                    label={`Standard uncertainty of ${label}`}
                    unit={measure?.unit ?? '1'}
                    {...(units.length > 0 ? { entry: units } : {})}
                    possible={[0, 1e6]}
                    value={one.uSi}
                    onChange={(uSi) => change({ uSi })}
                  />
                )}
              </td>
              <td>
                <input
                  className="input"
                  aria-label={`Taken with, ${label}`}
                  type="text"
                  maxLength={300}
                  value={one.note}
                  onChange={({ target }) => change({ note: target.value })}
                />
              </td>
              <td>
                <Button
                  look="quiet"
                  aria-label={`Remove the entered ${label}`}
                  onClick={() => edit([{ op: 'remove', kind: 'enteredMeasure', id: one.id }])}
                >
                  Remove
                </Button>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
