import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const shotDrills = {
  'form-shots': {
    label: 'Form shots',
    dose: '50 shots, three times a week',
    progression: 'One step back when 8 of 10 shots keep the elbow under the ball.',
    source: SOURCES.convention,
  },
  'higher-set-point': {
    label: 'Higher set point',
    dose: '50 shots, twice a week',
    progression: 'A little higher each week, then one step back.',
    source: SOURCES.convention,
  },
  'arc-targets': {
    label: 'Shots over a target',
    dose: '50 shots, three times a week',
    progression: 'One step back when 8 of 10 shots clear the target.',
    source: SOURCES.convention,
  },
  'one-count-shots': {
    label: 'One-count shots',
    dose: '30 shots, three times a week',
    progression: 'One step back when the rhythm stays the same.',
    source: SOURCES.convention,
  },
  'reach-up-finish': {
    label: 'Reach-up finish',
    dose: '30 shots, twice a week, and 3 sets of 8 lifts in front of the body',
    progression: 'Add distance when the arm still finishes high.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
