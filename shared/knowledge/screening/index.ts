import type { BatteryBody } from '../../model/battery.ts';
import type { Battery, BatteryItem } from './battery.ts';
import { readBattery } from './readBattery.ts';
import { shippedBattery } from './shipped.ts';

/** What a session says of the battery it was taken with: a version of one of the program, or one of one's own, whole. */
export interface TakenWith {
  readonly batteryId: string;
  readonly batteryVersion: string;
  readonly battery: BatteryBody | null;
}

/** The very version of the battery that a session was taken with. Null for one of the program that this version lacks. */
export function batteryOf({ batteryId, batteryVersion, battery }: TakenWith): Battery | null {
  return battery === null ? shippedBattery(batteryId, batteryVersion) : readBattery(battery);
}

/** An item as it was when the results of a session were taken. */
export function itemOf(session: TakenWith, itemId: string): BatteryItem | null {
  return batteryOf(session)?.items.find(({ id }) => id === itemId) ?? null;
}
