import { expect, test } from 'vitest';
import { OUTCOMES } from '../../shared/assess/assessment.ts';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { canonicalJson } from '../../shared/canonicalJson.ts';
import { caseFile } from '../../shared/model/records.ts';
import { seededCases } from './seededCases.ts';

test('the cases of the bench are valid, differ from each other, and are the same every time', () => {
  const cases = seededCases(60);
  for (const file of cases) expect(caseFile.safeParse(file).error).toBeUndefined();
  expect(new Set(cases.map((file) => canonicalJson(file))).size).toBe(60);
  expect(seededCases(60)).toEqual(cases);
});

test('they reach every outcome, so that nothing of judging is left out of the measurement', () => {
  const reached = new Set(seededCases(60).flatMap((file) => assessCase(file).findings.map(({ outcome }) => outcome)));
  expect([...reached].toSorted()).toEqual([...OUTCOMES].toSorted());
});
