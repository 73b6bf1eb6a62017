import type { Condition, Region } from '../../model/injury.ts';
import type { Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';

export interface BatteryItem {
  readonly id: string;
  /** What it measures; no brand names. */
  readonly label: string;
  readonly kind: 'graded' | 'measured' | 'counted' | 'clearing';
  /** Measure id the result feeds. */
  readonly measure: string;
  readonly region: Region;
  readonly hasSides: boolean;
  /** SI unit results are stored in; null for graded and clearing items. */
  readonly unit: Unit | null;
  readonly displayUnit: Unit | null;
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
}

export interface Battery {
  readonly id: string;
  readonly version: string;
  readonly label: string;
  readonly description: string;
  readonly items: readonly BatteryItem[];
}
