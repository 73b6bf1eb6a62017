import { unstableShoulders } from '../../assess/classifyInstability.ts';
import { judgeShoulder, type ShoulderJudgement } from '../../assess/judgeShoulder.ts';
import { lowerFirst, sentenceCase } from '../../format/letterCase.ts';
import { formatDate, NO_BREAK_SPACE, quantityText } from '../../format/number.ts';
import { FLAG_WORDS, NERVE_WORDS, PROVOCATION_WORDS, QUESTIONNAIRE_WORDS } from '../../knowledge/shoulder/words.ts';
import type { Injury } from '../../model/injury.ts';
import type { CaseFile } from '../../model/records.ts';
import {
  CHECK_TIMES,
  LAXITY_SIGNS,
  NERVES_AND_VESSELS,
  type NeurovascularCheck,
  SHOULDER_FLAGS,
  type ShoulderRecord,
} from '../../model/shoulder.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { table } from '../blocks/table.ts';
import { dotted, plain, quiet, type Runs, strong } from '../runs.ts';
import { forTheSurgeon } from './classification.ts';
import { conditionWords } from './opening.ts';
import { type Writing } from './writing.ts';

/** What a letter says of unstable shoulders, as recorded by whoever examined; nothing here says how to examine. */

const NOT_RECORDED = 'Not recorded.';

/** Each time it slipped or came out, in order. */
export function datedEvents({ file }: Writing, injury: Injury): string[] {
  return file.instabilityEvents
    .filter(({ injuryId }) => injuryId === injury.id)
    .toSorted((a, b) => ((a.happenedOn ?? '') < (b.happenedOn ?? '') ? -1 : 1))
    .map((event) => {
      const what = [event.etiology, event.direction, event.severity ?? 'slipped or came out'].filter(
        (one) => one !== null,
      );
      const facts = [
        event.mechanism.replace(/\.$/, ''),
        event.reduction === null ? '' : REDUCTION_WORDS[event.reduction],
        event.underSedation === true ? 'under sedation' : '',
        event.outOfJointS === null ? '' : `out of joint for ${minutes(event.outOfJointS)}`,
        event.afterSeizureOrShock === true ? 'after a seizure or electric shock' : '',
        event.duringSleep === true ? 'during sleep' : '',
        event.numbOrWeakAfter === null
          ? 'numbness or weakness not recorded'
          : event.numbOrWeakAfter
            ? 'numb or weak afterwards'
            : 'not numb, not weak afterwards',
        event.note.replace(/\.$/, ''),
      ];
      const on = event.happenedOn === null ? 'Date not recorded' : formatDate(event.happenedOn);
      return `${on}: ${[what.join(' '), ...facts].filter((one) => one !== '').join(', ')}.`;
    });
}

const REDUCTION_WORDS = {
  'by-itself': 'went back by itself',
  'by-the-athlete': 'put back by the athlete',
  'on-the-field': 'put back on the field',
  'in-hospital': 'put back in hospital',
  'not-reduced': 'not put back',
} as const;

/** Signs with side, day and examiner. */
export function examination({ file }: Writing): Block[] {
  const said = file.shoulderRecords.flatMap((record) => signsOf(record, file));
  if (said.length > 0) return [list(said)];
  return [
    paragraph(file.provocationTests.length === 0 ? NOT_RECORDED : 'Signs not recorded; what was provoked follows.'),
  ];
}

