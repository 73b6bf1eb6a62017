import type { Reading } from '../../quantity.ts';
import { fitDrag } from '../flight/fitDrag.ts';
import { flightFrames } from './flightFrames.ts';
import { readingOr } from './readingOr.ts';
import type { Scene } from './scene.ts';

/**
 * The drag factor that the digitised flight of a trial's ball shows.
 *
 * @returns /m; unknown where there is no flight, or too little of it
 * @source fitDrag
 */
export function dragOfFlight(view: Scene): Reading<'/m'> {
  const flight = flightFrames(view, 'ball');
  if ('unknown' in flight) return flight;
  const { samples, pointU, sharedU } = flight;
  return readingOr(() => fitDrag(samples, pointU, { scaleU: view.ball.scaleU, sharedU }));
}
