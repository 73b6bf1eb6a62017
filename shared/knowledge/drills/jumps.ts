import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const jumpDrills = {
  'quick-approach': {
    label: 'Quick approach steps',
    dose: '3 sets of 4, twice a week',
    progression: 'Add speed, then the ball, when the last two steps keep their rhythm.',
    source: SOURCES.convention,
  },
  'quick-take-offs': {
    label: 'Quick take-offs',
    dose: '3 sets of 4, twice a week, fresh',
    progression: 'Raise the line a little when contact stays short; add the ball last.',
    source: SOURCES.convention,
  },
  'deeper-dip': {
    label: 'Deeper dip',
    dose: '3 sets of 4, twice a week',
    progression: 'From half effort to full when the dip stays both deep and quick.',
    source: SOURCES.convention,
  },
  'jumps-on-a-spot': {
    label: 'Jumps on a marked spot',
    dose: '3 sets of 4, twice a week',
    progression: 'From half effort to full when each landing is on the mark.',
    source: SOURCES.convention,
  },
  'tall-jumps': {
    label: 'Tall jumps',
    dose: '3 sets of 4, twice a week',
    progression: 'From half effort to full when legs and feet stretch fully each time.',
    source: SOURCES.convention,
  },
  'straight-up-take-offs': {
    label: 'Straight-up take-offs',
    dose: '30 a session, three times a week',
    progression: 'Add a turn or a run-up, then the ball, when you land where you jumped.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
