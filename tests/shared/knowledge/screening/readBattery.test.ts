import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batteryProblems } from '../../../../shared/knowledge/screening/batteryProblems.ts';
import { generalBattery } from '../../../../shared/knowledge/screening/generalBattery.ts';
import { readBattery } from '../../../../shared/knowledge/screening/readBattery.ts';
import type { BatteryItem } from '../../../../shared/knowledge/screening/battery.ts';
import { CONDITIONS } from '../../../../shared/model/injury.ts';
import type { OwnItem } from '../../../../shared/model/battery.ts';
import { aCopy, anItem, copyWith } from '../../../support/ownBattery.ts';

// What a copy may do and may not: the brief of the house (design promises 3 and 4), no published source.

const shipped: readonly BatteryItem[] = generalBattery.items;
const itemOf = (id: string, fields: Partial<OwnItem>) =>
  readBattery(copyWith(id, fields)).items.find((item) => item.id === id) as BatteryItem;

test('an unedited copy means what the shipped battery means, item by item', () => {
  expect(batteryProblems(aCopy())).toEqual([]);
  for (const [i, { own, ...item }] of readBattery(aCopy()).items.entries()) {
    expect(item).toEqual(shipped[i]);
    expect(own?.link).toBe(shipped[i]?.id);
  }
});

describe('what may change freely keeps the link, so that rules and bands hold', () => {
  test.each<[string, Partial<OwnItem>]>([
    ['name', { label: 'Knee to wall' }],
    ['instructions', { instructions: ['Heel down.'] }],
    ['caution', { caution: 'Not on the wet floor.' }],
    ['plausible range', { plausible: [4, 18] }],
  ])('%s', (_what, fields) => {
    const item = itemOf('weight-bearing-lunge', fields);
    expect(item.own?.link).toBe('weight-bearing-lunge');
    expect(item.measure).toBe('wblt.distance');
    expect(item.reference).not.toBeNull();
  });
});

describe('what changes the meaning cuts the link: no measure that a rule knows, no band of the program', () => {
  test.each<[string, string, Partial<OwnItem>, string]>([
    ['kind', 'weight-bearing-lunge', { kind: 'counted' }, 'it was measured'],
    ['unit', 'weight-bearing-lunge', { unit: 'mm' }, 'its unit was cm'],
    ['sides', 'weight-bearing-lunge', { hasSides: false }, 'it was taken on each side'],
    [
      'how trials combine',
      'weight-bearing-lunge',
      { trials: { most: 3, combine: 'mean' } },
      'its result was one value',
    ],
    ['region', 'weight-bearing-lunge', { region: 'knee' }, 'its region was ankle'],
    [
      'written standard',
      'overhead-squat',
      { standard: { met: 'Nice.', metWithCompensation: 'Fair.', notMet: 'Not.' } },
      'its written standard was another',
    ],
  ])('%s', (_what, id, fields, words) => {
    const item = itemOf(id, { possible: [0, 40], ...fields });
    expect(item.own).toMatchObject({ link: null, cut: [words] });
    expect(item.measure).toMatch(/^own\//);
    expect(item.reference).toBeNull();
    // Its injuries and cautions stay all the same.
    const was = shipped.find((one) => one.id === id);
    expect(item.caution).toContain(was?.caution);
    expect(item.skipFor).toEqual(expect.arrayContaining([...(was?.skipFor ?? [])]));
  });
});

test('whatever a copy says, it leaves out for every injury that the shipped item does, and keeps its caution', () => {
  const skipFor = fc.uniqueArray(fc.constantFrom(...CONDITIONS));
  const changed = fc.record({ skipFor, caution: fc.string(), hasSides: fc.boolean(), label: fc.string() });
  fc.assert(
    fc.property(fc.constantFrom(...shipped), changed, (was, fields) => {
      const item = itemOf(was.id, fields);
      expect(item.skipFor).toEqual(expect.arrayContaining([...was.skipFor, ...fields.skipFor]));
      expect(item.caution.startsWith(was.caution)).toBe(true);
    }),
    { numRuns: 100 },
  );
});

const paths = (items: readonly OwnItem[], label = 'Own') =>
  batteryProblems({ label, items: [...items] }).map(({ path }) => path.join('.'));

describe('what keeps a battery from being used is said with its place', () => {
  test.each<[string, Partial<OwnItem>, string]>([
    ['no name', { label: ' ' }, 'items.0.label'],
    ['no instructions', { instructions: [] }, 'items.0.instructions'],
    ['a measured item without a unit', { unit: null }, 'items.0.unit'],
    ['no possible range', { possible: null }, 'items.0.possible'],
    ['ends the wrong way round', { possible: [9, 1] }, 'items.0.possible'],
    ['a usual range beyond the possible', { plausible: [10, 1000] }, 'items.0.plausible'],
    [
      'a reference without its group',
      {
        reference: { low: 1, high: 2, group: '', sex: null, source: { cite: 'A book', status: 'from memory' } },
      },
      'items.0.reference',
    ],
    ['a grade without a standard', { kind: 'graded', unit: null, possible: null }, 'items.0.standard'],
    [
      'an item that the program does not have',
      {
        from: { batteryId: 'general', version: '99', itemId: 'single-leg-hop' },
      },
      'items.0.from',
    ],
    ['an examination for clinicians only', { instructions: ['Do the load and shift.'] }, 'items.0.instructions'],
    ['the same in its name', { label: 'Sulcus sign' }, 'items.0.label'],
  ])('%s', (_what, fields, path) => expect(paths([anItem(fields)])).toContain(path));

  test('an item twice, by id or by what it is copied from; no item; no name', () => {
    expect(paths([anItem(), anItem({ label: 'Other' })])).toEqual(['items.1.id']);
    const [first] = aCopy().items as [OwnItem];
    expect(paths([first, { ...first, id: 'again', label: 'Again' }])).toEqual(['items.1.from']);
    expect(paths([], '')).toEqual(['label', 'items']);
  });

  test('a sound item of one’s own has no verdict: no rule’s measure, no band', () => {
    const [item] = readBattery({ ...aCopy(), items: [anItem()] }).items;
    expect(item).toMatchObject({ unit: 's', reference: null, own: { link: null, cut: [], error: null } });
  });
});
