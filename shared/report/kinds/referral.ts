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
import { pageBreak } from '../blocks/pageBreak.ts';
import { paragraph } from '../blocks/paragraph.ts';
import type { Athlete } from '../../model/athlete.ts';
import type { CaseRecord } from '../../model/case.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { label, line, rect } from '../figures/drawing.ts';
import { howMadeInShort, sourcesList } from '../parts/closing.ts';
import { notAssessed, openQuestions } from '../parts/limits.ts';
import { conditionWords, injuryLine } from '../parts/opening.ts';
import { jumps, screening } from '../parts/results.ts';
import { datedEvents, examination, imaging, nervesAndVessels, questionnaires, redFlags } from '../parts/shoulder.ts';
import { sentenceCase, type Writing } from '../parts/writing.ts';
import { dotted, quiet, type Runs, strong } from '../runs.ts';
import { SIDE_WORDS, URGENCY_WORDS } from '../words.ts';

/** A letter the next clinician can act on in two pages, and the data on the pages after; a draft until it is called final. */
export function composeReferral(writing: Writing): Composition {
  const { file, assessment, createdAt } = writing;
  const { athlete, case: record } = file;
  const missing = writing.isFinal ? [] : referralEssentials(file);
  // A stop says already what its referral found.
  const asks = assessment.stops.length > 0 ? ['caution'] : ['referral', 'caution'];
  const seen = assessment.findings.filter((finding) => asks.includes(finding.outcome));
  const events = datedEvents(writing);
  return {
    title: `Referral letter: ${athlete.name}`,
    kindWords: 'referral letter',
    draft: !writing.isFinal,
    blocks: [
      heading(1, `Referral letter: ${athlete.name}`),
      paragraph(quiet(dotted(...whoWords(writing), `case ${record.number}`, formatDate(createdAt)))),
      ...(record.isInvented ? [paragraph(strong('Invented data. No real person is described on these pages.'))] : []),
      ...(missing.length === 0 ? [] : [beside('Draft: still missing', [paragraph(missing.join(' '))])]),
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
      beside('To', [
        paragraph(
          dotted(
            record.addressee === '' ? 'Addressee not recorded.' : record.addressee,
            record.copiesTo === '' ? null : `Copies: ${record.copiesTo}`,
          ),
        ),
      ]),
      beside('In one line', [paragraph(oneLine(writing))]),
      heading(2, 'History'),
      beside('Events', [
        file.injuries.length === 0
          ? paragraph('No injury is recorded.')
          : list([...file.injuries.map(injuryLine), ...events]),
      ]),
      ...file.injuries
        .filter((injury) => injury.mechanism !== '')
        .map((injury) => beside(`Cause: ${conditionWords(injury).toLowerCase()}`, [paragraph(injury.mechanism)])),
      beside('Tried so far', [paragraph(tried(file))]),
      beside('Imaging', imaging(writing)),
      beside('Medicines, allergies', [
        paragraph(`Medicines: ${orNone(athlete.medicines)} Allergies: ${orNone(athlete.allergies)}`),
      ]),
      ...(athlete.otherHistory === '' ? [] : [beside('Other history', [paragraph(athlete.otherHistory)])]),
      heading(2, 'Examination'),
      ...(assessment.stops.length > 0
        ? [beside('Stop and be seen', [list(assessment.stops.map((stop) => strong(stop.words)))])]
        : []),
      ...(seen.length > 0 ? [beside('Needs attention', [list(seen.map(sided))])] : []),
      beside('By a clinician', examination(writing)),
      beside('Nerves and vessels', nervesAndVessels(writing)),
      beside('Red flags', redFlags(writing)),
      beside('Health questions', [paragraph(healthWords(athlete))]),
      ...questionnaires(writing),
      beside('Effect on life and sport', [paragraph(orNone(record.effects === '' ? athlete.goals : record.effects))]),
      beside('Told and wanted', [paragraph(orNone(record.toldAndWanted))]),
      beside('Consent', [paragraph(consentWords(record))]),
      beside('From', [
        paragraph(
          record.practitioner === ''
            ? 'Practitioner not recorded.'
            : dotted(record.practitioner, record.practitionerRole, record.practitionerContact),
        ),
      ]),
      paragraph(quiet('Screening is not diagnosis; what was not assessed is listed with the data on the next page.')),
      signatureBox,
      pageBreak,
      ...screening(writing),
      ...jumps(writing),
      ...notAssessed(writing),
      ...openQuestions(writing),
      ...sourcesList(writing),
      ...howMadeInShort(writing),
    ],
  };
}

function whoWords({ file: { athlete }, isWithoutNames }: Writing): string[] {
  if (isWithoutNames) return ['name and birth date left out'];
  return [
    athlete.birthDate === null ? 'birth date not recorded' : `born ${formatDate(athlete.birthDate)}`,
    athlete.identifier,
    athlete.accessNeeds,
  ];
}

function orNone(text: string): string {
  return text === '' ? 'Not recorded.' : text;
}

function healthWords({ hasRedFlags, redFlagsClearedBy }: Athlete): string {
  if (hasRedFlags === null) return 'Not asked or not recorded.';
  if (!hasRedFlags) return 'Asked; none answered yes.';
  return `A question was answered yes. ${redFlagsClearedBy === '' ? 'Not cleared.' : `Cleared by ${redFlagsClearedBy}.`}`;
}

function consentWords({ consentToReferral, consentToReferralOn }: CaseRecord): string {
  if (consentToReferral === null) return 'Consent to this letter is not recorded.';
  const on = consentToReferralOn === null ? '' : ` ${formatDate(consentToReferralOn)}`;
  return consentToReferral ? `Consent to this letter recorded${on}.` : `Consent to this letter was not given${on}.`;
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

function tried({ case: record, injuries }: Writing['file']): string {
  const limits = injuries.filter((injury) => injury.restrictions !== '').map((injury) => injury.restrictions);
  const inForce = limits.length === 0 ? '' : ` Limits in force: ${limits.join(' ')}`;
  return `${record.triedSoFar === '' ? 'Treatment to date is not recorded.' : record.triedSoFar}${inForce}`;
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
