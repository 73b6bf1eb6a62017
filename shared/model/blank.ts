import type { Athlete } from './athlete.ts';
import type { CaseRecord, Purpose } from './case.ts';
import type { Injury, Region } from './injury.ts';
import type { SideOrNone } from './parts.ts';
import { LAXITY_SIGNS, SHOULDER_FLAGS, type ShoulderRecord } from './shoulder.ts';
import type { MovementTrial } from './trial.ts';

/** An athlete of whom nothing is recorded yet. */
export function blankAthlete(id: string): Athlete {
  return {
    id,
    name: '',
    isPseudonym: false,
    identifier: '',
    birthDate: null,
    ageBand: null,
    referenceSex: null,
    massKg: null,
    massUKg: null,
    massOn: null,
    statureM: null,
    statureUM: null,
    statureOn: null,
    legLengthLeftM: null,
    legLengthRightM: null,
    armLengthLeftM: null,
    armLengthRightM: null,
    limbsOn: null,
    dominantSide: null,
    sport: '',
    position: '',
    level: '',
    trainingYears: null,
    weeklySessions: null,
    weeklyHours: null,
    goals: '',
    consentFor: '',
    consentOn: null,
    consentToImages: null,
    consentWithdrawnOn: null,
    guardianName: '',
    guardianConsentOn: null,
    hasRedFlags: null,
    redFlagsClearedBy: '',
    redFlagsClearedOn: null,
    medicines: '',
    allergies: '',
    otherHistory: '',
    accessNeeds: '',
    note: '',
  };
}

/** A case opened for a purpose, with nothing else said of it yet. */
export function blankCase(
  ids: { readonly id: string; readonly athleteId: string },
  number: string,
  purpose: Purpose,
  openedOn: string,
): CaseRecord {
  return {
    ...ids,
    number,
    purpose,
    openedOn,
    practitioner: '',
    practitionerRole: '',
    practitionerContact: '',
    question: '',
    addressee: '',
    copiesTo: '',
    urgency: null,
    urgencyReason: '',
    triedSoFar: '',
    effects: '',
    toldAndWanted: '',
    consentToReferral: null,
    consentToReferralOn: null,
    note: '',
    isInvented: false,
    archivedOn: null,
  };
}

/** An injury of which only the place is known. It counts as current until someone says otherwise. */
export function blankInjury(
  ids: { readonly id: string; readonly athleteId: string },
  { region, side }: { readonly region: Region; readonly side: SideOrNone },
): Injury {
  return {
    ...ids,
    region,
    side,
    condition: 'other',
    tissue: null,
    code: '',
    diagnosis: '',
    onset: null,
    mechanism: '',
    mode: null,
    contact: null,
    recurrence: null,
    status: 'current',
    episodes: null,
    timeLossDays: null,
    hadSurgery: null,
    surgery: '',
    restrictions: '',
    clearedBy: '',
    clearedRole: '',
    clearedOn: null,
    clearedFor: '',
    clearedUntil: null,
    note: '',
  };
}

/** The fuller record of an unstable shoulder with nothing answered yet. */
export function blankShoulderRecord(ids: { readonly id: string; readonly injuryId: string }): ShoulderRecord {
  return {
    ...ids,
    isMultidirectional: null,
    canSlipAtWill: null,
    examinedOn: null,
    examiner: '',
    passiveAbductionRad: null,
    otherPassiveAbductionRad: null,
    externalRotationRad: null,
    otherExternalRotationRad: null,
    sulcus: null,
    sulcusStaysInRotation: null,
    sulcusIsSymptom: null,
    anteriorShift: null,
    posteriorShift: null,
    ...unanswered(LAXITY_SIGNS),
    isPrepubertal: null,
    wasImaged: null,
    imagedOn: null,
    imagingReport: '',
    glenoidWidthM: null,
    anteriorDefectM: null,
    lesionWidthM: null,
    boneBridgeM: null,
    glenoidLossRatio: null,
    tuberosityFracture: null,
    ageAtSurgeryYears: null,
    isCompetitive: null,
    isContactOrOverhead: null,
    isHyperlaxShoulder: null,
    headDentVisible: null,
    lowerOutlineLost: null,
    ...unanswered(SHOULDER_FLAGS),
    note: '',
  };
}

/** Of a screening result: one value, and nothing said of how it was taken. */
export const UNSAID = { trialsSi: null, device: '', position: '', shoes: null } as const;

function unanswered<N extends string>(names: readonly N[]): Record<N, null> {
  return Object.fromEntries(names.map((name) => [name, null])) as Record<N, null>;
}

/** A trial of a movement, with nothing else said of it yet. */
export function blankTrial(id: string, caseId: string, movementId: string, filmedOn: string): MovementTrial {
  return {
    id,
    caseId,
    movementId,
    filmedOn,
    label: '',
    side: 'none',
    captureRateHz: null,
    playbackRateHz: null,
    calibration: null,
    ballId: null,
    targetDistanceM: null,
    targetHeightM: null,
    painNrs: null,
    note: '',
    clipSha256: null,
    targetDistanceUM: null,
    targetHeightUM: null,
    captureRateFrom: null,
    calibrationDraft: null,
    frameTimesS: null,
  };
}
