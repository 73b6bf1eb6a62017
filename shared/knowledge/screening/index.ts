import type { Battery, BatteryItem } from './battery.ts';
import { generalBattery } from './generalBattery.ts';

export const BATTERIES: readonly Battery[] = [generalBattery];

const itemsById = new Map(BATTERIES.flatMap((battery) => battery.items.map((item) => [item.id, item] as const)));

export function batteryById(id: string): Battery | null {
  return BATTERIES.find((battery) => battery.id === id) ?? null;
}

/** An item by its id, whichever battery it belongs to. Null for an item this version does not know. */
export function batteryItem(id: string): BatteryItem | null {
  return itemsById.get(id) ?? null;
}
