import type { OwnBattery } from '../model/battery.ts';

export interface BatteryEdit {
  readonly id: string;
  /** Null: taken out. */
  readonly battery: OwnBattery | null;
}

/** Batteries of one's own, of a store and no case. Sessions keep the version they were taken with themselves. */
export interface BatteryStore {
  all(): Promise<{ readonly batteries: readonly OwnBattery[]; readonly canUndo: boolean; readonly canRedo: boolean }>;
  /** As one step of undo; typing on in one battery is one step. */
  edit(edits: readonly BatteryEdit[], at: string): Promise<void>;
  /** Takes back the latest step, or does nothing if there is none. */
  undo(): Promise<void>;
  redo(): Promise<void>;
  /** The highest version ever saved of a battery, taken back or not: a number is not given twice. 0: none. */
  lastVersion(id: string): Promise<number>;
  /** Sessions taken with each version of batteries of one's own, those of archived cases too. */
  uses(): Promise<{ id: string; version: string; sessions: number }[]>;
}
