import type { Rotation } from 'mediabunny';
import type { Place } from '../../shared/kernel/track/image.ts';

/**
 * A pixel of the decoded picture, as it is shown after turning the picture clockwise.
 * @param width of the decoded picture, px
 * @param height of the decoded picture, px
 */
export function toShown({ x, y }: Place, rotation: Rotation, width: number, height: number): Place {
  if (rotation === 90) return { x: height - 1 - y, y: x };
  if (rotation === 180) return { x: width - 1 - x, y: height - 1 - y };
  return rotation === 270 ? { x: y, y: width - 1 - x } : { x, y };
}

/** The way back: turning the shown picture, whose size is the other way round at 90° and 270°. */
export function toDecoded(place: Place, rotation: Rotation, width: number, height: number): Place {
  const back = ((360 - rotation) % 360) as Rotation;
  return rotation % 180 === 0 ? toShown(place, back, width, height) : toShown(place, back, height, width);
}
