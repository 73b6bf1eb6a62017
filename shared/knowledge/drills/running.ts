import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const runningDrills = {
  'run-and-stop': {
    label: 'Run and stop',
    dose: '3 sets of 4, twice a week',
    progression: 'From half speed to three quarters when you stop on the mark each time.',
    source: SOURCES.convention,
  },
  'slowing-down': {
    label: 'Slowing down',
    dose: '3 sets of 5, twice a week',
    progression: 'Add speed, then shorten the way you have for stopping.',
    source: SOURCES.convention,
  },
  'planned-cuts': {
    label: 'Planned cuts',
    dose: '3 sets of 5, twice a week for 6 weeks',
    progression: 'From slow and shallow to fast and sharp; unplanned cuts last.',
    source: SOURCES.convention,
  },
  'cutting-technique': {
    label: 'Cutting technique',
    dose: '20 minutes, twice a week for 6 weeks',
    progression: 'From planned to unplanned when the film shows fewer faults.',
    source: SOURCES.convention,
  },
  'falling-starts': {
    label: 'Falling starts',
    dose: '3 sets of 3, twice a week, fresh',
    progression: 'Add strides when the first one still leans.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
