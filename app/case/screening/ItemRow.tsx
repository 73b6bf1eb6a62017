import { useId } from 'react';
import { overLimbMeasure } from '../../../shared/assess/overLimb.ts';
import { type EnteredResult, NO_RESULT, readResult, writeResult } from '../../../shared/exchange/resultEntry.ts';
import { valueOf } from '../../../shared/format/typed.ts';
import { resultWords } from '../../../shared/knowledge/screening/readBattery.ts';
import { usualRange } from '../../../shared/assess/usualRange.ts';
import type { BatteryItem } from '../../../shared/knowledge/screening/battery.ts';
import type { SideOrNone } from '../../../shared/model/parts.ts';
import { GRADES, type ScreeningResult, type ScreeningSession } from '../../../shared/model/screening.ts';
import { GRADE_WORDS } from '../../../shared/report/words.ts';
import { convert, UNITS } from '../../../shared/units.ts';
import { withUnit } from '../../../shared/format/number.ts';
import { takenWithWords } from '../../../shared/format/takenWithWords.ts';
import { CellChoice } from '../../parts/CellChoice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { PainCell } from '../../parts/PainCell.tsx';
import { Words } from '../../parts/Words.tsx';
import { useTyped } from '../../parts/useTyped.ts';
import { useSelect } from '../selection.ts';
import { FactText } from '../FactText.tsx';
import { StopWords } from '../StopWords.tsx';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { reasonsToSkip, resultEdits, type ResultFields, resultOf, sideDifference } from './results.ts';
import { NOTHING_TAKEN, type TakenWith } from './takenWith.ts';
import { TakenWithFields } from './TakenWithFields.tsx';
import { today } from '../newRecord.ts';

const CHOICES = GRADES.map((value) => ({ value, label: GRADE_WORDS[value] }));
const CLEARING = [
  { value: 'yes', label: 'yes, it hurts' },
  { value: 'no', label: 'no' },
] as const;

/** One item of the battery: its result and pain on each side, what to leave out and why, and what the sides say together. */
export function ItemRow(props: { session: ScreeningSession; item: BatteryItem; results: readonly ScreeningResult[] }) {
  const { session, item, results } = props;
  const { file, assessment } = useCase();
  const sides: readonly SideOrNone[] = item.hasSides ? ['left', 'right'] : ['none'];
  const found = sides.map((side) => resultOf(results, session.id, item.id, side));
  const [left = null, right = null] = found;
  const edit = useEdit();
  const held = found.filter((result) => result !== null);
  const [taken = NOTHING_TAKEN] = held;
  const skip = reasonsToSkip(item, file.injuries, today());
  const difference = sideDifference(item, left, right);
  const readings = found.flatMap((result) =>
    assessment.facts.filter(
      (fact) => fact.from.id === result?.id && fact.measure === item.measure && fact.value.kind === 'number',
    ),
  );
  const hintId = useId();
  const share = overLimbMeasure(item);
  const shares = assessment.facts.filter(
    (fact) => fact.measure === share && held.some(({ id }) => id === fact.from.id),
  );
  const stops = found.flatMap((result) => (result === null ? [] : [result.id]));

  return (
    <tbody className={skip.length > 0 ? 'item item-skipped' : 'item'}>
      <tr>
        <th scope="row">{item.label}</th>
        {sides.map((side, i) => (
          <ResultCells
            key={side}
            session={session}
            item={item}
            side={side}
            result={found[i] ?? null}
            taken={taken}
            hintId={hintId}
          />
        ))}
        {!item.hasSides && (
          <td colSpan={2} className="quiet">
            no sides
          </td>
        )}
      </tr>
      <tr className="item-words">
        <td colSpan={5}>
          {skip.length > 0 && (
            <p>
              <Words weight="heavy">leave this out</Words> unless a clinician asks for it: {skip.join(' ')}
            </p>
          )}
          {stops.map((id) => (
            <StopWords key={id} about={id} />
          ))}
          {readings.length > 0 && (
            <p>
              {readings.map((fact) => (
                <span key={fact.key} className="item-reading">
                  {fact.side === 'none' ? 'Reads' : fact.side} <FactText fact={fact} />
                </span>
              ))}
              {difference !== null && (
                <>
                  <strong>{difference.words}</strong>, <span className="quiet">{difference.errorWords}</span>
                </>
              )}
            </p>
          )}
          {shares.length > 0 && (
            <p>
              Over the {item.dividedBy?.replace('-', ' ')}:
              {shares.map((fact, i) => (
                <span key={fact.key}>
                  {i === 0 ? ' ' : '; '}
                  {fact.side}{' '}
                  {fact.value.kind === 'unknown' ? <>can’t tell, {fact.value.reason}</> : <FactText fact={fact} />}
                </span>
              ))}
            </p>
          )}
          {item.trials !== undefined && (
            <p className="quiet" id={hintId}>
              Several trials with + between them: {resultWords(item.trials)} counts.
            </p>
          )}
          <OwnWords item={item} />
          {gradesDiffer(left, right) && <p>Sides: graded differently. Grades have no error figure; look again.</p>}
          <div className="item-folds">
            <ItemDetails item={item} range={usualRange(item, file.athlete, session.heldOn)} />
            {held.length > 0 && (
              <details className="item-details">
                <summary>{takenWithWords(taken) || 'Device, position, shoes'}</summary>
                <TakenWithFields
                  item={item.label}
                  value={taken}
                  onChange={({ device, position, shoes }) =>
                    edit(
                      held.map(({ id }) => ({
                        op: 'patch',
                        kind: 'screeningResult',
                        id,
                        fields: { device, position, shoes },
                      })),
                    )
                  }
                />
              </details>
            )}
          </div>
        </td>
      </tr>
    </tbody>
  );
}

