import type { Fact, Finding, TestResult } from '../../assess/assessment.ts';
import { standingOf } from '../../assess/standing.ts';
import { BASIS_WORDS, OUTCOME_WORDS } from '../../assess/words.ts';
import { addDays, counted, formatDate, formatQuantity, type Quantified, withUnit } from '../../format/number.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { movementById } from '../../knowledge/movements/index.ts';
import type { MovementTrial, TrialEvent } from '../../model/trial.ts';
import { isKnown } from '../../quantity.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { figure } from '../blocks/figure.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { drawBandStrip } from '../figures/bandStrip.ts';
import { drawPhaseRibbon } from '../figures/phaseRibbon.ts';
import { plain, quiet, quantityRuns, type Runs, strong, textOf } from '../runs.ts';
import { DECISION_WORDS, SIDE_WORDS } from '../words.ts';
import { adviceOf } from './firstSteps.ts';
import { cite, sentenceCase, type Writing } from './writing.ts';

/** What was found in each filmed trial, phase by phase in the order of the movement. */
export function trialFindings(writing: Writing): Block[] {
  const trials = [...writing.file.movementTrials].sort((a, b) =>
    a.filmedOn < b.filmedOn ? -1 : a.filmedOn > b.filmedOn ? 1 : 0,
  );
  return trials.flatMap((trial) => oneTrial(writing, trial));
}

function oneTrial(writing: Writing, trial: MovementTrial): Block[] {
  const movement = movementById(trial.movementId);
  const own = writing.assessment.findings.filter((finding) => finding.trialId === trial.id);
  const named = movement?.label ?? trial.movementId;
  const blocks: Block[] = [heading(2, `What was found: ${named.toLowerCase()}`), paragraph(quiet(trialLine(trial)))];
  const events = writing.file.trialEvents.filter((event) => event.trialId === trial.id);
  if (movement !== null && events.length > 1) {
    blocks.push(
      figure({
        alt: `Time axis of the trial with ${events.length} events: ${movement.phases.map((phase) => phase.label.toLowerCase()).join(', ')}.`,
        caption: `Phases and events on one time axis, in seconds from the first frame. ${eventUncertainty(events)}`,
        draw: (width, metrics) => drawPhaseRibbon(movement, events, width, metrics),
      }),
    );
  }
  const phases = movement?.phases ?? [];
  for (const phase of phases) {
    blocks.push(heading(3, phase.label), paragraph(quiet(phase.means)));
    blocks.push(
      ...findingBlocks(
        writing,
        own.filter((finding) => finding.phase === phase.id),
      ),
    );
  }
  const rest = own.filter((finding) => !phases.some((phase) => phase.id === finding.phase));
  if (rest.length > 0) blocks.push(heading(3, 'The whole movement'), ...findingBlocks(writing, rest));
  return blocks;
}

function eventUncertainty(events: readonly TrialEvent[]): string {
  const known = events.flatMap(({ uS }) => (uS === null ? [] : [uS]));
  if (known.length === 0) return 'No uncertainty was recorded for the events.';
  const largest = Math.max(...known);
  const words = formatQuantity({ value: largest, unit: 's', u: largest });
  return `Standard uncertainty of an event: ${known.length < events.length ? 'where recorded, ' : ''}at most ${withUnit(words.u ?? '', 's')}.`;
}

function trialLine(trial: MovementTrial): string {
  return [
    trial.label,
    `filmed ${formatDate(trial.filmedOn)}`,
    trial.side === 'none' ? '' : `${trial.side} side`,
    trial.captureRateHz === null ? 'capture rate not recorded' : `${trial.captureRateHz} frames a second`,
    trial.painNrs === null ? 'pain not recorded' : `pain ${trial.painNrs} of 10`,
  ]
    .filter((part) => part !== '')
    .join(' · ');
}

/** Findings that belong to no trial: screening, jumps, the plan. */
export function profileFindings(writing: Writing): Block[] {
  const own = writing.assessment.findings.filter(
    (finding) => !writing.file.movementTrials.some((trial) => trial.id === finding.trialId),
  );
  if (own.length === 0) return [];
  return [heading(2, 'What was found: tests and profile'), ...findingBlocks(writing, own)];
}

/** Judged findings in full; what could not be judged in one line, since a section of its own lists what it would need. */
function findingBlocks(writing: Writing, findings: readonly Finding[]): Block[] {
  const judged = findings.filter((finding) => finding.outcome !== 'not-assessed');
  const open = findings.length - judged.length;
  const blocks: Block[] = judged.map((finding) => oneFinding(writing, finding));
  if (open > 0) {
    const also = judged.length > 0 ? 'Not assessed here as well' : 'Not assessed here';
    blocks.push(
      beside(quiet('Not assessed'), [
        paragraph(quiet(`${also}: ${counted(open, 'point')}, listed under “What was not assessed”.`)),
      ]),
    );
  }
  if (findings.length === 0)
    blocks.push(paragraph(quiet('No rule of this program looks at this phase yet, or nothing was recorded for it.')));
  return blocks;
}

