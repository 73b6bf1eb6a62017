import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const landingDrills = {
  'quiet-landings': {
    label: 'Quiet landings',
    dose: '3 sets of 5, twice a week',
    progression:
      'Begin with a low step. Go on to a higher box or a jump only when every landing is quiet, steady and free of pain.',
    source: SOURCES.convention,
  },
  'land-and-hold': {
    label: 'Land and hold',
    dose: '3 sets of 5, held for 3 seconds each, twice a week',
    progression: 'From a step to a low box when every landing is held for three seconds.',
    source: SOURCES.convention,
  },
  'landings-with-mirror': {
    label: 'Landings with a mirror or film',
    dose: '3 sets of 6, twice a week',
    progression:
      'From two feet to one, and from a low box to a higher one, when the knee stays over the foot each time.',
    source: SOURCES.convention,
  },
  'two-foot-landings': {
    label: 'Two-foot landings after a run-up',
    dose: '3 sets of 5, three times a week',
    progression: 'Add speed, then a ball, when both feet land together each time.',
    source: SOURCES.convention,
  },
  'landing-warm-up': {
    label: 'Warm-up with landing control',
    dose: '10 to 15 minutes, two or three times a week for at least 6 weeks',
    progression: 'New exercises every second week; harder ones only when the easier ones are steady.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
