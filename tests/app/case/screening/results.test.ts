import { expect, test } from 'vitest';
import { isEmptyResult, reasonsToSkip, sideDifference } from '../../../../app/case/screening/results.ts';
import { shippedItem } from '../../../../shared/knowledge/screening/shipped.ts';
import { UNSAID } from '../../../../shared/model/blank.ts';
import type { Injury } from '../../../../shared/model/injury.ts';
import type { ScreeningResult } from '../../../../shared/model/screening.ts';
import { sampleCase, sampleId } from '../../../support/sampleCase.ts';

function item(id: string) {
  const found = shippedItem({ batteryId: 'general', version: '1', itemId: id });
  if (found === null) throw new Error(`the battery needs the item ${id}`);
  return found;
}

const result = (fields: Partial<ScreeningResult>): ScreeningResult => ({
  id: sampleId(900),
  sessionId: sampleId(901),
  itemId: 'weight-bearing-lunge',
  side: 'left',
  valueSi: null,
  grade: null,
  isPositive: null,
  painNrs: null,
  note: '',
  ...UNSAID,
  ...fields,
});

test('Powden, Hoch & Hoch 2015, Man Ther 20:524: 1.9 cm is what error can make of a weight-bearing lunge', () => {
  const lunge = item('weight-bearing-lunge');
  const within = sideDifference(lunge, result({ valueSi: 0.11 }), result({ valueSi: 0.125 }));
  expect(within?.words).toMatch(/^right larger by 1\.5/);
  expect(within?.errorWords).toMatch(/^within the 1\.9/);
  const beyond = sideDifference(lunge, result({ valueSi: 0.13 }), result({ valueSi: 0.095 }));
  expect(beyond?.words).toMatch(/^left larger by 3\.5/);
  expect(beyond?.errorWords).toMatch(/^more than the 1\.9/);
});

test('a test without an error figure says so, and one side alone says nothing', () => {
  const hop = item('single-leg-hop');
  const both = sideDifference(hop, result({ valueSi: 2.04 }), result({ valueSi: 1.98 }));
  expect(both?.errorWords).toBe('no error figure is known for this test');
  expect(sideDifference(hop, result({ valueSi: 2.04 }), null)).toBeNull();
  expect(sideDifference(item('single-leg-squat'), result({ grade: 'met' }), result({ grade: 'met' }))).toBeNull();
});

test('an item is left out for an injury that is not cleared, with who can clear it, and asked again once it is', () => {
  const [sample] = sampleCase().injuries;
  if (sample === undefined) throw new Error('the sample case needs an injury');
  const unstable: Injury = {
    ...sample,
    condition: 'anterior-shoulder-instability',
    status: 'recovering',
    clearedBy: '',
    clearedOn: null,
  };
  const rotation = item('shoulder-external-rotation');
  expect(reasonsToSkip(rotation, [unstable], '2026-11-25')).toHaveLength(1);
  expect(reasonsToSkip(rotation, [unstable], '2026-11-25')[0]).toMatch(/not cleared\..*can clear it\.$/);
  expect(reasonsToSkip(item('weight-bearing-lunge'), [unstable], '2026-11-25')).toEqual([]);
  // Resolved alone lifts nothing; a clearance after the onset does.
  expect(reasonsToSkip(rotation, [{ ...unstable, status: 'resolved' }], '2026-11-25')).toHaveLength(1);
  const cleared: Injury = {
    ...unstable,
    onset: '2024',
    status: 'resolved',
    clearedBy: 'A physician',
    clearedOn: '2026-01-05',
  };
  expect(reasonsToSkip(rotation, [cleared], '2026-11-25')).toEqual([]);
});

test('a result is empty only when nothing is left in it: a pain of 0 is an answer', () => {
  expect(isEmptyResult(result({}))).toBe(true);
  expect(isEmptyResult(result({ painNrs: 0 }))).toBe(false);
  expect(isEmptyResult(result({ isPositive: false }))).toBe(false);
  expect(isEmptyResult(result({ note: 'left early' }))).toBe(false);
});
