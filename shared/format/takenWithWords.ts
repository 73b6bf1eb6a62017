import type { ScreeningResult } from '../model/screening.ts';

/** `inclinometer, lying, without shoes`; empty where nothing was said. */
export function takenWithWords({
  device,
  position,
  shoes,
}: Pick<ScreeningResult, 'device' | 'position' | 'shoes'>): string {
  const feet = shoes === null ? '' : shoes ? 'in shoes' : 'without shoes';
  return [device.trim(), position.trim(), feet].filter((words) => words !== '').join(', ');
}
