import type { Finding } from '../../assess/assessment.ts';
import { quantityText } from '../../format/number.ts';
import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { movementById } from '../../knowledge/movements/index.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { table } from '../blocks/table.ts';
import { plain, quiet } from '../runs.ts';
import { SIDE_WORDS } from '../words.ts';
import { sentenceCase, type Writing } from './writing.ts';

/** What the injuries on file held back: how much, where, why, and who must clear it. Never what it was. */
export function heldBack({ file, assessment }: Writing): Block[] {
  const withheld = assessment.findings.filter((finding) => finding.withheld !== null);
  if (withheld.length === 0) return [];
  const rows = withheld.map((finding) => [
    placeOf(finding, file),
    finding.intervention === null ? 'Held back; nothing is suggested' : 'Held back; something else is suggested',
    (finding.withheld?.because ?? []).map((effect) => conditionEntry(effect.condition).label).join('; '),
    sentenceCase([...new Set((finding.withheld?.because ?? []).map((effect) => effect.clears))].join('; ')),
  ]);
  return [
    heading(2, 'What was held back, and who can clear it'),
    paragraph(
      'Some usual suggestions would load an injury on file. They are not printed as advice. Ask the person named here before doing more.',
    ),
    table(
      'Suggestions held back because of the history',
      ['Where', 'What happened', 'Because of', 'Cleared only by'],
      rows,
    ),
  ];
}

/** What could not be judged and what it would need, each once. */
export function notAssessed({ file, assessment }: Writing): Block[] {
  const open = assessment.findings.filter((finding) => finding.outcome === 'not-assessed');
  if (open.length === 0 && assessment.missing.length === 0) return [];
  const rows = open.map((finding) => [placeOf(finding, file), whatOf(finding), finding.needed ?? 'not stated']);
  const unique = [...new Map(rows.map((row) => [row.join('|'), row])).values()];
  return [
    heading(2, 'What was not assessed'),
    paragraph('A missing value is not a good value. Nothing is concluded from what follows.'),
    ...(assessment.missing.length > 0 ? [beside('Still needed', [list(assessment.missing.map(sentenceCase))])] : []),
    ...(unique.length > 0 ? [table('Points without an answer', ['Where', 'What', 'What it would need'], unique)] : []),
  ];
}

function whatOf(finding: Finding): string {
  const labels = [...new Set(finding.tests.map((test) => test.label))].join(', ');
  return labels === '' ? finding.finding : labels;
}

/** `Handball jump throw, landing, left`. */
function placeOf(finding: Finding, file: Writing['file']): string {
  const movement = movementById(finding.movement);
  const phase =
    movement?.phases.find((one) => one.id === finding.phase)?.label ?? PHASE_WORDS[finding.phase] ?? finding.phase;
  const trial =
    file.movementTrials.length > 1 ? file.movementTrials.find((one) => one.id === finding.trialId) : undefined;
  const parts = [movement?.label ?? '', trial?.label ?? '', phase.toLowerCase(), SIDE_WORDS[finding.side]];
  return sentenceCase(parts.filter((part) => part !== '').join(', '));
}

const PHASE_WORDS: Readonly<Record<string, string>> = {
  whole: 'whole movement',
  profile: 'profile',
  session: 'session',
};

/** Checks that question a number which these pages print, and those that could not be made. */
export function openQuestions({ assessment }: Writing): Block[] {
  const questioned = assessment.checks.filter((check) => check.verdict === 'questioned');
  if (questioned.length === 0) return [];
  return [
    heading(2, 'Questions still open'),
    paragraph('These numbers do not fit together. They are printed as recorded until someone settles the question.'),
    list(
      questioned.map((check) => [
        ...plain(check.sentence),
        ...quiet(
          check.numbers.length === 0
            ? ''
            : ` (${check.numbers.map((n) => `${n.label} ${quantityText({ value: n.value, unit: n.unit, u: null })}`).join('; ')})`,
        ),
      ]),
    ),
  ];
}