function oneFinding(writing: Writing, finding: Finding): Block {
  const standing = standingOf(finding, writing.file.findingDecisions);
  const decision = standing.state === 'decided' ? standing.decision : null;
  const side = SIDE_WORDS[finding.side];
  const label: Runs = [
    { text: OUTCOME_WORDS[finding.outcome] },
    ...(side === '' ? [] : [{ text: `\n${side}`, emphasis: 'italic' as const }]),
  ];
  const body: Block[] = [paragraph(finding.finding, { keepWithNext: true })];
  for (const test of finding.tests) body.push(...measureBlocks(writing, test, finding));
  if (decision?.decision === 'set-aside') {
    const reason = decision.reason === '' ? 'no reason recorded.' : decision.reason;
    body.push(paragraph([...strong('Set aside by the practitioner: '), ...plain(reason)]));
  } else {
    body.push(...adviceBlocks(finding, adviceOf(writing, finding)));
    if (decision !== null) body.push(paragraph(quiet(`${sentenceCase(DECISION_WORDS[decision.decision])}.`)));
  }
  if (standing.state === 'to decide') body.push(paragraph(quiet('Not yet decided on by the practitioner.')));
  if (standing.state === 'changed since') {
    body.push(paragraph(quiet('Decided on before it read as it does now; to be decided again.')));
  }
  body.push(paragraph(grounds(writing, finding), { style: 'quiet' }));
  return beside(label, body);
}

function adviceBlocks(finding: Finding, advice: string | null): Block[] {
  const blocks: Block[] = [];
  if (finding.withheld !== null) {
    const because = [
      ...new Set(finding.withheld.because.map((effect) => conditionEntry(effect.condition).label.toLowerCase())),
    ];
    const clears = [...new Set(finding.withheld.because.map((effect) => effect.clears))];
    blocks.push(
      paragraph([
        ...strong('Held back: '),
        ...plain(`what is usually suggested here, because of ${because.join(' and ') || 'the history on file'}.`),
        ...plain(clears.length === 0 ? '' : ` Cleared only by ${clears.join('; ')}.`),
      ]),
    );
  }
  if (advice !== null) {
    const head = finding.outcome === 'replaced' ? 'Instead: ' : 'What to work on: ';
    blocks.push(paragraph([...strong(head), ...plain(advice)]));
    if (finding.adjustments.length > 0) {
      blocks.push(
        paragraph(strong('Adjusted because of the history:'), { keepWithNext: true }),
        list(finding.adjustments),
      );
    }
  }
  if (finding.retest !== null) {
    const { label, afterDays } = finding.retest;
    const when = finding.takenOn === null ? '' : `, on or after ${formatDate(addDays(finding.takenOn, afterDays))}`;
    blocks.push(
      paragraph([...strong('Test again: '), ...plain(`${lower(label)} after ${counted(afterDays, 'day')}${when}.`)]),
    );
  }
  return blocks;
}

/** The value against its threshold, and a strip that shows it where both are numbers. */
function measureBlocks(writing: Writing, test: TestResult, finding: Finding): Block[] {
  const fact = writing.assessment.facts.find((one) => one.key === test.factKey) ?? null;
  const known = fact === null ? null : knownNumber(fact);
  const words = paragraph([...strong(`${test.label}: `), ...plain(test.words)], { keepWithNext: true });
  if (fact === null || known === null || test.unit === null) return [words];
  const ground = groundOf(test, writing.file.athlete.referenceSex);
  if (ground === null) return [words];
  const { unit } = test;
  const means = GROUND_WORDS[finding.kind];
  return [
    words,
    figure({
      alt: `${test.label}: ${textOf(quantityRuns(known, fact.displayUnit ?? unit))}. ${test.words}`,
      caption: null,
      draw: (width, metrics) =>
        drawBandStrip({ quantity: known, displayUnit: fact.displayUnit ?? unit, ground, unit, means }, width, metrics),
    }),
  ];
}

/** What it means to lie on the hatched ground. */
const GROUND_WORDS = {
  referral: 'be seen',
  caution: 'take care',
  intervention: 'to work on',
  monitor: 'to watch',
  confirmation: 'as hoped for',
} as const satisfies Record<Finding['kind'], string>;

function knownNumber({ value }: Fact): Quantified | null {
  return value.kind === 'number' && isKnown(value.reading) ? value.reading : null;
}

/** Where on its axis a test holds. Null for a yes or no, a grade, `outside`, or a threshold by a sex that is not given. */
function groundOf(
  { comparator, threshold }: TestResult,
  sex: Writing['file']['athlete']['referenceSex'],
): readonly [number | null, number | null] | null {
  if (comparator === 'between' && Array.isArray(threshold)) return [threshold[0], threshold[1]];
  const edge =
    typeof threshold === 'number'
      ? threshold
      : typeof threshold === 'object' && 'female' in threshold && (sex === 'female' || sex === 'male')
        ? threshold[sex]
        : null;
  if (edge === null) return null;
  if (comparator === '<' || comparator === '<=') return [null, edge];
  if (comparator === '>' || comparator === '>=') return [edge, null];
  return null;
}

function grounds(writing: Writing, finding: Finding): Runs {
  const defers = finding.defersTo.length === 0 ? '' : ` In the end ${finding.defersTo.join(', ')} decides.`;
  return [
    { text: `Evidence: ${finding.evidence}; ${BASIS_WORDS[finding.basis]} ` },
    ...cite(writing, finding.sources),
    { text: `.${defers}` },
  ];
}

function lower(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}
