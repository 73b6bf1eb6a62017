import { DateText } from './DateText.tsx';
import type { FieldProps } from './FieldFrame.tsx';
import { parseDay } from '../../shared/format/typed.ts';

/** A calendar day, not after `latest`. */
export function DateField({ latest, ...field }: FieldProps<string | null> & { readonly latest?: string }) {
  return (
    <DateText
      {...field}
      example="year-month-day"
      parse={(text) => {
        const typed = parseDay(text);
        const isAhead = 'value' in typed && typed.value !== null && latest !== undefined && typed.value > latest;
        return isAhead ? { refusal: 'this day is still to come.' } : typed;
      }}
    />
  );
}
