import { frameClock } from '../../../shared/kernel/event/frameClock.ts';
import type { Movement } from '../../../shared/knowledge/movement.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import type { LandmarkTrack, MovementTrial, TrialEvent } from '../../../shared/model/trial.ts';
import type { RibbonEvent, RibbonPhase } from '../../plots/PhaseRibbon.tsx';

export interface Timeline {
  readonly events: readonly RibbonEvent[];
  /** Only phases both of whose bounds are known. */
  readonly phases: readonly RibbonPhase[];
  readonly fromS: number;
  readonly toS: number;
  /** Labels of the movement's events that nobody has set yet. */
  readonly unset: readonly string[];
}

/** What the ribbon shows of one trial. Without a movement known to this version: events by their own ids, no phases. */
export function timelineOf(
  trial: MovementTrial,
  movement: Movement | null,
  events: readonly TrialEvent[],
  tracks: readonly LandmarkTrack[],
): Timeline {
  const label = (id: string) => movement?.events.find((event) => event.id === id)?.label ?? id;
  const timeOf = new Map(events.map((event) => [event.event, event.timeS]));
  const phases = (movement?.phases ?? []).flatMap(({ id, label: name, startsAt, endsAt }) => {
    const fromS = timeOf.get(startsAt);
    const toS = timeOf.get(endsAt);
    return fromS === undefined || toS === undefined || toS < fromS ? [] : [{ id, label: name, fromS, toS }];
  });
  const lastFrame = tracks.reduce((last, track) => Math.max(last, track.samples.at(-1)?.[0] ?? 0), 0);
  const instants = [...timeOf.values(), 0];
  const clock = frameClock(trial);
  if (clock !== null) instants.push(clock.timeOf(lastFrame));
  return {
    events: events.map(({ id, event, timeS, uS }) => ({ id, label: label(event), timeS, uS })),
    phases,
    fromS: Math.min(...instants),
    toS: Math.max(...instants),
    unset: (movement?.events ?? []).filter((event) => !timeOf.has(event.id)).map((event) => event.label),
  };
}

/** The trial's own records out of the case file. */
export function partsOf(file: CaseFile, trialId: string) {
  return {
    events: file.trialEvents.filter((event) => event.trialId === trialId).toSorted((a, b) => a.timeS - b.timeS),
    tracks: file.landmarkTracks.filter((track) => track.trialId === trialId),
    entered: file.enteredMeasures.filter((measure) => measure.trialId === trialId),
  };
}
