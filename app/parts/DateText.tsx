import { useState } from 'react';
import { formatDate } from '../../shared/format/number.ts';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';
import { type Typed, valueOf } from '../../shared/format/typed.ts';
import { useTyped } from './useTyped.ts';

const asItIs = (date: string) => date;

/** A date as text, said back in words. Halfway through nothing is wrong yet; what is wrong is said on leaving. */
export function DateText({
  label,
  value,
  onChange,
  onFocus,
  hint,
  neededFor,
  parse,
  example,
}: FieldProps<string | null> & {
  readonly parse: (text: string) => Typed<string | null>;
  readonly example: string;
}) {
  const [text, setText] = useTyped(value, asItIs, parse);
  const [isEditing, setEditing] = useState(false);
  const typed = parse(text);
  const refusal = 'refusal' in typed && !isEditing ? typed.refusal : null;
  return (
    <FieldFrame label={label} notes={{ hint, refusal, missingFor: value === null && neededFor }}>
      {(ids) => (
        <div className="field-row">
          <input
            {...ids}
            className="input input-date"
            type="text"
            autoComplete="off"
            placeholder={example}
            value={text}
            onFocus={() => {
              setEditing(true);
              onFocus?.();
            }}
            onBlur={() => setEditing(false)}
            onChange={(event) => {
              setText(event.target.value);
              const next = valueOf(parse(event.target.value));
              if (next !== value) onChange(next);
            }}
          />
          {value !== null && <span className="field-unit">{formatDate(value)}</span>}
        </div>
      )}
    </FieldFrame>
  );
}
