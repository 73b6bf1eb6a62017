import { blankInjury, blankShoulderRecord } from '../../shared/model/blank.ts';
import type { Edit } from '../../shared/model/edit.ts';
import {
  type InstabilityEvent,
  NERVES_AND_VESSELS,
  type NeurovascularCheck,
  type ProvocationTest,
  type QuestionnaireTotal,
  SHOULDER_FLAGS,
} from '../../shared/model/shoulder.ts';
import type { InventedCase } from './inventedCase.ts';
import type { RandomSource } from './randomSource.ts';
import { bothSides, filmedJumps, screening } from './records.ts';

const SEEN_ON = '2026-09-11';
const EXAMINER = 'Dr Invented, sports physician';
const DEG = Math.PI / 180;

/** A judoka whose shoulder came out four times, examined and imaged: a letter with nothing left to ask. */
export const judoka: InventedCase = {
  purpose: 'referral',
  openedOn: SEEN_ON,
  athlete: {
    name: 'Judoka Rowan',
    identifier: 'Clinic file 0417 (invented)',
    birthDate: '2006-05-19',
    referenceSex: 'male',
    massKg: 72.6,
    massUKg: 0.1,
    massOn: SEEN_ON,
    statureM: 1.76,
    statureUM: 0.005,
    statureOn: SEEN_ON,
    dominantSide: 'right',
    sport: 'Judo',
    level: 'National team, under 73 kg (invented)',
    goals: 'Compete again in spring without holding the arm back.',
    consentFor: 'Assessment, record and this letter',
    consentOn: SEEN_ON,
    consentToImages: false,
    hasRedFlags: false,
    medicines: 'None.',
    allergies: 'Penicillin: rash.',
    otherHistory: 'No epilepsy, no diabetes, no known disorder of connective tissue.',
    accessNeeds: 'No interpreter needed',
  },
  case: {
    practitioner: EXAMINER,
    practitionerRole: 'registration 000000',
    practitionerContact: 'telephone 000 0000',
    addressee: 'Shoulder clinic, consultant on duty (invented)',
    copiesTo: 'family doctor (invented)',
    question: 'Is stabilising surgery advised before the season, given four dislocations and the bone findings?',
    urgency: 'soon',
    urgencyReason: 'Four dislocations in seventeen months, the last two within four weeks; nerves and vessels normal.',
    triedSoFar:
      'Sling for three weeks after the first; 20 supervised sessions of cuff and shoulder-blade exercise over five months, most attended. Stable in daily life, out again at the first hard contest.',
    effects: 'No contest since July; avoids sleeping on the right side. Qualifying tournament: 6 March 2027.',
    toldAndWanted:
      'Told that an operation is one of several ways; wants to know what each means for the season. Told to go to the emergency department if it comes out, or if the hand is numb, cold or weak.',
    consentToReferral: true,
    consentToReferralOn: SEEN_ON,
  },
  records: (caseId, athleteId, random) => {
    const injuryId = random.id();
    return [
      {
        op: 'create',
        kind: 'injury',
        record: {
          ...blankInjury({ id: injuryId, athleteId }, { region: 'shoulder', side: 'right' }),
          condition: 'anterior-shoulder-instability',
          diagnosis: 'Recurrent anterior dislocation',
          onset: '2025-03-08',
          mechanism: 'Thrown, and landed on the outstretched arm, out to the side and turned back.',
          mode: 'acute-sudden',
          contact: 'direct-athlete',
          status: 'current',
          episodes: 4,
          timeLossDays: 150,
          hadSurgery: false,
          restrictions: 'No throwing practice and no free fighting until seen.',
        },
      },
      {
        op: 'create',
        kind: 'shoulderRecord',
        record: {
          ...blankShoulderRecord({ id: random.id(), injuryId }),
          ...Object.fromEntries(SHOULDER_FLAGS.map((flag) => [flag, flag === 'apprehensionStopsSport'])),
          isMultidirectional: false,
          canSlipAtWill: false,
          examinedOn: SEEN_ON,
          examiner: EXAMINER,
          passiveAbductionRad: 112 * DEG,
          otherPassiveAbductionRad: 90 * DEG,
          externalRotationRad: 74 * DEG,
          otherExternalRotationRad: 72 * DEG,
          sulcus: 'under-1-cm',
          sulcusStaysInRotation: false,
          sulcusIsSymptom: false,
          anteriorShift: 'over-rim-returns',
          posteriorShift: 'little',
          littleFingerLeft: false,
          littleFingerRight: false,
          thumbLeft: false,
          thumbRight: false,
          elbowLeft: false,
          elbowRight: false,
          kneeLeft: false,
          kneeRight: false,
          palmsToFloor: true,
          isPrepubertal: false,
          wasImaged: true,
          imagedOn: '2026-08-19',
          imagingReport:
            'X-ray in two views and CT with surface model: dent at the back of the head, small loss at the front rim',
          glenoidWidthM: 0.027,
          anteriorDefectM: 0.003,
          lesionWidthM: 0.014,
          boneBridgeM: 0.004,
          glenoidLossRatio: 0.11,
          tuberosityFracture: false,
          ageAtSurgeryYears: 20,
          isCompetitive: true,
          isContactOrOverhead: true,
          isHyperlaxShoulder: false,
          headDentVisible: true,
          lowerOutlineLost: false,
        },
      },
      ...EVENTS.map((event) => eventEdit(event, injuryId, random)),
      ...CHECKS.map((check) => checkEdit(check, injuryId, random)),
      ...TESTS.map((test) => testEdit(test, injuryId, random)),
      ...TOTALS.map((total) => totalEdit(total, injuryId, random)),
      ...screening(
        caseId,
        SEEN_ON,
        EXAMINER,
        [
          { item: 'pain-bending-back', isPositive: false },
          { item: 'pain-raising-arm', side: 'right', isPositive: false },
          { item: 'pain-raising-arm', side: 'left', isPositive: false },
          { item: 'overhead-squat', grade: 'met' },
          ...bothSides('shoulder-internal-rotation', 58, 61),
          ...bothSides('shoulder-external-rotation', 88, 94),
          ...bothSides('weight-bearing-lunge', 12, 12.5),
          { item: 'single-leg-squat', side: 'right', grade: 'met' },
          { item: 'single-leg-squat', side: 'left', grade: 'met' },
        ],
        random,
      ),
      ...filmedJumps(caseId, SEEN_ON, [0.54, 0.55, 0.55], random),
    ];
  },
};

