import { expect, test } from 'vitest';
import { suggestPoints } from '../../../shared/exchange/suggestPoints.ts';

test('common practice, no source: the side and the anatomical name, in full or cut to four letters', () => {
  const said = {
    LSHO: 'shoulder-left',
    RightAcromion: 'shoulder-right',
    'Subject: LELB': 'elbow-left',
    R_WRIST: 'wrist-right',
    'knee.left': 'knee-left',
    pLeftLatMalleolus: 'ankle-left',
    RHEE: 'heel-right',
    'R.TO': 'toe-right',
    LFirstMetatarsal: 'toe-left',
    'GreaterTrochanter R': 'hip-right',
    C7: 'cervicale',
    TopOfHead: 'vertex',
    Ball: 'ball',
  };
  expect(suggestPoints(Object.keys(said))).toEqual(Object.values(said));
});

test('what is near a place stands for it only where nothing is at it', () => {
  expect(suggestPoints(['RTOE', 'RMET', 'LMET'])).toEqual(['toe-right', null, 'toe-left']);
  expect(suggestPoints(['VRKN', 'RKNE', 'VLKN'])).toEqual([null, 'knee-right', 'knee-left']);
});

test('what says nothing certain is left to the person: pelvis, thigh and shank clusters, numbers, a hand called ball', () => {
  const open = ['RASI', 'SACR', 'LTHI', 'RSK1', 'H', '2001', 'pRightMiddleKneeCap', 'pRightBallHand', 'Offset', ''];
  expect(suggestPoints(open)).toEqual(open.map(() => null));
});
