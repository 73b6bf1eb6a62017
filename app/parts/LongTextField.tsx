import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

/** Text of any length; the box grows with it. */
export function LongTextField({ label, value, onChange, onFocus, hint, neededFor }: FieldProps<string>) {
  return (
    <FieldFrame label={label} notes={{ hint, missingFor: value.trim() === '' && neededFor }}>
      {(ids) => (
        <textarea
          {...ids}
          className="input input-long"
          dir="auto"
          rows={2}
          value={value}
          maxLength={10_000}
          onFocus={onFocus}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </FieldFrame>
  );
}
