import { FieldFrame, type FieldProps } from './FieldFrame.tsx';
import { useState } from 'react';
import { parseRoughDate, valueOf } from './typed.ts';
import { useTyped } from './useTyped.ts';

const asItIs = (date: string) => date;

/** A year, a month or a day, as precisely as it is remembered. */
export function RoughDateField({ label, value, onChange, onFocus, hint, isNeeded }: FieldProps<string | null>) {
  const [text, setText] = useTyped(value, asItIs, parseRoughDate);
  const [isEditing, setEditing] = useState(false);
  const typed = parseRoughDate(text);
  // Halfway through a date nothing is wrong yet; it is said on leaving the field.
  const refusal = 'refusal' in typed && !isEditing ? typed.refusal : null;
  return (
    <FieldFrame
      label={label}
      notes={{
        hint: hint ?? 'Year, month or day: 2024, 2024-03, 2024-03-09.',
        refusal,
        isMissing: isNeeded === true && value === null,
      }}
    >
      {(ids) => (
        <input
          {...ids}
          className="input input-date"
          type="text"
          autoComplete="off"
          value={text}
          onFocus={() => {
            setEditing(true);
            onFocus?.();
          }}
          onBlur={() => setEditing(false)}
          onChange={(event) => {
            setText(event.target.value);
            const next = valueOf(parseRoughDate(event.target.value));
            if (next !== value) onChange(next);
          }}
        />
      )}
    </FieldFrame>
  );
}
