import type { Finding, Outcome } from '../../assess/assessment.ts';
import { movementOf } from '../../assess/movementOf.ts';
import { standingOf } from '../../assess/standing.ts';
import { addDays, counted, formatDate } from '../../format/number.ts';
import { RESTRICTION } from '../../rules/effects/historyEffects.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { plain, quiet, type Runs, strong } from '../runs.ts';
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
  const shown = steps.slice(0, AT_MOST);
  const head = isStopped ? 'What to work on after that' : (HEADS[shown.length] ?? 'What to work on');
  const none = isStopped ? 'Nothing, until you have been seen.' : 'Nothing to work on follows from what was recorded.';
  return [
    heading(2, head),
    shown.length === 0
      ? paragraph(none)
      : list(
          shown.map(
            ({ finding, words }): Runs => [
              ...strong(`${placeInPlain(finding, writing.file)}. `),
              ...plain(words),
              ...quiet(retestWords(finding)),
            ],
          ),
          { isNumbered: true },
        ),
    ...(steps.length > AT_MOST
      ? [paragraph(quiet(`${counted(steps.length - AT_MOST, 'more thing')} can wait until these go well.`))]
      : []),
  ];
}

const HEADS = [null, 'One thing to work on', 'Two things to work on', 'Three things to work on'] as const;

/** Where a finding stands further on in the report, so that its reason can be found there. */
function placeInPlain({ movement, phase }: Finding, file: Writing['file']): string {
  const label = movementOf(file, movement)?.phases.find(({ id }) => id === phase)?.label;
  return label ?? (movement === 'any' ? 'Your tests' : 'The whole movement');
}

/** The practitioner's own words as they stand; else the athlete's wording with the dose and what the history changed. */
export function forAthlete({ intervention, wording, drill }: Finding, advice: string): string {
  if (advice !== intervention) return advice;
  const { intervention: plainly, adjustments } = wording.athlete;
  const dose = drill === null ? '' : `How much: ${drill.dose}.`;
  // Restrictions on file stand once, under what to leave alone.
  const changes = adjustments.filter((part) => !part.startsWith(RESTRICTION));
  return [plainly ?? advice, dose, ...changes].filter((part) => part !== '').join(' ');
}

function retestWords({ retest, takenOn }: Finding): string {
  if (retest === null) return '';
  const { afterDays } = retest;
  const when =
    takenOn === null ? `after ${counted(afterDays, 'day')}` : `on or after ${formatDate(addDays(takenOn, afterDays))}`;
  return ` We test this again ${when}.`;
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
