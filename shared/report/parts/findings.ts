import type { Fact, Finding, TestResult } from '../../assess/assessment.ts';
import { GROUND_WORDS, groundOf } from '../../assess/groundOf.ts';
import { groupFindings, type TrialFindings } from '../../assess/groupFindings.ts';
import { standingOf } from '../../assess/standing.ts';
import { BASIS_WORDS, doseWords, OUTCOME_WORDS } from '../../assess/words.ts';
import { lowerFirst, sentenceCase } from '../../format/letterCase.ts';
import { addDays, counted, formatDate, formatQuantity, type Quantified, withUnit } from '../../format/number.ts';
import type { Athlete } from '../../model/athlete.ts';
import type { FindingDecision } from '../../model/outcome.ts';
import type { MovementTrial, TrialEvent } from '../../model/trial.ts';
import { isKnown } from '../../quantity.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { figure } from '../blocks/figure.ts';
import { isOwnRule, OWN_RULE_WORDS } from '../../rules/ownRules.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { drawBandStrip, type Ground } from '../figures/bandStrip.ts';
import { keyPoses } from '../figures/keyPoses.ts';
import { drawPhaseRibbon } from '../figures/phaseRibbon.ts';
import { italicQuiet, leadingTo, plain, quiet, quantityRuns, type Runs, strong, textOf } from '../runs.ts';
import { DECISION_WORDS, SIDE_WORDS } from '../words.ts';
import { adviceOf } from './firstSteps.ts';
import { whyHeldBack } from './limits.ts';
import { stillsOf } from './stills.ts';
import { ANCHORS, cite, type Writing } from './writing.ts';

/** What was found in each filmed trial, phase by phase in the order of the movement. */
export function trialFindings(writing: Writing): Block[] {
  const { trials } = groupFindings(writing.file, writing.assessment.findings);
  return trials.flatMap((group) => oneTrial(writing, group));
}

function oneTrial(writing: Writing, { trial, movement, phases, whole }: TrialFindings): Block[] {
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
  const tracks = writing.file.landmarkTracks.filter((track) => track.trialId === trial.id);
  const poses = movement === null ? null : keyPoses(trial, tracks, events, movement);
  if (poses !== null) blocks.push(poses);
  blocks.push(...stillsOf(writing, trial, null, movement));
  for (const { phase, findings } of phases) {
    const blocksHere = findingBlocks(writing, findings);
    blocks.push(
      heading(3, phase.label),
      paragraph([...quiet(`${phase.means} `), ...openWords(findings)]),
      ...stillsOf(writing, trial, phase, movement),
      ...blocksHere,
    );
  }
  if (whole.length > 0) {
    blocks.push(heading(3, 'The whole movement'), ...openParagraph(whole), ...findingBlocks(writing, whole));
  }
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

/** Findings that belong to no filmed movement: screening, jumps, the plan. */
export function profileFindings(writing: Writing): Block[] {
  const own = groupFindings(writing.file, writing.assessment.findings).profile;
  if (own.length === 0) return [];
  return [heading(2, 'What was found: tests and profile'), ...openParagraph(own), ...findingBlocks(writing, own)];
}

function openParagraph(findings: readonly Finding[]): Block[] {
  const words = openWords(findings);
  return words.length === 0 ? [] : [paragraph(words)];
}

/** What could not be judged, in a sentence; a section of its own lists it. */
function openWords(findings: readonly Finding[]): Runs {
  const open = findings.filter((finding) => finding.outcome === 'not-assessed').length;
  if (findings.length === 0) return quiet('No finding: no rule of this program was met by what was recorded here.');
  if (open === 0) return [];
  const all = open === findings.length;
  return [
    ...quiet(all ? 'Nothing could be judged here: see ' : `${counted(open, 'point')} could not be judged: see `),
    ...leadingTo(ANCHORS.notAssessed, '“What was not assessed”'),
    ...quiet('.'),
  ];
}

function findingBlocks(writing: Writing, findings: readonly Finding[]): Block[] {
  return findings
    .filter((finding) => finding.outcome !== 'not-assessed')
    .map((finding) => oneFinding(writing, finding));
}

function oneFinding(writing: Writing, finding: Finding): Block {
  const standing = standingOf(finding, writing.file.findingDecisions);
  const decision = standing.state === 'decided' ? standing.decision : null;
  const side = SIDE_WORDS[finding.side];
  const label: Runs = [
    { text: OUTCOME_WORDS[finding.outcome] },
    ...(side === '' ? [] : [{ text: `\n${side}`, emphasis: 'italic' as const }]),
    ...(standing.state === 'to decide' ? italicQuiet('\nnot yet decided') : []),
  ];
  const body: Block[] = [paragraph(finding.finding, { keepWithNext: true })];
  for (const test of finding.tests) body.push(...measureBlocks(writing, test, finding));
  if (decision?.decision === 'set-aside') {
    const reason = decision.reason === '' ? 'no reason recorded.' : decision.reason;
    body.push(paragraph([...strong('Set aside by the practitioner: '), ...plain(reason)]));
  } else {
    body.push(...adviceBlocks(finding, adviceOf(writing, finding)));
    if (decision !== null) body.push(paragraph(quiet(decisionWords(decision.decision, finding))));
  }
  if (standing.state === 'changed since') {
    body.push(paragraph(quiet('Decided on before it read as it does now; to be decided again.')));
  }
  body.push(paragraph(grounds(writing, finding), { style: 'quiet' }));
  return beside(label, body);
}

/** A rewording of what may not be suggested is kept, not printed: nobody has cleared it. */
function decisionWords(decision: FindingDecision['decision'], finding: Finding): string {
  const words = `${sentenceCase(DECISION_WORDS[decision])}.`;
  const isSilenced = decision === 'reworded' && finding.intervention === null;
  return isSilenced ? `${words} The wording stays in the case: nothing is suggested here until it is cleared.` : words;
}

/** What stands before the suggestion, by what kind of finding it is. */
export function adviceHead({ kind, outcome }: Finding): string {
  if (outcome === 'replaced') return 'Instead: ';
  if (outcome === 'borderline') return 'Only if a re-test agrees: ';
  return ADVICE_HEADS[kind];
}

const ADVICE_HEADS = {
  referral: 'Be seen: ',
  caution: 'Take care: ',
  intervention: 'What to work on: ',
  monitor: 'Watch: ',
  confirmation: 'Keep: ',
} as const satisfies Record<Finding['kind'], string>;

function adviceBlocks(finding: Finding, advice: string | null): Block[] {
  const blocks: Block[] = [];
  const held = whyHeldBack(finding);
  if (held !== null) {
    blocks.push(
      paragraph([
        ...strong('Held back: '),
        ...plain(
          `what is usually suggested here. Reason: ${lowerFirst(held.because)}. Cleared only by ${lowerFirst(held.clears)}.`,
        ),
      ]),
    );
  }
  if (advice !== null) {
    blocks.push(paragraph([...strong(adviceHead(finding)), ...plain(advice)]));
    if (finding.drill !== null && advice === finding.intervention) {
      blocks.push(
        paragraph([
          ...strong('How much: '),
          ...plain(`${doseWords(finding.drill)}. `),
          ...strong('Harder: '),
          ...plain(finding.drill.progression),
        ]),
      );
    }
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
      paragraph([
        ...strong('Test again: '),
        ...plain(`${lowerFirst(label)} after ${counted(afterDays, 'day')}${when}.`),
      ]),
    );
  }
  return blocks;
}

