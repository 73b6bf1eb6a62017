import type { Battery } from '../../shared/knowledge/screening/battery.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import type { Station } from './stations.ts';

/** Columns in the order of the stations; those not taken here are left out of sight, not out of the run. */
export function StationsDialog(props: {
  battery: Battery;
  stations: readonly Station[];
  onChange: (stations: readonly Station[]) => void;
  onClose: () => void;
}) {
  const { battery, stations, onChange, onClose } = props;
  return (
    <Dialog title="Stations" onClose={onClose}>
      <p>Which tests are taken here, in which order. Kept on this machine; results are stored whether shown or not.</p>
      <ol className="run-stations">
        {stations.map((station, i) => {
          const label = battery.items.find(({ id }) => id === station.itemId)?.label ?? station.itemId;
          const before = stations[i - 1];
          return (
            <li key={station.itemId}>
              <label className="choice">
                <input
                  type="checkbox"
                  checked={station.isShown}
                  onChange={({ target }) => onChange(stations.with(i, { ...station, isShown: target.checked }))}
                />
                <span>{label}</span>
              </label>
              <Button
                look="quiet"
                disabled={before === undefined}
                aria-label={`${label} earlier`}
                onClick={() => {
                  if (before !== undefined) onChange(stations.with(i - 1, station).with(i, before));
                }}
              >
                earlier
              </Button>
            </li>
          );
        })}
      </ol>
    </Dialog>
  );
}
