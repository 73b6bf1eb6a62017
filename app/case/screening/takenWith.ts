import { useState } from 'react';
import type { ScreeningResult } from '../../../shared/model/screening.ts';

/** How a result was taken, beside who took it: an error figure holds for nothing else. */
export type TakenWith = Pick<ScreeningResult, 'device' | 'position' | 'shoes'>;

export const NOTHING_TAKEN: TakenWith = { device: '', position: '', shoes: null };

/** As found: anyone may have written to that place. */
type Loose = Partial<Record<keyof TakenWith, unknown>>;
type ByItem = Readonly<Record<string, TakenWith>>;

const place = (batteryId: string) => `caseframe.taken-with.${batteryId}`;

/** As said last for each item of a battery on this machine; convenience of one machine, so kept there. */
function stored(batteryId: string): ByItem {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(place(batteryId)) ?? '{}');
    const entries = Object.entries(found ?? {}).map(([itemId, said]: [string, Loose | null]) => [
      itemId,
      {
        device: textOf(said?.device),
        position: textOf(said?.position),
        shoes: typeof said?.shoes === 'boolean' ? said.shoes : null,
      },
    ]);
    return Object.fromEntries(entries) as ByItem;
  } catch {
    // Unreadable: nothing was said.
    return {};
  }
}

function textOf(found: unknown): string {
  return typeof found === 'string' ? found.slice(0, 300) : '';
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
