import type { Kind } from './records.ts';

/** What people call each kind of record, in the middle of a sentence. */
export const KIND_WORDS = {
  athlete: 'athlete',
  case: 'case',
  injury: 'injury',
  screeningSession: 'screening session',
  screeningResult: 'screening result',
  jumpTest: 'jump test',
  jumpTrial: 'jump',
  ownMovement: 'movement of one’s own',
  movementTrial: 'trial',
  landmarkTrack: 'landmark',
  pointRepeat: 'repeated point',
  still: 'still',
  trialEvent: 'event',
  enteredMeasure: 'entered measure',
  findingDecision: 'decision on a finding',
  report: 'report',
  media: 'media file',
} as const satisfies Record<Kind, string>;

/** Fields whose name does not already say it. */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  isPseudonym: 'name or pseudonym',
  massKg: 'body mass',
  massUKg: 'uncertainty of the body mass',
  massOn: 'day of the body mass',
  statureUM: 'uncertainty of the stature',
  statureOn: 'day of the stature',
  referenceSex: 'reference values',
  consentFor: 'consent',
  consentOn: 'day of consent',
  consentToImages: 'consent to images',
  hasRedFlags: 'red flags',
  redFlagsClearedBy: 'clearance of the red flags',
  isInvented: 'invented data',
  archivedOn: 'archiving',
  hadSurgery: 'surgery',
  isPositive: 'clearing test',
  isSetAside: 'setting aside',
  painNrs: 'pain',
  valueSi: 'value',
  uSi: 'uncertainty',
  uS: 'uncertainty',
  flag: 'answer',
  birthDate: 'date of birth',
  openedOn: 'opening day',
  urgencyReason: 'reason for the urgency',
  heldOn: 'day',
  filmedOn: 'day',
  takenOn: 'day',
  clearedBy: 'clearance',
  clearedOn: 'day of clearance',
  timeLossDays: 'days lost',
  force: 'force record',
  samples: 'points',
  clipSha256: 'film',
  mediaSha: 'picture',
  alt: 'description',
  uPx: 'uncertainty of the points',
  targetDistanceUM: 'uncertainty of the target distance',
  targetHeightUM: 'uncertainty of the target height',
  captureRateFrom: 'origin of the capture rate',
  calibrationDraft: 'calibration',
  aimsAtTarget: 'target',
  isAirborneSkill: 'flight',
};

/** A field in words: `flightTimeS` is flight time. Unit endings are left off. */
export function fieldWords(field: string): string {
  const said = Object.hasOwn(FIELD_WORDS, field) ? FIELD_WORDS[field] : undefined;
  return said ?? field.replace(/(Id|Kg|Hz|Si|S|M)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
