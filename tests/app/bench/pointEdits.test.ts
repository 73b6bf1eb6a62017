import { expect, test } from 'vitest';
import { putSamples, removeSample } from '../../../app/bench/pointEdits.ts';
import { applyEdits } from '../../../shared/model/applyEdits.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import type { LandmarkTrack } from '../../../shared/model/trial.ts';
import { emptyCaseFile } from '../../../shared/model/caseLists.ts';
import { EXAMPLES, id } from '../../conformance/examples.ts';

const trialId = EXAMPLES.movementTrial.id;
const empty: CaseFile = {
  ...emptyCaseFile(EXAMPLES.case, EXAMPLES.athlete),
  movementTrials: [EXAMPLES.movementTrial],
};
let made = 9000;
const newId = () => id(made++);

/** Goes through the rules of the records, as the bench's edits do. */
function put(file: CaseFile, origin: LandmarkTrack['origin'], ...samples: [number, number, number][]): CaseFile {
  return applyEdits(file, putSamples({ trialId, point: 'ball', tracks: file.landmarkTracks, newId }, origin, samples));
}
const held = (file: CaseFile) => file.landmarkTracks.map(({ origin, samples }) => [origin, samples]);

test('points put down in any order stand in the order of frames, and one put down again has moved', () => {
  const file = put(put(put(empty, 'by-hand', [7, 1, 1]), 'by-hand', [3, 2, 2]), 'by-hand', [7, 5, 5]);
  expect(held(file)).toEqual([
    [
      'by-hand',
      [
        [3, 2, 2],
        [7, 5, 5],
      ],
    ],
  ]);
});

test('law: a frame is in one track: put down by hand, a tracked one is taken out of its track', () => {
  const tracked = put(put(empty, 'by-hand', [3, 2, 2]), 'tracked', [4, 3, 3], [5, 4, 4]);
  expect(held(tracked)).toEqual([
    ['by-hand', [[3, 2, 2]]],
    [
      'tracked',
      [
        [4, 3, 3],
        [5, 4, 4],
      ],
    ],
  ]);
  const corrected = put(tracked, 'by-hand', [5, 9, 9]);
  expect(held(corrected)).toEqual([
    [
      'by-hand',
      [
        [3, 2, 2],
        [5, 9, 9],
      ],
    ],
    ['tracked', [[4, 3, 3]]],
  ]);
});

test('a track whose last frame is taken out is gone', () => {
  const file = put(put(empty, 'tracked', [4, 3, 3]), 'by-hand', [4, 9, 9]);
  expect(held(file)).toEqual([['by-hand', [[4, 9, 9]]]]);
  expect(applyEdits(file, removeSample(file.landmarkTracks, 'ball', 4)).landmarkTracks).toEqual([]);
});

test('nothing to put or to remove is no edit', () => {
  expect(putSamples({ trialId, point: 'ball', tracks: [], newId }, 'tracked', [])).toEqual([]);
  expect(removeSample(empty.landmarkTracks, 'ball', 4)).toEqual([]);
});
