import type { BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import { NOTHING_TAKEN, type TakenWith } from '../case/screening/takenWith.ts';
import { TakenWithFields } from '../case/screening/TakenWithFields.tsx';
import { Dialog } from '../parts/Dialog.tsx';

/** Said once for each test; every result typed from then on keeps it. */
export function TakenWithDialog(props: {
  items: readonly BatteryItem[];
  byItem: Readonly<Record<string, TakenWith>>;
  onChange: (itemId: string, said: TakenWith) => void;
  onClose: () => void;
}) {
  return (
    <Dialog title="Device, position, shoes" onClose={props.onClose}>
      <p>
        Kept with every result typed from now on, and remembered on this machine. What is stored already stays as it is.
      </p>
      <ul className="run-taken-with">
        {props.items.map(({ id, label }) => (
          <li key={id}>
            <span>{label}</span>
            <TakenWithFields
              item={label}
              value={props.byItem[id] ?? NOTHING_TAKEN}
              onChange={(said) => props.onChange(id, said)}
            />
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
