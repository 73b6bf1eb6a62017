import type { Condition, Region } from '../../model/injury.ts';
import type { Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import type { MeasurementError } from '../measure.ts';

export interface Trials {
  /** Most trials of one side. */
  readonly most: number;
  /** How they become one result. */
  readonly combine: 'highest' | 'lowest' | 'mean';
}

export interface BatteryItem {
  readonly id: string;
  /** What it measures; no brand names. */
  readonly label: string;
  readonly kind: 'graded' | 'measured' | 'counted' | 'clearing';
  /** Measure id the result feeds. Rules know only those of the program. */
  readonly measure: string;
  readonly region: Region;
  readonly hasSides: boolean;
  /** SI unit results are stored in; null for graded and clearing items. */
  readonly unit: Unit | null;
  readonly displayUnit: Unit | null;
  /** Left out: one value a side. */
  readonly trials?: Trials;
  /** Also shown as a share of the length of that limb, on the same side, where its published form is. Left out: not. */
  readonly dividedBy?: 'leg-length' | 'arm-length';
  /** How to do it, one step a line. */
  readonly instructions: readonly string[];
  /** The written standard of a graded item, by grade. */
  readonly standard: { readonly met: string; readonly metWithCompensation: string; readonly notMet: string } | null;
  readonly caution: string;
  /** Leave the item out, unless a clinician asks for it, while one of these is on file and not cleared. */
  readonly skipFor: readonly Condition[];
  /** Ranges in displayUnit, as in the measure. */
  readonly possible: readonly [number, number] | null;
  readonly plausible: readonly [number, number] | null;
  /** A usual range in displayUnit, if an honest one is known. Never a pass mark. */
  readonly reference: {
    readonly low: number;
    readonly high: number;
    readonly group: string;
    /** Whom the range was taken from, where that was one sex only; it is not drawn for others. */
    readonly sex: 'female' | 'male' | null;
    readonly source: Source;
  } | null;
  readonly source: Source;
  /** Of items of batteries of one's own. */
  readonly own?: OwnPart;
}

/** What is particular to an item of a battery of one's own. */
export interface OwnPart {
  /** The item of the program that it still is in meaning, so that rules and reference of that one hold; null: none. */
  readonly link: string | null;
  /** What was changed so that the link to the item it was copied from is cut, in words. Empty: nothing. */
  readonly cut: readonly string[];
  /** In displayUnit; of a linked item that of its measure holds. */
  readonly error: MeasurementError | null;
  /** Where the plausible range comes from. */
  readonly plausibleSource: Source;
}

export interface Battery {
  readonly id: string;
  readonly version: string;
  readonly label: string;
  readonly description: string;
  readonly items: readonly BatteryItem[];
}
