import { z } from 'zod';
import { day, finite, id, line, nonNegative, pain, roughDate, side, text } from './parts.ts';

/**
 * The fuller record of an unstable shoulder, all of it owned by its injury. Results of examinations are written down as
 * a clinician found them; nothing here says how to do one. Null: not examined, not asked, not recorded.
 */

const yesNo = z.boolean().nullable();
/** A field for every name of a list, all of one type. */
const each = <N extends string, T extends z.ZodType>(names: readonly N[], field: T) =>
  Object.fromEntries(names.map((name) => [name, field])) as Record<N, T>;

export const DIRECTIONS = ['anterior', 'posterior', 'inferior'] as const;
export type Direction = (typeof DIRECTIONS)[number];
export const ETIOLOGIES = ['traumatic', 'atraumatic'] as const;
export type Etiology = (typeof ETIOLOGIES)[number];
export const EVENT_SEVERITIES = ['subluxation', 'dislocation'] as const;
export type EventSeverity = (typeof EVENT_SEVERITIES)[number];
export const REDUCTIONS = ['by-itself', 'by-the-athlete', 'on-the-field', 'in-hospital', 'not-reduced'] as const;

/** One time the shoulder slipped or came out. */
export const instabilityEvent = z.strictObject({
  id,
  injuryId: id,
  happenedOn: roughDate.nullable(),
  severity: z.enum(EVENT_SEVERITIES).nullable(),
  etiology: z.enum(ETIOLOGIES).nullable(),
  direction: z.enum(DIRECTIONS).nullable(),
  /** What happened, and where the arm was. */
  mechanism: text,
  reduction: z.enum(REDUCTIONS).nullable(),
  underSedation: yesNo,
  outOfJointS: nonNegative.max(31_536_000).nullable(),
  afterSeizureOrShock: yesNo,
  duringSleep: yesNo,
  numbOrWeakAfter: yesNo,
  note: text,
});
export type InstabilityEvent = z.infer<typeof instabilityEvent>;

export const CHECK_TIMES = ['before-reduction', 'after-reduction', 'at-assessment'] as const;
export const NERVES_AND_VESSELS = [
  'axillaryStrength',
  'axillaryFeeling',
  'suprascapular',
  'musculocutaneous',
  'radialNerve',
  'medianNerve',
  'ulnarNerve',
  'radialPulse',
  'brachialPulse',
  'capillaryRefill',
  'warmthAndColour',
] as const;
export type NerveOrVessel = (typeof NERVES_AND_VESSELS)[number];

/** Nerves and vessels at one time, compared with the other side. A normal finding is a finding. */
export const neurovascularCheck = z.strictObject({
  id,
  injuryId: id,
  timing: z.enum(CHECK_TIMES),
  checkedOn: day.nullable(),
  /** Time of day as written down, `14:20`. */
  checkedAt: line,
  examiner: line,
  ...each(NERVES_AND_VESSELS, z.enum(['normal', 'reduced', 'absent']).nullable()),
  armpitSwelling: yesNo,
  note: text,
});
export type NeurovascularCheck = z.infer<typeof neurovascularCheck>;

/** Tests that provoke the symptom, named by what they load. */
export const PROVOCATIONS = [
  'abduction-external-rotation',
  'relocation',
  'release',
  'anterior-shift',
  'posterior-shift',
  'posterior-load-crossing',
  'posterior-load-oblique',
  'downward-pull',
] as const;
export type Provocation = (typeof PROVOCATIONS)[number];

/** What one test provoked. Apprehension and pain are two answers and are never mixed. */
export const provocationTest = z.strictObject({
  id,
  injuryId: id,
  test: z.enum(PROVOCATIONS),
  side,
  testedOn: day.nullable(),
  examiner: line,
  apprehension: yesNo,
  painNrs: pain.nullable(),
  clunk: yesNo,
  note: text,
});
export type ProvocationTest = z.infer<typeof provocationTest>;

