import { expect, test } from 'vitest';
import { derive } from '../../../shared/kernel/quantity/derive.ts';
import { measured } from '../../../shared/quantity.ts';
import { uncertaintyBudget } from '../../../shared/report/parts/budget.ts';
import { prepare } from '../../../shared/report/parts/writing.ts';
import { NO_EVIDENCE } from '../../../shared/report/evidence.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleAssessment, sampleCase } from '../../support/sampleCase.ts';

test('JCGM 100:2008, 5.1: of a difference with u 3 and 4 the inputs move it by 3 and 4 and hold 36 and 64 % of 25', () => {
  const what = { symbol: 'd', name: 'difference', unit: 'm', formula: 'd = a - b' } as const;
  const inputs = { a: measured('a', 'first', 100, 'm', 3), b: measured('b', 'second', 40, 'm', 4) };
  const reading = derive({ ...what, source: { cite: 'Definition', status: 'derived' } }, inputs, ({ a, b }) => a - b);
  expect(reading.u).toBeCloseTo(5, 12);
  const assessment = sampleAssessment();
  const [fact] = assessment.facts;
  const [finding] = assessment.findings.filter(({ outcome, tests }) => outcome !== 'not-assessed' && tests.length > 0);
  const [first] = finding?.tests ?? [];
  if (fact === undefined || finding === undefined || first === undefined) throw new Error('the sample has these');
  const whole = {
    ...assessment,
    facts: [{ ...fact, key: 'd', displayUnit: 'm' as const, value: { kind: 'number' as const, reading } }],
    findings: [{ ...finding, tests: [{ ...first, factKey: 'd' }] }],
  };
  const base = { file: sampleCase(), assessment: whole, createdAt: SAMPLE_CREATED_AT, caseSha256: SAMPLE_SHA256 };
  const more = { evidence: NO_EVIDENCE, isFinal: false, isWithoutNames: false, changes: null, pointsSha256: null };
  const said = JSON.stringify(uncertaintyBudget(prepare({ ...base, ...more }, true)));
  expect(said).toMatch(/first.*3\u00a0m.*36\u00a0%.*second.*4\u00a0m.*64\u00a0%/);
});
