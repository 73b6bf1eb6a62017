/** Brightness of a picture, row by row from the top left; 0 black to 255 white. Pixel (x, y) has its centre at x, y. */
export interface Luma {
  readonly width: number;
  readonly height: number;
  /** Samples from one row to the next; at least the width. */
  readonly stride: number;
  readonly data: Uint8Array;
}

/** Where a point is in a picture, px, x to the right and y down. */
export interface Place {
  readonly x: number;
  readonly y: number;
}
