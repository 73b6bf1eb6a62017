import type { Measure } from '../measure.ts';
import { SOURCES } from '../sources/index.ts';
import { flag, grade, numeric } from './builders.ts';

const nrs = { short: 'Pain', possible: [0, 10], plausible: [0, 10] } as const;

/** Screening patterns, leg tests, pain, clearing tests and red flags. */
export const screeningMeasures: readonly Measure[] = [
  grade(
    'squat.singleLegGrade',
    'Single-leg squat',
    'Grade against the written standard: met, met with compensation, not met.',
  ),
  grade(
    'squat.overheadGrade',
    'Squat with arms overhead',
    'Grade against the written standard: met, met with compensation, not met.',
  ),
  flag(
    'grade.sidesDiffer',
    'Left and right graded differently',
    'Whether the two sides of one pattern were graded differently in one session.',
  ),
  grade(
    'grade.lowest',
    'Lowest grade of the session',
    'The lowest grade among the patterns of one session: no total, only whether anything was not met.',
  ),
  numeric(
    'wblt.distance',
    'Weight-bearing lunge distance',
    'm',
    'cm',
    {
      short: 'Lunge',
      possible: [0, 35],
      plausible: [2, 22],
      error: { mdc: 1.9, border: 1.34, source: SOURCES.powden2015 },
    },
    'Toe to wall with the knee touching the wall and the heel down.',
  ),
  numeric(
    'wblt.diff',
    'Weight-bearing lunge, side difference',
    'm',
    'cm',
    {
      short: 'Lunge difference',
      possible: [0, 35],
      plausible: [0, 8],
      error: { mdc: 1.5, border: 1.06, source: SOURCES.chisholm2012 },
    },
    'Difference between the sides, larger less smaller.',
  ),
  numeric(
    'hop.distance',
    'Single-leg hop distance',
    'm',
    'cm',
    { short: 'Hop', possible: [0, 400], plausible: [30, 280] },
    'Toe to heel of one hop landed and held on the same leg, best of three.',
  ),
  numeric(
    'hop.legLengths',
    'Single-leg hop over leg length',
    '1',
    '%',
    { short: 'Hop over leg', possible: [0, 600], plausible: [40, 300] },
    'Distance of the hop as a share of the length of the same leg, so that people of different size compare.',
  ),
  numeric(
    'hop.lsi',
    'Single-leg hop, shorter over longer',
    '1',
    '%',
    {
      short: 'Hop symmetry',
      possible: [0, 100],
      plausible: [50, 100],
      error: {
        mdc: 8.1,
        border: 5.7,
        source: {
          cite: 'Reid et al. 2007, Phys Ther 87:337 (7.1 to 13.0 % over four hops published; 8.1 % for the single hop from memory)',
          status: 'from memory',
        },
      },
    },
    'Distance of the shorter side over that of the longer. With an injury on file: injured side over the other.',
  ),
  numeric(
    'reach.anteriorDiff',
    'Front reach, side difference',
    'm',
    'cm',
    {
      short: 'Reach difference',
      possible: [0, 100],
      plausible: [0, 20],
      error: {
        mdc: 7.8,
        border: 5.5,
        source: {
          cite: 'From SEM 2.0 cm a leg, mean of three, several raters: Shaffer et al. 2013, Mil Med 178:1264',
          status: 'derived',
        },
      },
    },
    'Difference between the legs in the forward reach of a balance test.',
  ),
  numeric(
    'pain.nrs',
    'Pain',
    '{score}',
    '{score}',
    {
      ...nrs,
      error: {
        mdc: 2,
        border: null,
        source: { cite: 'About two points is the usual smallest step', status: 'from memory' },
      },
    },
    'Worst pain during the test or movement, 0 none to 10 worst imaginable.',
  ),
  numeric(
    'pain.head-neck',
    'Pain in a test of the head or neck',
    '{score}',
    '{score}',
    nrs,
    'Worst pain during one test of the region, 0 to 10.',
  ),
  numeric(
    'pain.upper-limb',
    'Pain in a test of the arm or shoulder',
    '{score}',
    '{score}',
    nrs,
    'Worst pain during one test of the region, 0 to 10.',
  ),
  numeric(
    'pain.trunk',
    'Pain in a test of the trunk',
    '{score}',
    '{score}',
    nrs,
    'Worst pain during one test of the region, 0 to 10.',
  ),
  numeric(
    'pain.lower-limb',
    'Pain in a test of the leg',
    '{score}',
    '{score}',
    nrs,
    'Worst pain during one test of the region, 0 to 10.',
  ),
  numeric(
    'pain.whole-body',
    'Pain in a whole-body test',
    '{score}',
    '{score}',
    nrs,
    'Worst pain during one test of the whole body, 0 to 10.',
  ),
  numeric(
    'pain.jumpTest',
    'Pain in a jump test',
    '{score}',
    '{score}',
    nrs,
    'Worst pain in any jump of the test, 0 to 10; a jump that was set aside counts too.',
  ),
  numeric(
    'pain.squeezeNrs',
    'Groin pain on a five-second squeeze',
    '{score}',
    '{score}',
    { ...nrs, error: { mdc: 2, border: null, source: SOURCES.thorborg2017 } },
    'Pain in the groin during a five-second squeeze with long levers, 0 to 10.',
  ),
  flag(
    'clearing.upper-limb',
    'Raising the arm sideways hurts',
    'Yes or no: raising the arm out to the side and overhead brings on pain.',
  ),
  flag('clearing.trunk', 'Bending back hurts', 'Yes or no: bending the trunk back in standing brings on pain.'),
  flag(
    'clearing.lower-limb',
    'A clearing test of the leg hurts',
    'Yes or no: the clearing movement of the leg brings on pain.',
  ),
  flag(
    'clearing.own',
    'A clearing test of one’s own hurts',
    'Yes or no: a clearing movement of a battery of one’s own brings on pain.',
  ),
  flag(
    'flag.emergency',
    'Emergency sign',
    'Any sign that needs emergency care now: deformity, numbness, coldness, new weakness, fever with a hot joint, chest pain, faintness.',
  ),
  flag(
    'athlete.throws',
    'Throws or hits overhead',
    'Yes by the sport entered or a filmed throw, spike or serve; the limits of shoulder rotation were found in such athletes.',
  ),
  flag(
    'flag.preparticipation',
    'Red flag before taking part',
    'The practitioner’s own yes or no over the red-flag questions asked before taking part.',
  ),
  flag(
    'flag.cardiac',
    'Heart question answered yes',
    'Any heart question or examination item before taking part that was positive.',
  ),
  flag('flag.suspectedConcussion', 'Suspected concussion', 'Any sign or symptom after a blow to head or body.'),
  flag(
    'flag.instabilityEvent',
    'Shoulder slipped or gave way',
    'A new dislocation, slip or giving way since the last visit.',
  ),
  flag(
    'flag.apprehension',
    'Apprehension recorded by a clinician',
    'Recorded by a clinician only: apprehension, not pain alone.',
  ),
  flag('flag.focalBonePain', 'Bone pain at one spot', 'Tender at one spot on a bone, or pain there on hopping.'),
];