function signsOf(record: ShoulderRecord, file: CaseFile): Runs[] {
  const injury = file.injuries.find(({ id }) => id === record.injuryId);
  const signs: [string, string | null][] = [
    [
      'passive abduction with the shoulder blade held',
      sides(record.passiveAbductionRad, record.otherPassiveAbductionRad),
    ],
    [
      'external rotation with the elbow at the side',
      sides(record.externalRotationRad, record.otherExternalRotationRad),
    ],
    ['gap under the roof of the shoulder when pulled down', sulcusWords(record)],
    ['shift to the front', record.anteriorShift === null ? null : record.anteriorShift.replaceAll('-', ' ')],
    ['shift to the back', record.posteriorShift === null ? null : record.posteriorShift.replaceAll('-', ' ')],
    ['signs of generalised laxity', injury === undefined ? null : laxityWords(record, judgeShoulder(file, injury))],
    ['more than one direction', answer(record.isMultidirectional)],
    ['can slip it at will', answer(record.canSlipAtWill)],
  ];
  const known = signs.filter(([, words]) => words !== null);
  if (known.length === 0) return [];
  const head = injury === undefined || file.shoulderRecords.length === 1 ? 'Signs' : conditionWords(injury);
  return [
    [
      ...strong(`${head} ${by(record.examinedOn, record.examiner)}: `),
      ...plain(`${known.map(([name, words]) => `${name} ${words}`).join('; ')}.`),
    ],
  ];
}

function sulcusWords({ sulcus, sulcusStaysInRotation, sulcusIsSymptom }: ShoulderRecord): string | null {
  if (sulcus === null) return null;
  return [
    sulcus.replaceAll('-', ' '),
    sulcusStaysInRotation === true ? 'stays in external rotation' : '',
    sulcusIsSymptom === null ? '' : sulcusIsSymptom ? 'brings on the symptom' : 'does not bring on the symptom',
  ]
    .filter((part) => part !== '')
    .join(', ');
}

/** A total only when every sign was looked at; until then what is there and what is missing. */
function laxityWords(record: ShoulderRecord, judgement: ShoulderJudgement | null): string | null {
  const seen = LAXITY_SIGNS.filter((sign) => record[sign] !== null);
  if (seen.length === 0 || judgement === null) return null;
  const { laxity, laxityCutoff } = judgement;
  if (laxity.points === null) {
    const found = seen.filter((sign) => record[sign] === true).length;
    return `${found} of the ${seen.length} looked at; no total without all ${LAXITY_SIGNS.length}`;
  }
  const cutoff =
    laxityCutoff === null ? 'cut-off not known without age or puberty' : `cut-off for the age ${laxityCutoff}`;
  return `${laxity.points} of ${LAXITY_SIGNS.length} (${cutoff})`;
}

/** One table for each day and examiner. Apprehension and pain have a column each: neither stands for the other. */
export function provocations({ file: { provocationTests: tests } }: Writing): Block[] {
  const heads = [...new Set(tests.map(({ testedOn, examiner }) => by(testedOn, examiner)))];
  return heads.map((head) => {
    const ofHead = tests.filter(({ testedOn, examiner }) => by(testedOn, examiner) === head);
    return table(
      `Tests that provoke the symptom ${head}`,
      ['Test', 'Side', 'Apprehension', 'Pain of 10', 'Clunk', 'Note'],
      ofHead.map(({ test, side, apprehension, painNrs, clunk, note }) => [
        PROVOCATION_WORDS[test],
        side,
        apprehension === true ? strong('yes') : (answer(apprehension) ?? quiet('not recorded')),
        painNrs === null ? quiet('not recorded') : String(painNrs),
        answer(clunk) ?? quiet('not recorded'),
        note,
      ]),
    );
  });
}

/** Nerves and vessels at each time, in order; what is normal is said, and what was not looked at. */
export function nervesAndVessels({ file }: Writing): Block[] {
  const { neurovascularChecks: checks, instabilityEvents: events } = file;
  const wasPutBack = events.some(({ reduction }) => reduction === 'on-the-field' || reduction === 'in-hospital');
  const said = CHECK_TIMES.flatMap((timing): Runs[] => {
    const ofTime = checks
      .filter((check) => check.timing === timing)
      .toSorted((a, b) => ((a.checkedOn ?? '') < (b.checkedOn ?? '') ? -1 : 1));
    if (ofTime.length > 0) return ofTime.map(checkWords);
    return timing === 'at-assessment' || wasPutBack
      ? [[...strong(`${timeWords(timing)}: `), ...plain('not recorded.')]]
      : [];
  });
  return [checks.length === 0 ? paragraph('Not examined, or not written down.') : list(said)];
}

