import { FieldFrame, FieldGroup, type NeededFor } from './FieldFrame.tsx';

export interface Choice<T extends string> {
  readonly value: T;
  readonly label: string;
}

interface ChoiceFieldProps<T extends string, Empty> {
  readonly label: string;
  readonly value: T | null;
  readonly onChange: (value: T | Empty) => void;
  readonly onFocus?: (() => void) | undefined;
  readonly hint?: string | undefined;
  readonly neededFor?: NeededFor;
  readonly choices: readonly Choice<T>[];
  /** `list` for many choices, `row` to see all at once. */
  readonly look?: 'row' | 'list';
}

/** One of several. With `empty`, nothing chosen is an answer too and has that name; `onChange` is then told null. */
export function ChoiceField<T extends string>(
  props:
    | (ChoiceFieldProps<T, null> & { readonly empty: string })
    | (ChoiceFieldProps<T, never> & { readonly empty?: undefined }),
) {
  const { label, value, hint, empty, onFocus, choices, look = 'row' } = props;
  const notes = { hint, missingFor: value === null && props.neededFor };
  const choose = (text: string) => {
    const chosen = choices.find((choice) => choice.value === text);
    if (chosen !== undefined) props.onChange(chosen.value);
    else if (props.empty !== undefined) props.onChange(null);
  };
  if (look === 'list') {
    return (
      <FieldFrame label={label} notes={notes}>
        {(ids) => (
          <select
            {...ids}
            className="input input-list"
            value={value ?? ''}
            onFocus={onFocus}
            onChange={(event) => choose(event.target.value)}
          >
            {(empty !== undefined || value === null) && <option value="">{empty ?? ''}</option>}
            {choices.map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.label}
              </option>
            ))}
          </select>
        )}
      </FieldFrame>
    );
  }
  const shown: readonly Choice<string>[] = empty === undefined ? choices : [...choices, { value: '', label: empty }];
  return (
    <FieldGroup label={label} notes={notes}>
      {(ids) => (
        <div className="choices">
          {shown.map((choice) => (
            <label key={choice.value} className="choice">
              <input
                type="radio"
                name={ids.id}
                value={choice.value}
                checked={(value ?? '') === choice.value}
                onFocus={onFocus}
                onChange={() => choose(choice.value)}
              />
              <span className={choice.value === '' ? 'choice-empty' : undefined}>{choice.label}</span>
            </label>
          ))}
        </div>
      )}
    </FieldGroup>
  );
}
