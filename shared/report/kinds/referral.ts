import type { Finding } from '../../assess/assessment.ts';
import { stopReason } from '../../assess/stopWords.ts';
import type { Composition } from '../compose.ts';
import { ageOn } from '../../format/age.ts';
import { lowerFirst, sentenceCase } from '../../format/letterCase.ts';
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
import type { Injury } from '../../model/injury.ts';
import type { Source } from '../../quantity.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { label, line, rect } from '../figures/drawing.ts';
import { howMadeInShort, sourcesList } from '../parts/closing.ts';
import { isOfHealth, notAssessed, openQuestions } from '../parts/limits.ts';
import { athleteWords, injuryLine } from '../parts/opening.ts';
import { jumpsInShort, screening } from '../parts/results.ts';
import { classification, shoulderSources, urgencyByRecord } from '../parts/classification.ts';
import {
  datedEvents,
  examination,
  imaging,
  nervesAndVessels,
  nervesAndVesselsTable,
  provocations,
  questionnaires,
  redFlags,
} from '../parts/shoulder.ts';
import { collectSources, type Writing } from '../parts/writing.ts';
import { dotted, plain, quiet, type Runs, strong } from '../runs.ts';
import { SIDE_WORDS, URGENCY_WORDS } from '../words.ts';

/** A letter the next clinician can act on in two pages, and the data on the pages after; a draft until it is called final. */
export function composeReferral(whole: Writing): Composition {
  const writing = { ...whole, sources: letterSources(whole) };
  const { file, assessment, createdAt } = writing;
  const { athlete, case: record, injuries } = file;
  const missing = writing.isFinal ? [] : referralEssentials(file);
  const seen = shownFindings(writing);
  const title = `Referral letter: ${athleteWords(athlete)}`;
  return {
    title,
    kindWords: 'referral letter',
    draft: !writing.isFinal,
    blocks: [
      heading(1, title),
      paragraph(quiet(dotted(...whoWords(writing), `case ${record.number}`, formatDate(createdAt)))),
      ...(record.isInvented ? [paragraph(strong('Invented data. No real person is described on these pages.'))] : []),
      beside('Urgency', [
        paragraph(
          record.urgency === null
            ? 'Urgency not stated.'
            : [
                ...strong(`${URGENCY_WORDS[record.urgency]}. `),
                { text: record.urgencyReason === '' ? 'No reason was given.' : record.urgencyReason },
              ],
        ),
        ...inSmall(urgencyByRecord(writing)),
      ]),
      beside('Question', [
        paragraph(record.question === '' ? 'No question was written down.' : strong(record.question)),
      ]),
      ...inSmall([
        beside('To', [
          paragraph(
            dotted(
              record.addressee === '' ? 'Addressee not recorded.' : record.addressee,
              record.copiesTo === '' ? null : `Copies: ${record.copiesTo}`,
            ),
          ),
        ]),
        beside('In one line', [paragraph(oneLine(writing))]),
        ...classification(writing),
        ...(assessment.stops.length > 0
          ? [
              beside('Stop and be seen', [
                list(assessment.stops.map((stop) => strong(sentenceCase(stopReason(stop.words))))),
              ]),
            ]
          : []),
        heading(2, 'History'),
        beside('Events', [
          injuries.length === 0
            ? paragraph('No injury is recorded.')
            : list(injuries.flatMap((injury) => eventsOf(writing, injury))),
        ]),
        beside('Tried so far', [paragraph(tried(file))]),
        beside('Imaging', imaging(writing)),
        beside('Medical history', [
          paragraph(
            [
              `Medicines: ${sentence(athlete.medicines)}`,
              `Allergies: ${sentence(athlete.allergies)}`,
              ...(athlete.otherHistory === '' ? [] : [athlete.otherHistory]),
            ].join(' '),
          ),
        ]),
        heading(2, 'Examination'),
        ...(seen.length > 0 ? [beside('Needs attention', [list(seen.map(sided))])] : []),
        beside('By a clinician', examination(writing)),
        ...provocations(writing),
        beside('Nerves and vessels', nervesAndVessels(writing)),
        beside('Red flags', [
          ...redFlags(writing),
          paragraph([...strong('Health questions: '), ...plain(healthWords(athlete))]),
        ]),
        ...questionnaires(writing),
        beside('Effect on life and sport', [
          paragraph(sentence(record.effects === '' ? athlete.goals : record.effects)),
        ]),
        beside('Told and wanted', [paragraph(sentence(record.toldAndWanted))]),
        beside('From', [
          paragraph(
            dotted(
              record.practitioner === '' ? 'practitioner not recorded' : record.practitioner,
              record.practitionerRole,
              record.practitionerContact === '' ? 'contact not recorded' : record.practitionerContact,
              consentWords(record),
            ),
            WITH_SIGNATURE,
          ),
        ]),
        ...(missing.length === 0
          ? []
          : [beside('Draft: still missing', [paragraph(missing.join(' '), WITH_SIGNATURE)])]),
      ]),
      signatureBox,
      pageBreak,
      ...nervesAndVesselsTable(writing),
      ...screening(writing),
      ...jumpsInShort(writing),
      ...notAssessed(writing, isOfHealth),
      ...openQuestions(writing),
      ...sourcesList(writing),
      ...howMadeInShort(writing),
    ],
  };
}

