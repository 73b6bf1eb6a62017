import type { Finding } from '../../assess/assessment.ts';
import { NO_RULES } from '../../assess/checkRuled.ts';
import { movementOf, movementsOf } from '../../assess/movementOf.ts';
import { lowerFirst, sentenceCase } from '../../format/letterCase.ts';
import { quantityText } from '../../format/number.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { table } from '../blocks/table.ts';
import { plain, quiet } from '../runs.ts';
import { SIDE_WORDS } from '../words.ts';
import { ANCHORS, cite, type Writing } from './writing.ts';

/** What the history held back: how much, where, why, and who must clear it. Never what it was. */
export function heldBack({ file, assessment }: Writing): Block[] {
  const rows = assessment.findings.flatMap((finding) => {
    const why = whyHeldBack(finding);
    if (why === null) return [];
    const instead = finding.intervention === null ? 'Nothing is suggested' : 'Something else is suggested';
    return [[placeOf(finding, file), instead, why.because, why.clears]];
  });
  if (rows.length === 0) return [];
  return [
    heading(2, 'What was held back, and who can clear it', ANCHORS.heldBack),
    paragraph(
      'Some usual suggestions would load an injury on file, or must wait until someone has been seen. They are not printed as advice. Ask the person named here before doing more.',
    ),
    table('Suggestions held back', ['Where', 'In their place', 'Because of', 'Cleared only by'], rows),
  ];
}

/** Why a usual suggestion is not printed, and who can change that; null: none was held back. */
export function whyHeldBack({ withheld, defersTo }: Finding): { because: string; clears: string } | null {
  if (withheld === null) return null;
  const because = withheld.because.map((effect) => conditionEntry(effect.condition).label);
  const referral =
    withheld.referral === undefined
      ? []
      : [`being seen comes first (${lowerFirst(withheld.referral.replace(/\.$/, ''))})`];
  const clears = withheld.because.map((effect) => effect.clears);
  return {
    because: inOneLine([...because, ...referral]) || 'The history on file',
    clears: inOneLine(clears.length > 0 ? clears : defersTo) || 'A clinician',
  };
}

/** What could not be judged, by where it belongs, with what it would need; of all findings or of some. */
export function notAssessed({ file, assessment }: Writing, isWanted: (finding: Finding) => boolean = isTold): Block[] {
  const open = assessment.findings.filter((finding) => finding.outcome === 'not-assessed' && isWanted(finding));
  const unruled = assessment.checks.filter(({ id }) => id === NO_RULES);
  if (open.length + unruled.length === 0 && assessment.missing.length === 0) return [];
  const rows = unlike(open.toSorted(inOrder(file)).map((finding) => partOf(finding, file))).map((where) => {
    const here = open.filter((finding) => partOf(finding, file) === where);
    return [where, unlike(here.flatMap(openPoints)).join('; ')];
  });
  return [
    heading(2, 'What was not assessed', ANCHORS.notAssessed),
    paragraph('A missing value is not a good value. Nothing is concluded from what follows.'),
    ...(assessment.missing.length > 0 ? [beside('Still needed', [list(assessment.missing.map(sentenceCase))])] : []),
    ...(rows.length > 0
      ? [table('Points without an answer', ['Where', 'Not recorded, or what it needs besides'], rows)]
      : []),
  ];
}

/** Health and safety alone: what a clinician would ask for, without the measures of training. */
export function isOfHealth(finding: Finding): boolean {
  const { kind, phase } = finding;
  const isOfNoMovement = phase === 'profile' || phase === 'session';
  return isTold(finding) && isOfNoMovement && (kind === 'referral' || kind === 'caution' || kind === 'monitor');
}

/** Nobody could have recorded what belongs to a drill that was not planned, or to a birth that was not on file. */
export function isTold({ tests }: Finding): boolean {
  return !tests.some(({ measure, result }) => result === 'undetermined' && NOT_ASKED.test(measure));
}

const NOT_ASKED = /^(drill\.|history\.)/;

/** What is open in a finding; what it needs stands beside it where it is more than being recorded. */
function openPoints({ tests, needed, finding }: Finding): string[] {
  const needs = (needed ?? '').split(/(?<=\.)\s+/).map((need) => need.replace(/\.$/, ''));
  const open = tests
    .filter((test) => test.result === 'undetermined')
    .map(({ label }) => {
      const need = needs.find((one) => one.startsWith(`${label}: `))?.slice(label.length + 2);
      return need === undefined || need === 'not recorded' ? label : `${label} (${need})`;
    });
  return open.length === 0 ? [needed ?? finding] : open;
}

function inOneLine(words: readonly string[]): string {
  return sentenceCase(unlike(words).join('; '));
}

function unlike(words: readonly string[]): string[] {
  return [...new Set(words)];
}

/** `Handball jump throw, Landing`, `Profile`. */
function partOf(finding: Finding, file: Writing['file']): string {
  return [movementOf(file, finding.movement)?.label ?? '', phaseWords(finding, file)]
    .filter((part) => part !== '')
    .join(', ');
}

/** `Handball jump throw, landing, left`; for a test of no movement what was tested. */
function placeOf(finding: Finding, file: Writing['file']): string {
  const movement = movementOf(file, finding.movement);
  const tested = unlike(finding.tests.map((test) => test.label)).join(', ');
  const trial =
    file.movementTrials.length > 1 ? file.movementTrials.find((one) => one.id === finding.trialId) : undefined;
  const where =
    movement === null ? [tested] : [movement.label, trial?.label ?? '', phaseWords(finding, file).toLowerCase()];
  return sentenceCase([...where, SIDE_WORDS[finding.side]].filter((part) => part !== '').join(', '));
}

function phaseWords({ movement, phase }: Finding, file: Writing['file']): string {
  return movementOf(file, movement)?.phases.find((one) => one.id === phase)?.label ?? PHASE_WORDS[phase] ?? phase;
}

const PHASE_WORDS: Readonly<Record<string, string>> = {
  whole: 'Whole movement',
  profile: 'Profile',
  session: 'Tests of the day',
};

/** Movements in the order of the knowledge, phases in the order of their movement, then what belongs to none. */
function inOrder(file: Writing['file']): (a: Finding, b: Finding) => number {
  const movements = movementsOf(file);
  const rankOf = ({ movement, phase }: Finding) => {
    const m = movements.findIndex((one) => one.id === movement);
    const p = movements[m]?.phases.findIndex((one) => one.id === phase) ?? -1;
    return (m < 0 ? movements.length : m) * 100 + (p < 0 ? 99 : p);
  };
  return (a, b) => rankOf(a) - rankOf(b);
}

/** Checks that question a number which these pages print, and those that could not be made. */
export function openQuestions(writing: Writing): Block[] {
  const questioned = writing.assessment.checks.filter((check) => check.verdict === 'questioned');
  if (questioned.length === 0) return [];
  return [
    heading(2, 'Questions still open'),
    paragraph('These numbers do not fit together. They are printed as recorded until someone settles the question.'),
    list(
      questioned.map((check) => [
        ...plain(check.sentence),
        ...(check.source === null ? [] : [...plain(' '), ...cite(writing, [check.source])]),
        ...quiet(
          check.numbers.length === 0
            ? ''
            : ` (${check.numbers.map((n) => `${n.label} ${quantityText({ value: n.value, unit: n.unit, u: null })}`).join('; ')})`,
        ),
      ]),
    ),
  ];
}
