import type { Battery, BatteryItem } from './battery.ts';
import { generalBattery } from './generalBattery.ts';

/** Batteries of the program, every version that results may have been taken with; the newest of each comes first. */
export const BATTERIES: readonly Battery[] = [generalBattery];

export function shippedBattery(id: string, version: string): Battery | null {
  return BATTERIES.find((battery) => battery.id === id && battery.version === version) ?? null;
}

export function shippedItem(from: {
  readonly batteryId: string;
  readonly version: string;
  readonly itemId: string;
}): BatteryItem | null {
  return shippedBattery(from.batteryId, from.version)?.items.find(({ id }) => id === from.itemId) ?? null;
}
