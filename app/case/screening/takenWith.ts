import { useState } from 'react';
import type { ScreeningResult } from '../../../shared/model/screening.ts';

/** How a result was taken, beside who took it: an error figure holds for nothing else. */
export type TakenWith = Pick<ScreeningResult, 'device' | 'position' | 'shoes'>;

export const NOTHING_TAKEN: TakenWith = { device: '', position: '', shoes: null };

type ByItem = Readonly<Record<string, TakenWith>>;

const place = (batteryId: string) => `caseframe.taken-with.${batteryId}`;

/** As said last for each item of a battery on this machine; convenience of one machine, so kept there. */
function stored(batteryId: string): ByItem {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(place(batteryId)) ?? '{}');
    const entries = Object.entries(found ?? {}).map(([itemId, said]: [string, Partial<TakenWith> | null]) => [
      itemId,
      {
        device: String(said?.device ?? '').slice(0, 300),
        position: String(said?.position ?? '').slice(0, 300),
        shoes: typeof said?.shoes === 'boolean' ? said.shoes : null,
      },
    ]);
    return Object.fromEntries(entries) as ByItem;
  } catch {
    // Unreadable: nothing was said.
    return {};
  }
}

/** What new results of a battery are said to be taken with, by item. */
export function useTakenWith(batteryId: string) {
  const [byItem, setByItem] = useState(() => stored(batteryId));
  const keep = (itemId: string, said: TakenWith) => {
    const next = { ...byItem, [itemId]: said };
    localStorage.setItem(place(batteryId), JSON.stringify(next));
    setByItem(next);
  };
  return [byItem, keep] as const;
}
