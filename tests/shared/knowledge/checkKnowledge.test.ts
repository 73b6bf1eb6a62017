import { describe, expect, test } from 'vitest';
import { checkKnowledge, type Knowledge, SHIPPED_KNOWLEDGE } from '../../../shared/knowledge/checkKnowledge.ts';

// What the checker must refuse is listed in the brief of the judging (knowledge as data). One entry of each kind is
// broken at a time; the rest is what comes with the program.

test('what comes with the program has nothing against it', () => {
  expect(checkKnowledge(SHIPPED_KNOWLEDGE)).toEqual([]);
});

/** The shipped knowledge with the first entry of one kind changed. */
function broken<K extends keyof Knowledge>(kind: K, change: Partial<Knowledge[K][number]>): Knowledge {
  const [first, ...rest] = SHIPPED_KNOWLEDGE[kind];
  return { ...SHIPPED_KNOWLEDGE, [kind]: [{ ...first, ...change }, ...rest] };
}
function without(kind: keyof Knowledge): Knowledge {
  return { ...SHIPPED_KNOWLEDGE, [kind]: SHIPPED_KNOWLEDGE[kind].slice(1) };
}
const silent = { cite: ' ', status: 'published' } as const;
const [movement] = SHIPPED_KNOWLEDGE.movements;
const [numeric] = SHIPPED_KNOWLEDGE.measures;
const [item] = SHIPPED_KNOWLEDGE.items;
if (movement === undefined || numeric?.kind !== 'number' || item === undefined) throw new Error('nothing to break');

describe('a broken copy is refused with its file and the reason', () => {
  test.each<[string, Knowledge, string, RegExp]>([
    ['a movement without a source', broken('movements', { source: silent }), 'movements/', /source says nothing/],
    [
      'a movement with phases out of order',
      broken('movements', { phases: movement.phases.toReversed() }),
      'movements/',
      /out of order/,
    ],
    [
      'a phase from an event that is not there',
      broken('movements', { events: movement.events.slice(1) }),
      'movements/',
      /not listed/,
    ],
    [
      'a checkpoint over an unknown measure',
      broken('movements', { checkpoints: [{ phase: 'whole', measure: 'luck' }] }),
      'movements/',
      /no measure "luck"/,
    ],
    [
      'a checkpoint in no phase',
      broken('movements', { checkpoints: [{ phase: 'encore', measure: numeric.id }] }),
      'movements/',
      /in no phase: "encore"/,
    ],
    ['a measure without a unit', broken('measures', { unit: null }), 'measures/', /needs a unit/],
    [
      'a measure shown as another kind of quantity',
      broken('measures', { displayUnit: numeric.unit === 'kg' ? 'deg' : 'kg' }),
      'measures/',
      /not the same kind/,
    ],
    ['a measure with its ranges crossed', broken('measures', { plausible: [5, 1] }), 'measures/', /plausible range/],
    ['a flag with a unit', broken('measures', { kind: 'flag' }), 'measures/', /a flag has no unit/],
    ['a measure that nothing explains', broken('measures', { description: '' }), 'measures/', /no description/],
    ['a condition without a source', broken('conditions', { sources: [] }), 'conditions/', /no source/],
    ['a condition that nobody lifts', broken('conditions', { clears: '' }), 'conditions/', /who lifts/],
    ['a condition of no region', broken('conditions', { regions: [] }), 'conditions/', /no region/],
    ['a condition left out', without('conditions'), 'conditions/', /has no entry/],
    ['a test over an unknown measure', broken('items', { measure: 'luck' }), 'screening/', /no measure "luck"/],
    ['a test of another unit than its measure', broken('items', { unit: 'W' }), 'screening/', /its unit is W/],
    ['a test without instructions', broken('items', { instructions: [] }), 'screening/', /how it is done/],
    ['a test without a caution', broken('items', { caution: '' }), 'screening/', /no caution/],
    ['a test left without its source', broken('items', { source: silent }), 'screening/', /source says nothing/],
    ['a drill without a dose', broken('drills', { dose: ' ' }), 'drills/', /no dose/],
    ['a drill that never gets harder', broken('drills', { progression: '' }), 'drills/', /no progression/],
    ['a drill left without its source', broken('drills', { source: silent }), 'drills/', /source says nothing/],
    ['a source that says nothing', broken('sources', { cite: '' }), 'sources/index.ts', /source says nothing/],
  ])('%s', (_, knowledge, file, reason) => {
    const problems = checkKnowledge(knowledge);
    expect(problems.map(({ problem }) => problem).join('; ')).toMatch(reason);
    for (const one of problems) expect(one.file.startsWith(file)).toBe(true);
  });

  test.each(['movements', 'measures', 'conditions', 'items', 'drills', 'sources'] as const)(
    '%s: an entry that stands there twice',
    (kind) => {
      const doubled = {
        ...SHIPPED_KNOWLEDGE,
        [kind]: [...SHIPPED_KNOWLEDGE[kind], ...SHIPPED_KNOWLEDGE[kind].slice(0, 1)],
      };
      expect(checkKnowledge(doubled).map(({ problem }) => problem)).toEqual(['it stands there twice']);
    },
  );
});
