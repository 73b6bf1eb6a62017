import { useState } from 'react';
import { convert, feetAndInches, type Unit, UNITS } from '../../shared/units.ts';
import type { Source } from '../../shared/quantity.ts';
import { toDecimals, withUnit } from '../../shared/format/number.ts';
import { FieldFrame, FieldGroup, type FieldNotes, type FieldProps } from './FieldFrame.tsx';
import { mayBecomeNumber, parseNumber, type Typed, valueOf } from '../../shared/format/typed.ts';
import { useTyped } from './useTyped.ts';

/** A unit to type in. Feet and inches have two boxes, so that 6 ft 2 in cannot become 6.2 ft. */
export type EntryUnit = Unit | 'ft and in';

interface NumberFieldProps extends FieldProps<number | null> {
  /** Unit of `value`, as stored. */
  readonly unit: Unit;
  /** Units to choose from; the first is offered first. Default: the stored one only. */
  readonly entry?: readonly EntryUnit[];
  /** Beyond these the value is refused. In `unit`, ends included unless `isAbove`. */
  readonly possible?: readonly [number, number];
  /** The lower end itself is not possible: more than 0. */
  readonly isAbove?: boolean;
  /** Beyond these it is stored but questioned. In `unit`. */
  readonly plausible?: { readonly range: readonly [number, number]; readonly source: Source };
  readonly isWhole?: boolean;
}

/** Last unit chosen for each set of choices, so that the next field of the kind starts there. */
const lastChosen = new Map<string, EntryUnit>();

export function NumberField(props: NumberFieldProps) {
  const entry = props.entry ?? [props.unit];
  const choices = entry.join();
  const [chosen, setChosen] = useState<EntryUnit>(() => lastChosen.get(choices) ?? entry[0] ?? props.unit);
  const choose = (unit: EntryUnit) => {
    lastChosen.set(choices, unit);
    setChosen(unit);
  };
  const choice =
    entry.length > 1 ? (
      <select
        className="input input-unit"
        aria-label={`Unit of ${props.label.toLowerCase()}`}
        value={chosen}
        onChange={(event) => {
          const unit = entry.find((one) => one === event.target.value);
          if (unit !== undefined) choose(unit);
        }}
      >
        {entry.map((unit) => (
          <option key={unit} value={unit}>
            {unit === 'ft and in' ? 'ft, in' : UNITS[unit].label}
          </option>
        ))}
      </select>
    ) : (
      chosen !== 'ft and in' && UNITS[chosen].label !== '' && <span className="field-unit">{UNITS[chosen].label}</span>
    );
  // The key drops text typed in the unit just left; the value itself is kept.
  return chosen === 'ft and in' ? (
    <FeetAndInches key={chosen} {...props} choice={choice} />
  ) : (
    <OneNumber key={chosen} {...props} shown={chosen} choice={choice} />
  );
}

function OneNumber(props: NumberFieldProps & { shown: Unit; choice: React.ReactNode }) {
  const { label, value, onChange, onFocus, unit, shown } = props;
  const parse = (text: string) => check(parseNumber(text), props, shown);
  const [text, setText] = useTyped(value, (stored) => plainDigits(convert(stored, unit, shown)), parse);
  const [isEditing, setEditing] = useState(false);
  const typed = parse(text);
  const isUnfinished = isEditing && mayBecomeNumber(text) && !/\d/.test(text);
  return (
    <FieldFrame label={label} notes={isUnfinished ? { hint: props.hint } : notesOn(typed, props, shown)}>
      {(ids) => (
        <div className="field-row">
          <input
            {...ids}
            className="input input-number"
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={text}
            onFocus={() => {
              setEditing(true);
              onFocus?.();
            }}
            onBlur={() => setEditing(false)}
            onChange={(event) => {
              setText(event.target.value);
              keep(valueOf(parse(event.target.value)), value, onChange);
            }}
          />
          {props.choice}
        </div>
      )}
    </FieldFrame>
  );
}

