import { formatDate, NO_BREAK_SPACE, quantityText } from '../../format/number.ts';
import type { Injury } from '../../model/injury.ts';
import {
  LAXITY_SIGNS,
  NERVES_AND_VESSELS,
  type NeurovascularCheck,
  type ProvocationTest,
  SHOULDER_FLAGS,
  type ShoulderFlag,
  type ShoulderRecord,
} from '../../model/shoulder.ts';
import { fieldWords } from '../../model/words.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { dotted, plain, type Runs, strong } from '../runs.ts';
import { conditionWords } from './opening.ts';
import { sentenceCase, type Writing } from './writing.ts';

/** What a letter says of unstable shoulders, as recorded by whoever examined; nothing here says how to examine. */

const NOT_RECORDED = 'Not recorded.';

/** Each time it slipped or came out, in order; injuries as such first. */
export function datedEvents({ file }: Writing): string[] {
  return file.instabilityEvents
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
            : 'neither numb nor weak afterwards',
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

/** Signs and provocation tests with side, day and examiner. Apprehension and pain stand apart. */
export function examination({ file }: Writing): Block[] {
  const said = [
    ...file.shoulderRecords.flatMap((record) => signsOf(record, file.injuries)),
    ...file.provocationTests.map(provocationWords),
  ];
  return [said.length === 0 ? paragraph(NOT_RECORDED) : list(said)];
}

function signsOf(record: ShoulderRecord, injuries: readonly Injury[]): Runs[] {
  const injury = injuries.find(({ id }) => id === record.injuryId);
  const counted = LAXITY_SIGNS.filter((sign) => record[sign] !== null);
  const signs: [string, string | null][] = [
    [
      'passive abduction with the shoulder blade held',
      sides(record.passiveAbductionRad, record.otherPassiveAbductionRad),
    ],
    [
      'external rotation with the elbow at the side',
      sides(record.externalRotationRad, record.otherExternalRotationRad),
    ],
    [
      'gap under the roof of the shoulder when pulled down',
      record.sulcus === null ? null : record.sulcus.replaceAll('-', ' '),
    ],
    ['shift to the front', record.anteriorShift === null ? null : record.anteriorShift.replaceAll('-', ' ')],
    ['shift to the back', record.posteriorShift === null ? null : record.posteriorShift.replaceAll('-', ' ')],
    [
      'signs of lax joints',
      counted.length === 0
        ? null
        : `${counted.filter((sign) => record[sign] === true).length} of ${counted.length} looked at${counted.length < LAXITY_SIGNS.length ? `; ${LAXITY_SIGNS.length} belong to the set` : ''}`,
    ],
    ['more than one direction', answer(record.isMultidirectional)],
    ['can slip it at will', answer(record.canSlipAtWill)],
  ];
  const known = signs.filter(([, words]) => words !== null);
  if (known.length === 0) return [];
  const head = injury === undefined ? 'Shoulder' : conditionWords(injury);
  return [
    [
      ...strong(`${head}${by(record.examinedOn, record.examiner)}: `),
      ...plain(`${known.map(([name, words]) => `${name} ${words}`).join('; ')}.`),
    ],
  ];
}

function provocationWords(test: ProvocationTest): Runs {
  const found = [
    test.apprehension === null ? 'apprehension not recorded' : test.apprehension ? 'apprehension' : 'no apprehension',
    test.painNrs === null ? 'pain not recorded' : `pain ${test.painNrs} of 10`,
    test.clunk === null ? '' : test.clunk ? 'a clunk' : 'no clunk',
    test.note,
  ];
  const name = `${PROVOCATION_WORDS[test.test]}, ${test.side}`;
  return [
    ...strong(`${name}${by(test.testedOn, test.examiner)}: `),
    ...plain(`${found.filter((one) => one !== '').join(', ')}.`),
  ];
}

/** What each loads, as it was recorded. */
const PROVOCATION_WORDS = {
  'abduction-external-rotation': 'Arm out and turned back',
  relocation: 'The same with the head of the arm held back',
  release: 'The same let go',
  'anterior-shift': 'Shift to the front',
  'posterior-shift': 'Shift to the back',
  'posterior-load-crossing': 'Load to the back while crossing',
  'posterior-load-oblique': 'Load to the back on the slant',
  'downward-pull': 'Pull downwards',
} as const satisfies Record<ProvocationTest['test'], string>;

/** Nerves and vessels at each time; what is normal is said, and what was not looked at. */
export function nervesAndVessels({ file }: Writing): Block[] {
  if (file.neurovascularChecks.length === 0) {
    return [paragraph('Not recorded. Numbness, weakness and circulation were not examined or not written down.')];
  }
  return [list(file.neurovascularChecks.map(checkWords))];
}

function checkWords(check: NeurovascularCheck): Runs {
  const of = (state: 'normal' | 'reduced' | 'absent' | null) =>
    NERVES_AND_VESSELS.filter((name) => check[name] === state).map(fieldWords);
  const parts = [
    ...(['absent', 'reduced', 'normal'] as const).map((state) => {
      const names = of(state);
      return names.length === 0 ? '' : `${state}: ${names.join(', ')}`;
    }),
    of(null).length === 0 ? '' : `not examined: ${of(null).join(', ')}`,
    check.armpitSwelling === null ? '' : check.armpitSwelling ? 'swelling of the armpit' : 'no swelling of the armpit',
    check.note,
  ];
  const time = dotted(sentenceCase(check.timing.replaceAll('-', ' ')), check.checkedAt);
  return [
    ...strong(`${time}${by(check.checkedOn, check.examiner)}: `),
    ...plain(`${parts.filter((one) => one !== '').join('; ')}.`),
  ];
}

/** Every red flag with its answer: yes, no, or not asked. */
export function redFlags({ file }: Writing): Block[] {
  const answers = (flag: ShoulderFlag) => {
    const said = file.shoulderRecords.map((record) => record[flag]);
    return said.includes(true) ? true : said.length > 0 && said.every((one) => one === false) ? false : null;
  };
  const rows = ([true, false, null] as const).map((state) => ({
    state,
    flags: SHOULDER_FLAGS.filter((flag) => answers(flag) === state).map(fieldWords),
  }));
  return rows
    .filter(({ flags }) => flags.length > 0)
    .map(({ state, flags }) =>
      paragraph([
        ...strong(state === true ? 'Yes: ' : state === false ? 'No: ' : 'Not asked or not recorded: '),
        ...plain(`${flags.join(', ')}.`),
      ]),
    );
}

/** What images showed, as reported; bone is never measured here. */
export function imaging({ file }: Writing): Block[] {
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
    const reported = numbers.flatMap(([name, value]) => (value === null ? [] : [`${name} ${millimetres(value)}`]));
    return [`${on}: ${[report, ...reported].join('; ')}.`];
  });
  return [said.length === 0 ? paragraph('Not recorded.') : list(said)];
}

/** Totals with their day: higher or lower is better by the questionnaire, not by this program. */
export function questionnaires({ file }: Writing): Block[] {
  const said = file.questionnaireTotals.map(({ questionnaire, totalPoints, takenOn, version, language }) =>
    dotted(
      `${sentenceCase(questionnaire.replaceAll('-', ' '))}: ${totalPoints} points`,
      takenOn === null ? 'date not recorded' : formatDate(takenOn),
      version,
      language,
    ),
  );
  return said.length === 0 ? [] : [beside('Questionnaires', [list(said)])];
}

const angle = (value: number) => quantityText({ value, unit: 'rad', u: null }, 'deg');
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

function by(on: string | null, examiner: string): string {
  const who = [on === null ? 'date not recorded' : formatDate(on), examiner].filter((one) => one !== '');
  return ` (${who.join(', ')})`;
}
