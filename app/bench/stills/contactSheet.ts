import type { Film } from '../film.ts';
import type { FrameStore } from '../frameStore.ts';
import { paint } from '../paint.ts';
import { drawStill, type StillDrawing } from './drawStill.ts';

const [COLUMNS, CELL_PX, LINE_PX] = [3, 480, 44] as const;

/** Pictures of a film side by side, each with a line of words below it. */
export async function contactSheet(
  film: Film,
  frames: FrameStore,
  cells: readonly { readonly frame: number; readonly words: string; readonly drawing: StillDrawing }[],
): Promise<HTMLCanvasElement> {
  const cellHeight = Math.round((CELL_PX * film.height) / film.width);
  const columns = Math.min(COLUMNS, cells.length);
  const rows = Math.ceil(cells.length / columns);
  const sheet = document.createElement('canvas');
  Object.assign(sheet, { width: columns * CELL_PX, height: rows * (cellHeight + LINE_PX) });
  const to = sheet.getContext('2d');
  const one = document.createElement('canvas');
  if (to === null) return sheet;
  to.fillStyle = '#fff';
  to.fillRect(0, 0, sheet.width, sheet.height);
  to.fillStyle = '#000';
  to.font = '20px sans-serif';
  for (const [i, { frame, words, drawing }] of cells.entries()) {
    await paint(one, await frames.get(frame), film.rotation, () => true);
    const [x, y] = [(i % columns) * CELL_PX, Math.floor(i / columns) * (cellHeight + LINE_PX)];
    to.drawImage(drawStill(one, drawing), x, y, CELL_PX, cellHeight);
    to.fillText(words, x + 8, y + cellHeight + 28, CELL_PX - 16);
  }
  return sheet;
}
