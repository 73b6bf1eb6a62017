import { expect, test } from 'vitest';
import { failureWords } from '../../app/failureWords.ts';

test.each([
  ['analyseForceTrace needs at least one flight, found none', 'This needs at least one flight, found none.'],
  ['readTrialFile found a fault at points.ball.0', 'This found a fault at points.ball.0.'],
  ['There is no such case.', 'There is no such case.'],
])('people are not told the names of functions: %s', (message, words) => expect(failureWords({ message })).toBe(words));

test('something unforeseen still has a next step', () => expect(failureWords(undefined)).toContain('Try once more'));
