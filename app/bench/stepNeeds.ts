import type { Movement } from '../../shared/knowledge/movement.ts';
import type { LandmarkTrack, MovementTrial, TrialEvent } from '../../shared/model/trial.ts';
import { counted } from '../../shared/format/number.ts';

/** The five steps of the bench in order. */
export const STEPS = ['clip', 'plane', 'points', 'events', 'measures'] as const;
export type Step = (typeof STEPS)[number];

export const STEP_TITLES: Readonly<Record<Step, string>> = {
  clip: 'Clip facts',
  plane: 'Plane',
  points: 'Points',
  events: 'Events and phases',
  measures: 'Measures',
};

export interface Standing {
  readonly trial: MovementTrial;
  readonly movement: Movement | null;
  readonly tracks: readonly LandmarkTrack[];
  readonly events: readonly TrialEvent[];
}

/** What a step still needs before the next can rest on it, in words; empty when it has all. */
export function stepNeeds(step: Step, { trial, movement, tracks, events }: Standing): string {
  switch (step) {
    case 'clip':
      if (trial.captureRateHz === null) return 'needs the true capture rate';
      return trial.captureRateFrom === null ? 'needs the capture rate confirmed' : '';
    case 'plane':
      return trial.calibration === null ? 'needs a length or four points, so that pixels become metres' : '';
    case 'points':
      return tracks.length === 0 ? 'needs points' : '';
    case 'events': {
      if (movement === null) return 'this version does not know the movement';
      const set = new Set(events.map(({ event }) => event));
      const unset = movement.events.filter(({ id }) => !set.has(id));
      return unset.length === 0 ? '' : `needs ${counted(unset.length, 'event')} of ${movement.events.length}`;
    }
    case 'measures': {
      const missing = STEPS.slice(0, -1).filter((one) => stepNeeds(one, { trial, movement, tracks, events }) !== '');
      return missing.length === 0
        ? ''
        : `waits for: ${missing.map((one) => STEP_TITLES[one].toLowerCase()).join(', ')}`;
    }
  }
}
