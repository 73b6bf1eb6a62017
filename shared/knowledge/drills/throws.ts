import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const throwDrills = {
  'slow-arm-path': {
    label: 'Slow arm path',
    dose: '3 sets of 8, three times a week',
    progression: 'From slow to medium, then with a heavier ball or a racket, when the arm keeps its height.',
    source: SOURCES.convention,
  },
  'standing-light-throws': {
    label: 'Light throws from standing',
    dose: '3 sets of 8, twice a week',
    progression: 'Add distance, then speed, when the elbow opens fully each time.',
    source: SOURCES.convention,
  },
  'trunk-led-throws': {
    label: 'Throws led by the trunk',
    dose: '3 sets of 6, twice a week',
    progression: 'From kneeling to standing to the jump, one step a week at most.',
    source: SOURCES.convention,
  },
  'call-the-top': {
    label: 'Calling the top of the jump',
    dose: '3 sets of 5, twice a week',
    progression: 'Add ball weight, then a defender, when call and throw fall together.',
    source: SOURCES.convention,
  },
  'follow-through-and-band': {
    label: 'Follow-through and slow lowering',
    dose: '3 sets of 8, twice a week',
    progression: 'A stronger band when lowering takes three seconds each time; throwing speed last.',
    source: SOURCES.convention,
  },
  'half-speed-throws': {
    label: 'Throws at half speed',
    dose: '3 sets of 6, twice a week',
    progression: 'From half speed to three quarters after two weeks without pain; full speed last.',
    source: SOURCES.convention,
  },
  'hips-lead-stride': {
    label: 'Stride with the hips first',
    dose: '3 sets of 6, twice a week',
    progression: 'Without a ball, then a light one, then the usual one at half speed.',
    source: SOURCES.convention,
  },
  'balance-point': {
    label: 'Balance point',
    dose: '3 sets of 6, held for 2 seconds each, three times a week',
    progression: 'Close the eyes for a moment, then go on into the stride, when it is steady.',
    source: SOURCES.convention,
  },
  'standing-hits': {
    label: 'Hits from standing',
    dose: '3 sets of 8, two or three times a week',
    progression: 'A higher toss, then a jump, when contact stays where it should be.',
    source: SOURCES.convention,
  },
  'fewer-hard-swings': {
    label: 'Fewer hard swings',
    dose: 'At most half the usual hard swings, every session for 1 week',
    progression: 'Add a tenth each session while the shoulder hurts less than 3 of 10; else fewer.',
    source: SOURCES.convention,
  },
  'throwing-rebuild': {
    label: 'Rebuilding throwing',
    dose: 'At most 20 % over the four-week mean, every week',
    progression: 'Add no more than a fifth from week to week while the shoulder stays quiet.',
    source: SOURCES.convention,
  },
  'half-speed-serves': {
    label: 'Serves at half speed',
    dose: '20 a session, twice a week',
    progression: 'From half speed to three quarters after two weeks without pain; kick serves last.',
    source: SOURCES.convention,
  },
  'slow-start': {
    label: 'Slow start of the serve',
    dose: '20 a session, three times a week',
    progression: 'Add the toss, then the swing, when the weight stays over both feet.',
    source: SOURCES.convention,
  },
  'toss-along-a-line': {
    label: 'Toss along a line',
    dose: '20 a session, three times a week',
    progression: 'Add the swing, then the hit, when 8 of 10 tosses fall on the line.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
