import type { BatteryItem } from '../../../shared/knowledge/screening/battery.ts';
import type { ChosenBattery } from './useBatteries.ts';
import { conditionEntry } from '../../../shared/knowledge/conditions/index.ts';
import { errorOfItem } from '../../../shared/knowledge/screening/errorOfItem.ts';
import { UNSAID } from '../../../shared/model/blank.ts';
import type { Injury } from '../../../shared/model/injury.ts';
import type { SideOrNone } from '../../../shared/model/parts.ts';
import type { ScreeningResult, ScreeningSession } from '../../../shared/model/screening.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import { sentenceCase } from '../../../shared/format/letterCase.ts';
import { quantityText } from '../../../shared/format/number.ts';
import { liftedBy } from '../../../shared/rules/effects/liftedBy.ts';
import { convert } from '../../../shared/units.ts';
import { NOTHING_TAKEN, type TakenWith } from './takenWith.ts';
import { newId } from '../newRecord.ts';

export type ResultFields = Pick<ScreeningResult, 'valueSi' | 'grade' | 'isPositive' | 'painNrs' | 'trialsSi'>;

export function resultOf(
  results: readonly ScreeningResult[],
  sessionId: string,
  itemId: string,
  side: SideOrNone,
): ScreeningResult | null {
  return results.find((one) => one.sessionId === sessionId && one.itemId === itemId && one.side === side) ?? null;
}

export function emptySession(
  caseId: string,
  { battery, own }: ChosenBattery,
  rater: string,
  heldOn: string,
): ScreeningSession {
  return {
    id: newId(),
    caseId,
    heldOn,
    rater,
    batteryId: battery.id,
    batteryVersion: battery.version,
    note: '',
    battery: own,
  };
}

export function emptyResult(sessionId: string, itemId: string, side: SideOrNone): ScreeningResult {
  return {
    id: newId(),
    sessionId,
    itemId,
    side,
    valueSi: null,
    grade: null,
    isPositive: null,
    painNrs: null,
    note: '',
    ...UNSAID,
  };
}

/**
 * The edits that put these fields into a result that may not exist yet, or take it away once nothing is left in it.
 * @param taken what a result that is new is said to be taken with
 */
export function resultEdits(
  at: Pick<ScreeningResult, 'sessionId' | 'itemId' | 'side'>,
  result: ScreeningResult | null,
  fields: Partial<ResultFields>,
  taken: TakenWith = NOTHING_TAKEN,
): Edit[] {
  const next = { ...(result ?? { ...emptyResult(at.sessionId, at.itemId, at.side), ...taken }), ...fields };
  if (result === null) return isEmptyResult(next) ? [] : [{ op: 'create', kind: 'screeningResult', record: next }];
  if (isEmptyResult(next)) return [{ op: 'remove', kind: 'screeningResult', id: result.id }];
  return [{ op: 'patch', kind: 'screeningResult', id: result.id, fields }];
}

/** True once nothing is left in it, so that it need not be kept. */
export function isEmptyResult(result: ScreeningResult): boolean {
  const { valueSi, grade, isPositive, painNrs, note } = result;
  return valueSi === null && grade === null && isPositive === null && painNrs === null && note === '';
}

/** Why the item is left out, one sentence for each injury on file that asks for it and is not cleared. */
export function reasonsToSkip(item: BatteryItem, injuries: readonly Injury[], day: string): readonly string[] {
  return injuries
    .filter((injury) => item.skipFor.includes(injury.condition) && liftedBy(injury, day) === null)
    .map(({ condition, side }) => {
      const entry = conditionEntry(condition);
      const sided = side === 'none' ? '' : `, ${side}`;
      return `${entry.label}${sided}, is on file and not cleared. ${sentenceCase(entry.clears)} can clear it.`;
    });
}

export interface SideDifference {
  readonly words: string;
  readonly errorWords: string;
}

/**
 * Left against right of one measured or counted item, with what is known of the error. Two readings of one rater
 * differ by more than the minimal detectable change (1.96 √2 standard errors of measurement) in one case of twenty
 * by error alone; the same figure bounds the difference of two sides.
 */
export function sideDifference(
  item: BatteryItem,
  left: ScreeningResult | null,
  right: ScreeningResult | null,
): SideDifference | null {
  const { unit, displayUnit } = item;
  const [l, r] = [left?.valueSi ?? null, right?.valueSi ?? null];
  if (unit === null || displayUnit === null || l === null || r === null) return null;
  const difference = convert(Math.abs(l - r), unit, displayUnit);
  const say = (value: number) => quantityText({ value, unit: displayUnit, u: null });
  const words = l === r ? 'no difference' : `${l > r ? 'left' : 'right'} larger by ${say(difference)}`;
  const error = errorOfItem(item);
  if (error === null || error.mdc === null) return { words, errorWords: 'no error figure is known for this test' };
  const verdict = difference > error.mdc ? 'more than' : 'within';
  const basis =
    error.source.status === 'published' ? error.source.cite : `${error.source.status}: ${error.source.cite}`;
  return { words, errorWords: `${verdict} the ${say(error.mdc)} that error alone can make (${basis})` };
}
