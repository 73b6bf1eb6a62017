import { FieldGroup } from './FieldFrame.tsx';

const LEVELS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;

/** Pain now, 0 to 10. Always a field of its own, never part of a grade. Not asked is not the same as none. */
export function PainField({
  value,
  onChange,
  onFocus,
  hint,
  label = 'Pain',
}: {
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly onFocus?: (() => void) | undefined;
  readonly hint?: string | undefined;
  readonly label?: string;
}) {
  return (
    <FieldGroup label={label} notes={{ hint }}>
      {(ids) => (
        <div className="pain">
          <div className="pain-levels">
            {[null, ...LEVELS].map((level) => (
              <label key={level} className="pain-level">
                <input
                  type="radio"
                  name={ids.id}
                  checked={value === level}
                  onFocus={onFocus}
                  onChange={() => onChange(level)}
                />
                <span>{level ?? 'Not asked'}</span>
              </label>
            ))}
          </div>
          <p className="pain-ends" aria-hidden="true">
            0 none, 10 worst imaginable
          </p>
        </div>
      )}
    </FieldGroup>
  );
}
