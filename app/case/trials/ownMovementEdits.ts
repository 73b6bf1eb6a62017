import type { OwnMovement } from '../../../shared/model/ownMovement.ts';

type Event = OwnMovement['events'][number];
type Fields = Partial<Omit<OwnMovement, 'id'>>;

/** What a movement still lacks to be worth choosing, in words; null: nothing. */
export function missingOf({ label, events, phases }: OwnMovement): string | null {
  if (label.trim() === '') return 'needs a name';
  if (events.length < 2) return 'needs two instants';
  const known = new Set(events.map(({ id }) => id));
  const open = phases.filter(({ startsAt, endsAt }) => !known.has(startsAt) || !known.has(endsAt));
  if (open.length > 0) return `${open.map((phase) => phase.label).join(', ')}: needs both instants`;
  return phases.length === 0 ? 'needs a phase' : null;
}

/**
 * At the end. Apart from every other, however often the movement has an instant of the program's.
 * @param event with the id of the program's instant, or a new one; never its name, for ids stand in data without names
 */
export function addEvent({ events }: OwnMovement, event: Event): Fields {
  const taken = new Set(events.map(({ id }) => id));
  let { id } = event;
  for (let n = 2; taken.has(id); n += 1) id = `${event.id}-${n}`;
  return { events: [...events, { ...event, id }] };
}

/** One place earlier (−1) or later (+1); at the end of the list nothing changes. */
export function moveEvent({ events }: OwnMovement, id: string, by: 1 | -1): Fields {
  const from = events.findIndex((event) => event.id === id);
  const [moved, other] = [events[from], events[from + by]];
  if (moved === undefined || other === undefined) return {};
  return { events: events.with(from, other).with(from + by, moved) };
}

/** The phases it bounded stay, with that end open. */
export function removeEvent({ events, phases }: OwnMovement, id: string): Fields {
  return {
    events: events.filter((event) => event.id !== id),
    phases: phases.map((phase) => ({
      ...phase,
      startsAt: phase.startsAt === id ? '' : phase.startsAt,
      endsAt: phase.endsAt === id ? '' : phase.endsAt,
    })),
  };
}

/** With what was to be measured in it. */
export function removePhase({ phases, checkpoints }: OwnMovement, id: string): Fields {
  return {
    phases: phases.filter((phase) => phase.id !== id),
    checkpoints: checkpoints.filter(({ phase }) => phase !== id),
  };
}

/** The phases there are, and one more between each two neighbouring instants that no phase joins yet. */
export function phasesBetweenAll({ events, phases }: OwnMovement, newId: () => string): OwnMovement['phases'] {
  const added = events.slice(1).flatMap((to, i) => {
    const from = events[i] as Event;
    if (phases.some(({ startsAt, endsAt }) => startsAt === from.id && endsAt === to.id)) return [];
    return [
      { id: newId(), label: `${from.label} to ${to.label.toLowerCase()}`, startsAt: from.id, endsAt: to.id, means: '' },
    ];
  });
  return [...phases, ...added];
}
