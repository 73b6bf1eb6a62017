import { ageOn, leastAge } from '../format/age.ts';
import { counted } from '../format/number.ts';
import { batteryOf } from '../knowledge/screening/index.ts';
import type { BatteryItem } from '../knowledge/screening/battery.ts';
import type { Condition } from '../model/injury.ts';
import type { CaseFile } from '../model/records.ts';
import type { Purpose } from '../model/case.ts';
import { liftedBy } from '../rules/effects/liftedBy.ts';
import { asOf } from './asOf.ts';
import type { Finding, SectionId, SectionState } from './assessment.ts';
import { standingOf } from './standing.ts';

/** What a purpose asks of the athlete section, in the words of the spine. */
const NEEDED_OF_ATHLETE: Record<Purpose, readonly AthleteNeed[]> = {
  intake: ['name', 'body mass', 'date of birth', 'reference values'],
  study: ['name', 'body mass', 'stature', 'date of birth', 'reference values', 'consent'],
  referral: ['name', 'date of birth', 'dominant side', 'red flags'],
};
type AthleteNeed =
  | 'name'
  | 'body mass'
  | 'stature'
  | 'date of birth'
  | 'reference values'
  | 'dominant side'
  | 'consent'
  | 'guardian’s consent'
  | 'red flags';

const REQUIRED: Record<Purpose, readonly SectionId[]> = {
  intake: ['athlete', 'screening', 'jumps', 'findings', 'report'],
  study: ['athlete', 'jumps', 'trials', 'findings', 'report'],
  referral: ['athlete', 'injuries', 'findings', 'report'],
};

/** How far each section is, in words, and what the case's purpose asks of it. */
export function sectionStates(file: CaseFile, findings: readonly Finding[]): SectionState[] {
  const required = REQUIRED[file.case.purpose];
  const states: Record<SectionId, Pick<SectionState, 'words' | 'isComplete'>> = {
    athlete: athleteState(file),
    injuries: injuriesState(file),
    screening: screeningState(file),
    jumps: jumpsState(file),
    trials: trialsState(file),
    findings: findingsState(file, findings),
    report: reportState(file),
  };
  return (Object.keys(states) as SectionId[]).map((section) => ({
    section,
    ...states[section],
    isRequired: required.includes(section),
  }));
}

function athleteState(file: CaseFile): Pick<SectionState, 'words' | 'isComplete'> {
  const missing = missingOfAthlete(file);
  return missing.length === 0
    ? { words: 'complete', isComplete: true }
    : { words: `needs ${missing.join(', ')}`, isComplete: false };
}

/** What the purpose asks of the athlete and is not there yet. */
export function missingOfAthlete(file: CaseFile): AthleteNeed[] {
  const { athlete } = file;
  const has: Record<AthleteNeed, boolean> = {
    name: athlete.name.trim() !== '',
    'body mass': athlete.massKg !== null,
    stature: athlete.statureM !== null,
    'date of birth': athlete.birthDate !== null || athlete.ageBand !== null,
    'reference values': athlete.referenceSex !== null,
    'dominant side': athlete.dominantSide !== null,
    consent: athlete.consentOn !== null && athlete.consentWithdrawnOn === null,
    'guardian’s consent': athlete.guardianConsentOn !== null || !isMinor(file),
    'red flags': athlete.hasRedFlags !== null,
  };
  return [...NEEDED_OF_ATHLETE[file.case.purpose], 'guardian’s consent' as const].filter((need) => !has[need]);
}

/** Under 18 by the day the case speaks for, or by the age band. */
export function isMinor(file: CaseFile): boolean {
  const { birthDate, ageBand } = file.athlete;
  const age = birthDate === null ? leastAge(ageBand) : ageOn(birthDate, asOf(file));
  return age !== null && age < 18;
}

function injuriesState(file: CaseFile): Pick<SectionState, 'words' | 'isComplete'> {
  const { injuries } = file;
  if (injuries.length === 0) return { words: 'none recorded', isComplete: false };
  const open = injuries.filter((injury) => liftedBy(injury, asOf(file)) === null).length;
  const words = open === 0 ? 'all cleared' : `${open} not cleared`;
  return { words: `${injuries.length} on file, ${words}`, isComplete: true };
}

function screeningState(file: CaseFile): Pick<SectionState, 'words' | 'isComplete'> {
  const session = file.screeningSessions.toSorted((a, b) => (a.heldOn < b.heldOn ? -1 : 1)).at(-1);
  if (session === undefined) return { words: 'not begun', isComplete: false };
  const battery = batteryOf(session);
  const results = file.screeningResults.filter((result) => result.sessionId === session.id);
  const entered = results.filter(
    (result) =>
      result.valueSi !== null || result.grade !== null || result.isPositive !== null || result.painNrs !== null,
  ).length;
  if (battery === null) return { words: counted(entered, 'result'), isComplete: entered > 0 };
  const inForce = new Set(
    file.injuries.filter((one) => liftedBy(one, asOf(file)) === null).map((one) => one.condition),
  );
  const asked = battery.items
    .filter((item) => !isLeftOut(item, inForce) || results.some((result) => result.itemId === item.id))
    .reduce((sum, item) => sum + (item.hasSides ? 2 : 1), 0);
  return { words: `${entered} of ${asked} entered`, isComplete: entered >= asked };
}

function isLeftOut(item: BatteryItem, inForce: ReadonlySet<Condition>): boolean {
  return item.skipFor.some((condition) => inForce.has(condition));
}

function jumpsState({ jumpTests, jumpTrials }: CaseFile): Pick<SectionState, 'words' | 'isComplete'> {
  if (jumpTests.length === 0) return { words: 'none yet', isComplete: false };
  const filled = jumpTrials.filter(
    (trial) =>
      trial.flightTimeS !== null || trial.jumpReachM !== null || trial.force !== null || trial.movementTrialId !== null,
  ).length;
  return { words: `${counted(filled, 'trial')} in ${counted(jumpTests.length, 'test')}`, isComplete: filled > 0 };
}

function trialsState(file: CaseFile): Pick<SectionState, 'words' | 'isComplete'> {
  const { movementTrials, trialEvents, enteredMeasures } = file;
  if (movementTrials.length === 0) return { words: 'none yet', isComplete: false };
  const empty = movementTrials.filter(
    (trial) =>
      !trialEvents.some((event) => event.trialId === trial.id) &&
      !enteredMeasures.some((measure) => measure.trialId === trial.id),
  ).length;
  return {
    words:
      empty === 0
        ? counted(movementTrials.length, 'trial')
        : `${movementTrials.length - empty} of ${movementTrials.length} with events`,
    isComplete: empty === 0,
  };
}

function findingsState(file: CaseFile, findings: readonly Finding[]): Pick<SectionState, 'words' | 'isComplete'> {
  const states = findings.map((finding) => standingOf(finding, file.findingDecisions).state);
  const open = states.filter((state) => state === 'to decide' || state === 'changed since').length;
  if (open > 0) return { words: `${open} to decide`, isComplete: false };
  const hasAny = findings.some((finding) => finding.outcome !== 'not-assessed');
  return { words: hasAny ? 'all decided' : 'nothing found yet', isComplete: hasAny };
}

function reportState({ reports }: CaseFile): Pick<SectionState, 'words' | 'isComplete'> {
  return reports.length === 0
    ? { words: 'not made yet', isComplete: false }
    : { words: `${counted(reports.length, 'report')} made`, isComplete: true };
}
