import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const strengthDrills = {
  'leg-strength-block': {
    label: 'Leg strength block',
    dose: '3 sets of 5 or 6, twice a week for 8 weeks',
    progression: 'Add a little weight each week as long as all sets are clean; jumps begin after four weeks.',
    source: SOURCES.convention,
  },
  'leg-drive': {
    label: 'Leg drive and squats',
    dose: '3 sets of 6, twice a week',
    progression: 'Add weight in small steps; then join the leg drive to the toss at half speed.',
    source: SOURCES.convention,
  },
  'seat-squat-one-leg': {
    label: 'Squat to a seat on one leg',
    dose: '3 sets of 6, three times a week',
    progression: 'A lower seat, then no hand on the wall, when all sets are steady.',
    source: SOURCES.convention,
  },
  'box-squat': {
    label: 'Box squat',
    dose: '3 sets of 6, twice a week',
    progression: 'A lower box first, more weight later, as long as the position holds.',
    source: SOURCES.convention,
  },
  'one-leg-strength': {
    label: 'Strength of one leg',
    dose: '3 sets of 6, twice a week',
    progression: 'Add weight in small steps; hops come back when both legs do the same work.',
    source: SOURCES.convention,
  },
  'knee-over-foot': {
    label: 'Knee over foot',
    dose: '3 sets of 8, twice a week',
    progression: 'From two legs to one, then with weight, when the knee stays over the foot each time.',
    source: SOURCES.convention,
  },
  'one-arm-push': {
    label: 'Push with one arm',
    dose: '3 sets of 8, twice a week',
    progression: 'From a wall to a bench to a band or a light ball, when all sets are free of pain.',
    source: SOURCES.convention,
  },
  'hand-support': {
    label: 'Support on the hands',
    dose: '3 sets of 20 seconds, three times a week',
    progression: 'From a wall to a bench to the floor when 20 seconds are steady and free of pain.',
    source: SOURCES.convention,
  },
  'turn-out-with-band': {
    label: 'Turning the arm out against a band',
    dose: '3 sets of 10, two or three times a week',
    progression: 'A stronger band when 10 are slow and free of pain; a raised arm only after four weeks.',
    source: SOURCES.convention,
  },
  'graded-squeeze': {
    label: 'Graded squeeze',
    dose: '3 sets of 8, three times a week',
    progression: 'Harder only while the squeeze hurts 2 of 10 or less; wide steps and kicks come last.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
