import { z } from 'zod';
import { canonicalJson } from '../canonicalJson.ts';
import { DomainError } from '../errors.ts';
import { day, line, text } from '../model/parts.ts';
import type { CaseFile } from '../model/records.ts';
import { type ScreeningResult, screeningResult, type ScreeningSession, soundBattery } from '../model/screening.ts';

/** What later versions of the program added may be missing. */
const entry = screeningResult.omit({ id: true, sessionId: true }).extend({
  trialsSi: screeningResult.shape.trialsSi.default(null),
  device: screeningResult.shape.device.default(''),
  position: screeningResult.shape.position.default(''),
  shoes: screeningResult.shape.shoes.default(null),
});
export type RunEntry = z.infer<typeof entry>;

/** An intake run as one laptop took it, to be merged with another's: who was tested, by whom, with what results. */
export const runFile = z.strictObject({
  format: z.literal('caseframe-run'),
  formatVersion: z.literal(1),
  heldOn: day,
  batteryId: line.min(1),
  batteryVersion: line.min(1),
  /** A battery of one's own, whole; null: one of the program. */
  battery: soundBattery.nullable().default(null),
  athletes: z
    .array(
      z.strictObject({
        name: line.min(1),
        birthDate: day.nullable(),
        rater: line,
        note: text,
        results: z.array(entry).max(1000),
      }),
    )
    .max(10_000),
});
export type RunFile = z.infer<typeof runFile>;

/** Which run. Without a version: the one it was taken with if there is only one. */
export interface RunOf {
  readonly heldOn: string;
  readonly batteryId: string;
  readonly batteryVersion?: string | undefined;
}

export function isOfRun(
  run: RunOf,
  session: Pick<ScreeningSession, 'heldOn' | 'batteryId' | 'batteryVersion'>,
): boolean {
  const { heldOn, batteryId, batteryVersion = session.batteryVersion } = run;
  return session.heldOn === heldOn && session.batteryId === batteryId && session.batteryVersion === batteryVersion;
}

/** The session of a run in a case; null where the athlete took no part. */
export function sessionOfRun(file: CaseFile, run: RunOf): ScreeningSession | null {
  return file.screeningSessions.find((one) => isOfRun(run, one)) ?? null;
}

/**
 * A run of the cases it was taken in. An athlete without a name cannot be found on another laptop and is left out.
 * @throws DomainError 'not-found' where no case has a session of the run, 'not-comparable' where the sessions are of
 *   several versions of the battery
 */
export function toRunFile(run: RunOf, files: readonly CaseFile[]): RunFile {
  const taken = files.flatMap((file) => {
    const session = sessionOfRun(file, run);
    return session === null ? [] : [{ file, session }];
  });
  const [version, ...others] = new Set(taken.map(({ session }) => session.batteryVersion));
  if (version === undefined)
    throw new DomainError('not-found', 'toRunFile needs a run, and no case has a session of it.');
  if (others.length > 0) {
    throw new DomainError(
      'not-comparable',
      `toRunFile needs one version of the battery; this run was taken with several: ${[version, ...others].join(', ')}. Say which.`,
    );
  }
  return {
    format: 'caseframe-run',
    formatVersion: 1,
    heldOn: run.heldOn,
    batteryId: run.batteryId,
    batteryVersion: version,
    battery: taken[0]?.session.battery ?? null,
    athletes: taken
      .filter(({ file }) => file.athlete.name !== '')
      .map(({ file, session }) => ({
        name: file.athlete.name,
        birthDate: file.athlete.birthDate,
        rater: session.rater,
        note: session.note,
        results: file.screeningResults.filter(({ sessionId }) => sessionId === session.id).map(toEntry),
      })),
  };
}

export interface RunConflict {
  readonly itemId: string;
  readonly side: ScreeningResult['side'];
  readonly ours: RunEntry;
  readonly theirs: RunEntry;
}

export interface MergedAthlete {
  /** Results only the file has. */
  readonly added: readonly RunEntry[];
  /** How many are alike in both. */
  readonly alike: number;
  /** Both have a result, and not the same one: for a person to decide. */
  readonly conflicts: readonly RunConflict[];
}

/** The results of one athlete in two runs of the same day and battery, side by side. Nothing decides between them. */
export function compareRuns(ours: readonly ScreeningResult[], theirs: readonly RunEntry[]): MergedAthlete {
  const pairs = theirs.map((entryOfTheirs) => ({
    theirs: entryOfTheirs,
    ours: ours.find(({ itemId, side }) => itemId === entryOfTheirs.itemId && side === entryOfTheirs.side) ?? null,
  }));
  const both = pairs.flatMap(({ ours: mine, theirs: other }) =>
    mine === null ? [] : [{ ours: toEntry(mine), theirs: other }],
  );
  const conflicts = both.filter((pair) => !isAlike(pair.ours, pair.theirs));
  return {
    added: pairs.flatMap(({ ours: mine, theirs: other }) => (mine === null ? [other] : [])),
    alike: both.length - conflicts.length,
    conflicts: conflicts.map((pair) => ({ itemId: pair.theirs.itemId, side: pair.theirs.side, ...pair })),
  };
}

function toEntry({ id: _id, sessionId: _sessionId, ...fields }: ScreeningResult): RunEntry {
  return fields;
}

function isAlike(a: RunEntry, b: RunEntry): boolean {
  return canonicalJson(a) === canonicalJson(b);
}
