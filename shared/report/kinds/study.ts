import { movementOf } from '../../assess/movementOf.ts';
import type { Composition } from '../compose.ts';
import { stopReason } from '../../assess/stopWords.ts';
import { doseWords, OUTCOME_WORDS } from '../../assess/words.ts';
import { OUTCOMES } from '../../assess/assessment.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import { addDays, counted, formatDate } from '../../format/number.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { table } from '../blocks/table.ts';
import { uncertaintyBudget } from '../parts/budget.ts';
import { dataAppendix } from '../parts/dataAppendix.ts';
import { adviceOf } from '../parts/firstSteps.ts';
import { closing, sourcesList } from '../parts/closing.ts';
import { profileFindings, trialFindings } from '../parts/findings.ts';
import { limitations } from '../parts/limitations.ts';
import { heldBack, notAssessed, openQuestions } from '../parts/limits.ts';
import { trialMeasures } from '../parts/numbers.ts';
import { titleBlock, whoAndWhy } from '../parts/opening.ts';
import { jumps, screening } from '../parts/results.ts';
import { safetyFirst } from '../parts/safety.ts';
import { timeline } from '../parts/timeline.ts';
import { workingAppendix } from '../parts/working.ts';
import { type Writing } from '../parts/writing.ts';
import { quiet, type Runs } from '../runs.ts';

/** Sections and checklist follow the topics of the CARE case-report checklist (2013), in our words. */
export function composeStudy(writing: Writing): Composition {
  const { file, assessment } = writing;
  const title = `Case report: ${focusOf(writing)}`;
  const interventions = interventionTable(writing);
  const retests = retestTable(writing);
  const results = [...jumps(writing), ...screening(writing)];
  const topics: readonly Topic[] = [
    { name: 'Title', state: 'done', blocks: [] },
    {
      name: 'Key words',
      state: keyWords(writing).length >= 2 ? 'done' : 'in part',
      blocks: [heading(2, 'Key words'), paragraph(keyWords(writing).join(' · ') || NOT_RECORDED)],
    },
    { name: 'Summary', state: 'in part', blocks: [heading(2, 'Summary'), ...summary(writing)] },
    {
      name: 'Background',
      state: 'not done',
      blocks: [heading(2, 'Background'), toWrite('why this case is worth reading, with references')],
    },
    {
      name: 'The athlete and the history',
      state: file.injuries.length > 0 && file.case.question !== '' ? 'done' : 'in part',
      blocks: [...whoAndWhy(writing), beside('Family, social', [paragraph(NOT_RECORDED)]), ...safetyFirst(writing)],
    },
    {
      name: 'Examination findings',
      state: results.length > 0 ? 'done' : 'not done',
      blocks: results.length > 0 ? results : [heading(2, 'Examination'), paragraph(NOT_RECORDED)],
    },
    { name: 'Timeline', state: 'done', blocks: [heading(2, 'Timeline'), ...timeline(writing)] },
    {
      name: 'How it was judged',
      state: assessment.findings.length > 0 ? 'in part' : 'not done',
      blocks: [
        heading(2, 'The movement, measured'),
        ...trialMeasures(writing),
        ...uncertaintyBudget(writing),
        ...trialFindings(writing),
        ...profileFindings(writing),
        ...heldBack(writing),
        ...notAssessed(writing),
        ...openQuestions(writing),
        heading(2, 'Other explanations weighed'),
        toWrite('what else could explain the findings, and why it was or was not preferred'),
      ],
    },
    {
      name: 'What was done',
      state: interventions.length > 0 ? 'in part' : 'not done',
      blocks: [heading(2, 'Interventions'), ...(interventions.length > 0 ? interventions : [paragraph(NOT_RECORDED)])],
    },
    {
      name: 'Follow-up',
      state: 'in part',
      blocks: [
        heading(2, 'Follow-up'),
        ...(retests.length > 0 ? retests : [paragraph('No re-test is planned.')]),
        beside('Outcomes', [paragraph(NOT_RECORDED)]),
      ],
    },
    {
      name: 'Discussion',
      state: 'in part',
      blocks: [
        heading(2, 'Discussion'),
        beside('Limitations', [list(limitations(writing))]),
        beside('Strengths, literature', [toWrite('what the case adds, and the reasons for the conclusions')]),
      ],
    },
    {
      name: 'The athlete’s own view',
      state: file.athlete.goals === '' ? 'not done' : 'in part',
      blocks: [
        heading(2, 'The athlete’s own view'),
        paragraph(file.athlete.goals === '' ? NOT_RECORDED : file.athlete.goals),
      ],
    },
    {
      name: 'Consent',
      state: file.athlete.consentOn === null ? 'not done' : 'done',
      blocks: [heading(2, 'Consent'), paragraph(consent(writing))],
    },
  ];
  return {
    title,
    kindWords: 'case study',
    blocks: [
      ...titleBlock(writing, title),
      ...topics.flatMap((topic) => topic.blocks),
      ...dataAppendix(writing),
      ...workingAppendix(writing),
      ...sourcesList(writing),
      ...checklist(topics),
      ...closing(writing),
    ],
  };
}

