import { expect, test } from 'vitest';
import { confirmEdits, openSuggestions } from '../../../../app/bench/suggest/confirmEdits.ts';
import { suggestedFrame } from '../../../../app/bench/suggest/suggestion.ts';
import { putSamples } from '../../../../app/bench/pointEdits.ts';
import { applyEdits } from '../../../../shared/model/applyEdits.ts';
import { emptyCaseFile } from '../../../../shared/model/caseLists.ts';
import type { CaseFile } from '../../../../shared/model/records.ts';
import { EXAMPLES, id } from '../../../conformance/examples.ts';

const trialId = EXAMPLES.movementTrial.id;
const empty: CaseFile = {
  ...emptyCaseFile(EXAMPLES.case, EXAMPLES.athlete),
  movementTrials: [EXAMPLES.movementTrial],
};
let made = 9000;
const newId = () => id(made++);

/** What a model might say of a person 400 px tall. */
const found = (frame: number) =>
  suggestedFrame(
    frame,
    [
      { name: 'nose', x: 300, y: 20, score: 0.99 },
      { name: 'left_wrist', x: 310.123, y: 50, score: 0.9 },
      { name: 'left_ankle', x: 300, y: 450, score: 0.9 },
      { name: 'right_ankle', x: 290, y: 449, score: 0.3 },
      { name: 'right_wrist', x: 700, y: 60, score: 0.9 },
    ],
    640,
    480,
  );

test('only what the body model names, the model is sure of and the picture holds is suggested; u is 3 % of the size', () => {
  expect(found(7)).toEqual({
    frame: 7,
    points: [
      { point: 'wrist-left', x: 310.12, y: 50 },
      { point: 'ankle-left', x: 300, y: 450 },
    ],
    uPx: 12,
  });
});

test('law: what a person placed stays as it is; the rest is confirmed under its own origin with its own u', () => {
  const hand = putSamples({ trialId, point: 'wrist-left', tracks: [], newId }, 'by-hand', [[1, 5, 5]]);
  const before = applyEdits(empty, hand);
  const after = applyEdits(before, confirmEdits(trialId, before.landmarkTracks, [found(1), found(2)], null, newId));
  expect(after.landmarkTracks.map(({ point, origin, samples, uPx }) => [point, origin, samples.length, uPx])).toEqual([
    ['wrist-left', 'by-hand', 1, null],
    ['ankle-left', 'suggested-and-confirmed', 2, 12],
    ['wrist-left', 'suggested-and-confirmed', 1, 12],
  ]);
  expect(openSuggestions(found(1), after.landmarkTracks)).toEqual([]);
  expect(confirmEdits(trialId, after.landmarkTracks, [found(1), found(2)], null, newId)).toEqual([]);
});

test('of one point, only that one', () => {
  const after = applyEdits(empty, confirmEdits(trialId, [], [found(1)], 'ankle-left', newId));
  expect(after.landmarkTracks.map(({ point }) => point)).toEqual(['ankle-left']);
});
