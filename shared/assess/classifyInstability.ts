import type { Classified } from '../kernel/shoulder/classified.ts';
import { fedsDirection } from '../kernel/shoulder/fedsDirection.ts';
import { fedsEtiology } from '../kernel/shoulder/fedsEtiology.ts';
import { fedsFrequency, type Frequency } from '../kernel/shoulder/fedsFrequency.ts';
import { fedsSeverity } from '../kernel/shoulder/fedsSeverity.ts';
import type { Injury } from '../model/injury.ts';
import type { CaseFile } from '../model/records.ts';
import type { Direction, Etiology, EventSeverity, InstabilityEvent } from '../model/shoulder.ts';

/** How often, by what, which way and how far an unstable shoulder gives: four words, or why there is none. */
export interface InstabilityClass {
  readonly frequency: Classified<Frequency>;
  readonly etiology: Classified<Etiology>;
  readonly direction: Classified<Direction>;
  readonly severity: Classified<EventSeverity>;
}

export type KnownOfEvent = Pick<InstabilityEvent, 'happenedOn' | 'severity' | 'etiology' | 'direction'>;

/** Classified from the events written down one by one; episodes that were only counted can make a part unsure. */
export function classifyInstability(file: CaseFile, injury: Injury): InstabilityClass {
  const events = knownOfEvents(file, injury);
  return {
    frequency: fedsFrequency(events.map(({ happenedOn }) => happenedOn)),
    etiology: fedsEtiology(events),
    direction: fedsDirection(events.map(({ direction }) => direction)),
    severity: fedsSeverity(events.map(({ severity }) => severity)),
  };
}

/** What is known of each event. An episode that was counted but never written down is one of which nothing is known. */
export function knownOfEvents({ instabilityEvents }: CaseFile, { id, episodes }: Injury): KnownOfEvent[] {
  const events = instabilityEvents.filter((one) => one.injuryId === id);
  const onlyCounted = Math.max(0, (episodes ?? 0) - events.length);
  return [...events, ...Array.from({ length: onlyCounted }, () => NOTHING_KNOWN)];
}

const NOTHING_KNOWN: KnownOfEvent = { happenedOn: null, severity: null, etiology: null, direction: null };

/** Shoulders on file as unstable, whether or not anything more was recorded of them. */
export function unstableShoulders({ injuries }: CaseFile): Injury[] {
  return injuries.filter(
    ({ condition, status }) => condition.endsWith('shoulder-instability') && status !== 'resolved',
  );
}