interface Topic {
  readonly name: string;
  readonly state: 'done' | 'in part' | 'not done';
  readonly blocks: readonly Block[];
}

const NOT_RECORDED = 'Not recorded.';

function toWrite(what: string): Block {
  return paragraph([{ text: 'Not recorded. ' }, ...quiet(`To be written by the author: ${what}.`)]);
}

function focusOf({ file }: Writing): string {
  const movements = [
    ...new Set(
      file.movementTrials.map((trial) => movementOf(file, trial.movementId)?.label.toLowerCase() ?? trial.movementId),
    ),
  ];
  const focus = movements.length > 0 ? movements.join(' and ') : 'movement assessment';
  const sport = file.athlete.sport === '' ? 'one athlete' : `one athlete in ${file.athlete.sport}`;
  return `${focus} of ${sport}`;
}

function keyWords({ file }: Writing): string[] {
  const words = [
    file.athlete.sport,
    ...file.movementTrials.map((trial) => movementOf(file, trial.movementId)?.label ?? ''),
    ...file.injuries.map((injury) => conditionEntry(injury.condition).label),
    ...(file.jumpTests.length > 0 ? ['jump test'] : []),
    ...(file.screeningSessions.length > 0 ? ['movement screening'] : []),
  ];
  return [...new Set(words.filter((word) => word !== '').map((word) => word.toLowerCase()))].slice(0, 5);
}

function summary(writing: Writing): Block[] {
  const { file, assessment } = writing;
  const counts = OUTCOMES.map((outcome) => ({
    outcome,
    count: assessment.findings.filter((finding) => finding.outcome === outcome).length,
  })).filter(({ count }) => count > 0);
  const found = counts.map(({ outcome, count }) => `${OUTCOME_WORDS[outcome].toLowerCase()} ${count}`).join(', ');
  return [
    beside('Question', [paragraph(file.case.question === '' ? NOT_RECORDED : file.case.question)]),
    beside('Findings by outcome', [paragraph(found === '' ? 'None.' : `${sentenceCase(found)}.`)]),
    ...(assessment.stops.length === 0
      ? []
      : [beside('Stop and be seen', [list(assessment.stops.map((stop) => sentenceCase(stopReason(stop.words))))])]),
    beside('Outcome, lesson', [toWrite('what came of it and what is to be learned')]),
  ];
}

function interventionTable(writing: Writing): Block[] {
  const rows = writing.assessment.findings.flatMap((finding) => {
    const advice = adviceOf(writing, finding);
    if (advice === null) return [];
    const changed = [
      finding.outcome === 'replaced' ? 'Chosen instead of what an injury rules out.' : '',
      ...finding.adjustments,
    ].filter((part) => part !== '');
    const dose = finding.drill === null ? '' : ` ${doseWords(finding.drill)}.`;
    return [[finding.finding, `${advice}${dose}`, changed.join(' '), finding.evidence]];
  });
  return rows.length === 0
    ? []
    : [
        table(
          'What is suggested, and how the history changed it',
          ['Because', 'What', 'Changed by the history', 'Evidence'],
          rows,
        ),
      ];
}

function retestTable({ assessment }: Writing): Block[] {
  const rows = assessment.findings.flatMap((finding): (string | Runs)[][] =>
    finding.retest === null || finding.outcome === 'not-assessed'
      ? []
      : [
          [
            finding.retest.label,
            counted(finding.retest.afterDays, 'day'),
            finding.takenOn === null
              ? 'date of the test not recorded'
              : formatDate(addDays(finding.takenOn, finding.retest.afterDays)),
          ],
        ],
  );
  return rows.length === 0 ? [] : [table('Measures to test again', ['Measure', 'After', 'On or after'], rows)];
}

function consent({ file }: Writing): string {
  const { consentFor, consentOn, consentToImages } = file.athlete;
  const given =
    consentOn === null
      ? 'Consent is not recorded.'
      : `Consent given ${formatDate(consentOn)}${consentFor === '' ? '' : ` for ${consentFor}`}.`;
  const images =
    consentToImages === null
      ? 'Consent to images is not recorded.'
      : consentToImages
        ? 'Images may be used.'
        : 'Images may not be used.';
  return `${given} ${images}`;
}

function checklist(topics: readonly Topic[]): Block[] {
  return [
    heading(2, 'Case-report checklist'),
    paragraph(
      'Topics of the CARE case-report checklist (2013), in our words. “In part” means the section stands, but an author must add to it.',
    ),
    table(
      'Thirteen topics',
      ['Topic', 'State'],
      topics.map((topic, i) => [`${i + 1}. ${topic.name}`, topic.state]),
    ),
  ];
}
