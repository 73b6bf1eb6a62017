import { expect, test } from 'vitest';
import { dragOfFlight } from '../../../../shared/kernel/trial/dragOfFlight.ts';
import { scene, type TrialInput } from '../../../../shared/kernel/trial/scene.ts';
import { isKnown } from '../../../../shared/quantity.ts';
import { BALL, inventedTrial } from './inventedTrial.ts';

const dragOf = (input: TrialInput) => {
  const view = scene(input);
  if ('unknown' in view) throw new Error(view.unknown);
  return dragOfFlight(view);
};

test('law: with points exact to a tenth of a millimetre, the drag the ball was thrown with', () => {
  const input = inventedTrial({ calibration: { kind: 'metres', pointUM: 0.0001 } });
  const found = dragOf(input);
  expect(isKnown(found) && found.value).toBeCloseTo(BALL.k, 4);
});

test('cannot tell: 24 frames with points exact to 4 mm; and without a ball there is no flight', () => {
  expect(dragOf(inventedTrial())).toEqual({ unknown: expect.stringContaining('cannot tell drag from none') as string });
  const input = inventedTrial();
  expect(dragOf({ ...input, tracks: input.tracks.filter(({ point }) => point !== 'ball') })).toHaveProperty('unknown');
});
