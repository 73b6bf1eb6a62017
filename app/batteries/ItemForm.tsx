import { lowerFirst } from '../../shared/format/letterCase.ts';
import { conditionEntry } from '../../shared/knowledge/conditions/index.ts';
import type { BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import type { BatteryProblem } from '../../shared/knowledge/screening/batteryProblems.ts';
import { shippedItem } from '../../shared/knowledge/screening/shipped.ts';
import { tidyItem } from '../../shared/knowledge/screening/tidyItem.ts';
import { DIVIDED_BY, ITEM_KINDS, ITEM_UNITS, MOST_TRIALS, type OwnItem } from '../../shared/model/battery.ts';
import { CONDITIONS, REGIONS } from '../../shared/model/injury.ts';
import { siUnitOf, UNITS } from '../../shared/units.ts';
import { REGION_WORDS } from '../case/injuries/regionWords.ts';
import { Clause } from '../rules/Clause.tsx';
import { NumberBox, Pick } from '../rules/inline.tsx';

const KIND_CHOICES = ITEM_KINDS.map((value) => ({
  value,
  label: { graded: 'graded in words', measured: 'measured', counted: 'counted', clearing: 'cleared: does it hurt' }[
    value
  ],
}));
const UNIT_CHOICES = ITEM_UNITS.map((value) => ({ value, label: UNITS[value].label || value.replaceAll(/[{}]/g, '') }));
const COMBINE_CHOICES = [
  { value: 'one', label: 'one value' },
  { value: 'highest', label: 'the highest of several trials' },
  { value: 'lowest', label: 'the lowest of several trials' },
  { value: 'mean', label: 'the mean of several trials' },
] as const;
const DIVIDED_CHOICES = [
  { value: 'none', label: 'as it is alone' },
  { value: 'leg-length', label: 'over the leg length' },
  { value: 'arm-length', label: 'over the arm length' },
] as const;
const STATUS_CHOICES = (['published', 'derived', 'convention', 'from memory'] as const).map((value) => ({
  value,
  label: value,
}));
const SEX_CHOICES = [
  { value: 'any', label: 'both sexes' },
  { value: 'female', label: 'women' },
  { value: 'male', label: 'men' },
] as const;

/** One item, clause by clause. What comes from the program and can only be added to stands beside what is added. */
export function ItemForm(props: {
  item: OwnItem;
  read: BatteryItem;
  problems: readonly BatteryProblem[];
  onChange: (item: OwnItem) => void;
}) {
  const { item, read, problems } = props;
  const change = (fields: Partial<OwnItem>) => props.onChange(tidyItem({ ...item, ...fields }));
  const of = (...fields: readonly (keyof OwnItem)[]) =>
    problems.filter(({ path }) => fields.some((field) => path[2] === field)).map(({ words }) => words);
  const shipped = item.from === null ? null : shippedItem(item.from);
  const isNumber = item.kind === 'measured' || item.kind === 'counted';
  const isLinked = read.own?.link !== null;

  return (
    <div className="battery-item">
      <LinkWords item={item} read={read} />
      <Clause title="Called" problems={of('label', 'id', 'from')}>
        <Line label="Name of the item" value={item.label} onChange={(label) => change({ label })} />
      </Clause>
      <Clause title="Is" problems={of('kind', 'unit', 'region')}>
        <Pick
          label="How it is taken"
          value={item.kind}
          choices={KIND_CHOICES}
          onChange={(kind) => change({ kind: kind as OwnItem['kind'] })}
        />
        {isNumber && (
          <>
            <span>in</span>
            <Pick
              label="Unit"
              value={item.unit ?? ''}
              choices={UNIT_CHOICES}
              onChange={(unit) => change({ unit: unit as OwnItem['unit'] })}
            />
          </>
        )}
        <span>at the</span>
        <Pick
          label="Region"
          value={item.region}
          choices={REGIONS.map((value) => ({ value, label: lowerFirst(REGION_WORDS[value]) }))}
          onChange={(region) => change({ region: region as OwnItem['region'] })}
        />
        <label className="choice">
          <input
            type="checkbox"
            checked={item.hasSides}
            onChange={({ target }) => change({ hasSides: target.checked })}
          />
          <span>left and right</span>
        </label>
      </Clause>
      {isNumber && (
        <Clause title="Result" problems={of('trials', 'dividedBy')}>
          <Pick
            label="How trials become a result"
            value={item.trials?.combine ?? 'one'}
            choices={COMBINE_CHOICES}
            onChange={(combine) =>
              change({
                trials:
                  combine === 'one'
                    ? null
                    : { most: item.trials?.most ?? 3, combine: combine as NonNullable<OwnItem['trials']>['combine'] },
              })
            }
          />
          {item.trials !== null && (
            <>
              <span>, at most</span>
              <Pick
                label="Most trials of one side"
                value={String(item.trials.most)}
                choices={Array.from({ length: MOST_TRIALS - 1 }, (_, i) => ({
                  value: String(i + 2),
                  label: String(i + 2),
                }))}
                onChange={(most) => change({ trials: { combine: item.trials?.combine ?? 'mean', most: Number(most) } })}
              />
            </>
          )}
          {item.hasSides && item.unit !== null && siUnitOf(item.unit) === 'm' && (
            <>
              <span>, also shown</span>
              <Pick
                label="Share of a limb"
                value={item.dividedBy ?? 'none'}
                choices={DIVIDED_CHOICES}
                onChange={(limb) => change({ dividedBy: DIVIDED_BY.find((one) => one === limb) ?? null })}
              />
            </>
          )}
        </Clause>
      )}
      <Clause title="Done so" problems={of('instructions')}>
        <textarea
          className="input input-long"
          rows={3}
          aria-label="Instructions, one step a line"
          value={item.instructions.join('\n')}
          maxLength={4000}
          onChange={({ target }) =>
            change({
              instructions: target.value
                .split('\n')
                .slice(0, 20)
                .map((step) => step.slice(0, 300)),
            })
          }
        />
      </Clause>
      {item.standard !== null && (
        <Clause title="Standard" problems={of('standard')}>
          {(['met', 'metWithCompensation', 'notMet'] as const).map((grade) => (
            <Line
              key={grade}
              label={{ met: 'Met', metWithCompensation: 'Met with compensation', notMet: 'Not met' }[grade]}
              isLabelShown
              value={item.standard?.[grade] ?? ''}
              onChange={(words) =>
                change({ standard: { met: '', metWithCompensation: '', notMet: '', ...item.standard, [grade]: words } })
              }
            />
          ))}
        </Clause>
      )}
      <Clause title="Caution" problems={of('caution')}>
        {shipped !== null && <p className="battery-fixed">{shipped.caution}</p>}
        <textarea
          className="input input-long"
          rows={2}
          aria-label={shipped === null ? 'Caution' : 'Further caution'}
          value={item.caution}
          maxLength={10_000}
          onChange={({ target }) => change({ caution: target.value })}
        />
      </Clause>
      <Clause title="Left out" problems={of('skipFor')}>
        <details className="battery-skip">
          <summary>
            for{' '}
            {read.skipFor.length === 0
              ? 'no injury on file'
              : read.skipFor.map((one) => lowerFirst(conditionEntry(one).label)).join(', ')}
          </summary>
          <fieldset className="rule-loads">
            <legend>
              While one of these is on file and not cleared.
              {shipped !== null && ' What the program leaves it out for stays.'}
            </legend>
            {CONDITIONS.filter((one) => one !== 'other').map((one) => {
              const isFixed = shipped?.skipFor.includes(one) === true;
              return (
                <label key={one} className="choice">
                  <input
                    type="checkbox"
                    checked={isFixed || item.skipFor.includes(one)}
                    disabled={isFixed}
                    onChange={({ target }) =>
                      change({
                        skipFor: target.checked
                          ? [...item.skipFor, one]
                          : item.skipFor.filter((other) => other !== one),
                      })
                    }
                  />
                  <span>{conditionEntry(one).label}</span>
                </label>
              );
            })}
          </fieldset>
        </details>
      </Clause>
      {isNumber && (
        <Clause title="Refused" problems={of('possible')}>
          <span>outside</span>
          {isLinked ? (
            <span>
              {read.possible?.join(' to ')} {unitWords(item)}, as in the program
            </span>
          ) : (
            <Ends what="possible" range={item.possible} onChange={(possible) => change({ possible })} />
          )}
          <span>; asked about outside</span>
          <Ends
            what="usual"
            range={item.plausible}
            onChange={(plausible) => change({ plausible: plausible.every((end) => end === null) ? null : plausible })}
          />
        </Clause>
      )}
      {isNumber && !isLinked && <OwnFigures item={item} of={of} change={change} />}
      {!isLinked && (
        <Clause title="Founded on" problems={of('source')}>
          <Cited what="the item" source={item.source} onChange={(source) => change({ source })} />
        </Clause>
      )}
    </div>
  );
}

/** Error and usual range of an item of one's own. */
function OwnFigures(props: {
  item: OwnItem;
  of: (...fields: readonly (keyof OwnItem)[]) => readonly string[];
  change: (fields: Partial<OwnItem>) => void;
}) {
  const { item, of, change } = props;
  const { error, reference } = item;
  const blank = { cite: '', status: 'published' as const };
  return (
    <>
      <Clause title="Error" problems={of('error')}>
        <label className="choice">
          <input
            type="checkbox"
            checked={error !== null}
            onChange={({ target }) =>
              change({ error: target.checked ? { mdc: null, border: null, source: blank } : null })
            }
          />
          <span>a figure is known</span>
        </label>
        {error !== null && (
          <>
            <span>: a change counts beyond</span>
            <NumberBox
              label="Smallest change beyond error"
              value={error.mdc}
              onChange={(mdc) => change({ error: { ...error, mdc } })}
            />
            <span>{unitWords(item)}, one value is known to ±</span>
            <NumberBox
              label="Half-width around one value, 95 %"
              value={error.border}
              onChange={(border) => change({ error: { ...error, border } })}
            />
            <span>{unitWords(item)},</span>
            <Cited
              what="the error"
              source={error.source}
              onChange={(source) => change({ error: { ...error, source } })}
            />
          </>
        )}
      </Clause>
      <Clause title="Usual" problems={of('reference')}>
        <label className="choice">
          <input
            type="checkbox"
            checked={reference !== null}
            onChange={({ target }) =>
              change({
                reference: target.checked ? { low: null, high: null, group: '', sex: null, source: blank } : null,
              })
            }
          />
          <span>a usual range is known</span>
        </label>
        {reference === null ? (
          <span className="quiet">Without one nothing can be said of a result: can’t tell, no reference.</span>
        ) : (
          <>
            <Ends
              what="reference"
              range={[reference.low, reference.high]}
              onChange={([low, high]) => change({ reference: { ...reference, low, high } })}
            />
            <span>{unitWords(item)} of</span>
            <Pick
              label="Sex of the group"
              value={reference.sex ?? 'any'}
              choices={SEX_CHOICES}
              onChange={(sex) =>
                change({ reference: { ...reference, sex: sex === 'female' || sex === 'male' ? sex : null } })
              }
            />
            <Line
              label="Whom it was taken from"
              value={reference.group}
              onChange={(group) => change({ reference: { ...reference, group } })}
            />
            <Cited
              what="the usual range"
              source={reference.source}
              onChange={(source) => change({ reference: { ...reference, source } })}
            />
          </>
        )}
      </Clause>
    </>
  );
}

function LinkWords({ item, read }: { item: OwnItem; read: BatteryItem }) {
  if (item.from === null) {
    return <p className="quiet">Of your own: no rule of the program judges it; pain in it still stops.</p>;
  }
  const cut = read.own?.cut ?? [];
  if (cut.length === 0) return <p className="quiet">As in the program, so its rules and its usual range hold.</p>;
  return (
    <p className="questioned">
      No longer the item of the program: {cut.join('; ')}. Its rules and its usual range hold no more; its cautions and
      the injuries it is left out for stay.
    </p>
  );
}

function unitWords({ unit }: OwnItem): string {
  return unit === null ? '' : UNITS[unit].label;
}

function Ends(props: {
  what: string;
  range: OwnItem['possible'];
  onChange: (range: [number | null, number | null]) => void;
}) {
  const [low, high] = props.range ?? [null, null];
  return (
    <>
      <NumberBox label={`Least ${props.what} value`} value={low} onChange={(end) => props.onChange([end, high])} />
      <span>to</span>
      <NumberBox label={`Greatest ${props.what} value`} value={high} onChange={(end) => props.onChange([low, end])} />
    </>
  );
}

function Cited({
  what,
  source,
  onChange,
}: {
  what: string;
  source: OwnItem['source'];
  onChange: (source: OwnItem['source']) => void;
}) {
  return (
    <>
      <Line label={`Source of ${what}`} value={source.cite} onChange={(cite) => onChange({ ...source, cite })} />
      <Pick
        label={`How sure the source of ${what} is`}
        value={source.status}
        choices={STATUS_CHOICES}
        onChange={(status) => onChange({ ...source, status: status as OwnItem['source']['status'] })}
      />
    </>
  );
}

function Line(props: { label: string; isLabelShown?: boolean; value: string; onChange: (value: string) => void }) {
  const input = (
    <input
      className="input rule-source"
      aria-label={props.label}
      placeholder={props.isLabelShown === true ? undefined : props.label}
      value={props.value}
      maxLength={300}
      onChange={({ target }) => props.onChange(target.value)}
    />
  );
  if (props.isLabelShown !== true) return input;
  return (
    <span className="battery-line">
      <span aria-hidden="true">{props.label}</span>
      {input}
    </span>
  );
}
