import { EVIDENCE_WORDS } from '../../assess/words.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import type { Source } from '../../quantity.ts';
import { APP_VERSION } from '../../versions.ts';
import { formatDate } from '../../format/number.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { list } from '../blocks/list.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { CAUTIONS, SOURCE_STATUS_WORDS } from '../words.ts';
import { plain, quiet } from '../runs.ts';
import { ANCHORS, type Writing } from './writing.ts';

/** Sources by number, each with how sure we are of it. */
export function sourcesList({ sources }: Writing): Block[] {
  if (sources.length === 0) return [];
  return [
    heading(2, 'Sources'),
    list(
      sources.map((source) => [...plain(`${source.cite.replace(/\.$/, '')}. `), ...quiet(statusOf(source))]),
      { isNumbered: true, style: 'quiet', anchor: ANCHORS.source },
    ),
  ];
}

/** How sure we are of a source, where its own words do not say so already. */
function statusOf({ cite, status }: Source): string {
  return cite.toLowerCase().includes(status) || cite === 'Definition'
    ? ''
    : `${sentenceCase(SOURCE_STATUS_WORDS[status])}.`;
}

/** The standing cautions in full, and what made these pages. */
export function closing(writing: Writing): Block[] {
  return [
    heading(2, 'Standing cautions'),
    list(CAUTIONS),
    heading(2, 'Evidence words'),
    list(Object.values(EVIDENCE_WORDS).map(sentenceCase), { style: 'quiet' }),
    ...howMade(writing),
  ];
}

/** What made these pages: versions, the case by its SHA-256, the report they take the place of. */
export function howMade(writing: Writing): Block[] {
  const { caseSha256, isFinal } = writing;
  return [
    heading(2, 'How these pages were made'),
    beside('Versions', [paragraph(versionWords(writing))]),
    ...(isFinal ? [beside('State', [paragraph(FINAL)])] : []),
    ...changed(writing),
    beside('Case data', [
      paragraph(`SHA-256 of the case: ${caseSha256}.`),
      paragraph('The same case made with the same versions gives the same file, byte for byte.'),
    ]),
  ];
}

/** The same in small type. */
export function howMadeInShort(writing: Writing): Block[] {
  const { caseSha256, isFinal } = writing;
  const words = [versionWords(writing), isFinal ? FINAL : '', `SHA-256 of the case: ${caseSha256}.`];
  return [...changed(writing), paragraph(words.filter((word) => word !== '').join(' '), { style: 'quiet' })];
}

const FINAL = 'Final. A later change to the case makes another report.';

function versionWords({ file, assessment }: Writing): string {
  const batteries = [
    ...new Set(file.screeningSessions.map((one) => `${one.battery?.label ?? one.batteryId} ${one.batteryVersion}`)),
  ];
  const battery = batteries.length === 0 ? '' : `, battery ${batteries.join(', ')}`;
  return `Caseframe ${APP_VERSION}, kernel ${assessment.kernelVersion}, rules ${assessment.rulesVersion}${battery}.`;
}

function changed({ changes }: Writing): Block[] {
  if (changes === null) return [];
  return [
    beside('Changed', [
      paragraph(`Takes the place of the final report of ${formatDate(changes.madeAt)}. Changed since:`),
      list(changes.words),
    ]),
  ];
}
