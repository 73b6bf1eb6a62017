import type { MeasurementError } from '../measure.ts';
import { measureById } from '../measures/index.ts';
import type { BatteryItem } from './battery.ts';

/** The error of a test: that of its measure, or of an item of one's own the one given with it. In the item's display unit. */
export function errorOfItem({ measure, own }: BatteryItem): MeasurementError | null {
  return own?.error ?? measureById(measure)?.error ?? null;
}