function timeWords(timing: NeurovascularCheck['timing']): string {
  return sentenceCase(timing.replaceAll('-', ' '));
}

/** What is not normal and what was not examined by name; the table has every answer. */
function checkWords(check: NeurovascularCheck): Runs {
  const of = (state: NeurovascularState | null) =>
    NERVES_AND_VESSELS.filter((name) => check[name] === state).map((name) => lowerFirst(NERVE_WORDS[name]));
  const [normal, missing] = [of('normal'), of(null)];
  const notNormal = (['absent', 'reduced'] as const).flatMap((state) =>
    of(state).length === 0 ? [] : [`${state}: ${of(state).join(', ')}`],
  );
  const parts = [
    normal.length === NERVES_AND_VESSELS.length
      ? `all ${normal.length} normal`
      : `${normal.length} of ${NERVES_AND_VESSELS.length} normal`,
    missing.length === 0 ? '' : `not examined: ${missing.join(', ')}`,
    check.armpitSwelling === null ? '' : check.armpitSwelling ? 'swelling of the armpit' : 'no swelling of the armpit',
  ].filter((one) => one !== '');
  const note = check.note === '' ? '' : ` ${check.note.replace(/\.$/, '')}.`;
  const time = dotted(timeWords(check.timing), check.checkedAt);
  return [
    ...strong(
      `${time} ${by(check.checkedOn, check.examiner)}: ${notNormal.length === 0 ? '' : `${notNormal.join('. ')}. `}`,
    ),
    ...plain(`${sentenceCase(parts.join('; '))}.${note}`),
  ];
}

/** Every nerve and vessel at every time, normal findings too. */
export function nervesAndVesselsTable({ file }: Writing): Block[] {
  const checks = CHECK_TIMES.flatMap((timing) => file.neurovascularChecks.filter((check) => check.timing === timing));
  if (checks.length === 0) return [];
  const rows = NERVES_AND_VESSELS.map((name) => [
    NERVE_WORDS[name],
    ...checks.map((check) => {
      const state = check[name];
      return state === null ? quiet('not examined') : state === 'normal' ? plain(state) : strong(state);
    }),
  ]);
  const heads = checks.map(({ timing, checkedOn }) =>
    dotted(timeWords(timing), checkedOn === null ? 'date not recorded' : formatDate(checkedOn)),
  );
  // More checks than a page is wide are parted.
  return [
    heading(2, 'Nerves and vessels, one by one'),
    ...chunks(checks.length, 4).map(([from, to]) =>
      table(
        'Compared with the other side',
        ['Looked at', ...heads.slice(from, to)],
        rows.map(([name = '', ...states]) => [name, ...states.slice(from, to)]),
      ),
    ),
  ];
}

function chunks(count: number, size: number): [number, number][] {
  return Array.from({ length: Math.ceil(count / size) }, (_, i) => [i * size, (i + 1) * size]);
}

type NeurovascularState = 'normal' | 'reduced' | 'absent';

/** Every red flag with its answer: yes, no, or not asked. A shoulder without a record has been asked nothing. */
export function redFlags({ file }: Writing): Block[] {
  const records = unstableShoulders(file).map((injury) => ({
    head: conditionWords(injury),
    record: file.shoulderRecords.find(({ injuryId }) => injuryId === injury.id),
  }));
  if (records.length === 0) return [];
  return records.flatMap(({ head, record }) => [
    ...(records.length === 1 ? [] : [paragraph(strong(`${head}:`))]),
    // A long list of what nobody asked reads like a list of what was found.
    ...(SHOULDER_FLAGS.every((flag) => (record?.[flag] ?? null) === null)
      ? [
          paragraph(
            strong(`None of the ${SHOULDER_FLAGS.length} red flags of an unstable shoulder was asked or recorded.`),
          ),
        ]
      : ([true, false, null] as const).flatMap((state) => {
          const flags = SHOULDER_FLAGS.filter((flag) => (record?.[flag] ?? null) === state);
          const words = `${flags.map((flag) => lowerFirst(FLAG_WORDS[flag])).join('; ')}.`;
          return flags.length === 0
            ? []
            : [
                paragraph([...strong(STATE_WORDS[`${state}`]), ...(state === true ? strong(words) : plain(words))], {
                  style: state === true ? 'body' : 'quiet',
                }),
              ];
        })),
  ]);
}

