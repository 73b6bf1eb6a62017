import { z } from 'zod';
import { OUTCOMES } from '../assess/assessment.ts';
import { RULE_PARTS } from '../rules/checkRules.ts';
import { ruleBody, sharedRule } from '../model/ownRule.ts';
import { change, edit } from '../model/edit.ts';
import { batteryBody, ownBattery } from '../model/battery.ts';
import { purpose } from '../model/case.ts';
import { PAPERS, REPORT_KINDS } from '../model/outcome.ts';
import { day, finite, id, instant, line, sideOrNone } from '../model/parts.ts';
import { forceReading, forceSummary } from '../model/jump.ts';
import { caseFile, RECORDS } from '../model/records.ts';
import { runFile } from '../exchange/runFile.ts';
import { markerReading } from '../exchange/markerReading.ts';
import { roster, rosterColumn, rosterRow } from '../exchange/roster.ts';

/**
 * The one contract both hosts speak: every channel's request and answer. JSON values only; anything else would survive
 * one host and not the other. Types are derived from these schemas, and `main` validates every request against them.
 */

const none = z.strictObject({});
const editState = z.strictObject({ revision: z.int(), undo: z.string().nullable(), redo: z.string().nullable() });

export const shelfRow = z.strictObject({
  caseId: id,
  number: z.string(),
  athleteName: z.string(),
  purpose,
  touchedAt: instant,
  isInvented: z.boolean(),
  isArchived: z.boolean(),
  missing: z.array(z.string()),
  cautions: z.array(z.string()),
  match: z.string().nullable(),
});

/** How a report is to be made. What is left out: a draft, with the names its kind has, without the case data inside. */
const reportRequest = z.strictObject({
  caseId: id,
  kind: z.enum(REPORT_KINDS),
  paper: z.enum(PAPERS),
  /** A study is without names unless told otherwise, the others have them. */
  deidentify: z.boolean().optional(),
  isFinal: z.boolean().optional(),
  /** Chosen by whoever asks, to hear how far it is and to stop it. */
  jobId: id.optional(),
});

/** Samples thinned for a plot; the stored trace is whole. */
const trace = z.strictObject({
  rateHz: z.number(),
  columns: z.array(z.string()),
  timesS: z.array(z.number()),
  /** One array a column, N. */
  forcesN: z.array(z.array(z.number())),
});

const mark = z.number().min(0).max(100_000).nullable();
/** Of columns, or of markers. */
const heads = z.array(z.string()).max(70_000);

const ruleProblem = z.strictObject({ part: z.enum(RULE_PARTS), words: z.string() });

const rulePreview = z.strictObject({
  outcome: z.enum(OUTCOMES),
  finding: z.string(),
  intervention: z.string().nullable(),
});

/** Own rules for every case, what keeps each from judging, and whether there is something to take back. */
const sharedRules = z.strictObject({
  rules: z.array(sharedRule.extend({ problems: z.array(ruleProblem) })),
  /** Movements built in any case, by the name that rules know them by. */
  movements: z.array(
    z.strictObject({
      id: z.string(),
      label: z.string(),
      phases: z.array(z.strictObject({ id: z.string(), label: z.string() })),
    }),
  ),
  canUndo: z.boolean(),
  canRedo: z.boolean(),
});
const said = z.strictObject({ outcome: z.enum(OUTCOMES), text: z.string() }).nullable();

const forceFile = z.strictObject({
  fileName: line.min(1),
  /** The whole file as text. */
  text: z.string().max(24_000_000),
  /** True where the file is a C3D and `text` its bytes in base64. */
  isBase64: z.boolean().optional(),
  /** Instants placed by hand, s, an entry a jump; null for one that is left to be found. */
  marks: z
    .array(z.strictObject({ onsetS: mark, takeoffS: mark, landingS: mark }))
    .max(50)
    .optional(),
  /** With nothing of the three said: as files with the same heads were read last, else as recognised. */
  ...forceReading.omit({ forceUnit: true }).shape,
  forceUnit: forceReading.shape.forceUnit.optional(),
  /** Body mass if known, kg; null: from the quiet stance. */
  massKg: z.number().positive().max(400).nullable(),
});

