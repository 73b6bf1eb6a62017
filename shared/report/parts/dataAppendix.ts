import { movementOf } from '../../assess/movementOf.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import { counted, formatDate, quantityText, withUnit } from '../../format/number.ts';
import { measureById } from '../../knowledge/measures/index.ts';
import { batteryOf, itemOf } from '../../knowledge/screening/index.ts';
import type { CaseFile, RecordOf } from '../../model/records.ts';
import { fieldWords, KIND_WORDS } from '../../model/words.ts';
import { UNITS, type Unit } from '../../units.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { right, table } from '../blocks/table.ts';
import { DATA_KINDS, dataOf, type Fields, typedFields, withoutNames } from '../caseData.ts';
import { JUMP_KIND_WORDS, JUMP_METHOD_WORDS, SIDE_WORDS } from '../words.ts';
import { conditionWords } from './opening.ts';
import type { Writing } from './writing.ts';

/** Name of the attached file that holds every digitised point. */
export const POINTS_FILE = 'digitised-points.csv';

type DataKind = (typeof DATA_KINDS)[number];

/**
 * Everything that was entered, record by record, to all its digits. Digitised points are summed up, since they run to
 * thousands; rules, movements and decisions stand where they are used.
 */
export function dataAppendix(writing: Writing): Block[] {
  const file = writing.isWithoutNames ? withoutNames(writing.file, (text) => text) : writing.file;
  return [
    heading(2, 'Data as entered'),
    paragraph(
      'Every value as it was entered, to all its digits, with the day, the side and who or what it came from. What is not listed was not entered.',
    ),
    ...DATA_KINDS.flatMap((kind) => {
      if (ELSEWHERE.has(kind)) return [];
      const records = dataOf(file, kind);
      return kind === 'athlete' || kind === 'case' ? fieldByField(kind, records) : recordByRecord(file, kind, records);
    }),
    ...points(writing, file),
  ];
}

/** Summed up below, or data about the judging and not about the athlete. */
const ELSEWHERE: ReadonlySet<DataKind> = new Set([
  'ownMovement',
  'ownRule',
  'landmarkTrack',
  'pointRepeat',
  'findingDecision',
]);

function fieldByField(kind: 'athlete' | 'case', records: readonly Fields[]): Block[] {
  const rows = records.flatMap((record) =>
    enteredFields(kind, record, null).map(([field, words]) => [sentenceCase(wordsOf(field)), words]),
  );
  return [table(sentenceCase(KIND_WORDS[kind]), ['Entered', 'Value'], rows)];
}

function recordByRecord(file: CaseFile, kind: DataKind, records: readonly Fields[]): Block[] {
  if (records.length === 0) return [];
  const rows = records.map((record) => {
    const { name, day, from, unit } = about(file, kind, record);
    const [first, ...others] = enteredFields(kind, record, unit);
    const main = first !== undefined && MAIN.has(first[0]) ? first : null;
    const rest = (main === null && first !== undefined ? [first, ...others] : others).map(([field, words]) =>
      `${wordsOf(field)} ${words}`.replace(/\.$/, ''),
    );
    return [
      name,
      SIDE_WORDS[record['side'] as keyof typeof SIDE_WORDS] ?? '',
      [...(main === null ? [] : [main[1]]), ...rest].join('; '),
      day === null ? 'not recorded' : formatDate(day),
      from === '' ? 'not recorded' : from,
    ];
  });
  const hasSides = rows.some(([, side]) => side !== '');
  const columns = ['Record', 'Side', 'Entered', 'Day', 'Obtained'].filter((one) => one !== 'Side' || hasSides);
  return [
    table(
      `${sentenceCase(KIND_WORDS[kind])}: ${counted(rows.length, 'record')}`,
      columns,
      rows.map((row) => row.filter((_, c) => c !== 1 || hasSides)),
    ),
  ];
}

/** Fields that are the record's own value: they need no name. */
const MAIN: ReadonlySet<string> = new Set(['valueSi', 'grade', 'flag', 'isPositive']);

interface About {
  readonly name: string;
  readonly day: string | null;
  /** By whom or how it was obtained. */
  readonly from: string;
  /** Of its `valueSi`. */
  readonly unit: readonly [Unit, Unit] | null;
}

