import { type BatteryBody, ITEM_UNITS, type OwnItem } from '../../model/battery.ts';
import type { Battery, BatteryItem } from './battery.ts';

/**
 * A battery of the program as one of one's own to begin with. Each item keeps a link to the one it comes from; cautions
 * and injuries to leave it out for come with that link and are not repeated.
 */
export function copyBattery(battery: Battery, id: string, label: string): BatteryBody {
  const items = battery.items.map((item) => copyItem(battery, item));
  return { id, version: '1', label, description: battery.description, items };
}

export function copyItem(battery: Battery, item: BatteryItem): OwnItem {
  const { id, label, kind, region, hasSides, standard, instructions, trials, plausible } = item;
  return {
    id,
    from: { batteryId: battery.id, version: battery.version, itemId: item.id },
    label,
    kind,
    region,
    hasSides,
    unit: ITEM_UNITS.find((unit) => unit === item.displayUnit) ?? null,
    trials: trials === undefined ? null : { ...trials },
    instructions: [...instructions],
    standard: standard === null ? null : { ...standard },
    caution: '',
    skipFor: [],
    possible: null,
    plausible: plausible === null ? null : [...plausible],
    error: null,
    reference: null,
    source: { ...item.source },
    dividedBy: item.dividedBy ?? null,
  };
}

/** An item of one's own with nothing in it yet. */
export function blankItem(id: string): OwnItem {
  return {
    id,
    from: null,
    label: '',
    kind: 'measured',
    region: 'whole-body',
    hasSides: false,
    unit: 'cm',
    trials: null,
    instructions: [],
    standard: null,
    caution: '',
    skipFor: [],
    possible: [null, null],
    plausible: null,
    error: null,
    reference: null,
    source: { cite: 'Convention of whoever made this battery', status: 'convention' },
    dividedBy: null,
  };
}
