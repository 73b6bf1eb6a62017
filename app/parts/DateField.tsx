import { useState } from 'react';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

/** A calendar day. Half-typed days are not stored. */
export function DateField({
  label,
  value,
  onChange,
  onFocus,
  hint,
  isNeeded,
  latest,
}: FieldProps<string | null> & { readonly latest?: string }) {
  const [refusal, setRefusal] = useState<string | null>(null);
  const [seen, setSeen] = useState(value);
  const [text, setText] = useState(value ?? '');
  if (seen !== value) {
    setSeen(value);
    if (value !== (text === '' ? null : text)) setText(value ?? '');
  }
  return (
    <FieldFrame label={label} notes={{ hint, refusal, isMissing: isNeeded === true && value === null }}>
      {(ids) => (
        <input
          {...ids}
          className="input input-date"
          type="date"
          min="1900-01-01"
          max={latest ?? '2999-12-31'}
          value={text}
          onFocus={onFocus}
          onBlur={(event) => {
            const { badInput, rangeOverflow } = event.target.validity;
            setRefusal(
              badInput
                ? 'this day is not complete.'
                : rangeOverflow
                  ? 'this day is still to come.'
                  : event.target.validity.valid
                    ? null
                    : 'the year must be 1900 or later.',
            );
          }}
          onChange={(event) => {
            const { validity } = event.target;
            setText(event.target.value);
            if (!validity.valid) return;
            setRefusal(null);
            const next = event.target.value === '' ? null : event.target.value;
            if (next !== value) onChange(next);
          }}
        />
      )}
    </FieldFrame>
  );
}
