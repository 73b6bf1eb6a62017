import { describe, expect, test } from 'vitest';
import { CONDITION_ENTRIES } from '../../../shared/knowledge/conditions/index.ts';
import { MEASURES, measureById } from '../../../shared/knowledge/measures/index.ts';
import { MOVEMENTS, movementById } from '../../../shared/knowledge/movements/index.ts';
import { regionGroup, regionsTouch } from '../../../shared/knowledge/regions.ts';
import { BATTERIES, shippedItem } from '../../../shared/knowledge/screening/shipped.ts';
import { CONDITIONS, REGIONS } from '../../../shared/model/injury.ts';

describe('movements', () => {
  test('each is found by its id, and nothing by another', () => {
    for (const movement of MOVEMENTS) expect(movementById(movement.id)).toBe(movement);
    expect(movementById('moon-walk')).toBeNull();
  });
});

describe('measures', () => {
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
  test('one entry for each condition of the model, in its order', () => {
    expect(CONDITION_ENTRIES.map(({ id }) => id)).toEqual([...CONDITIONS]);
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

const batteryItem = (itemId: string) => shippedItem({ batteryId: 'general', version: '1', itemId });

describe('batteries', () => {
  const items = BATTERIES.flatMap((battery) => battery.items);

  test('each item is found by its id', () => {
    for (const item of items) expect(batteryItem(item.id)).toBe(item);
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