/** What no rule of the program says anything of, and why. */
function OwnWords({ item: { own, reference, kind } }: { item: BatteryItem }) {
  if (own === undefined || own.link !== null) return null;
  const origin =
    own.cut.length === 0 ? 'An item of your own' : `No longer the item of the program: ${own.cut.join('; ')}`;
  const said =
    kind === 'clearing'
      ? 'yes stops, as always'
      : reference === null
        ? 'can’t tell, no reference'
        : 'no rule judges it; its usual range is your own';
  return (
    <p className="quiet">
      {origin}: {said}.
    </p>
  );
}

function gradesDiffer(left: ScreeningResult | null, right: ScreeningResult | null): boolean {
  const [l, r] = [left?.grade ?? null, right?.grade ?? null];
  return l !== null && r !== null && l !== r;
}

function ResultCells(props: {
  session: ScreeningSession;
  item: BatteryItem;
  side: SideOrNone;
  result: ScreeningResult | null;
  /** As the other side was taken. */
  taken: TakenWith;
  /** Of the words on how trials are typed. */
  hintId: string;
}) {
  const { session, item, side, result, taken, hintId } = props;
  const edit = useEdit();
  const select = useSelect();
  const named = side === 'none' ? item.label : `${item.label}, ${side}`;
  const onFocus = () => {
    if (result !== null) select({ kind: 'record', recordKind: 'screeningResult', id: result.id, field: null });
  };
  const store = (fields: Partial<ResultFields>) => {
    const { device, position, shoes } = taken;
    const at = { sessionId: session.id, itemId: item.id, side };
    const edits = resultEdits(at, result, fields, { device, position, shoes });
    if (edits.length > 0) edit(edits);
  };

  return (
    <>
      <td className="cell">
        {item.kind === 'graded' && (
          <CellChoice
            label={named}
            value={result?.grade ?? null}
            choices={CHOICES}
            empty="not entered"
            onFocus={onFocus}
            onChange={(grade) => store({ grade })}
          />
        )}
        {item.kind === 'clearing' && (
          <CellChoice
            label={named}
            value={result === null || result.isPositive === null ? null : result.isPositive ? 'yes' : 'no'}
            choices={CLEARING}
            empty="not entered"
            onFocus={onFocus}
            onChange={(answer) => store({ isPositive: answer === null ? null : answer === 'yes' })}
          />
        )}
        {item.trials !== undefined && (
          <TrialsField label={named} item={item} result={result} hintId={hintId} onFocus={onFocus} onChange={store} />
        )}
        {item.trials === undefined && item.unit !== null && item.displayUnit !== null && (
          <NumberField
            label={named}
            unit={item.unit}
            entry={[item.displayUnit]}
            value={result?.valueSi ?? null}
            isWhole={item.kind === 'counted'}
            {...rangesSi(item)}
            onFocus={onFocus}
            onChange={(valueSi) => store({ valueSi })}
          />
        )}
      </td>
      <td>
        <PainCell
          label={`Pain, ${named}`}
          value={result?.painNrs ?? null}
          onFocus={onFocus}
          onChange={(painNrs) => store({ painNrs })}
        />
      </td>
    </>
  );
}