function FeetAndInches(props: NumberFieldProps & { choice: React.ReactNode }) {
  const { label, value, onChange, onFocus, unit } = props;
  const parse = (text: string): Typed<number | null> => check(parseFeetAndInches(text), props, 'm');
  const [text, setText] = useTyped(value, (stored) => feetAndInchesText(convert(stored, unit, 'm')), parse);
  const boxes = text.split(' ');
  const typed = parse(text);
  const change = (index: 0 | 1, typedText: string) => {
    const next = [boxes[0] ?? '', boxes[1] ?? ''];
    next[index] = typedText.replaceAll(' ', '');
    setText(next.join(' '));
    keep(valueOf(parse(next.join(' '))), value, onChange);
  };
  return (
    <FieldGroup label={label} notes={notesOn(typed, props, 'cm')}>
      {(ids) => (
        <div className="field-row">
          {(['feet', 'inches'] as const).map((name, index) => (
            <label key={name} className="field-row">
              <input
                className="input input-number input-narrow"
                type="text"
                inputMode="decimal"
                autoComplete="off"
                aria-label={`${label}, ${name}`}
                aria-invalid={ids['aria-invalid']}
                value={boxes[index] ?? ''}
                onFocus={onFocus}
                onChange={(event) => change(index === 0 ? 0 : 1, event.target.value)}
              />
              <span className="field-unit">{index === 0 ? 'ft' : 'in'}</span>
            </label>
          ))}
          {props.choice}
        </div>
      )}
    </FieldGroup>
  );
}

function keep(next: number | null, value: number | null, onChange: (value: number | null) => void): void {
  if (!Object.is(next, value)) onChange(next);
}

/** Two boxes as one text, `6 2`. An empty inches box means none. */
function parseFeetAndInches(text: string): Typed<number | null> {
  const [feetText = '', inchesText = ''] = text.split(' ');
  if (feetText === '' && inchesText === '') return { value: null };
  const feet = parseNumber(feetText);
  const inches = parseNumber(inchesText);
  if ('refusal' in feet) return feet;
  if ('refusal' in inches) return inches;
  const [ft, inch] = [feet.value ?? 0, inches.value ?? 0];
  if (ft < 0 || inch < 0 || inch >= 12) return { refusal: 'inches go from 0 to less than 12, beside whole feet.' };
  if (!Number.isInteger(ft)) return { refusal: 'write whole feet here and the rest in inches.' };
  return { value: feetAndInches(ft, inch) };
}

function feetAndInchesText(metres: number): string {
  const inches = Number((metres / 0.0254).toFixed(2));
  const feet = Math.floor(inches / 12);
  return `${feet} ${plainDigits(inches - feet * 12)}`;
}

/** Into the stored unit, and refused if no such value can be. */
function check(typed: Typed<number | null>, props: NumberFieldProps, shown: Unit): Typed<number | null> {
  if ('refusal' in typed || typed.value === null) return typed;
  const value = convert(typed.value, shown, props.unit);
  if (props.isWhole === true && !Number.isInteger(typed.value)) return { refusal: 'a whole number is needed.' };
  const [low, high] = props.possible ?? [-Infinity, Infinity];
  if (value < low || value > high || (props.isAbove === true && value === low)) {
    return { refusal: `${props.label.toLowerCase()} must be ${rangeWords(props, shown)}.` };
  }
  return { value };
}

function rangeWords({ possible, isAbove, unit }: NumberFieldProps, shown: Unit): string {
  const [low, high] = possible ?? [-Infinity, Infinity];
  const say = (value: number) => withUnit(plainDigits(convert(value, unit, shown)), UNITS[shown].label);
  const least = isAbove === true ? `more than ${say(low)}` : `at least ${say(low)}`;
  if (low === -Infinity) return `at most ${say(high)}`;
  return high === Infinity ? least : `${least} and at most ${say(high)}`;
}

function notesOn(typed: Typed<number | null>, props: NumberFieldProps, shown: Unit): FieldNotes {
  const { hint, neededFor, plausible, unit } = props;
  if ('refusal' in typed) return { hint, refusal: typed.refusal };
  const value = typed.value;
  if (value === null) return { hint, missingFor: neededFor };
  if (plausible === undefined || (value >= plausible.range[0] && value <= plausible.range[1])) return { hint };
  const [low, high] = plausible.range.map((end) => plainDigits(convert(end, unit, shown)));
  const range = withUnit(`${low} to ${high}`, UNITS[shown].label);
  const { status, cite } = plausible.source;
  return { hint, question: `Unusual: most lie between ${range} (${status}: ${cite}). Stored as typed; is it right?` };
}

/** Digits without the tail that binary arithmetic leaves, and without needless zeros. */
function plainDigits(value: number): string {
  const digits = Number(value.toPrecision(10));
  return digits < 0 ? toDecimals(digits, decimalsOf(digits)) : String(digits);
}

function decimalsOf(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}
