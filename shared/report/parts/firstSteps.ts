import type { Finding, Outcome } from '../../assess/assessment.ts';
import { standingOf } from '../../assess/standing.ts';
import { counted } from '../../format/number.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { leadingTo, plain, quiet, type Runs } from '../runs.ts';
import { ANCHORS, type Writing } from './writing.ts';

const AT_MOST = 3;
const TO_WORK_ON: readonly Outcome[] = ['intervention', 'modified', 'replaced'];

/** The first few things to work on, in the words that stand; what was held back is named as such only. */
export function firstSteps(writing: Writing): Block[] {
  const { findings } = writing.assessment;
  const steps = findings.flatMap((finding) => {
    const advice = adviceOf(writing, finding);
    return advice === null || finding.kind !== 'intervention' || !TO_WORK_ON.includes(finding.outcome)
      ? []
      : [{ finding, advice }];
  });
  const held = findings.filter((finding) => finding.withheld !== null).length;
  const blocks: Block[] = [heading(2, 'What to work on first')];
  if (writing.assessment.stops.length > 0) {
    blocks.push(
      paragraph([
        ...plain('Being seen comes first: see '),
        ...leadingTo(ANCHORS.safety, '“Safety first”'),
        ...plain('. Until then nothing below replaces it.'),
      ]),
    );
  }
  if (steps.length === 0) blocks.push(paragraph('Nothing to work on follows from what was recorded.'));
  else {
    blocks.push(
      list(
        steps.slice(0, AT_MOST).map(({ finding, advice }): Runs => {
          const again = finding.retest === null ? '' : ` Test again after ${counted(finding.retest.afterDays, 'day')}.`;
          const dose = finding.drill === null || advice !== finding.intervention ? '' : ` ${finding.drill.dose}.`;
          return [...plain(advice), ...plain(dose), ...quiet(again)];
        }),
        { isNumbered: true },
      ),
    );
  }
  if (steps.length > AT_MOST) {
    blocks.push(paragraph(quiet(`${counted(steps.length - AT_MOST, 'more suggestion')} under “What was found”.`)));
  }
  if (held > 0) {
    blocks.push(
      paragraph([
        ...plain(`${counted(held, 'usual suggestion')} held back: see `),
        ...leadingTo(ANCHORS.heldBack, '“What was held back, and who can clear it”'),
        ...plain('.'),
      ]),
    );
  }
  return blocks;
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
