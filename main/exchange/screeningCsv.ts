import { DomainError } from '../../shared/errors.ts';
import { NO_RESULT, readResult } from '../../shared/exchange/resultEntry.ts';
import type { Typed } from '../../shared/format/typed.ts';
import type { Battery, BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import { UNSAID } from '../../shared/model/blank.ts';
import type { SideOrNone } from '../../shared/model/parts.ts';
import type { ScreeningResult } from '../../shared/model/screening.ts';
import { parsePain, readResultTable } from './resultTable.ts';
import { personName } from './samePerson.ts';

export type ScreeningRow = Omit<ScreeningResult, 'id' | 'sessionId'>;

const COLUMNS = {
  item: /^(item|test)$/,
  side: /^side$/,
  result: /^(result|value|grade)$/,
  pain: /^pain$/,
  note: /^note$/,
  device: /^device$/,
  position: /^position$/,
  shoes: /^shoes$/,
};

/**
 * Results of one athlete from a table with the columns item (its id or label), side, result and, if wanted, pain and
 * note, device, position and shoes (yes or no). Numbers in the item's display unit, several trials with + between them;
 * grades and answers as on screen.
 * @throws DomainError with line and column at the first fault; then nothing is read
 */
export function readScreeningCsv(text: string, battery: Battery): ScreeningRow[] {
  const table = readResultTable(text, 'A table of screening results', COLUMNS);
  if (table.columns.item === undefined) {
    throw new DomainError('input-missing', 'A table of screening results needs a column called item.', 'item');
  }
  const seen = new Map<string, number>();
  return table.rows.map((row) => {
    const item = table.read(row, 'item', (cell) => named(battery, cell));
    if (item === null) throw new DomainError('input-missing', 'The row names no item.', `line ${row.line}`);
    const side: SideOrNone = table.read(row, 'side', (cell) => sideOf(item, cell)) ?? 'none';
    if (item.hasSides && side === 'none') {
      throw new DomainError('input-missing', `${item.label} needs a side, left or right.`, `line ${row.line}`);
    }
    const { unit } = table.columns.result ?? { unit: null };
    if (unit !== null && item.displayUnit !== null && unit !== item.displayUnit) {
      throw new DomainError(
        'unit-mismatch',
        `${item.label} is taken in ${item.displayUnit}, the column in ${unit}.`,
        `line ${row.line}`,
      );
    }
    const earlier = seen.get(`${item.id} ${side}`);
    if (earlier !== undefined) {
      throw new DomainError(
        'conflict',
        `${item.label} stands in line ${earlier} too. Keep one of the two.`,
        `line ${row.line}`,
      );
    }
    seen.set(`${item.id} ${side}`, row.line);
    return {
      ...UNSAID,
      device: table.read(row, 'device', shortText) ?? '',
      position: table.read(row, 'position', shortText) ?? '',
      shoes: table.read(row, 'shoes', yesOrNo),
      itemId: item.id,
      side,
      ...(table.read(row, 'result', (cell) => readResult(item, cell)) ?? NO_RESULT),
      painNrs: table.read(row, 'pain', parsePain),
      note:
        table.read(row, 'note', (cell) => (cell.length > 10_000 ? { refusal: 'it is too long.' } : { value: cell })) ??
        '',
    };
  });
}

function shortText(cell: string): Typed<string> {
  return cell.length > 300 ? { refusal: 'it is too long.' } : { value: cell };
}

function yesOrNo(cell: string): Typed<boolean> {
  const word = cell.toLowerCase();
  if (['y', 'yes'].includes(word)) return { value: true };
  return ['n', 'no'].includes(word) ? { value: false } : { refusal: 'write yes or no.' };
}

function named(battery: Battery, cell: string): { value: BatteryItem } | { refusal: string } {
  const item = battery.items.find(({ id, label }) => id === cell || personName(label) === personName(cell));
  return item === undefined
    ? { refusal: `the ${battery.label.toLowerCase()} has ${battery.items.map(({ id }) => id).join(', ')}.` }
    : { value: item };
}

function sideOf(item: BatteryItem, cell: string): { value: SideOrNone } | { refusal: string } {
  const word = cell.toLowerCase();
  if (!item.hasSides) return word === 'none' ? { value: 'none' } : { refusal: `${item.label} has no sides.` };
  if (word === 'l' || word === 'left') return { value: 'left' };
  return word === 'r' || word === 'right' ? { value: 'right' } : { refusal: 'write left or right.' };
}
