import { conditionEntry } from '../../knowledge/conditions/index.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { plain, strong } from '../runs.ts';
import { SIDE_WORDS } from '../words.ts';
import { stopReason } from '../../assess/stopWords.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import { asOf } from '../../assess/asOf.ts';
import { liftedBy } from '../../rules/effects/liftedBy.ts';
import { ANCHORS, type Writing } from './writing.ts';

/** What matters before anything else: stops, and limits in force. */
export function safetyFirst({ file, assessment }: Writing): Block[] {
  const { athlete, injuries } = file;
  const blocks: Block[] = [heading(2, 'Safety first', ANCHORS.safety)];
  if (assessment.stops.length > 0) {
    blocks.push(
      beside('Stop and be seen', [list(assessment.stops.map((stop) => strong(sentenceCase(stopReason(stop.words)))))]),
    );
  } else {
    blocks.push(beside('Stop and be seen', [paragraph('Nothing recorded says stop. That is not a clearance.')]));
  }
  blocks.push(beside('Health questions', [paragraph(redFlags(athlete.hasRedFlags, athlete.redFlagsClearedBy))]));
  for (const injury of injuries.filter((injury) => liftedBy(injury, asOf(file)) === null)) {
    const entry = conditionEntry(injury.condition);
    const usual = entry.limits === '' ? [] : [paragraph([...strong('Usual limits: '), ...plain(entry.limits)])];
    const set =
      injury.restrictions === ''
        ? [paragraph('No limits were written down for it.')]
        : [paragraph([...strong('Limits in force: '), ...plain(injury.restrictions)])];
    blocks.push(
      beside([entry.label, SIDE_WORDS[injury.side]].filter((word) => word !== '').join(', '), [
        ...set,
        ...usual,
        paragraph(`Lifted only by ${entry.clears}.`),
      ]),
    );
  }
  return blocks;
}

function redFlags(hasRedFlags: boolean | null, clearedBy: string): string {
  if (hasRedFlags === null)
    return 'The questions before taking part (heart, fainting, chest pain) were not asked or not recorded.';
  if (!hasRedFlags) return 'The questions before taking part were asked; none was answered yes.';
  const cleared = clearedBy === '' ? 'Nobody is recorded as having cleared it.' : `Cleared by ${clearedBy}.`;
  return `A question before taking part was answered yes. ${cleared}`;
}
