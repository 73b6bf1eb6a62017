import type { Finding } from '../../assess/assessment.ts';
import type { Composition } from '../compose.ts';
import { ageOn } from '../../format/age.ts';
import { counted, formatDate } from '../../format/number.ts';
import { referralEssentials } from '../beforeYouSend.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { figure } from '../blocks/figure.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { label, line, rect } from '../figures/drawing.ts';
import { closing, sourcesList } from '../parts/closing.ts';
import { notAssessed, openQuestions } from '../parts/limits.ts';
import { injuryLine } from '../parts/opening.ts';
import { jumps, screening } from '../parts/results.ts';
import { workingAppendix } from '../parts/working.ts';
import { sentenceCase, type Writing } from '../parts/writing.ts';
import { quiet, type Runs, strong } from '../runs.ts';
import { SIDE_WORDS, URGENCY_WORDS } from '../words.ts';

/** A letter the next clinician can act on; a draft until a person signs it. */
export function composeReferral(writing: Writing): Composition {
  const { file, assessment, createdAt } = writing;
  const { athlete, case: record } = file;
  const missing = referralEssentials(file);
  // A stop says already what its referral found.
  const asks = assessment.stops.length > 0 ? ['caution'] : ['referral', 'caution'];
  const seen = assessment.findings.filter((finding) => asks.includes(finding.outcome));
  const born = writing.isWithoutNames
    ? 'name and birth date left out'
    : athlete.birthDate === null
      ? 'birth date not recorded'
      : `born ${formatDate(athlete.birthDate)}`;
  return {
    title: `Referral letter: ${athlete.name}`,
    kindWords: 'referral letter',
    draft: !writing.isFinal,
    blocks: [
      heading(1, `Referral letter: ${athlete.name}`),
      paragraph(quiet(`${born} · case ${record.number} · ${formatDate(createdAt)}`)),
      ...(record.isInvented ? [paragraph(strong('Invented data. No real person is described on these pages.'))] : []),
      ...(missing.length === 0 ? [] : [beside('Draft: still missing', [paragraph(missing.join(' '))])]),
      beside('To', [paragraph(record.addressee === '' ? 'Addressee not recorded.' : record.addressee)]),
      beside('Urgency', [
        paragraph(
          record.urgency === null
            ? 'Urgency not stated.'
            : [
                ...strong(`${URGENCY_WORDS[record.urgency]}. `),
                { text: record.urgencyReason === '' ? 'No reason was given.' : record.urgencyReason },
              ],
        ),
      ]),
      beside('Question', [
        paragraph(record.question === '' ? 'No question was written down.' : strong(record.question)),
      ]),
      beside('In one line', [paragraph(oneLine(writing))]),
      heading(2, 'History'),
      beside('Events', [
        file.injuries.length === 0 ? paragraph('No injury is recorded.') : list(file.injuries.map(injuryLine)),
      ]),
      ...file.injuries
        .filter((injury) => injury.mechanism !== '')
        .map((injury) =>
          beside(`Cause: ${conditionEntry(injury.condition).label.toLowerCase()}`, [paragraph(injury.mechanism)]),
        ),
      beside('Tried so far', [paragraph(tried(file.injuries))]),
      beside('Medicines, allergies, imaging', [paragraph('Not recorded.')]),
      heading(2, 'Findings'),
      ...(assessment.stops.length > 0
        ? [beside('Stop and be seen', [list(assessment.stops.map((stop) => strong(stop.words)))])]
        : []),
      ...(seen.length > 0 ? [beside('Needs attention', [list(seen.map(sided))])] : []),
      ...(seen.length + assessment.stops.length === 0
        ? [beside('Needs attention', [paragraph('No finding asks for a referral or caution.')])]
        : []),
      beside('Nerves and vessels', [
        paragraph('Not recorded. Numbness, weakness and circulation were not examined or not written down.'),
      ]),
      beside('Health questions', [
        paragraph(
          athlete.hasRedFlags === null
            ? 'Not asked or not recorded.'
            : athlete.hasRedFlags
              ? `A red flag was answered yes. ${athlete.redFlagsClearedBy === '' ? 'Not cleared.' : `Cleared by ${athlete.redFlagsClearedBy}.`}`
              : 'Asked; none answered yes.',
        ),
      ]),
      beside('Effect on sport', [paragraph(athlete.goals === '' ? 'Not recorded.' : athlete.goals)]),
      beside('Consent', [
        paragraph(
          athlete.consentOn === null
            ? 'Consent to this letter is not recorded.'
            : `Consent recorded ${formatDate(athlete.consentOn)}${athlete.consentFor === '' ? '' : ` for ${athlete.consentFor}`}.`,
        ),
      ]),
      beside('From', [paragraph(record.practitioner === '' ? 'Practitioner not recorded.' : record.practitioner)]),
      signatureBox,
      ...screening(writing),
      ...jumps(writing),
      ...notAssessed(writing),
      ...openQuestions(writing),
      ...workingAppendix(writing),
      ...sourcesList(writing),
      ...closing(writing),
    ],
  };
}

function sided({ side, finding }: Finding): Runs {
  const words = SIDE_WORDS[side];
  return [...strong(words === '' ? '' : `${sentenceCase(words)}: `), { text: finding }];
}

function oneLine({ file, createdAt }: Writing): string {
  const { athlete } = file;
  const age = athlete.birthDate === null ? 'age not recorded' : `${ageOn(athlete.birthDate, createdAt)} years old`;
  const active = file.injuries.filter((injury) => injury.status !== 'resolved');
  const what = active.map((injury) => {
    const count = injury.episodes === null ? 'number of episodes not recorded' : counted(injury.episodes, 'episode');
    return [conditionEntry(injury.condition).label.toLowerCase(), SIDE_WORDS[injury.side], count]
      .filter((word) => word !== '')
      .join(', ');
  });
  const sport = [athlete.sport, athlete.position, athlete.level].filter((word) => word !== '').join(', ');
  const parts = [
    age,
    sport === '' ? 'sport not recorded' : sport,
    athlete.dominantSide === null ? 'dominant side not recorded' : `dominant side ${athlete.dominantSide}`,
    what.length === 0 ? 'no injury recorded as current' : what.join('; '),
  ];
  return `${sentenceCase(parts.join('; '))}.`;
}

function tried(injuries: Writing['file']['injuries']): string {
  const limits = injuries.filter((injury) => injury.restrictions !== '').map((injury) => injury.restrictions);
  return limits.length === 0
    ? 'Not recorded.'
    : `Limits in force: ${limits.join(' ')} Other treatment is not recorded.`;
}

/** Blank until a person signs: the program fills in nothing. */
const signatureBox: Block = figure({
  alt: 'Signature box, blank: name, role, registration number, telephone, date and signature are to be written by hand.',
  caption: null,
  draw: (width, metrics) => {
    const height = 66;
    const fields = ['Name, role', 'Registration, telephone', 'Date', 'Signature'];
    return {
      height,
      marks: [
        rect(0, 0, width, height, null, 'muted'),
        ...fields.flatMap((field, i) => {
          const x = (i % 2) * (width / 2) + 8;
          const y = Math.floor(i / 2) * 31 + 23;
          return [
            line(x, y, x + width / 2 - 16, y, 0.5, 'muted'),
            label(field, x, y + 9, { size: 7.5, ink: 'muted' }, metrics),
          ];
        }),
      ],
    };
  },
});
