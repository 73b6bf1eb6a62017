import { blankItem, copyBattery } from '../../shared/knowledge/screening/copyBattery.ts';
import { generalBattery } from '../../shared/knowledge/screening/generalBattery.ts';
import type { BatteryBody, OwnItem } from '../../shared/model/battery.ts';
import { sampleId } from './sampleCase.ts';

export const OWN_ID = sampleId(700);

/** A copy of the shipped battery, as one begins with it. */
export function aCopy(): BatteryBody {
  return copyBattery(generalBattery, OWN_ID, 'Afternoon battery');
}

/** A copy with one item changed. */
export function copyWith(itemId: string, fields: Partial<OwnItem>): BatteryBody {
  const copy = aCopy();
  return { ...copy, items: copy.items.map((item) => (item.id === itemId ? { ...item, ...fields } : item)) };
}

/** An item of one's own that may be used. */
export function anItem(fields: Partial<OwnItem> = {}): OwnItem {
  return {
    ...blankItem('plank-hold'),
    label: 'Front plank, time held',
    region: 'lumbosacral',
    unit: 's',
    instructions: ['Hold a straight line on forearms and toes.'],
    possible: [0, 900],
    ...fields,
  };
}
