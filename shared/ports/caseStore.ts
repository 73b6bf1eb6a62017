import type { Change, Edit } from '../model/edit.ts';
import type { MediaRecord } from '../model/outcome.ts';
import type { CaseFile } from '../model/records.ts';

/** What the shelf shows of a case without opening it. Written by whoever last judged the case. */
export interface CaseSummary {
  /** What is still needed, in words: `needs body mass`. */
  readonly missing: readonly string[];
  /** Open cautions in words: `stop and be seen: pain in the single-leg squat`. */
  readonly cautions: readonly string[];
}

export interface ShelfRow extends CaseSummary {
  readonly caseId: string;
  readonly number: string;
  readonly athleteName: string;
  readonly purpose: 'intake' | 'study' | 'referral';
  readonly touchedAt: string;
  readonly isInvented: boolean;
  readonly isArchived: boolean;
  /** Where the search words were found, with the words between ⟦ and ⟧; null without a search. */
  readonly match: string | null;
}

export interface ShelfQuery {
  readonly search: string;
  readonly archived: boolean;
  readonly offset: number;
  readonly limit: number;
}

export interface EditState {
  readonly revision: number;
  /** What undo and redo would do now, in words; null when there is nothing to do. */
  readonly undo: string | null;
  readonly redo: string | null;
}

/** A person on the shelf by one of their cases. */
export interface ShelfPerson {
  readonly caseId: string;
  readonly athleteId: string;
  readonly name: string;
  readonly birthDate: string | null;
  /** Whether the case is an intake that is not archived. */
  readonly isOpenIntake: boolean;
}

/** The cases a roster opened that are not archived, in the order of the file. */
export interface TakenRoster {
  readonly rosterId: string;
  readonly fileName: string;
  readonly takenAt: string;
  readonly cases: readonly {
    readonly caseId: string;
    readonly athleteName: string;
    /** Whether anything was edited since. */
    readonly isWorkedOn: boolean;
  }[];
}

/** A screening session, as a run is found by. */
export interface Screening {
  readonly caseId: string;
  readonly heldOn: string;
  readonly batteryId: string;
  readonly batteryVersion: string;
  /** Of a battery of one's own; null: one of the program. */
  readonly batteryLabel: string | null;
}

/** What was taken out for good. */
export interface Erased {
  readonly caseIds: readonly string[];
  /** SHA-256 of the files that no case refers to any more. */
  readonly files: readonly string[];
}

export interface ReadableCaseStore {
  shelf(query: ShelfQuery): Promise<{ total: number; rows: ShelfRow[] }>;
  /** @throws DomainError 'not-found' */
  open(caseId: string): Promise<CaseFile>;
  editState(caseId: string): Promise<EditState>;
  /** Newest first. */
  history(caseId: string, limit: number): Promise<Change[]>;
  /** The instant of the latest edit in force to anything in the case. Making a report or importing a file is none. */
  lastEditAt(caseId: string): Promise<string>;
  /** Every case of the athlete of this case, itself included: what one of them edits of the athlete, all of them show. */
  casesOfSameAthlete(caseId: string): Promise<string[]>;
  /** Cases changed since their summary was written: a program that ends between the two leaves them behind. */
  unjudged(): Promise<string[]>;
  /** Every file that some case refers to. */
  keptFiles(): Promise<MediaRecord[]>;
  /** Everyone on the shelf, archived cases included, a case after the other. */
  people(): Promise<ShelfPerson[]>;
  /** Every roster of which cases are left on the shelf, newest first. */
  rosters(): Promise<TakenRoster[]>;
  /** Every screening session of the cases that are not archived, oldest first: a run is found again by its day and battery. */
  screenings(): Promise<Screening[]>;
  /** Everything wrong with what is stored, in words. Empty: sound. */
  verify(): Promise<string[]>;
}

/**
 * Where cases live. Asynchronous, so that a server engine can stand behind it. Every method is all or nothing, and a
 * resolved promise means the change survives a crash.
 */
export interface CaseStore extends ReadableCaseStore {
  /** A new case, with its athlete if that one is new. The first step of the case's history; undo does not reach it. */
  create(edits: readonly Edit[], at: string): Promise<void>;
  /**
   * Several new cases, all of them or none. An athlete new with one of them is not yet known to the others.
   * @param roster the list they came from
   */
  createAll(
    cases: readonly (readonly Edit[])[],
    at: string,
    roster: { readonly id: string; readonly fileName: string },
  ): Promise<void>;
  /**
   * Applies edits as one step of undo.
   * @param continues whether they go on with work that the latest step began, such as tracking stored in parts: one
   *   patch that begins where the one change of that step ended becomes part of it; anything else is a step of its own
   * @throws DomainError 'not-found' for a record that is not part of this case, 'conflict' for an id already used,
   *   'input-malformed' if a patched record would no longer be valid
   */
  apply(caseId: string, edits: readonly Edit[], at: string, continues?: boolean): Promise<EditState>;
  /** Edits of several cases, a step of undo in each: all of them or none. */
  applyAll(cases: readonly { readonly caseId: string; readonly edits: readonly Edit[] }[], at: string): Promise<void>;
  /**
   * Takes back the latest step, or does nothing if there is none. What was printed or imported is kept: such records
   * stay, and steps of nothing else are passed over.
   * @throws DomainError 'conflict' if another case of the same athlete has changed the same thing since
   */
  undo(caseId: string, at: string): Promise<EditState>;
  /** Does again what undo took back last; as undo otherwise. */
  redo(caseId: string, at: string): Promise<EditState>;
  /** Next free running number for a year, `2026-014`. */
  nextNumber(year: number): Promise<string>;
  /**
   * Takes the athlete of a case out of the store for good, with every case of theirs and all of its history. Neither undo
   * nor a look into the database file brings any of it back.
   * @throws DomainError 'not-found'
   */
  erase(caseId: string): Promise<Erased>;
  /** By case. */
  writeSummaries(summaries: ReadonlyMap<string, CaseSummary>): Promise<void>;
  close(): Promise<void>;
}
