import { expect, test } from 'vitest';
import { classifyInstability, unstableShoulders } from '../../../shared/assess/classifyInstability.ts';
import type { Injury } from '../../../shared/model/injury.ts';
import type { InstabilityEvent } from '../../../shared/model/shoulder.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { sampleCase, sampleId } from '../../support/sampleCase.ts';

const INJURY = sampleId(3);

function classed(episodes: number | null, events: readonly Partial<InstabilityEvent>[]) {
  const file = sampleCase();
  const injury = { ...(file.injuries.find(({ id }) => id === INJURY) as Injury), episodes }; // the sample has it
  const instabilityEvents = events.map((event, i) => ({
    ...EXAMPLES.instabilityEvent,
    injuryId: INJURY,
    id: sampleId(901 + i),
    ...event,
  }));
  const { frequency, etiology, direction, severity } = classifyInstability({ ...file, instabilityEvents }, injury);
  return { words: [frequency.is, etiology.is, direction.is, severity.is], frequency, etiology };
}

const OUT = { severity: 'dislocation', etiology: 'traumatic', direction: 'anterior' } as const;
const inMonths = (...months: string[]) => months.map((happenedOn) => ({ ...OUT, happenedOn }));

test.each([
  [1, inMonths('2026-01'), ['solitary', 'traumatic', 'anterior', 'dislocation']],
  [3, inMonths('2026-01', '2026-03', '2026-06'), ['occasional', 'traumatic', 'anterior', 'dislocation']],
  [
    6,
    inMonths('2026-01', '2026-02', '2026-03', '2026-04', '2026-05', '2026-06'),
    ['frequent', 'traumatic', 'anterior', 'dislocation'],
  ],
] as const)('Kuhn 2011: %i dated events in half a year', (episodes, events, words) => {
  expect(classed(episodes, events).words).toEqual(words);
});

test('promise 3 of the design: episodes that were only counted make a part unsure, never solitary', () => {
  const { words, frequency, etiology } = classed(3, inMonths('2026-01'));
  // One known dislocation is enough for its part (Kuhn 2011); two unknown events could change the other three.
  expect(words).toEqual([null, null, null, 'dislocation']);
  expect(frequency.because).toContain('between 1 and 3 events in a year');
  expect(etiology.because).toContain('not all recorded');
});

test('nothing recorded gives four times no word, each with a reason', () => {
  const { words, frequency } = classed(null, []);
  expect(words).toEqual([null, null, null, null]);
  expect(frequency.because).toBe('no event is recorded');
});

test('unstable shoulders are those on file and not resolved', () => {
  const file = sampleCase();
  expect(unstableShoulders(file).map(({ id }) => id)).toEqual([INJURY]);
  const resolved = file.injuries.map((injury) => ({ ...injury, status: 'resolved' as const }));
  expect(unstableShoulders({ ...file, injuries: resolved })).toEqual([]);
});
