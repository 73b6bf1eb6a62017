import { CONDITIONS } from '../../model/injury.ts';
import type { Measure } from '../measure.ts';
import { flag, numeric } from './builders.ts';

/** What is planned, and what is on file: for rules that judge a planned drill against the history. */
export const planMeasures: readonly Measure[] = [
  flag(
    'drill.loadedAbdEr',
    'Drill loads the arm out and back',
    'A planned drill loads the arm at 90° or more with end-range external rotation.',
  ),
  flag(
    'drill.loadedFlexAddIr',
    'Drill pushes along or across the arm',
    'A planned drill loads the arm forward, across and turned in, or pushes along the arm.',
  ),
  flag(
    'drill.traction',
    'Drill hangs or drags on the arm',
    'A planned drill hangs from, drops on or drags on the arm, or stretches the capsule.',
  ),
  flag(
    'drill.pivotContact',
    'Drill has unplanned pivoting or contact',
    'A planned drill has unplanned turns or contact.',
  ),
  flag('drill.impact', 'Drill has running or jumping impact', 'A planned drill has running or jumping impact.'),
  flag(
    'drill.weightedThrow',
    'Drill throws heavy balls or long',
    'A planned drill throws over-weight balls or over long distance.',
  ),
  numeric(
    'history.weeksSincePostpartum',
    'Weeks since birth',
    'wk',
    'wk',
    { possible: [0, 520], plausible: [0, 104] },
    'From the date on file to the day of the newest record.',
  ),
  ...CONDITIONS.map((condition) =>
    flag(
      `history.${condition}`,
      `On file and not cleared: ${condition.replaceAll('-', ' ')}`,
      'Whether the condition is on file without a clearance.',
    ),
  ),
];
