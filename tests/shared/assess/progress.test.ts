import { expect, test } from 'vitest';
import { factsFromRetests } from '../../../shared/assess/factsFromRetests.ts';
import { progress } from '../../../shared/assess/progress.ts';
import { fact } from '../rules/build.ts';

// Minimal detectable change of the weight-bearing lunge, 1.9 cm: Powden, Hoch & Hoch 2015, Man Ther 20:524.
const lunge = (cm: number, takenOn: string, provenance = 'screening') => ({
  ...fact('wblt.distance', cm, { side: 'left', takenOn, record: takenOn }),
  provenance,
});

test('Powden 2015: 2.0 cm is a real change, 1.8 cm is within noise', () => {
  const verdicts = [2, 1.8].map((cm) => progress([lunge(10, '2026-09-01'), lunge(10 + cm, '2026-10-01')])[0]?.verdict);
  expect(verdicts).toEqual(['real change', 'within noise']);
});

test('law: the report and the rules say the same of a change measured by another person: cannot say', () => {
  const facts = [lunge(10, '2026-09-01'), lunge(14, '2026-10-01', 'screening, rated by another')];
  expect(progress(facts)[0]?.verdict).toBe('cannot say');
  expect(factsFromRetests(facts)[0]?.value.kind).toBe('unknown');
});