type Told<T> = Omit<T, 'id' | 'injuryId'>;

const OUT: Told<InstabilityEvent> = {
  happenedOn: null,
  severity: 'dislocation',
  etiology: 'traumatic',
  direction: 'anterior',
  mechanism: '',
  reduction: 'in-hospital',
  underSedation: true,
  outOfJointS: null,
  afterSeizureOrShock: false,
  duringSleep: false,
  numbOrWeakAfter: false,
  note: '',
};

const EVENTS: readonly Told<InstabilityEvent>[] = [
  { ...OUT, happenedOn: '2025-03-08', mechanism: 'thrown in a contest, arm out and back', outOfJointS: 5400 },
  { ...OUT, happenedOn: '2026-01-24', mechanism: 'gripping, arm pulled out and back', outOfJointS: 4200 },
  {
    ...OUT,
    happenedOn: '2026-07-04',
    mechanism: 'landing from a throw in training',
    reduction: 'on-the-field',
    underSedation: false,
    outOfJointS: 600,
  },
  {
    ...OUT,
    happenedOn: '2026-07-30',
    mechanism: 'reaching behind in bed',
    etiology: 'atraumatic',
    reduction: 'by-the-athlete',
    underSedation: false,
    outOfJointS: 120,
    duringSleep: true,
  },
];

const ALL_NORMAL = Object.fromEntries(NERVES_AND_VESSELS.map((name) => [name, 'normal'])) as Record<
  (typeof NERVES_AND_VESSELS)[number],
  'normal'
>;

const CHECKS: readonly Told<NeurovascularCheck>[] = [
  {
    ...ALL_NORMAL,
    timing: 'before-reduction',
    checkedOn: '2026-01-24',
    checkedAt: '15:10',
    examiner: 'emergency department (invented)',
    suprascapular: null,
    musculocutaneous: null,
    axillaryFeeling: 'reduced',
    armpitSwelling: false,
    note: '',
  },
  {
    ...ALL_NORMAL,
    timing: 'after-reduction',
    checkedOn: '2026-01-24',
    checkedAt: '16:05',
    examiner: 'emergency department (invented)',
    suprascapular: null,
    musculocutaneous: null,
    armpitSwelling: false,
    note: 'Feeling over the deltoid back to normal.',
  },
  {
    ...ALL_NORMAL,
    timing: 'at-assessment',
    checkedOn: SEEN_ON,
    checkedAt: '10:30',
    examiner: EXAMINER,
    armpitSwelling: false,
    note: '',
  },
];

const TEST: Told<ProvocationTest> = {
  test: 'abduction-external-rotation',
  side: 'right',
  testedOn: SEEN_ON,
  examiner: EXAMINER,
  apprehension: true,
  painNrs: 2,
  clunk: null,
  note: '',
};

const TESTS: readonly Told<ProvocationTest>[] = [
  TEST,
  { ...TEST, test: 'relocation', apprehension: false, painNrs: 1, note: 'apprehension gone' },
  { ...TEST, test: 'posterior-load-crossing', apprehension: false, painNrs: 0, clunk: false },
  { ...TEST, side: 'left', apprehension: false, painNrs: 0 },
];

const TOTALS: readonly Told<QuestionnaireTotal>[] = [
  {
    questionnaire: 'instability-quality-of-life',
    totalPoints: 1240,
    takenOn: SEEN_ON,
    version: '',
    language: 'English',
  },
];

function eventEdit(event: Told<InstabilityEvent>, injuryId: string, random: RandomSource): Edit {
  return { op: 'create', kind: 'instabilityEvent', record: { id: random.id(), injuryId, ...event } };
}

function checkEdit(check: Told<NeurovascularCheck>, injuryId: string, random: RandomSource): Edit {
  return { op: 'create', kind: 'neurovascularCheck', record: { id: random.id(), injuryId, ...check } };
}

function testEdit(test: Told<ProvocationTest>, injuryId: string, random: RandomSource): Edit {
  return { op: 'create', kind: 'provocationTest', record: { id: random.id(), injuryId, ...test } };
}

function totalEdit(total: Told<QuestionnaireTotal>, injuryId: string, random: RandomSource): Edit {
  return { op: 'create', kind: 'questionnaireTotal', record: { id: random.id(), injuryId, ...total } };
}
