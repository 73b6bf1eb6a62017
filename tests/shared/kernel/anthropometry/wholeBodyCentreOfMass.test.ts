import { describe, expect, test } from 'vitest';
import { DE_LEVA_FEMALE, DE_LEVA_MALE } from '../../../../shared/kernel/anthropometry/deLeva1996.ts';
import {
  type BodyPoints,
  wholeBodyCentreOfMass,
} from '../../../../shared/kernel/anthropometry/wholeBodyCentreOfMass.ts';
import { WINTER } from '../../../../shared/kernel/anthropometry/winter2009.ts';

/** A stick figure seen from the side, both limbs of a pair in one place. Coordinates of check A13, metres. */
function stickFigure(): BodyPoints {
  const paired = {
    shoulder: { x: 0, y: 1.44 },
    elbow: { x: 0.1, y: 1.17 },
    wrist: { x: 0.3, y: 1.33 },
    knuckle: { x: 0.37, y: 1.39 },
    hip: { x: -0.05, y: 0.92 },
    knee: { x: 0.1, y: 0.52 },
    ankle: { x: 0, y: 0.09 },
    heel: { x: -0.05, y: 0.02 },
    toe: { x: 0.2, y: 0.01 },
  };
  const sides = Object.entries(paired).flatMap(([name, point]) => [
    [`${name}-left`, point],
    [`${name}-right`, point],
  ]);
  return Object.freeze({
    vertex: { x: 0.02, y: 1.78 },
    cervicale: { x: -0.03, y: 1.52 },
    ...Object.fromEntries(sides),
  });
}

const massOf = (table: typeof WINTER) =>
  table.rows.filter(({ isInBody }) => isInBody).reduce((sum, row) => sum + row.massShare * row.sides, 0);

describe('segment tables, one definition per segment', () => {
  test('A1: de Leva 1996, men: masses sum to 1.0000', () => expect(massOf(DE_LEVA_MALE)).toBeCloseTo(1, 6));
  test('A2: de Leva 1996, women: masses sum to 0.9999 as published', () =>
    expect(massOf(DE_LEVA_FEMALE)).toBeCloseTo(0.9999, 6));
  test('A3: Winter 2009 table 4.1: masses sum to 1.0000', () => expect(massOf(WINTER)).toBeCloseTo(1, 6));
});

describe('whole-body centre of mass', () => {
  // A13, computed independently from the published table; all five printed digits.
  test.each([
    ['men', DE_LEVA_MALE, 0.0137, 1.01286],
    ['women', DE_LEVA_FEMALE, 0.0118, 1.01678],
  ] as const)('A13: stick figure with de Leva 1996, %s', (_who, table, x, y) => {
    const centre = wholeBodyCentreOfMass(stickFigure(), table);
    expect(centre).toMatchObject({ missing: [] });
    expect(centre).toHaveProperty('x', expect.closeTo(x, 5));
    expect(centre).toHaveProperty('y', expect.closeTo(y, 5));
  });

  test('law: moving the figure moves the centre as far', () => {
    const moved = Object.fromEntries(
      Object.entries(stickFigure()).map(([name, { x, y }]) => [name, { x: x + 3, y: y - 1 }]),
    );
    const [here, there] = [stickFigure(), moved].map((points) => wholeBodyCentreOfMass(points, WINTER));
    if (here === undefined || there === undefined || 'unknown' in here || 'unknown' in there)
      throw new Error('no centre');
    expect(there.x - here.x).toBeCloseTo(3, 10);
    expect(there.y - here.y).toBeCloseTo(-1, 10);
  });

  test('a forearm and hand without a wrist are named, and their mass does not count', () => {
    const { 'wrist-left': _, ...points } = stickFigure();
    const centre = wholeBodyCentreOfMass(points, DE_LEVA_MALE);
    expect(centre).toMatchObject({ missing: ['forearm left', 'hand left'] });
    expect(centre).toHaveProperty('massShare', expect.closeTo(1 - 0.0162 - 0.0061, 6));
  });

  test('no complete segment: cannot tell', () => {
    expect(wholeBodyCentreOfMass({ vertex: { x: 0, y: 1 } }, WINTER)).toEqual({
      unknown: 'no segment of the body has both its end points digitised',
    });
  });

  test('refuses a coordinate that is not a number, and says which', () => {
    expect(() => wholeBodyCentreOfMass({ vertex: { x: Number.NaN, y: 1 } }, WINTER)).toThrow(/vertex/);
  });
});