const kept = { heads, usedAt: instant };
/** How the columns of a kind of file, or the markers of one, were read last. */
export const keptMapping = z.discriminatedUnion('door', [
  z.strictObject({ door: z.literal('roster'), mapping: z.array(rosterColumn).max(100), ...kept }),
  z.strictObject({ door: z.literal('force'), mapping: forceReading, ...kept }),
  z.strictObject({ door: z.literal('markers'), mapping: markerReading, ...kept }),
]);
export const DOORS = ['roster', 'force', 'markers'] as const;
export type Door = (typeof DOORS)[number];

const markerFile = z.strictObject({
  fileName: line.min(1),
  base64: z.string().max(24_000_000),
  /** Null: as files with the same markers were read last, else as suggested. */
  reading: markerReading.nullable(),
});

const rosterFile = z.strictObject({
  fileName: line.min(1),
  text: z.string().max(8_000_000),
  /** Decisions about columns. None: as lists with the same heads were read last, else as recognised by their heads. */
  mapping: z.array(rosterColumn).max(100),
});

/** A piece of a film in base64, three bytes in four characters: 6 MB, well below what the hosts take in one request. */
const MOST_PIECE_CHARACTERS = 8_000_000;

/** A picture in base64, up to 24 MB. */
const png = z.base64().min(4).max(32_000_000);
const exported = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('png'), base64: png }),
  z.strictObject({ kind: z.literal('csv'), text: z.string().max(8_000_000) }),
]);

/** A run: a day and a version of a battery. Without a version, the one it was taken with if there is only one. */
const runKey = z.strictObject({ heldOn: day, batteryId: line.min(1), batteryVersion: line.min(1).optional() });

/** Batteries of one's own, the sessions taken with each version, and whether there is something to take back. */
const ownBatteries = z.strictObject({
  batteries: z.array(ownBattery.extend({ uses: z.array(z.strictObject({ version: z.string(), sessions: z.int() })) })),
  canUndo: z.boolean(),
  canRedo: z.boolean(),
});

const runText = z.strictObject({ fileName: line.min(1), text: z.string().max(24_000_000) });
const entries = runFile.shape.athletes.element.shape.results;
const comparedRun = z.strictObject({
  heldOn: day,
  batteryId: z.string(),
  batteryVersion: z.string(),
  athletes: z.array(
    z.strictObject({
      name: z.string(),
      /** Null: nobody, or more than one, here is this athlete, and `reason` says so. */
      caseId: id.nullable(),
      reason: z.string().nullable(),
      added: entries,
      alike: z.int(),
      conflicts: z.array(
        z.strictObject({ itemId: line, side: sideOrNone, ours: entries.element, theirs: entries.element }),
      ),
    }),
  ),
});

