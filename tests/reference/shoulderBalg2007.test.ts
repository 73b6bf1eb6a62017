import { expect, test } from 'vitest';
import { type SeverityItems, severityIndex } from '../../shared/kernel/shoulder/severityIndex.ts';

const NONE: SeverityItems = {
  ageAtSurgeryYears: 30,
  isCompetitive: false,
  isContactOrOverhead: false,
  isHyperlaxShoulder: false,
  headDentVisible: false,
  lowerOutlineLost: false,
};

test.each([
  ['nothing', {}, 0],
  ['20 years at surgery', { ageAtSurgeryYears: 20 }, 2],
  ['21 years at surgery', { ageAtSurgeryYears: 21 }, 0],
  ['competitive sport', { isCompetitive: true }, 2],
  ['contact or forced overhead sport', { isContactOrOverhead: true }, 1],
  ['lax shoulder', { isHyperlaxShoulder: true }, 1],
  ['dent of the head on the front film', { headDentVisible: true }, 2],
  ['lower outline of the socket lost', { lowerOutlineLost: true }, 2],
] as const)('Balg & Boileau 2007, points of each item: %s', (_what, more, points) => {
  expect(severityIndex({ ...NONE, ...more }).points).toBe(points);
});

test('Balg & Boileau 2007: all items together make 10', () => {
  const all = { ageAtSurgeryYears: 18, isCompetitive: true, isContactOrOverhead: true, isHyperlaxShoulder: true };
  expect(severityIndex({ ...all, headDentVisible: true, lowerOutlineLost: true }).points).toBe(10);
});

test.each(Object.keys(NONE))('no part-score: without %s there is no total (dossier, section 6)', (item) => {
  expect(severityIndex({ ...NONE, isCompetitive: true, [item]: null })).toEqual({ points: null, missing: [item] });
});

test('an age no one has is refused', () => {
  expect(() => severityIndex({ ...NONE, ageAtSurgeryYears: 130 })).toThrow('severityIndex');
});