/** One value or several trials, typed as in an intake run: `41+42.5`. */
function TrialsField(props: {
  label: string;
  item: BatteryItem;
  result: ScreeningResult | null;
  hintId: string;
  onFocus: () => void;
  onChange: (fields: EnteredResult) => void;
}) {
  const { label, item, result, hintId, onFocus, onChange } = props;
  const id = useId();
  const [text, setText] = useTyped<string>(
    writeResult(item, result) || null,
    (same) => same,
    (typed) => ({ value: writeResult(item, valueOf(readResult(item, typed))) || null }),
  );
  const typed = readResult(item, text);
  const refusal = 'refusal' in typed ? typed.refusal : null;
  const unit = item.displayUnit === null ? '' : UNITS[item.displayUnit].label;
  return (
    <>
      <span className="field-row">
        <input
          className="input input-number"
          aria-label={unit === '' ? label : `${label}, ${unit}`}
          aria-describedby={refusal === null ? hintId : id}
          aria-invalid={refusal !== null || undefined}
          autoComplete="off"
          value={text}
          onFocus={onFocus}
          onChange={({ target }) => {
            setText(target.value);
            onChange(valueOf(readResult(item, target.value)) ?? NO_RESULT);
          }}
        />{' '}
        {unit}
      </span>
      {refusal !== null && (
        <span id={id} className="field-notes">
          {refusal}
        </span>
      )}
    </>
  );
}

function rangesSi({ unit, displayUnit, possible, plausible, source, own }: BatteryItem) {
  if (unit === null || displayUnit === null) return {};
  const si = ([low, high]: readonly [number, number]) =>
    [convert(low, displayUnit, unit), convert(high, displayUnit, unit)] as const;
  return {
    ...(possible === null ? {} : { possible: si(possible) }),
    ...(plausible === null ? {} : { plausible: { range: si(plausible), source: own?.plausibleSource ?? source } }),
  };
}

/** How to do the item, its written standard, its caution and its usual range: there when asked for. */
function ItemDetails({ item, range }: { item: BatteryItem; range: BatteryItem['reference'] }) {
  const { standard, displayUnit } = item;
  return (
    <details className="item-details">
      <summary>How to do it, and cautions</summary>
      <ol>
        {item.instructions.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {standard !== null && (
        <dl>
          <dt>met</dt>
          <dd>{standard.met}</dd>
          <dt>met with compensation</dt>
          <dd>{standard.metWithCompensation}</dd>
          <dt>not met</dt>
          <dd>{standard.notMet}</dd>
        </dl>
      )}
      <p>
        <strong>Caution.</strong> {item.caution}
      </p>
      {range !== null && (
        <p>
          Usual range, never a pass mark:{' '}
          {withUnit(`${range.low} to ${range.high}`, displayUnit === null ? '' : UNITS[displayUnit].label)} (
          {range.group}; {range.source.status}: {range.source.cite}).
        </p>
      )}
      {range === null && item.reference !== null && (
        <p>The usual range on file is of others than this athlete ({item.reference.group}), so it is not shown.</p>
      )}
      <p className="source">
        {item.source.status}: {item.source.cite}
      </p>
    </details>
  );
}
