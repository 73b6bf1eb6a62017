import { CellChoice } from '../../parts/CellChoice.tsx';
import type { TakenWith } from './takenWith.ts';

const SHOES = [
  { value: 'yes', label: 'in shoes' },
  { value: 'no', label: 'without shoes' },
] as const;

/** Device, position and shoes of one item, in a row. */
export function TakenWithFields(props: { item: string; value: TakenWith; onChange: (value: TakenWith) => void }) {
  const { item, value, onChange } = props;
  return (
    <span className="taken-with">
      {(['device', 'position'] as const).map((field) => (
        <input
          key={field}
          className="input"
          aria-label={`${field === 'device' ? 'Device' : 'Position'}, ${item}`}
          placeholder={field}
          autoComplete="off"
          maxLength={300}
          value={value[field]}
          onChange={({ target }) => onChange({ ...value, [field]: target.value })}
        />
      ))}
      <CellChoice
        label={`Shoes, ${item}`}
        value={value.shoes === null ? null : value.shoes ? 'yes' : 'no'}
        choices={SHOES}
        empty="shoes not said"
        onChange={(answer) => onChange({ ...value, shoes: answer === null ? null : answer === 'yes' })}
      />
    </span>
  );
}
