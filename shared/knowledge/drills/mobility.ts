import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const mobilityDrills = {
  'back-of-shoulder-mobility': {
    label: 'Mobility for the back of the shoulder',
    dose: '3 times 30 seconds, five days a week',
    progression: 'More range only while it feels like a stretch and not like a pinch.',
    source: SOURCES.convention,
  },
  'knee-over-toes': {
    label: 'Knee over toes',
    dose: '3 sets of 10, every day for 4 weeks',
    progression: 'Move the foot back a little when the knee reaches the wall with the heel down.',
    source: SOURCES.convention,
  },
  'overhead-mobility': {
    label: 'Upper-back and shoulder mobility',
    dose: '3 sets of 8, twice a week',
    progression: 'Weight overhead only when the arms stay in line without any.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
