import { describe, expect, test } from 'vitest';
import { MOST_GRADE, readingGrade, sentencesIn } from '../../../shared/knowledge/wording/readingGrade.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';

test('Kincaid, Fishburne, Rogers & Chissom 1975: ten words of one syllable are at grade 0.11 (0.39 · 10 + 11.8 − 15.59)', () => {
  expect(readingGrade(['The cat sat on the mat and the dog ran.'])).toBeCloseTo(0.11, 10);
});

test('refuses a text without words', () => {
  expect(() => readingGrade(['8 %'])).toThrow(/needs at least one word/);
});

const filled = (text: string) => text.replaceAll('{side}', 'left').replaceAll(/\{\w+\}/g, '8');

describe('what an athlete reads of a rule that comes with the program is no harder than the limit', () => {
  test.each(SHIPPED_RULES.map((rule) => [rule.id, rule.wording.athlete] as const))('%s', (_, wording) => {
    const grade = readingGrade(sentencesIn([wording.finding, wording.intervention].map(filled)));
    expect(grade).toBeLessThanOrEqual(MOST_GRADE.rule);
  });

  const changes = new Set(
    SHIPPED_RULES.flatMap(({ effects }) => effects.map(({ change, plain }) => plain ?? change)).filter(Boolean),
  );
  test.each([...changes])('%s', (text) => {
    expect(readingGrade(sentencesIn([text]))).toBeLessThanOrEqual(MOST_GRADE.change);
  });
});
