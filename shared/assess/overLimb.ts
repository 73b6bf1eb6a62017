import { lowerFirst } from '../format/letterCase.ts';
import { overLimbLength } from '../kernel/screening/overLimbLength.ts';
import type { BatteryItem } from '../knowledge/screening/battery.ts';
import type { Athlete } from '../model/athlete.ts';
import type { SideOrNone } from '../model/parts.ts';
import { isKnown, measured, type Quantity } from '../quantity.ts';
import { computed, type FactParts, unknown } from './makeFact.ts';

/** The measure of an item as a share of a limb; null for an item that is not shown so. */
export function overLimbMeasure({ measure, dividedBy }: BatteryItem): string | null {
  if (dividedBy === undefined) return null;
  return measure === 'hop.distance' && dividedBy === 'leg-length' ? 'hop.legLengths' : `${measure}/over-${dividedBy}`;
}

/** A result as a share of the athlete's own limb of that side, or why it cannot be told. */
export function overLimb(
  item: BatteryItem,
  side: SideOrNone,
  value: FactParts['value'],
  athlete: Athlete,
): FactParts['value'] {
  if (value.kind !== 'number' || !isKnown(value.reading)) return value;
  const limb = item.dividedBy === 'arm-length' ? 'arm length' : 'leg length';
  const lengthM = lengthOf(item, side, athlete);
  if (lengthM === null) return unknown(`${limb}, ${side}, is not recorded`);
  const { reading } = value;
  return computed(() =>
    overLimbLength(
      { ...(reading as Quantity<'m'>), working: { ...reading.working, name: lowerFirst(item.label) } },
      measured('L', `${limb}, ${side}`, lengthM, 'm', 'the uncertainty of the tape is not recorded'),
    ),
  );
}

function lengthOf({ dividedBy }: BatteryItem, side: SideOrNone, athlete: Athlete): number | null {
  if (side === 'none') return null;
  if (dividedBy === 'arm-length') return side === 'left' ? athlete.armLengthLeftM : athlete.armLengthRightM;
  return side === 'left' ? athlete.legLengthLeftM : athlete.legLengthRightM;
}
