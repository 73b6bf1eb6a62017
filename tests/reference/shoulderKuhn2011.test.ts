import { expect, test } from 'vitest';
import { fedsDirection } from '../../shared/kernel/shoulder/fedsDirection.ts';
import { fedsEtiology } from '../../shared/kernel/shoulder/fedsEtiology.ts';
import { fedsFrequency } from '../../shared/kernel/shoulder/fedsFrequency.ts';
import { fedsSeverity } from '../../shared/kernel/shoulder/fedsSeverity.ts';

test.each([
  [['2026-03-01'], 'solitary'],
  [[null], 'solitary'],
  [['2026-03-01', '2026-05-01'], 'occasional'],
  [['2026-01-01', '2026-02-01', '2026-03-01', '2026-04-01', '2026-05-01'], 'occasional'],
  [['2026-01-01', '2026-02-01', '2026-03-01', '2026-04-01', '2026-05-01', '2026-06-01'], 'frequent'],
  [['2026-02', '2026-03', '2026-05'], 'occasional'],
  // Six within twelve months that cross the turn of the year.
  [['2025-08', '2025-10', '2025-11', '2026-01', '2026-03', '2026-05'], 'frequent'],
] as const)('Kuhn 2011: solitary 1, occasional 2 to 5 a year, frequent more than 5: %j is %s', (dates, expected) => {
  expect(fedsFrequency(dates).is).toBe(expected);
});

test.each([
  ['events spread over years have no class', ['2020-01-01', '2022-01-01', '2024-01-01'], 'never two within a year'],
  ['exactly a year apart is not within a year', ['2024-03-09', '2025-03-09'], 'never two within a year'],
  ['years alone are too rough', ['2024', '2025'], 'too rough'],
  ['a date not known may lie anywhere', ['2024-03-09', null], 'too rough'],
  ['nothing recorded is no class', [], 'no event'],
])('no class is guessed (the gap is named in the dossier, section 2): %s', (_what, dates, because) => {
  const { is, because: said } = fedsFrequency(dates);
  expect(is).toBeNull();
  expect(said).toContain(because);
});

test.each([
  [[['2024', 'traumatic']], 'traumatic'],
  [
    [
      ['2025', 'atraumatic'],
      ['2024', 'traumatic'],
    ],
    'traumatic',
  ],
  [
    [
      ['2024', 'traumatic'],
      ['2024-05', 'atraumatic'],
    ],
    null,
  ],
  [
    [
      [null, 'traumatic'],
      ['2024-05', 'atraumatic'],
    ],
    null,
  ],
  [[['2024', null]], null],
  [[], null],
] as const)('Kuhn 2011: traumatic or atraumatic, by the first event (convention): %j is %s', (events, expected) => {
  const given = events.map(([happenedOn, etiology]) => ({ happenedOn, etiology }));
  expect(fedsEtiology(given).is).toBe(expected);
});

test.each([
  [['anterior', 'anterior', 'posterior'], 'anterior'],
  [['anterior', 'posterior'], null],
  [['anterior', null], null],
  [['anterior', 'anterior', null], 'anterior'],
  [[null], null],
  [[], null],
] as const)('Kuhn 2011: the main direction: %j is %s', (directions, expected) => {
  expect(fedsDirection(directions).is).toBe(expected);
});

test.each([
  [['subluxation', 'dislocation', null], 'dislocation'],
  [['subluxation', 'subluxation'], 'subluxation'],
  [['subluxation', null], null],
  [[], null],
] as const)('Kuhn 2011: subluxation or dislocation: %j is %s', (severities, expected) => {
  expect(fedsSeverity(severities).is).toBe(expected);
});
