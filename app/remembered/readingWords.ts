import type { Answer } from '../../shared/contract/channels.ts';
import { ROSTER_FIELD_WORDS } from '../../shared/exchange/roster.ts';

type Kept = Answer<'mapping.list'>['mappings'][number];

/** More heads than this help nobody to recognise a file. */
const MOST_HEADS = 5;

/** By which heads or markers a kind of file is recognised. */
export function headWords({ heads }: Kept): string {
  const shown = heads.slice(0, MOST_HEADS).join(', ');
  return heads.length > MOST_HEADS ? `${shown} and ${heads.length - MOST_HEADS} more` : shown;
}

/** What is kept of how it was read. */
export function readingWords(kept: Kept): string {
  switch (kept.door) {
    case 'roster':
      return kept.mapping
        .map(({ column, field }) => `${column}: ${field === 'ignore' ? 'left out' : ROSTER_FIELD_WORDS[field]}`)
        .join('; ');
    case 'force': {
      const { columns, rateHz, forceUnit } = kept.mapping;
      return [
        columns.length === 0 ? 'columns as recognised' : `columns ${columns.join(' + ')}`,
        rateHz === null ? 'rate from the file' : `${rateHz} samples a second`,
        forceUnit === null ? 'unit from the heads' : `in ${forceUnit}`,
      ].join('; ');
    }
    case 'markers': {
      const { points, forward, up, unit } = kept.mapping;
      const taken = points.filter((point) => point !== null).length;
      return `${taken} of ${points.length} markers taken; ${forward} forward, ${up} up${unit === null ? '' : `, in ${unit}`}`;
    }
  }
}
