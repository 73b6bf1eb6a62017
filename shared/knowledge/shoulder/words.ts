import { SOURCES } from '../sources/index.ts';
import type { Source } from '../../quantity.ts';
import type { Urgency, UrgencyTier } from '../../kernel/shoulder/referralUrgency.ts';
import type { LaxitySign, NerveOrVessel, Provocation, Questionnaire, ShoulderFlag } from '../../model/shoulder.ts';

/** What the shoulder record's fields are called, on screen and on the page. Named by what is looked at. */

export const FLAG_WORDS: Readonly<Record<ShoulderFlag, string>> = {
  outOfJoint: 'Out of joint now, or deformed',
  fractureSuspected: 'Fracture suspected',
  vesselSigns: 'Pulse weaker or absent, hand cold or pale, or swelling growing in the armpit',
  nerveLoss: 'Sudden loss of strength or feeling',
  openWound: 'Open wound',
  hotJointWithFever: 'Hot, red, swollen joint, or fever',
  lockedAfterSeizure: 'After a seizure or electric shock: arm turned inward and locked',
  chestOrBellySigns:
    'Chest, jaw or arm pain on effort, breathlessness, collapse, or shoulder-tip pain after a blow to the belly or in early pregnancy',
  headOrNeckSigns: 'Signs of a head or neck injury, trouble breathing or swallowing, or great force',
  firstWithoutImaging: 'First dislocation put back, without imaging or follow-up',
  overFortyAndWeak: 'Over 40 and weak, or cannot lift the arm',
  nerveLossPersists: 'Loss of strength or feeling that lasts after it was put back',
  tumourSigns: 'A lump, cancer before, pain at night, or weight lost without reason',
  troubleAfterSurgery: 'Out again, or trouble with the wound, after an operation',
  locking: 'Locks',
  apprehensionStopsSport: 'Apprehension keeps the athlete from sport',
};

export const REASON_WORDS: Readonly<Record<Urgency['reasons'][number], string>> = {
  ...FLAG_WORDS,
  youngFirstTraumatic: 'First dislocation by injury under 25, in contact or overhead sport',
  recurrent: 'More than one event',
  offTrack: 'The lesion reaches past the track, by the numbers reported',
};

export const TIER_WORDS: Readonly<Record<UrgencyTier, string>> = {
  emergency: 'Emergency, now',
  urgent: 'Urgent, within days, at most two weeks',
  soon: 'Soon, within two to six weeks',
  routine: 'Routine',
};

export const SIGN_WORDS: Readonly<Record<LaxitySign, string>> = {
  littleFingerLeft: 'Little finger back past 90°, left',
  littleFingerRight: 'Little finger back past 90°, right',
  thumbLeft: 'Thumb to the forearm, left',
  thumbRight: 'Thumb to the forearm, right',
  elbowLeft: 'Elbow past 10°, left',
  elbowRight: 'Elbow past 10°, right',
  kneeLeft: 'Knee past 10°, left',
  kneeRight: 'Knee past 10°, right',
  palmsToFloor: 'Palms flat on the floor, knees straight',
};

export const NERVE_WORDS: Readonly<Record<NerveOrVessel, string>> = {
  axillaryStrength: 'Axillary nerve: strength of the deltoid',
  axillaryFeeling: 'Axillary nerve: feeling over the outer deltoid',
  suprascapular: 'Suprascapular nerve',
  musculocutaneous: 'Musculocutaneous nerve',
  radialNerve: 'Radial nerve',
  medianNerve: 'Median nerve',
  ulnarNerve: 'Ulnar nerve',
  radialPulse: 'Pulse at the wrist',
  brachialPulse: 'Pulse at the elbow',
  capillaryRefill: 'Capillary refill',
  warmthAndColour: 'Warmth and colour',
};

export const PROVOCATION_WORDS: Readonly<Record<Provocation, string>> = {
  'abduction-external-rotation': 'Abduction with external rotation',
  relocation: 'Relocation',
  release: 'Release after relocation',
  'anterior-shift': 'Shift to the front',
  'posterior-shift': 'Shift to the back',
  'posterior-load-crossing': 'Load to the back while crossing the body',
  'posterior-load-oblique': 'Load to the back and down',
  'downward-pull': 'Pull downwards',
};

export interface QuestionnaireEntry {
  readonly label: string;
  readonly most: number;
  readonly best: string;
  /** Points a change must exceed to be more than error in one person; null: none is at hand. */
  readonly detectable: { readonly points: number; readonly source: Source } | null;
}

export const QUESTIONNAIRE_WORDS: Readonly<Record<Questionnaire, QuestionnaireEntry>> = {
  'instability-quality-of-life': {
    label: 'Quality of life with an unstable shoulder',
    most: 2100,
    best: '0 is best',
    // 23 % of the scale.
    detectable: { points: 483, source: SOURCES.vanDerLinde2014 },
  },
  'instability-function': {
    label: 'Function of an unstable shoulder',
    most: 48,
    best: '48 is best',
    detectable: { points: 9, source: SOURCES.functionErrors2015 },
  },
  'single-rating': { label: 'One rating of the shoulder', most: 100, best: '100 is best', detectable: null },
  'readiness-to-return': { label: 'Readiness to return to sport', most: 100, best: '100 is best', detectable: null },
};

/** Items of the severity index as they stand on screen while they are missing. */
export const SEVERITY_WORDS: Readonly<Record<string, string>> = {
  ageAtSurgeryYears: 'age at surgery',
  isCompetitive: 'competitive sport or not',
  isContactOrOverhead: 'contact or forced overhead sport or not',
  isHyperlaxShoulder: 'lax shoulder or not',
  headDentVisible: 'dent of the head on the film or not',
  lowerOutlineLost: 'lower outline of the socket on the film',
};