/** The value against its threshold, and a strip that shows it where both are numbers. */
function measureBlocks(writing: Writing, test: TestResult, finding: Finding): Block[] {
  const fact = writing.assessment.facts.find((one) => one.key === test.factKey) ?? null;
  const known = fact === null ? null : knownNumber(fact);
  const words = paragraph([...strong(`${test.label}: `), ...plain(test.words)], { keepWithNext: true });
  // A rating on a scale of words, like pain, has no axis to stand on.
  if (fact === null || known === null || test.unit === null || test.unit === '{score}') return [words];
  const grounds = groundsOf(test, writing.file.athlete.referenceSex);
  if (grounds.length === 0) return [words];
  const strip = {
    quantity: known,
    displayUnit: fact.displayUnit ?? test.unit,
    grounds,
    unit: test.unit,
    means: GROUND_WORDS[finding.kind],
  };
  return [
    words,
    figure({
      alt: `${test.label}: ${textOf(quantityRuns(known, strip.displayUnit))}. ${test.words}`,
      caption: null,
      draw: (width, metrics) => drawBandStrip(strip, width, metrics),
    }),
  ];
}

/** Where on its axis a test holds; `outside` holds on two sides. */
function groundsOf(test: TestResult, sex: Athlete['referenceSex']): readonly Ground[] {
  const { comparator, threshold } = test;
  if (comparator === 'outside' && Array.isArray(threshold))
    return [
      [null, threshold[0]],
      [threshold[1], null],
    ];
  const ground = groundOf(test, sex);
  return ground === null ? [] : [ground];
}

function knownNumber({ value }: Fact): Quantified | null {
  return value.kind === 'number' && isKnown(value.reading) ? value.reading : null;
}

function grounds(writing: Writing, finding: Finding): Runs {
  const defers = finding.defersTo.length === 0 ? '' : ` Decides in the end: ${finding.defersTo.join('; ')}.`;
  return [
    { text: isOwnRule(finding.ruleId) ? `${OWN_RULE_WORDS}. ` : '' },
    // A convention is one by its evidence and by its basis: said once.
    {
      text: `Evidence: ${finding.evidence === finding.basis ? '' : `${finding.evidence}; `}${BASIS_WORDS[finding.basis]} `,
    },
    ...cite(writing, finding.sources),
    { text: `.${defers}` },
  ];
}
