import { stopWords } from '../../shared/assess/stopWords.ts';
import { lowerFirst } from '../../shared/format/letterCase.ts';
import { regionGroup } from '../../shared/knowledge/regions.ts';
import type { BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import { itemOf } from '../../shared/knowledge/screening/index.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import type { ScreeningResult } from '../../shared/model/screening.ts';
import { assessmentOf } from '../case/assessmentOf.ts';

export interface RunStop {
  readonly words: string;
  /** The item that calls for it; null for something else on file. */
  readonly itemId: string | null;
}

/**
 * Why this athlete is to stop and be seen: any pain and any positive clearing test of the session, whatever its
 * number, and every other notice that the case holds.
 */
export function runStops(file: CaseFile, sessionId: string): readonly RunStop[] {
  const { stops } = assessmentOf(file);
  const session = file.screeningSessions.find(({ id }) => id === sessionId);
  const results = file.screeningResults.filter((result) => result.sessionId === sessionId);
  const own = results.flatMap((result): RunStop[] => {
    const judged = stops.filter(({ about }) => about.includes(result.id));
    const { itemId } = result;
    if (judged.length > 0) return judged.map(({ words }) => ({ words, itemId }));
    const words = wordsOf(result, session === undefined ? null : itemOf(session, result.itemId));
    return words === null ? [] : [{ words: stopWords(words), itemId }];
  });
  const ids = results.map(({ id }) => id);
  const others = stops.filter(({ about }) => !ids.some((id) => about.includes(id)));
  const all = [...own, ...others.map(({ words }) => ({ words, itemId: null }))];
  return all.filter(({ words }, i) => all.findIndex((one) => one.words === words) === i);
}

function wordsOf({ itemId, side, painNrs, isPositive }: ScreeningResult, item: BatteryItem | null): string | null {
  const where = `${item === null ? itemId : lowerFirst(item.label)}${side === 'none' ? '' : `, ${side}`}`;
  if (painNrs !== null && painNrs > 0) return `pain ${painNrs} of 10 in ${where}`;
  if (isPositive === true) return `${where} brings on pain${item === null ? '' : ` (${regionGroup(item.region)})`}`;
  return null;
}