export const CHANNELS = {
  'app.info': {
    request: none,
    answer: z.strictObject({
      appVersion: z.string(),
      kernelVersion: z.string(),
      rulesVersion: z.string(),
      schemaVersion: z.int(),
      host: z.enum(['electron', 'loopback', 'command line']),
      storeFolder: z.string(),
    }),
  },
  'shelf.list': {
    request: z.strictObject({
      search: line,
      archived: z.boolean(),
      offset: z.int().min(0),
      limit: z.int().min(1).max(500),
    }),
    answer: z.strictObject({ total: z.int(), rows: z.array(shelfRow) }),
  },
  'case.create': {
    request: z.strictObject({ purpose, athleteId: id.nullable(), openedOn: day }),
    answer: z.strictObject({ caseId: id }),
  },
  /** A new case from JSON: a whole case file, or as much of one as someone wrote by hand. All of it or nothing. */
  'case.import': {
    request: z.strictObject({
      fileName: line.min(1),
      text: z.string().max(24_000_000),
      /** Null: as in the file, else an intake. */
      purpose: purpose.nullable(),
      /** Where the file says no other day. */
      openedOn: day,
    }),
    answer: z.strictObject({ caseId: id, number: z.string() }),
  },
  'case.open': {
    request: z.strictObject({ caseId: id }),
    answer: z.strictObject({ file: caseFile, edits: editState }),
  },
  'case.edit': {
    request: z.strictObject({
      caseId: id,
      edits: z.array(edit).min(1).max(500),
      /** They go on with what the latest step began, and are part of that step of undo where they can be. */
      continues: z.boolean().optional(),
    }),
    answer: editState,
  },
  'case.undo': { request: z.strictObject({ caseId: id }), answer: editState },
  'case.redo': { request: z.strictObject({ caseId: id }), answer: editState },
  /**
   * Takes the athlete of a case out of the store for good, with every case, file and report of theirs. `number` is
   * the number of the case, typed again: no slip of a finger, and no page out of date, gets here.
   */
  'athlete.erase': {
    request: z.strictObject({ caseId: id, number: line }),
    answer: z.strictObject({
      cases: z.int(),
      files: z.int(),
      /** Copies of the whole store that the folder still holds, by name: they are from before. */
      copies: z.array(z.string()),
    }),
  },
  'case.history': {
    request: z.strictObject({ caseId: id, limit: z.int().min(1).max(1000) }),
    answer: z.strictObject({ changes: z.array(change) }),
  },
  /** Analyses without storing, for the preview. */
  'jump.previewForce': {
    request: z.strictObject({ kind: z.enum(['countermovement', 'squat', 'drop']), file: forceFile }),
    answer: z.strictObject({
      available: heads,
      /** Every jump of the record that can be analysed, in order. */
      summaries: z.array(forceSummary).min(1),
      trace,
      /** How the file was read; all empty: as recognised. */
      reading: forceReading,
      /** Whether that is kept for files with these heads. */
      isRemembered: z.boolean(),
    }),
  },
  /** Keeps the file in the media store and adds a trial to the test, as one step of undo. */
  'jump.importForce': {
    request: z.strictObject({
      caseId: id,
      testId: id,
      file: forceFile,
      /** Which of the jumps found to keep, from 0; left out: all. */
      jumps: z.array(z.int().min(0)).min(1).max(999).optional(),
    }),
    answer: z.strictObject({ jumpTrialId: id, edits: editState }),
  },
  'jump.trace': { request: z.strictObject({ caseId: id, jumpTrialId: id }), answer: trace },
  /** A trial with landmarks, calibration and events from one JSON file (schema in shared/exchange/trialFile.ts). */
  'trial.import': {
    request: z.strictObject({ caseId: id, fileName: line.min(1), text: z.string().max(24_000_000) }),
    answer: z.strictObject({ trialId: id, warnings: z.array(z.string()), edits: editState }),
  },
  /** The markers of a C3D file, and how they would be read, without storing: for a person to look over. */
  'trial.previewMarkers': {
    request: z.strictObject({ file: markerFile }),
    answer: z.strictObject({
      frames: z.int(),
      rateHz: z.number(),
      /** As the file writes it. */
      units: z.string(),
      markers: z.array(z.strictObject({ label: z.string(), framesSeen: z.int() })),
      reading: markerReading,
      /** Whether that is kept for files with these markers. */
      isRemembered: z.boolean(),
      /** What would be done and left out; empty while something is open. */
      words: z.array(z.string()),
      /** What is open; null: it can be taken in. */
      open: z.string().nullable(),
    }),
  },
  /** A trial from the markers of a C3D file, with the file, as one step of undo. */
  'trial.importMarkers': {
    request: z.strictObject({
      caseId: id,
      file: markerFile,
      movementId: line.min(1),
      side: sideOrNone,
      filmedOn: day,
      /** Standard uncertainty of one coordinate of a marker; null: not known. */
      pointUM: z.number().nonnegative().max(1).nullable(),
    }),
    answer: z.strictObject({ trialId: id, warnings: z.array(z.string()), edits: editState }),
  },
  /**
   * A film in pieces: begin, append in order, finish. Nothing is part of the case before `finish`. A film whose beginning
   * came before the program or the window ended goes on from `receivedBytes`.
   */
  'media.begin': {
    request: z.strictObject({
      caseId: id,
      trialId: id,
      fileName: line.min(1),
      sizeBytes: z.int().min(1),
      /** When the file was last changed where it lies, ms since 1970: with name and size, whether it is the same one. */
      modifiedAtMs: finite,
      /** Of pictures one after the other in one file: how many. Null for a film. */
      pictures: z.int().min(1).max(200_000).nullable(),
    }),
    answer: z.strictObject({ uploadId: id, receivedBytes: z.int() }),
  },
  'media.append': {
    request: z.strictObject({
      uploadId: id,
      /** Where in the file this piece starts: a piece lost or sent twice is noticed. */
      offsetBytes: z.int().min(0),
      base64: z.base64().min(4).max(MOST_PIECE_CHARACTERS),
    }),
    answer: z.strictObject({ receivedBytes: z.int() }),
  },
  /**
   * What a film that has arrived says of itself; null for what can only be shown by a copy. To be asked before a window
   * opens the film: one that sends a reader in circles, or that holds no picture, is refused here and not kept.
   */
  'media.facts': {
    request: z.strictObject({ uploadId: id }),
    answer: z.strictObject({
      facts: z
        .strictObject({
          codec: z.string(),
          readablePictures: z.int(),
          /** More than can be read where the file was cut off. */
          promisedPictures: z.int(),
          /** Most pictures from one that stands alone to the next. */
          longestGroup: z.int(),
          /** Unevenly spaced: each picture's own time is kept with the trial. */
          isUneven: z.boolean(),
        })
        .nullable(),
    }),
  },
  /**
   * Begins a copy of a film that has arrived, for windows that cannot show the film itself or step through it quickly.
   * `media.finish` then keeps both.
   */
  'media.startProxy': { request: z.strictObject({ uploadId: id }), answer: none },
  'media.proxyState': {
    request: z.strictObject({ uploadId: id }),
    answer: z.strictObject({
      state: z.enum(['working', 'done', 'failed']),
      donePictures: z.int(),
      /** Pictures the film promises; null where it does not say. */
      promisedPictures: z.int().nullable(),
      /** Why it failed. */
      words: z.string(),
    }),
  },
  'media.finish': {
    request: z.strictObject({ uploadId: id }),
    answer: z.strictObject({ sha256: z.string(), proxySha256: z.string().nullable(), edits: editState }),
  },
  'media.cancel': { request: z.strictObject({ uploadId: id }), answer: none },
  /** Keeps a picture of one frame, with what was drawn on it, as a still of a trial. One step of undo. */
  'still.keep': {
    request: z.strictObject({ caseId: id, ...RECORDS.still.schema.omit({ id: true, mediaSha: true }).shape, png }),
    answer: z.strictObject({ stillId: id, edits: editState }),
  },
  /** Keeps something made from a case as a file of that case, and says where the host serves it. */
  'export.keep': {
    request: z.strictObject({ caseId: id, fileName: line.min(1), file: exported }),
    answer: z.strictObject({ href: z.string(), edits: editState }),
  },
  /** Reads a squad without storing anything. */
  'roster.preview': {
    request: rosterFile,
    answer: roster.extend({
      /** Each row with the athlete and the open intake case it is on the shelf already, if it is. */
      rows: z.array(rosterRow.extend({ athleteId: id.nullable(), caseId: id.nullable() })),
      /** Whether the columns are read as it is kept for lists with these heads. */
      isRemembered: z.boolean(),
    }),
  },
  /** An intake case for each athlete that has none open: all of them or, with one fault in the file, none. */
  'roster.import': {
    request: rosterFile.extend({ openedOn: day }),
    answer: z.strictObject({
      cases: z.array(z.strictObject({ line: z.int(), caseId: id, isNew: z.boolean() })),
    }),
  },
  /** Rosters of which cases are left on the shelf, newest first: what can still be taken back. */
  'roster.list': {
    request: none,
    answer: z.strictObject({
      rosters: z.array(
        z.strictObject({
          rosterId: id,
          fileName: z.string(),
          takenAt: instant,
          untouched: z.int(),
          workedOn: z.int(),
          /** Some of those worked on since, by name. */
          names: z.array(z.string()),
        }),
      ),
    }),
  },
  /** Archives the cases that a roster opened. Refused if one was worked on since, unless those are to be left as they are. */
  'roster.takeBack': {
    request: z.strictObject({ rosterId: id, archivedOn: day, leaveWorkedOn: z.boolean() }),
    answer: z.strictObject({ caseIds: z.array(id), left: z.int() }),
  },
  'battery.list': { request: none, answer: ownBatteries },
  /** Stores what is being written, sound or not. The versions saved stay as they are. */
  'battery.edit': {
    request: z.strictObject({ id, draft: batteryBody.nullable(), isRetired: z.boolean() }),
    answer: ownBatteries,
  },
  /** Saves what was written as the next version, if it may be used. */
  'battery.save': { request: z.strictObject({ id }), answer: ownBatteries },
  /** Takes out one version, or (null) the battery. Refused while a session was taken with it. */
  'battery.remove': { request: z.strictObject({ id, version: line.nullable() }), answer: ownBatteries },
  'battery.undo': { request: none, answer: ownBatteries },
  'battery.redo': { request: none, answer: ownBatteries },
  /** A version of a battery from a file. One that is here already with other content is refused. */
  'battery.import': {
    request: z.strictObject({ fileName: line.min(1), text: z.string().max(2_000_000) }),
    answer: z.strictObject({ id, version: z.string(), label: z.string(), isNew: z.boolean() }),
  },
  /** One version as a file, null for the newest; one of the program as a copy of it begins. */
  'battery.export': {
    request: z.strictObject({ id: line.min(1), version: line.nullable() }),
    answer: z.strictObject({ fileName: z.string(), text: z.string() }),
  },
  /** How files were read that are read alike next time, those used last first. */
  'mapping.list': { request: none, answer: z.strictObject({ mappings: z.array(keptMapping) }) },
  /** Forgets how files with these heads were read. */
  'mapping.forget': { request: z.strictObject({ door: z.enum(DOORS), heads }), answer: none },
  /** Keeps again what was forgotten. */
  'mapping.putBack': { request: keptMapping, answer: none },
  /** Every day and battery on which cases not archived were screened, newest first. */
  'run.list': {
    request: none,
    answer: z.strictObject({
      runs: z.array(
        z.strictObject({
          heldOn: day,
          batteryId: line,
          batteryVersion: line,
          /** Of a battery of one's own; null: one of the program. */
          batteryLabel: z.string().nullable(),
          caseIds: z.array(id),
        }),
      ),
    }),
  },
  /** A run as one file, for another laptop to merge. */
  'run.export': {
    request: runKey,
    answer: z.strictObject({ fileName: z.string(), text: z.string() }),
  },
  /** What a run of another laptop would add to this store, and where the two differ. Nothing is stored. */
  'run.compare': { request: runText, answer: comparedRun },
  /** Takes in what only the file has, and of each conflict the side chosen. A conflict without a choice: nothing is stored. */
  'run.merge': {
    request: runText.extend({
      choices: z
        .array(z.strictObject({ caseId: id, itemId: line.min(1), side: sideOrNone, take: z.enum(['ours', 'theirs']) }))
        .max(100_000),
    }),
    answer: z.strictObject({ caseIds: z.array(id), added: z.int(), replaced: z.int() }),
  },
  /** What a rule of one's own would say, stored or not, of this case and of every case that is not archived. */
  'rules.preview': {
    request: z.strictObject({ caseId: id.nullable(), rule: ruleBody }),
    answer: z.strictObject({
      /** What keeps it from being used; empty: it may be. */
      problems: z.array(ruleProblem),
      here: rulePreview.nullable(),
      /** Cases looked at, and those in which it would fire. */
      of: z.int(),
      fires: z.array(rulePreview.extend({ caseId: id, number: z.string() })),
    }),
  },
  /** The own rules of a case, or those for every case, that are on and sound, as one file with the SHA-256 of its content. */
  'rules.export': {
    request: z.strictObject({ caseId: id.nullable(), name: line.min(1) }),
    answer: z.strictObject({ fileName: z.string(), text: z.string(), sha256: z.string() }),
  },
  /** Adds the rules of a pack to a case, or to all, switched on, as one step of undo: all of them, or with one fault none. */
  'rules.import': {
    request: z.strictObject({ caseId: id.nullable(), fileName: line.min(1), text: z.string().max(8_000_000) }),
    answer: z.strictObject({
      rules: z.int(),
      /** `null`: the pack carries none. A pack whose content does not agree with its own is refused. */
      sha256: z.string().nullable(),
      /** `null`: they are for every case, which has a history of its own. */
      edits: editState.nullable(),
    }),
  },
  'rules.shared': { request: none, answer: sharedRules },
  /** Makes, changes or (null) takes out rules for every case, as one step of undo. One that is changed is off until it is switched on again. */
  'rules.editShared': {
    request: z.strictObject({
      edits: z
        .array(z.strictObject({ id, rule: sharedRule.nullable() }))
        .min(1)
        .max(1000),
    }),
    answer: sharedRules,
  },
  'rules.undoShared': { request: none, answer: sharedRules },
  'rules.redoShared': { request: none, answer: sharedRules },
  /** What an update of the rules of the program would change in the cases that it waits for. Archived ones change unseen. */
  'rules.update': {
    request: none,
    answer: z.strictObject({
      /** Of the rules now in use, oldest first, and of those that came with the update. */
      from: z.array(z.string()),
      to: z.string(),
      /** Cases that wait, archived ones too. */
      waiting: z.int(),
      /** Those not archived in which something changes. */
      cases: z.array(
        z.strictObject({
          caseId: id,
          number: z.string(),
          athleteName: z.string(),
          changes: z.array(z.strictObject({ key: z.string(), before: said, after: said, isInForce: z.boolean() })),
        }),
      ),
    }),
  },
  'rules.acceptUpdate': { request: none, answer: none },
  /** The very pages that would be written. Asked again under one job id, the one under way is stopped. */
  'report.preview': {
    request: reportRequest,
    /** PlacedReport of shared/report/page.ts; produced by our own code, not read from outside. */
    answer: z.strictObject({ report: z.json() }),
  },
  'report.make': {
    request: reportRequest.extend({
      /** Puts the case data into the PDF as an attached file. */
      attachCase: z.boolean().optional(),
    }),
    answer: z.strictObject({
      reportId: id,
      pdfSha256: z.string(),
      /** Path the host serves the file under. */ href: z.string(),
      edits: editState,
    }),
  },
  /** Stops a report or preview under way: it answers `cancelled` and nothing is kept. One that is made is left alone. */
  'report.cancel': { request: z.strictObject({ jobId: id }), answer: none },
  /** The report as text that can be edited; not kept. The first file is the text, the others its figures. */
  'report.text': {
    request: reportRequest.extend({ as: z.enum(['docx', 'md']) }),
    answer: z.strictObject({
      files: z.array(z.strictObject({ name: z.string(), mediaType: z.string(), base64: z.string() })),
    }),
  },
  'store.verify': { request: none, answer: z.strictObject({ problems: z.array(z.string()) }) },
} as const satisfies Record<string, { request: z.ZodType; answer: z.ZodType }>;

export type Channel = keyof typeof CHANNELS;
export type Request<C extends Channel> = z.infer<(typeof CHANNELS)[C]['request']>;
export type Answer<C extends Channel> = z.infer<(typeof CHANNELS)[C]['answer']>;
export const CHANNEL_NAMES = Object.keys(CHANNELS) as Channel[];

/** Pushed by main to every window. */
export const EVENTS = {
  'case.changed': z.strictObject({ caseId: id, revision: z.int() }),
  /** Pages drawn of a report under way. */
  'report.progress': z.strictObject({ jobId: id, done: z.int(), of: z.int() }),
} as const;
export type EventName = keyof typeof EVENTS;
export type EventPayload<E extends EventName> = z.infer<(typeof EVENTS)[E]>;