/** What a record is called, and what of it stands in the record it belongs to. */
function about(file: CaseFile, kind: DataKind, record: Fields): About {
  const day = DAYS.map((field) => wordIn(record, field)).find((value) => value !== '') ?? null;
  const from = ORIGINS.map((field) => wordIn(record, field)).find((value) => value !== '') ?? '';
  const usual = {
    name: sentenceCase(KIND_WORDS[kind]),
    day,
    from: dashless(from),
    unit: null,
  };
  switch (kind) {
    case 'injury':
      return { ...usual, name: conditionWords(record as unknown as RecordOf<'injury'>), from: 'history as told' };
    case 'instabilityEvent':
      return { ...usual, from: 'history as told' };
    case 'bodyMeasurement': {
      const unit = record['measure'] === 'mass' ? 'kg' : 'm';
      return { ...usual, name: sentenceCase(dashless(wordIn(record, 'measure'))), from: 'entered', unit: [unit, unit] };
    }
    case 'screeningSession': {
      const session = record as unknown as RecordOf<'screeningSession'>;
      return { ...usual, name: batteryOf(session)?.label ?? session.batteryId };
    }
    case 'screeningResult': {
      const result = record as unknown as RecordOf<'screeningResult'>;
      const session = file.screeningSessions.find(({ id }) => id === result.sessionId);
      const item = session === undefined ? null : itemOf(session, result.itemId);
      const unit = item?.unit ?? null;
      return {
        name: item?.label ?? result.itemId,
        day: session?.heldOn ?? null,
        from: [session?.rater ?? '', result.device].filter(Boolean).join(', '),
        unit: unit === null ? null : [unit, item?.displayUnit ?? unit],
      };
    }
    case 'jumpTest': {
      const { kind: jump, method, device } = record as unknown as RecordOf<'jumpTest'>;
      return {
        ...usual,
        name: JUMP_KIND_WORDS[jump],
        from: [JUMP_METHOD_WORDS[method], device].filter(Boolean).join(', '),
      };
    }
    case 'jumpTrial': {
      const { testId, number } = record as unknown as RecordOf<'jumpTrial'>;
      const test = file.jumpTests.find(({ id }) => id === testId);
      return {
        ...usual,
        name: `${test === undefined ? 'Jump' : JUMP_KIND_WORDS[test.kind]}, trial ${number}`,
        day: test?.heldOn ?? null,
        from: test === undefined ? '' : JUMP_METHOD_WORDS[test.method],
      };
    }
    case 'movementTrial': {
      const { label, movementId } = record as unknown as RecordOf<'movementTrial'>;
      return { ...usual, name: `${movementOf(file, movementId)?.label ?? movementId}, ${label}`, from: 'filmed' };
    }
    case 'trialEvent': {
      const { event, trialId } = record as unknown as RecordOf<'trialEvent'>;
      const trial = file.movementTrials.find(({ id }) => id === trialId);
      const known = trial === undefined ? null : movementOf(file, trial.movementId);
      return {
        ...usual,
        name: known?.events.find(({ id }) => id === event)?.label ?? sentenceCase(dashless(event)),
        day: trial?.filmedOn ?? null,
      };
    }
    case 'still': {
      const { trialId } = record as unknown as RecordOf<'still'>;
      return {
        ...usual,
        day: file.movementTrials.find(({ id }) => id === trialId)?.filmedOn ?? null,
        from: 'frame of the film',
      };
    }
    case 'enteredMeasure': {
      const { measureId, phase } = record as unknown as RecordOf<'enteredMeasure'>;
      const measure = measureById(measureId);
      const unit = measure?.unit ?? null;
      return {
        ...usual,
        name: [measure?.label ?? measureId, phase === null ? '' : dashless(phase)].filter(Boolean).join(', '),
        from: 'measured elsewhere and typed in',
        unit: unit === null ? null : [unit, measure?.displayUnit ?? unit],
      };
    }
    default:
      return usual;
  }
}

/** Fields that say when and by whom, on whatever record they stand. */
const DAYS = ['heldOn', 'takenOn', 'testedOn', 'happenedOn', 'checkedOn', 'examinedOn', 'filmedOn', 'onset'] as const;
const ORIGINS = ['rater', 'examiner', 'origin', 'device'] as const;
/** Said in a column of their own, or in the name of the record. */
const IN_COLUMNS: ReadonlySet<string> = new Set([
  ...DAYS,
  ...ORIGINS,
  'side',
  'condition',
  'measure',
  'kind',
  'method',
]);
/** Keys, what the name of the record says, and a calibration that is not used yet. */
const HIDDEN = /^id$|Id$|^event$|^phase$|^label$|^battery$|^mediaSha256$|^calibrationDraft$/;

/** Where the name of a field, alone, would not be understood here. */
const OWN_WORDS: Readonly<Record<string, string>> = {
  isPseudonym: 'pseudonym instead of a name',
  isSetAside: 'set aside',
  xPx: 'x',
  yPx: 'y',
  lengthUM: 'its uncertainty',
  pointUPx: 'uncertainty of a point',
  pointUM: 'uncertainty of a point',
  tiltDeg: 'tilt',
  clipSha256: 'SHA-256 of the film',
  mediaSha: 'SHA-256 of the picture',
};

function wordsOf(field: string): string {
  return OWN_WORDS[field] ?? fieldWords(field);
}

