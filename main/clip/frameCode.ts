/** The bar code in a corner of every picture: its own number, least significant bit first, each cell's opposite below it. */
export const CODE_CELLS = 16;
export const CODE_CELL_PX = 16;

/** Cells that are white, as [column, row] from the top left. */
export function codeOf(frame: number): readonly (readonly [number, number])[] {
  return Array.from({ length: CODE_CELLS }, (_, column) => [column, (frame >> column) & 1 ? 0 : 1] as const);
}
