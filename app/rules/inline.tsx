import { parseNumber, valueOf } from '../../shared/format/typed.ts';
import { useTyped } from '../parts/useTyped.ts';

/** A choice within a sentence: as wide as its words, named for those who do not see the sentence. */
export function Pick(props: {
  label: string;
  value: string;
  choices: readonly { readonly value: string; readonly label: string }[];
  onChange: (value: string) => void;
}) {
  const isKnown = props.choices.some(({ value }) => value === props.value);
  return (
    <select
      className="input rule-pick"
      aria-label={props.label}
      value={props.value}
      onChange={({ target }) => props.onChange(target.value)}
    >
      {!isKnown && <option value={props.value}>{props.value === '' ? 'choose' : props.value}</option>}
      {props.choices.map(({ value, label }) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  );
}

/** A number within a sentence. What is no number stays in the box, is marked, and is stored as nothing. */
export function NumberBox(props: { label: string; value: unknown; onChange: (value: number | null) => void }) {
  const value = typeof props.value === 'number' ? props.value : null;
  const [text, setText] = useTyped<number>(value, String, parseNumber);
  return (
    <input
      className="input rule-number"
      inputMode="decimal"
      aria-label={props.label}
      aria-invalid={'refusal' in parseNumber(text) || undefined}
      value={text}
      maxLength={20}
      onChange={({ target }) => {
        setText(target.value);
        props.onChange(valueOf(parseNumber(target.value)));
      }}
    />
  );
}
