import { useId } from 'react';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

/** One line of text. `suggestions` are offered, never forced. */
export function TextField({
  label,
  value,
  onChange,
  onFocus,
  hint,
  neededFor,
  suggestions = [],
}: FieldProps<string> & { readonly suggestions?: readonly string[] }) {
  const listId = useId();
  return (
    <FieldFrame label={label} notes={{ hint, missingFor: value.trim() === '' && neededFor }}>
      {(ids) => (
        <>
          <input
            {...ids}
            className="input"
            dir="auto"
            type="text"
            value={value}
            maxLength={300}
            autoComplete="off"
            list={suggestions.length > 0 ? listId : undefined}
            onFocus={onFocus}
            onChange={(event) => onChange(event.target.value)}
          />
          {suggestions.length > 0 && (
            <datalist id={listId}>
              {suggestions.map((suggestion) => (
                <option key={suggestion}>{suggestion}</option>
              ))}
            </datalist>
          )}
        </>
      )}
    </FieldFrame>
  );
}
