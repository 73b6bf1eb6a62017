import { ageOn } from '../format/age.ts';
import { distanceToDislocation } from '../kernel/shoulder/distanceToDislocation.ts';
import { glenoidTrack } from '../kernel/shoulder/glenoidTrack.ts';
import { hyperlaxityCutoff } from '../kernel/shoulder/hyperlaxityCutoff.ts';
import { hyperlaxityScore, type Points } from '../kernel/shoulder/hyperlaxityScore.ts';
import { lesionInterval } from '../kernel/shoulder/lesionInterval.ts';
import { referralUrgency, type Urgency } from '../kernel/shoulder/referralUrgency.ts';
import { severityIndex } from '../kernel/shoulder/severityIndex.ts';
import type { Injury } from '../model/injury.ts';
import type { CaseFile } from '../model/records.ts';
import type { ShoulderRecord } from '../model/shoulder.ts';
import { isKnown, measured, type Reading } from '../quantity.ts';
import { asOf } from './asOf.ts';
import { classifyInstability, type InstabilityClass, knownOfEvents, type KnownOfEvent } from './classifyInstability.ts';

/** Everything worked out from one shoulder record. A record, never a diagnosis. */
export interface ShoulderJudgement extends InstabilityClass {
  readonly laxity: Points;
  /** Null: age or puberty is not known. */
  readonly laxityCutoff: number | null;
  readonly severityIndex: Points;
  readonly distance: Reading<'m'>;
  readonly urgency: Urgency;
}

/** The shoulder record of an injury with its events, judged; null where none was opened. */
export function judgeShoulder(file: CaseFile, injury: Injury): ShoulderJudgement | null {
  const record = file.shoulderRecords.find((one) => one.injuryId === injury.id);
  if (record === undefined) return null;
  const events = knownOfEvents(file, injury);
  const { birthDate } = file.athlete;
  const age = birthDate === null ? null : ageOn(birthDate, asOf(file));
  const distance = distanceOf(record);
  return {
    ...classifyInstability(file, injury),
    laxity: hyperlaxityScore(record),
    laxityCutoff: age === null || age < 0 || age > 120 ? null : hyperlaxityCutoff(age, record.isPrepubertal),
    severityIndex: severityIndex(record),
    distance,
    urgency: referralUrgency({
      flags: record,
      eventCount: events.length,
      isYoungFirstTraumatic: isYoungFirst(events, record, birthDate),
      isOffTrack: isKnown(distance) ? distance.value < 0 : null,
    }),
  };
}

function distanceOf(record: ShoulderRecord): Reading<'m'> {
  const { glenoidWidthM, anteriorDefectM, lesionWidthM, boneBridgeM } = record;
  if (glenoidWidthM === null || anteriorDefectM === null || lesionWidthM === null || boneBridgeM === null) {
    return { unknown: 'it needs all four numbers of the imaging report' };
  }
  const track = glenoidTrack(
    reported('D', 'width of the socket', glenoidWidthM),
    reported('d', 'front defect', anteriorDefectM),
  );
  const interval = lesionInterval(
    reported('w', 'width of the lesion', lesionWidthM),
    reported('b', 'bone bridge', boneBridgeM),
  );
  return distanceToDislocation(track, interval);
}

function reported(symbol: string, name: string, value: number) {
  return measured(symbol, name, value, 'm', 'the report gives none');
}

function isYoungFirst(
  events: readonly KnownOfEvent[],
  { isContactOrOverhead }: ShoulderRecord,
  birthDate: string | null,
): boolean | null {
  const [first] = events;
  if (first === undefined || events.length > 1 || isContactOrOverhead === false) return false;
  if (first.severity === 'subluxation' || first.etiology === 'atraumatic') return false;
  const { severity, etiology, happenedOn } = first;
  if (severity === null || etiology === null || happenedOn === null || birthDate === null) return null;
  // A year or a month alone: the youngest they can have been.
  if (ageOn(birthDate, `${happenedOn}-01-01`.slice(0, 10)) >= 25) return false;
  return isContactOrOverhead;
}
