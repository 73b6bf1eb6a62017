import { ChoiceField } from './ChoiceField.tsx';
import type { FieldProps } from './FieldFrame.tsx';

const CHOICES = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const;

/** Yes, no, or not asked: the three are never confused. */
export function YesNoField({
  value,
  onChange,
  empty = 'Not asked',
  ...field
}: FieldProps<boolean | null> & { readonly empty?: string }) {
  return (
    <ChoiceField
      {...field}
      choices={CHOICES}
      empty={empty}
      value={value === null ? null : value ? 'yes' : 'no'}
      onChange={(chosen) => onChange(chosen === null ? null : chosen === 'yes')}
    />
  );
}
