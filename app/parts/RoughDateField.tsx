import { DateText } from './DateText.tsx';
import type { FieldProps } from './FieldFrame.tsx';
import { parseRoughDate } from '../../shared/format/typed.ts';

/** A year, a month or a day, as precisely as it is remembered. */
export function RoughDateField(props: FieldProps<string | null>) {
  return <DateText hint="As precisely as it is remembered." {...props} parse={parseRoughDate} example="year-month" />;
}
