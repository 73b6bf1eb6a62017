import { useState } from 'react';
import type { Battery, BatteryItem } from '../../shared/knowledge/screening/battery.ts';

/** Which tests this machine's station takes, in which order. Convenience of one machine, so kept there. */
export interface Station {
  readonly itemId: string;
  readonly isShown: boolean;
}

const place = (battery: Battery) => `caseframe.stations.${battery.id}`;

/** As arranged last; tests the arrangement does not know come at the end. */
function stored(battery: Battery): readonly Station[] {
  let kept: readonly Partial<Station>[] = [];
  try {
    const found: unknown = JSON.parse(localStorage.getItem(place(battery)) ?? '[]');
    if (Array.isArray(found)) kept = found;
  } catch {
    // Unreadable: as the battery has them.
  }
  const known = kept.flatMap(({ itemId, isShown }) =>
    battery.items.some(({ id }) => id === itemId) ? [{ itemId: String(itemId), isShown: isShown !== false }] : [],
  );
  const others = battery.items.filter(({ id }) => !known.some(({ itemId }) => itemId === id));
  return [...known, ...others.map(({ id }) => ({ itemId: id, isShown: true }))];
}

export function useStations(battery: Battery) {
  const [stations, setStations] = useState(() => stored(battery));
  const keep = (next: readonly Station[]) => {
    localStorage.setItem(place(battery), JSON.stringify(next));
    setStations(next);
  };
  return [stations, keep] as const;
}

export function itemsAt(battery: Battery, stations: readonly Station[]): readonly BatteryItem[] {
  return stations.flatMap(({ itemId, isShown }) => battery.items.filter(({ id }) => isShown && id === itemId));
}