/** Totals only: whoever uses a questionnaire holds its licence, and none of its words are kept here. */
export const QUESTIONNAIRES = [
  'instability-quality-of-life',
  'instability-function',
  'single-rating',
  'readiness-to-return',
] as const;
export type Questionnaire = (typeof QUESTIONNAIRES)[number];

export const questionnaireTotal = z.strictObject({
  id,
  injuryId: id,
  questionnaire: z.enum(QUESTIONNAIRES),
  totalPoints: finite.min(0).max(2100),
  takenOn: day.nullable(),
  language: line,
  version: line,
});
export type QuestionnaireTotal = z.infer<typeof questionnaireTotal>;

/** The nine signs of generalised laxity: four on each side and one of both. */
export const LAXITY_SIGNS = [
  'littleFingerLeft',
  'littleFingerRight',
  'thumbLeft',
  'thumbRight',
  'elbowLeft',
  'elbowRight',
  'kneeLeft',
  'kneeRight',
  'palmsToFloor',
] as const;
export type LaxitySign = (typeof LAXITY_SIGNS)[number];

/** Questions whose yes decides how soon someone must be seen. Words, tier and source stand in the knowledge. */
export const SHOULDER_FLAGS = [
  'outOfJoint',
  'fractureSuspected',
  'vesselSigns',
  'nerveLoss',
  'openWound',
  'hotJointWithFever',
  'lockedAfterSeizure',
  'chestOrBellySigns',
  'headOrNeckSigns',
  'firstWithoutImaging',
  'overFortyAndWeak',
  'nerveLossPersists',
  'tumourSigns',
  'troubleAfterSurgery',
  'locking',
  'apprehensionStopsSport',
] as const;
export type ShoulderFlag = (typeof SHOULDER_FLAGS)[number];

const metres = nonNegative.max(0.2).nullable();
const radians = finite.min(0).max(Math.PI).nullable();

/** Signs, imaging as reported and answers: one for an injury. */
export const shoulderRecord = z.strictObject({
  id,
  injuryId: id,
  /** Not a direction of its own: the main direction comes from the events. */
  isMultidirectional: yesNo,
  canSlipAtWill: yesNo,
  examinedOn: day.nullable(),
  examiner: line,
  /** Passive abduction with the shoulder blade held. */
  passiveAbductionRad: radians,
  otherPassiveAbductionRad: radians,
  /** External rotation with the elbow at the side. */
  externalRotationRad: radians,
  otherExternalRotationRad: radians,
  sulcus: z.enum(['none', 'under-1-cm', '1-to-2-cm', 'over-2-cm']).nullable(),
  sulcusStaysInRotation: yesNo,
  sulcusIsSymptom: yesNo,
  anteriorShift: z.enum(['little', 'to-rim', 'over-rim-returns', 'over-rim-stays']).nullable(),
  posteriorShift: z.enum(['little', 'to-rim', 'over-rim-returns', 'over-rim-stays']).nullable(),
  ...each(LAXITY_SIGNS, yesNo),
  isPrepubertal: yesNo,
  wasImaged: yesNo,
  imagedOn: day.nullable(),
  /** Kind of imaging and what its report says. */
  imagingReport: text,
  glenoidWidthM: metres,
  anteriorDefectM: metres,
  lesionWidthM: metres,
  boneBridgeM: metres,
  /** Share of the socket lost, 0 to 1, as reported. */
  glenoidLossRatio: finite.min(0).max(1).nullable(),
  tuberosityFracture: yesNo,
  /** Items of the severity index. */
  ageAtSurgeryYears: nonNegative.max(120).nullable(),
  isCompetitive: yesNo,
  isContactOrOverhead: yesNo,
  isHyperlaxShoulder: yesNo,
  headDentVisible: yesNo,
  lowerOutlineLost: yesNo,
  ...each(SHOULDER_FLAGS, yesNo),
  note: text,
});
export type ShoulderRecord = z.infer<typeof shoulderRecord>;
