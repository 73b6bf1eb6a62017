import type { OwnItem } from '../../model/battery.ts';
import { siUnitOf } from '../../units.ts';
import { whatCutsTheLink } from './readBattery.ts';
import { shippedItem } from './shipped.ts';

/**
 * An item after one of its fields was changed, with what its kind does not have taken out and what it needs laid open: a
 * graded item has a written standard, a measured one a unit and a possible range, a linked one the range of the program.
 */
export function tidyItem(changed: OwnItem): OwnItem {
  const isLength = changed.unit !== null && siUnitOf(changed.unit) === 'm' && changed.hasSides;
  const item = isLength ? changed : { ...changed, dividedBy: null };
  if (item.kind === 'graded' || item.kind === 'clearing') {
    const standard = item.standard ?? { met: '', metWithCompensation: '', notMet: '' };
    return {
      ...item,
      unit: null,
      dividedBy: null,
      trials: null,
      possible: null,
      plausible: null,
      error: null,
      reference: null,
      standard: item.kind === 'graded' ? standard : null,
    };
  }
  const number = { ...item, unit: item.unit ?? 'cm', standard: null } as const;
  const shipped = number.from === null ? null : shippedItem(number.from);
  if (shipped !== null && whatCutsTheLink(number).length === 0) {
    return { ...number, possible: null, error: null, reference: null };
  }
  const isSameUnit = shipped?.displayUnit === number.unit && shipped.possible !== null;
  return { ...number, possible: number.possible ?? (isSameUnit ? [...shipped.possible] : [null, null]) };
}
