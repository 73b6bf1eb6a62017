import type { Choice } from './ChoiceField.tsx';

/** A choice within a table cell: named for screen readers by `label`, for the eye by its row and column. */
export function CellChoice<T extends string>(props: {
  label: string;
  value: T | null;
  choices: readonly Choice<T>[];
  /** What nothing chosen is called. */
  empty: string;
  onChange: (value: T | null) => void;
  onFocus?: () => void;
}) {
  const { label, value, choices, empty, onChange, onFocus } = props;
  return (
    <select
      className="input input-list cell-choice"
      aria-label={label}
      value={value ?? ''}
      onFocus={onFocus}
      onChange={({ target }) => onChange(choices.find((choice) => choice.value === target.value)?.value ?? null)}
    >
      <option value="">{empty}</option>
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
    </select>
  );
}
