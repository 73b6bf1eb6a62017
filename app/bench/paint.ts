import type { Rotation } from 'mediabunny';
import type { Picture } from './frameStore.ts';

/** The pixels each canvas was last painted from, used again: 8 MB a picture are soon hundreds. */
const pixels = new WeakMap<object, ImageData>();
/** The painting under way on each canvas. */
const under = new WeakMap<object, symbol>();

/**
 * Shows one decoded picture on a canvas, turned upright. Copied as RGBX: exact, and much quicker than drawing where no
 * graphics processor helps. Returns false if meanwhile another picture was begun on the canvas, or
 * `isWanted` says that another is wanted.
 */
export async function paint(
  canvas: HTMLCanvasElement | OffscreenCanvas,
  { bytes, init }: Picture,
  rotation: Rotation,
  isWanted: () => boolean,
): Promise<boolean> {
  const { codedWidth: width, codedHeight: height } = init;
  const frame = new VideoFrame(bytes, init);
  const image = pixelsOf(canvas, width, height);
  const own = Symbol('painting');
  under.set(canvas, own);
  try {
    await frame.copyTo(image.data, { format: 'RGBX' });
  } finally {
    frame.close();
  }
  if (under.get(canvas) !== own || !isWanted()) return false;
  const context = contextOf(canvas);
  if (context === null) return false;
  const isUpright = rotation % 180 === 0;
  const [w, h] = isUpright ? [width, height] : [height, width];
  // Setting a size clears the canvas, even to the same.
  if (canvas.width !== w || canvas.height !== h) Object.assign(canvas, { width: w, height: h });
  if (rotation === 0) {
    context.putImageData(image, 0, 0);
    return true;
  }
  const flat = new OffscreenCanvas(width, height);
  flat.getContext('2d', { alpha: false })?.putImageData(image, 0, 0);
  context.setTransform(1, 0, 0, 1, w / 2, h / 2);
  context.rotate((rotation * Math.PI) / 180);
  context.drawImage(flat, -width / 2, -height / 2);
  context.resetTransform();
  return true;
}

function pixelsOf(canvas: object, width: number, height: number): ImageData {
  const last = pixels.get(canvas);
  if (last?.width === width && last.height === height) return last;
  const fresh = new ImageData(width, height);
  pixels.set(canvas, fresh);
  return fresh;
}

/** For pixels that are read back. Both kinds of canvas have it; the compiler knows no one signature of the two. */
export function contextOf(canvas: HTMLCanvasElement | OffscreenCanvas): OffscreenCanvasRenderingContext2D | null {
  return (canvas as OffscreenCanvas).getContext('2d', { alpha: false, willReadFrequently: true });
}
