import type { KeyboardEvent } from 'react';

const CONTROLS = 'input:not([disabled]), select:not([disabled]), button:not([disabled]), textarea:not([disabled])';

/** What the keys do, for printing beside a table that uses them. */
export const CELL_KEYS_WORDS =
  'Enter goes down a row, Shift and Enter up. The arrow keys move between cells of numbers and text; in a list they choose, as its first letters do. Tab goes on in reading order.';

/**
 * Moves the focus from cell to cell of a table. Put on the table as `onKeyDown`. Left and right leave a text box only
 * when the caret stands at that end of it, so that a typed value can still be corrected.
 */
export function moveBetweenCells(event: KeyboardEvent<HTMLElement>): void {
  const control = event.target;
  if (!(control instanceof HTMLElement) || event.altKey || event.ctrlKey || event.metaKey || event.defaultPrevented)
    return;
  const step = stepOf(event.key, event.shiftKey, control);
  const cell = control.closest('td, th');
  const row = cell?.closest('tr');
  if (step === null || !(cell instanceof HTMLTableCellElement) || row === null || row === undefined) return;
  const target = step.down === 0 ? besideIn(row, cell, step.right) : beyond(row, cell, step.down);
  if (target === null) return;
  event.preventDefault();
  target.focus();
  if (target instanceof HTMLInputElement && target.type === 'text') target.select();
}

interface Step {
  readonly down: -1 | 0 | 1;
  readonly right: -1 | 0 | 1;
}

function stepOf(key: string, isShifted: boolean, control: HTMLElement): Step | null {
  const isText = control instanceof HTMLInputElement && control.type === 'text';
  const isBox = control instanceof HTMLInputElement && control.type === 'checkbox';
  if (key === 'Enter' && !(control instanceof HTMLButtonElement) && !(control instanceof HTMLTextAreaElement)) {
    return { down: isShifted ? -1 : 1, right: 0 };
  }
  if (isShifted || !(isText || isBox || control instanceof HTMLButtonElement)) return null;
  if (key === 'ArrowDown') return { down: 1, right: 0 };
  if (key === 'ArrowUp') return { down: -1, right: 0 };
  const [start, end, length] = isText
    ? [control.selectionStart, control.selectionEnd, control.value.length]
    : [0, 0, 0];
  const isAllSelected = start === 0 && end === length;
  if (key === 'ArrowLeft' && (isAllSelected || (start === 0 && end === 0))) return { down: 0, right: -1 };
  if (key === 'ArrowRight' && (isAllSelected || (start === length && end === length))) return { down: 0, right: 1 };
  return null;
}

const firstControl = (cell: Element | undefined) => cell?.querySelector<HTMLElement>(CONTROLS) ?? null;

/** The next cell of the row that holds a control. */
function besideIn(row: HTMLTableRowElement, cell: HTMLTableCellElement, step: number): HTMLElement | null {
  for (let i = cell.cellIndex + step; i >= 0 && i < row.cells.length; i += step) {
    const found = firstControl(row.cells[i]);
    if (found !== null) return found;
  }
  return null;
}

/** The nearest row above or below whose cell in the same column holds a control. */
function beyond(row: HTMLTableRowElement, cell: HTMLTableCellElement, step: number): HTMLElement | null {
  const rows = [...(row.closest('table')?.rows ?? [])];
  for (let i = rows.indexOf(row) + step; i >= 0 && i < rows.length; i += step) {
    const found = firstControl(rows[i]?.cells[cell.cellIndex]);
    if (found !== null) return found;
  }
  return null;
}
