import { CellChoice } from './CellChoice.tsx';

const ENDS: Readonly<Record<number, string>> = { 0: '0 none', 10: '10 worst' };
// Labels begin with the digit, so that typing it chooses.
const CHOICES = Array.from({ length: 11 }, (_, level) => ({
  value: String(level),
  label: ENDS[level] ?? String(level),
}));

/** Pain 0 to 10 within a table cell. Not asked is not the same as none. */
export function PainCell(props: {
  label: string;
  value: number | null;
  onChange: (value: number | null) => void;
  onFocus?: () => void;
}) {
  const { value, onChange, ...rest } = props;
  return (
    <CellChoice
      {...rest}
      value={value === null ? null : String(value)}
      choices={CHOICES}
      empty="not asked"
      onChange={(chosen) => onChange(chosen === null ? null : Number(chosen))}
    />
  );
}
