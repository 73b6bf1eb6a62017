import type { Finding, Outcome } from '../../assess/assessment.ts';
import { standingOf } from '../../assess/standing.ts';
import { addDays, counted, formatDate } from '../../format/number.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { plain, quiet, type Runs } from '../runs.ts';
import type { Writing } from './writing.ts';

const AT_MOST = 3;
const TO_WORK_ON: readonly Outcome[] = ['intervention', 'modified', 'replaced'];

/** The first few things to work on, in the words that stand; what was held back is named as such only. */
export function firstSteps(writing: Writing): Block[] {
  const { findings } = writing.assessment;
  const all = findings.flatMap((finding) => {
    const advice = adviceOf(writing, finding);
    return advice === null || finding.kind !== 'intervention' || !TO_WORK_ON.includes(finding.outcome)
      ? []
      : [{ finding, words: forAthlete(finding, advice) }];
  });
  // Both sides of one thing, or two findings with one remedy, are one thing to work on.
  const steps = all.filter(({ words }, i) => all.findIndex((one) => one.words === words) === i);
  const isStopped = writing.assessment.stops.length > 0;
  const [head, none] = isStopped
    ? ['What to work on after that', 'Nothing, until you have been seen.']
    : ['Three things to work on', 'Nothing to work on follows from what was recorded.'];
  return [
    heading(
      2,
      steps.length === 1
        ? head.replace('Three things', 'One thing')
        : steps.length === 2
          ? head.replace('Three', 'Two')
          : head,
    ),
    steps.length === 0
      ? paragraph(none)
      : list(
          steps.slice(0, AT_MOST).map(({ finding, words }): Runs => [...plain(words), ...quiet(retestWords(finding))]),
          { isNumbered: true },
        ),
    ...(steps.length > AT_MOST
      ? [paragraph(quiet(`${counted(steps.length - AT_MOST, 'more thing')} can wait until these go well.`))]
      : []),
  ];
}

/** The practitioner's own words as they stand; else the athlete's wording with the dose and what the history changed. */
export function forAthlete({ intervention, wording, drill }: Finding, advice: string): string {
  if (advice !== intervention) return advice;
  const { intervention: plainly, adjustments } = wording.athlete;
  const dose = drill === null ? '' : `How much: ${drill.dose}.`;
  return [plainly ?? advice, dose, ...adjustments].filter((part) => part !== '').join(' ');
}

function retestWords({ retest, takenOn }: Finding): string {
  if (retest === null) return '';
  const { label, afterDays } = retest;
  const when =
    takenOn === null ? `after ${counted(afterDays, 'day')}` : `on or after ${formatDate(addDays(takenOn, afterDays))}`;
  return ` We test this again ${when}: ${label.charAt(0).toLowerCase()}${label.slice(1)}.`;
}

/**
 * The suggestion that reaches the page for a finding, after the practitioner's decision; null: none does.
 * A rewording counts only while the finding still reads as it did then, and only where something may be suggested.
 */
export function adviceOf({ file }: Writing, finding: Finding): string | null {
  if (finding.intervention === null) return null;
  const { state, decision } = standingOf(finding, file.findingDecisions);
  if (state !== 'decided' || decision === null) return finding.intervention;
  if (decision.decision === 'set-aside') return null;
  return decision.decision === 'reworded' && decision.wording !== '' ? decision.wording : finding.intervention;
}
