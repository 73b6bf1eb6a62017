import type { Battery } from '../../../shared/knowledge/screening/battery.ts';
import { readBattery } from '../../../shared/knowledge/screening/readBattery.ts';
import { BATTERIES } from '../../../shared/knowledge/screening/shipped.ts';
import type { BatteryBody } from '../../../shared/model/battery.ts';
import { useBatteriesQuery } from '../../api.ts';

/** A battery that a session may be begun with. */
export interface ChosenBattery {
  readonly battery: Battery;
  /** Of one of one's own: the version whole, as the session keeps it. Null: one of the program. */
  readonly own: BatteryBody | null;
}

/** The batteries of the program and the newest version of each of one's own that is not retired. */
export function useBatteries(): readonly ChosenBattery[] {
  const { data } = useBatteriesQuery();
  const own = (data?.batteries ?? []).flatMap(({ versions, isRetired }): ChosenBattery[] => {
    const newest = versions.at(-1);
    return newest === undefined || isRetired ? [] : [{ battery: readBattery(newest), own: newest }];
  });
  return [...BATTERIES.map((battery) => ({ battery, own: null })), ...own];
}