const STATE_WORDS = { true: 'Yes: ', false: 'No: ', null: 'Not asked or not recorded: ' } as const;

/** What images showed, as reported; bone is never measured here. */
export function imaging(writing: Writing): Block[] {
  const { file } = writing;
  const forSurgeon = forTheSurgeon(writing);
  const said = file.shoulderRecords.flatMap((record) => {
    if (record.wasImaged === false) return ['None was done.'];
    if (record.wasImaged === null && record.imagingReport === '') return [];
    const on = record.imagedOn === null ? 'Date not recorded' : formatDate(record.imagedOn);
    const report = record.imagingReport === '' ? 'report not recorded' : record.imagingReport.replace(/\.$/, '');
    const numbers: [string, number | null][] = [
      ['socket width', record.glenoidWidthM],
      ['defect at its front', record.anteriorDefectM],
      ['width of the dent', record.lesionWidthM],
      ['bone bridge', record.boneBridgeM],
    ];
    const reported = [
      ...numbers.flatMap(([name, value]) => (value === null ? [] : [`${name} ${millimetres(value)}`])),
      ...(record.glenoidLossRatio === null
        ? []
        : [`${Math.round(100 * record.glenoidLossRatio)}${NO_BREAK_SPACE}% of the socket lost`]),
      ...(record.tuberosityFracture === null
        ? []
        : [record.tuberosityFracture ? 'fracture of the tuberosity' : 'no fracture of the tuberosity']),
    ];
    return [`${on}: ${[report, ...reported].join('; ')}.`];
  });
  return [
    ...(said.length === 0 ? [paragraph(NOT_RECORDED)] : [list(said)]),
    ...(forSurgeon.length === 0 ? [] : [list(forSurgeon)]),
  ];
}

/** Totals with their day, what the ends of the scale mean, and what a change must exceed. */
export function questionnaires({ file }: Writing): Block[] {
  const said = file.questionnaireTotals
    .toSorted((a, b) => ((a.takenOn ?? '') < (b.takenOn ?? '') ? -1 : 1))
    .map(({ questionnaire, totalPoints, takenOn, version, language }): Runs => {
      const { label, most, best, detectable } = QUESTIONNAIRE_WORDS[questionnaire];
      const error =
        detectable === null
          ? ''
          : ` Less than ${detectable.points} points of change can be error (${detectable.source.cite}).`;
      return [
        ...plain(
          dotted(
            `${label}: ${totalPoints} of ${most} points, ${best}`,
            takenOn === null ? 'date not recorded' : formatDate(takenOn),
            version,
            language,
          ),
        ),
        ...quiet(`.${error}`),
      ];
    });
  return said.length === 0 ? [] : [beside('Questionnaires', [list(said)])];
}

/** As it is read off a goniometer: whole degrees. */
const angle = (value: number) => `${Math.round((value * 180) / Math.PI)}°`;
const millimetres = (value: number) => quantityText({ value, unit: 'm', u: null }, 'mm');

/** The side itself, and the other beside it. */
function sides(own: number | null, other: number | null): string | null {
  if (own === null) return null;
  return `${angle(own)}, other side ${other === null ? 'not recorded' : angle(other)}`;
}

const minutes = (seconds: number) => `${Number((seconds / 60).toPrecision(3))}${NO_BREAK_SPACE}min`;

function answer(said: boolean | null): string | null {
  return said === null ? null : said ? 'yes' : 'no';
}

/** `(9 March 2024, the physician on duty)`. */
function by(on: string | null, examiner: string): string {
  const who = examiner === '' ? 'examiner not recorded' : examiner;
  return `(${on === null ? 'date not recorded' : formatDate(on)}, ${who})`;
}
