import type { Fact } from '../../assess/assessment.ts';
import { type Progress, progress } from '../../assess/progress.ts';
import { quantityText } from '../../format/number.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { progressLines } from '../figures/progressLines.ts';
import { plain, type Runs, strong } from '../runs.ts';
import { SIDE_WORDS } from '../words.ts';
import type { Writing } from './writing.ts';

/** What was measured before and again, alike; nothing where there is one session only. */
export function progressPart({ assessment }: Writing): Block[] {
  const rows = progress(assessment.facts.filter(isTold));
  const drawn = progressLines(rows);
  if (drawn === null) return [];
  return [heading(2, 'What has changed since last time'), list(rows.map(inPlainWords)), drawn];
}

/** A test stands for its trials, and both sides for what is worked out from them: nothing is told twice. */
function isTold({ measure, from }: Fact): boolean {
  return from.kind !== 'jumpTrial' && !WORKED_OUT.has(measure);
}

const WORKED_OUT: ReadonlySet<string> = new Set([
  'cmj.trialSpread',
  'wblt.diff',
  'hop.lsi',
  'shoulder.irDeficit',
  'shoulder.erGain',
  'shoulder.arcDeficit',
  'shoulder.erIrRatio',
  'shoulder.erSideDeficit',
]);

const VERDICTS = {
  'real change': 'This is a real change.',
  'within noise': 'This is too small to be sure of: two tests of the same person can differ as much.',
  'cannot say': 'We cannot say if this is a real change.',
} as const satisfies Record<Progress['verdict'], string>;

function inPlainWords({ label, side, days, displayUnit, verdict }: Progress): Runs {
  const [before, now] = days.slice(-2).map(({ quantity }) => quantityText(quantity, displayUnit));
  const name = [label, SIDE_WORDS[side]].filter((word) => word !== '').join(', ');
  return [...strong(`${name}: `), ...plain(`${before} before, ${now} now. ${VERDICTS[verdict]}`)];
}