/** A stop says already what its referral found. */
function shownFindings({ assessment }: Writing): Finding[] {
  const asks = assessment.stops.length > 0 ? ['caution'] : ['referral', 'caution'];
  return assessment.findings.filter((finding) => asks.includes(finding.outcome));
}

/** What these pages lean on, and no more: a letter does not print what the study does. */
function letterSources(writing: Writing): Source[] {
  const { file, assessment } = writing;
  const screened = new Set(file.screeningResults.map(({ id }) => id));
  const found = collectSources(
    { findings: shownFindings(writing), checks: assessment.checks },
    assessment.facts.filter(({ from }) => screened.has(from.id)),
  );
  const all = [...shoulderSources(writing), ...found];
  return [...new Map(all.map((source) => [source.cite, source])).values()];
}

/** In the size of tables: with every answer written out a full record still has to stand on two pages. */
function inSmall(blocks: readonly Block[]): Block[] {
  return blocks.map((block) => {
    if (block.block === 'beside') return { ...block, body: inSmall(block.body), gap: 5 };
    const isBody = (block.block === 'paragraph' || block.block === 'list') && block.style === 'body';
    return isBody ? { ...block, style: 'small' } : block;
  });
}

/** An injury with what caused it, then each dated event. */
function eventsOf(writing: Writing, injury: Injury): string[] {
  const cause = injury.mechanism === '' ? '' : ` Cause: ${sentence(lowerFirst(injury.mechanism))}`;
  return [`${injuryLine(injury)}${cause}`, ...datedEvents(writing, injury)];
}

function whoWords({ file: { athlete }, isWithoutNames }: Writing): string[] {
  if (isWithoutNames) return ['name and birth date left out'];
  return [
    athlete.birthDate === null ? 'birth date not recorded' : `born ${formatDate(athlete.birthDate)}`,
    athlete.identifier,
    athlete.accessNeeds,
  ];
}

/** What was typed, ending like a sentence. */
function sentence(text: string): string {
  if (text === '') return 'Not recorded.';
  return /[.!?]$/.test(text) ? text : `${text}.`;
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

/** Who signs stands on the page that is signed. */
const WITH_SIGNATURE = { keepWithNext: true } as const;

/** Blank until a person signs: the program fills in nothing. */
const signatureBox: Block = figure({
  alt: 'Signature box, blank: name, role, registration number, telephone, date and signature are to be written by hand.',
  caption: null,
  draw: (width, metrics) => {
    const height = 56;
    const fields = ['Name, role', 'Registration, telephone', 'Date', 'Signature'];
    return {
      height,
      marks: [
        rect(0, 0, width, height, null, 'muted'),
        ...fields.flatMap((field, i) => {
          const x = (i % 2) * (width / 2) + 8;
          const y = Math.floor(i / 2) * 26 + 19;
          return [
            line(x, y, x + width / 2 - 16, y, 0.5, 'muted'),
            label(field, x, y + 9, { size: 7.5, ink: 'muted' }, metrics),
          ];
        }),
      ],
    };
  },
});