/** What of a record was entered, in words, values before remarks. */
function enteredFields(kind: DataKind, record: Fields, unit: About['unit']): [string, string][] {
  const typed = new Set(typedFields(kind));
  const isSingle = kind === 'athlete' || kind === 'case';
  return Object.entries(record).flatMap(([field, value]): [string, string][] => {
    const isHidden =
      HIDDEN.test(field) ||
      (!isSingle && field === 'number') ||
      (value === false && /^is(SetAside|Invented)$/.test(field));
    if (isHidden || (!isSingle && IN_COLUMNS.has(field)) || isNothing(value)) return [];
    if (field === 'isPositive') return [[field, value === true ? 'it hurt' : 'did not hurt']];
    if (field === 'force') return [[field, forceWords(record as unknown as RecordOf<'jumpTrial'>)]];
    if (field.endsWith('Si') && unit !== null) {
      const values = (Array.isArray(value) ? value : [value]) as number[];
      return [[field, values.map((one) => quantityText({ value: one, unit: unit[0], u: 0 }, unit[1])).join(', ')]];
    }
    return [[field, typed.has(field) ? wordIn(record, field) : valueWords(field, value)]];
  });
}

function wordIn(record: Fields, field: string): string {
  const value = record[field];
  return typeof value === 'string' ? value : '';
}

function isNothing(value: unknown): boolean {
  return value === null || value === undefined || value === '' || (Array.isArray(value) && value.length === 0);
}

/** A value whose field names its unit, as people read it. */
function valueWords(field: string, value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return numberWords(field, value);
  if (typeof value === 'string') return /^\d{4}-\d\d(-\d\d)?$/.test(value) ? formatDate(value) : dashless(value);
  if (Array.isArray(value)) return value.map((one) => valueWords(field, one)).join(', ');
  if (typeof value !== 'object' || value === null) return '';
  const parts = Object.entries(value).flatMap(([name, one]) =>
    isNothing(one) ? [] : [`${wordsOf(name)} ${valueWords(name, one)}`],
  );
  return `(${parts.join(', ')})`;
}

/** Endings of field names that name a unit; longer ones first. */
const ENDINGS: readonly (readonly [RegExp, Unit, Unit])[] = [
  [/Kg$/, 'kg', 'kg'],
  [/Hz$/, 'Hz', 'Hz'],
  [/Px$/, '{px}', '{px}'],
  [/Rad$/, 'rad', 'deg'],
  [/Deg$/, 'deg', 'deg'],
  [/^uS$|S$/, 's', 's'],
  [/^uM$|M$/, 'm', 'm'],
];

function numberWords(field: string, value: number): string {
  if (field === 'painNrs') return `${value} of 10`;
  if (field.endsWith('Years')) return counted(value, 'year');
  if (field.endsWith('Hours')) return withUnit(String(value), 'h');
  const [, unit, shown] = ENDINGS.find(([ending]) => ending.test(field)) ?? ([null, '1', '1'] as const);
  return quantityText({ value, unit, u: 0 }, shown);
}

/** A force record is a file; what was found in it stands in the working. */
function forceWords({ force, mediaSha256 }: RecordOf<'jumpTrial'>): string {
  if (force === null) return '';
  const { rateHz, columns, placedByHand = [], warnings } = force;
  return [
    `of ${columns.join(' and ')} at ${withUnit(String(rateHz), UNITS.Hz.label)}`,
    placedByHand.length === 0 ? '' : `placed by hand: ${placedByHand.join(', ')}`,
    ...warnings,
    mediaSha256 === null ? '' : `SHA-256 of the file ${mediaSha256}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

function dashless(word: string): string {
  return /^[\p{L}\d-]+$/u.test(word) ? word.replaceAll('-', ' ') : word;
}

/** Digitised points by trial and name, and where each single one is to be had. */
function points({ pointsSha256 }: Writing, file: CaseFile): Block[] {
  const rows = file.movementTrials.flatMap((trial) =>
    file.landmarkTracks
      .filter(({ trialId, samples }) => trialId === trial.id && samples.length > 0)
      .map(({ point, origin, samples, uPx }) => [
        `${dashless(point)}${file.movementTrials.length > 1 ? `, ${trial.label}` : ''}`,
        dashless(origin),
        String(samples.length),
        `${samples[0]?.[0] ?? 0} to ${samples.at(-1)?.[0] ?? 0}`,
        uPx === null
          ? 'as for the trial'
          : quantityText({ value: uPx, unit: trial.calibration?.kind === 'metres' ? 'm' : '{px}', u: 0 }),
      ]),
  );
  if (rows.length === 0) return [];
  const again = file.pointRepeats.length;
  return [
    table(
      `Digitised points: ${counted(file.movementTrials.length, 'trial')}, ${counted(rows.length, 'point')} through time`,
      ['Point', 'How', right('Frames'), 'From, to frame', 'Standard uncertainty'],
      rows,
    ),
    ...(again === 0
      ? []
      : [paragraph(`${counted(again, 'point')} put down a second time, to know the error of a hand.`)]),
    paragraph(
      `Single points are left out here. They are attached to the PDF with the case data, when it is made so, as ${POINTS_FILE}${pointsSha256 === null ? '' : `, whose SHA-256 is ${pointsSha256}`}.`,
      { style: 'quiet' },
    ),
  ];
}
