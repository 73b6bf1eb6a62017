import { describe, expect, test } from 'vitest';
import { CONDITION_ENTRIES } from '../../../shared/knowledge/conditions/index.ts';
import { MEASURES, measureById } from '../../../shared/knowledge/measures/index.ts';
import { MOVEMENTS, movementById } from '../../../shared/knowledge/movements/index.ts';
import { regionGroup, regionsTouch } from '../../../shared/knowledge/regions.ts';
import { BATTERIES, batteryItem } from '../../../shared/knowledge/screening/index.ts';
import { SOURCES } from '../../../shared/knowledge/sources/index.ts';
import { CONDITIONS, REGIONS } from '../../../shared/model/injury.ts';
import { UNITS } from '../../../shared/units.ts';

const twice = (ids: readonly string[]) => ids.filter((id, i) => ids.indexOf(id) !== i);

describe('movements', () => {
  test('each id once, found by it, and nothing found by another', () => {
    expect(twice(MOVEMENTS.map(({ id }) => id))).toEqual([]);
    for (const movement of MOVEMENTS) expect(movementById(movement.id)).toBe(movement);
    expect(movementById('moon-walk')).toBeNull();
  });

  test.each(MOVEMENTS.map((movement) => [movement.id, movement] as const))(
    '%s: phases run from event to event in order, and every checkpoint has a place and a measure',
    (_, { events, phases, checkpoints, mayOverlap }) => {
      const order = events.map(({ id }) => id);
      expect(twice(order)).toEqual([]);
      expect(twice(phases.map(({ id }) => id))).toEqual([]);
      let last = 0;
      for (const phase of phases) {
        const [start, end] = [order.indexOf(phase.startsAt), order.indexOf(phase.endsAt)];
        expect(start).toBeGreaterThanOrEqual(0);
        expect(end).toBeGreaterThanOrEqual(start);
        expect(start).toBeGreaterThanOrEqual(last);
        last = start;
      }
      for (const { phase, measure } of checkpoints) {
        expect(['whole', ...phases.map(({ id }) => id)]).toContain(phase);
        expect(measureById(measure), measure).not.toBeNull();
      }
      for (const event of mayOverlap.flat()) expect(order).toContain(event);
    },
  );
});

describe('measures', () => {
  test('each id once', () => expect(twice(MEASURES.map(({ id }) => id))).toEqual([]));

  test.each(MEASURES.map((measure) => [measure.id, measure] as const))(
    '%s: units of one dimension, the plausible range within the possible one, an error with its source',
    (_, { kind, unit, displayUnit, possible, plausible, error, label, description }) => {
      expect(label).not.toBe('');
      expect(description).not.toBe('');
      if (kind !== 'number') {
        expect([unit, displayUnit, possible, plausible, error]).toEqual([null, null, null, null, null]);
        return;
      }
      if (unit === null || displayUnit === null || possible === null || plausible === null) throw new Error('no unit');
      expect(UNITS[unit].dimension).toBe(UNITS[displayUnit].dimension);
      expect(UNITS[unit].toSi === 1 || unit === 'wk' || unit === 'a').toBe(true);
      expect(possible[0]).toBeLessThanOrEqual(plausible[0]);
      expect(plausible[0]).toBeLessThan(plausible[1]);
      expect(plausible[1]).toBeLessThanOrEqual(possible[1]);
      if (error !== null) expect(error.source.cite).not.toBe('');
    },
  );

  test.each([
    // ../shared/reference/screening.md, master table; border = MDC95 / √2, MDC90 × 2.77 / 2.33 where only that is given.
    ['shoulder.irDeficit', 4],
    ['ckc.touches', 2.12],
    ['wblt.diff', 1.06],
    ['wblt.distance', 1.34],
    ['fppa', 6.29],
    ['reach.anteriorDiff', 5.5],
  ])('screening.md, master table: the error of %s around a threshold is %d', (id, border) => {
    expect(measureById(id)?.error?.border).toBe(border);
  });

  test('law: of MDC and border, the border is the smaller by √2 (one reading against two)', () => {
    for (const { id, error } of MEASURES) {
      if (error === null || error.border === null || error.mdc === null) continue;
      expect(error.mdc / error.border, id).toBeGreaterThan(1.2);
      expect(error.mdc / error.border, id).toBeLessThan(1.6);
    }
  });
});

describe('conditions', () => {
  test('one entry for each condition of the model, in its order, with sources, regions and someone who clears', () => {
    expect(CONDITION_ENTRIES.map(({ id }) => id)).toEqual([...CONDITIONS]);
    for (const { sources, regions, clears } of CONDITION_ENTRIES) {
      expect(sources.length).toBeGreaterThan(0);
      expect(regions.length).toBeGreaterThan(0);
      expect(clears).not.toBe('');
    }
  });

  test('Bahr et al. 2020, table 2: every area belongs to one region of the body', () => {
    expect(REGIONS.map((region) => regionGroup(region))).not.toContain(undefined);
    expect(regionGroup('ankle')).toBe('lower-limb');
    expect(regionGroup('shoulder')).toBe('upper-limb');
    expect(regionGroup('lumbosacral')).toBe('trunk');
    expect(regionsTouch('ankle', 'knee')).toBe(true);
    expect(regionsTouch('ankle', 'elbow')).toBe(false);
    expect(regionsTouch('whole-body', 'elbow')).toBe(true);
  });
});

describe('batteries', () => {
  const items = BATTERIES.flatMap((battery) => battery.items);

  test('each item once, found by its id', () => {
    expect(twice(items.map(({ id }) => id))).toEqual([]);
    for (const item of items) expect(batteryItem(item.id)).toBe(item);
  });

  test.each(items.map((item) => [item.id, item] as const))('%s feeds a measure of its own kind and unit', (_, item) => {
    const measure = measureById(item.measure);
    expect(measure).not.toBeNull();
    expect(item.unit).toBe(measure?.unit ?? null);
    expect(item.displayUnit).toBe(measure?.displayUnit ?? null);
    expect(item.possible).toEqual(measure?.possible ?? null);
    expect(item.plausible).toEqual(measure?.plausible ?? null);
    expect(measure?.kind).toBe({ graded: 'grade', clearing: 'flag', measured: 'number', counted: 'number' }[item.kind]);
    expect(item.standard === null).toBe(item.kind !== 'graded');
    expect(item.instructions.length).toBeGreaterThan(0);
    expect(item.caution).not.toBe('');
  });

  test('screening.md: hands behind the back and rotations are left out with an unstable shoulder, hops with a bone stress', () => {
    for (const id of ['hands-behind-back', 'shoulder-external-rotation', 'closed-chain-touches']) {
      expect(batteryItem(id)?.skipFor).toContain('anterior-shoulder-instability');
    }
    expect(batteryItem('single-leg-hop')?.skipFor).toContain('bone-stress');
  });

  test('Vairo 2012, table 4: dominant internal rotation of young men, 5th to 95th percentile, is 30 to 75°', () => {
    expect(batteryItem('shoulder-internal-rotation')?.reference).toMatchObject({ low: 30, high: 75 });
  });
});

test('every source is cited once', () => {
  expect(twice(Object.values(SOURCES).map(({ cite }) => cite))).toEqual([]);
});
