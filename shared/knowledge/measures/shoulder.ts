import type { Measure } from '../measure.ts';
import { SOURCES } from '../sources/index.ts';
import { assumedError, numeric } from './builders.ts';

const rotation = { possible: [-20, 200], plausible: [10, 150] } as const;

/** Shoulder range, strength and support. Angles by inclinometer, one rater, lying, arm at 90°, shoulder blade held. */
export const shoulderMeasures: readonly Measure[] = [
  numeric(
    'shoulder.ir',
    'Shoulder internal rotation at 90°',
    'rad',
    'deg',
    { short: 'Internal rotation', ...rotation, error: { mdc: 5.7, border: 4, source: SOURCES.kolber2009 } },
    'Internal rotation lying on the back, upper arm at 90°, shoulder blade held.',
  ),
  numeric(
    'shoulder.er',
    'Shoulder external rotation at 90°',
    'rad',
    'deg',
    { short: 'External rotation', ...rotation, error: { mdc: 7.1, border: 5, source: SOURCES.kolber2009 } },
    'External rotation lying on the back, upper arm at 90°, shoulder blade held.',
  ),
  numeric(
    'shoulder.irDeficit',
    'Internal rotation lost on the dominant side',
    'rad',
    'deg',
    {
      short: 'Rotation deficit',
      possible: [-180, 180],
      plausible: [-25, 50],
      adultsOnly: true,
      error: { mdc: 5.7, border: 4, source: SOURCES.kolber2009 },
    },
    'Internal rotation of the other arm less that of the dominant arm.',
  ),
  numeric(
    'shoulder.arcDeficit',
    'Total rotation arc lost on the dominant side',
    'rad',
    'deg',
    {
      short: 'Arc deficit',
      possible: [-180, 180],
      plausible: [-30, 50],
      adultsOnly: true,
      error: {
        mdc: 9.1,
        border: 6.4,
        source: {
          cite: 'From the same-rater errors of internal (4°) and external (5°) rotation: Kolber et al. 2009, Physiother Theory Pract 25:572',
          status: 'derived',
        },
      },
    },
    'Internal plus external rotation of the other arm, less the same of the dominant arm.',
  ),
  numeric(
    'shoulder.erGain',
    'External rotation gained on the dominant side',
    'rad',
    'deg',
    {
      short: 'Rotation gain',
      possible: [-180, 180],
      plausible: [-25, 40],
      adultsOnly: true,
      error: { mdc: 7.1, border: 5, source: SOURCES.kolber2009 },
    },
    'External rotation of the dominant arm less that of the other arm.',
  ),
  numeric(
    'shoulder.erStrength',
    'External rotation strength',
    'N',
    'N',
    { short: 'ER strength', possible: [0, 1000], plausible: [20, 400] },
    'Isometric external rotation force, hand-held device; position and device belong to the value.',
  ),
  numeric(
    'shoulder.irStrength',
    'Internal rotation strength',
    'N',
    'N',
    { short: 'IR strength', possible: [0, 1000], plausible: [20, 500] },
    'Isometric internal rotation force, hand-held device; position and device belong to the value.',
  ),
  numeric(
    'shoulder.erIrRatio',
    'External to internal rotation strength',
    '1',
    '1',
    { short: 'ER/IR', possible: [0, 5], plausible: [0.3, 1.6], adultsOnly: true, error: assumedError(0.12, 0.08) },
    'Isometric external over internal rotation force of one arm, same position and device.',
  ),
  numeric(
    'shoulder.erSideDeficit',
    'External rotation strength lost on the dominant side',
    '1',
    '%',
    { short: 'ER deficit', possible: [-200, 100], plausible: [-40, 60], error: assumedError(15, 10.61) },
    'How much weaker the dominant arm is in external rotation than the other.',
  ),
  numeric(
    'shoulder.behindBackGap',
    'Gap between the hands behind the back',
    'm',
    'cm',
    {
      short: 'Gap',
      possible: [-40, 90],
      plausible: [-20, 50],
      error: {
        mdc: 1.3,
        border: 0.9,
        source: {
          cite: 'Man Ther 2014;19:72 (hand behind back, thumb to pelvis line, same rater 12.8 mm)',
          status: 'published',
        },
      },
    },
    'One hand over the shoulder, one up the back: distance between the closest fingertips; overlap is negative. Side is that of the upper arm.',
  ),
  numeric(
    'ckc.touches',
    'Closed-chain touches in 15 s',
    '{touches}',
    '{touches}',
    {
      short: 'Touches',
      possible: [0, 80],
      plausible: [5, 45],
      adultsOnly: true,
      error: { mdc: 3, border: 2.12, source: SOURCES.teixeira2021 },
    },
    'Hand touches across two lines in a push-up position in 15 s, mean of three.',
  ),
  numeric(
    'shotput.lsi',
    'Seated one-arm put, dominant over other',
    '1',
    '1',
    {
      short: 'Put ratio',
      possible: [0.1, 4],
      plausible: [0.6, 1.6],
      adultsOnly: true,
      error: { mdc: 0.124, border: 0.09, source: SOURCES.degot2021 },
    },
    'Distance of a seated one-arm put, dominant arm over the other, mean of three. More than 1 is expected.',
  ),
  numeric(
    'hyper.beightonOverCut',
    'Joint laxity points above the cut-off for age',
    '{points}',
    '{points}',
    { short: 'Laxity', possible: [-9, 9], plausible: [-6, 5], error: assumedError(1, 0.71) },
    'Nine-point laxity total less the cut-off for this age: 6 before puberty, 5 to 50 years, 4 above.',
  ),
];
