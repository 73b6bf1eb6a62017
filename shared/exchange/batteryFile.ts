import { z } from 'zod';
import { batteryBody } from '../model/battery.ts';
import { soundBattery } from '../model/screening.ts';
import { parseInput } from '../model/parseInput.ts';
import type { BatteryBody } from '../model/battery.ts';

const named = {
  format: z.literal('caseframe-battery'),
  formatVersion: z.literal(1),
};

/** JSON Schema (2020-12) of a battery, as `battery show --json` writes it and `battery import` reads it. */
export const BATTERY_SCHEMA = z.toJSONSchema(z.strictObject({ ...named, ...batteryBody.shape }));

export function writeBattery(battery: BatteryBody): BatteryFile {
  return { format: 'caseframe-battery', formatVersion: 1, ...battery };
}

export type BatteryFile = BatteryBody & { readonly format: 'caseframe-battery'; readonly formatVersion: 1 };

/**
 * A battery from a file.
 * @param what names the file in the sentence
 * @throws DomainError 'input-malformed' with the path of the first fault
 */
export function readBatteryFile(data: unknown, what: string): BatteryBody {
  const { format: _format, formatVersion: _version, ...rest } = parseInput(z.looseObject(named), data, what);
  return parseInput(soundBattery, rest, what);
}
