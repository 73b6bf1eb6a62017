import { describe, expect, test } from 'vitest';
import { bodyCentreOfMass } from '../../shared/kernel/anthropometry/bodyCentreOfMass.ts';
import { DE_LEVA_FEMALE, DE_LEVA_MALE } from '../../shared/kernel/anthropometry/deLeva1996.ts';
import type { SegmentName, SegmentRow, SegmentTable } from '../../shared/kernel/anthropometry/segmentTable.ts';
import { segmentInertia } from '../../shared/kernel/anthropometry/segmentInertia.ts';
import { type BodyPoints, wholeBodyCentreOfMass } from '../../shared/kernel/anthropometry/wholeBodyCentreOfMass.ts';
import { WINTER } from '../../shared/kernel/anthropometry/winter2009.ts';
import { staticJointMoment } from '../../shared/kernel/load/staticJointMoment.ts';
import { isKnown, measured } from '../../shared/quantity.ts';
import { describeOpenData } from '../support/openData.ts';

const rowOf = (table: SegmentTable, segment: SegmentName, origin?: string): SegmentRow => {
  const row = table.rows.find((one) => one.segment === segment && (origin ?? one.origin) === one.origin);
  if (row === undefined) throw new Error(`no ${segment} in ${table.name}`);
  return row;
};
const share = (table: SegmentTable, segment: SegmentName) => rowOf(table, segment).massShare;
const mm = (row: SegmentRow) => (row.lengthM ?? Number.NaN) * 1000;

describe('de Leva 1996, table 4', () => {
  test.each([
    ['men', DE_LEVA_MALE, 0.4346],
    ['women', DE_LEVA_FEMALE, 0.4257],
  ] as const)('A4: trunk is upper, middle and lower trunk together, %s', (_who, table, trunk) => {
    const parts = (['upper-trunk', 'middle-trunk', 'lower-trunk'] as const).map((part) => share(table, part));
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(trunk, 6);
    expect(share(table, 'trunk')).toBe(trunk);
  });

  test('A8: every alternative row of a segment puts centre and radii in the same place (lengths from memory)', () => {
    let compared = 0;
    for (const { rows } of [DE_LEVA_FEMALE, DE_LEVA_MALE]) {
      for (const a of rows) {
        for (const b of rows) {
          if (a === b || a.segment !== b.segment) continue;
          const [one, other] =
            a.origin === b.origin
              ? [a.centre * mm(a), b.centre * mm(b)]
              : a.other === b.other
                ? [(1 - a.centre) * mm(a), (1 - b.centre) * mm(b)]
                : [Number.NaN, Number.NaN];
          if (Number.isNaN(one)) continue;
          // Printed to 4 digits of a length and 0.1 mm: half a unit of each.
          expect(Math.abs(one - other)).toBeLessThan(0.1 + 0.0001 * mm(a));
          for (const k of ['kSagittal', 'kTransverse', 'kLongitudinal'] as const) {
            const [p, q] = [(a[k] ?? 0) * mm(a), (b[k] ?? 0) * mm(b)];
            // Radii are printed to 3 digits: half a unit of each times its length.
            expect(Math.abs(p - q)).toBeLessThan(0.0005 * (mm(a) + mm(b)) + 0.1);
            compared += 1;
          }
        }
      }
    }
    expect(compared).toBeGreaterThanOrEqual(60);
  });

  test.each([
    ['men', DE_LEVA_MALE, 0.4541, 0.0001],
    ['women', DE_LEVA_FEMALE, 0.4151, 0.0001],
  ] as const)(
    'A9: trunk centre from its three parts, %s (part lengths from memory)',
    (_who, table, expected, tolerance) => {
      const [upper, middle, lower] = [
        rowOf(table, 'upper-trunk', 'SUPR'),
        rowOf(table, 'middle-trunk'),
        rowOf(table, 'lower-trunk'),
      ];
      const centre =
        upper.massShare * upper.centre * mm(upper) +
        middle.massShare * (mm(upper) + middle.centre * mm(middle)) +
        lower.massShare * (mm(upper) + mm(middle) + lower.centre * mm(lower));
      const trunk = rowOf(table, 'trunk', 'SUPR');
      const inParts = centre / trunk.massShare / (mm(upper) + mm(middle) + mm(lower));
      expect(Math.abs(inParts - expected)).toBeLessThan(tolerance);
      expect(Math.abs(inParts - trunk.centre)).toBeLessThan(0.006);
    },
  );

  test('A10: male thigh of 0.4272 m at 72 kg: 10.195 kg, 0.2014 and 0.5134 kg·m² (±0.5 %)', () => {
    const inertia = segmentInertia(
      rowOf(DE_LEVA_MALE, 'thigh'),
      DE_LEVA_MALE,
      measured('m_b', 'body mass', 72, 'kg', 0),
      measured('L', 'thigh', 0.4272, 'm', 0),
      'transverse',
    );
    expect(inertia.mass.value).toBeCloseTo(10.195, 3);
    expect(isKnown(inertia.aboutCentre) && inertia.aboutCentre.value / 0.2014).toBeCloseTo(1, 2);
    expect(isKnown(inertia.aboutOrigin) && inertia.aboutOrigin.value / 0.5134).toBeCloseTo(1, 2);
  });

  test('trap: the trunk radius for a side view is the transverse one, 0.347 against 0.372 (men)', () => {
    const trunk = rowOf(DE_LEVA_MALE, 'trunk', 'SUPR');
    expect([trunk.kTransverse, trunk.kSagittal]).toEqual([0.347, 0.372]);
  });
});

const m = (segment: SegmentName) => share(WINTER, segment);

describe('Winter 2009, table 4.1', () => {
  test('A5: parts make wholes', () => {
    expect(m('thorax') + m('abdomen') + m('pelvis')).toBeCloseTo(m('trunk'), 6);
    expect(m('trunk') + m('head-neck')).toBeCloseTo(0.578, 6);
    expect(m('trunk-head-neck') + 2 * m('total-arm')).toBeCloseTo(0.678, 6);
    expect(m('hat') + 2 * m('total-leg')).toBeCloseTo(1, 6);
  });
  test('A6: k_origin² = k² + c² within 0.0016, except the two misprints the book is known for', () => {
    for (const { segment, centre, kTransverse, kOrigin, kOther } of WINTER.rows) {
      if (kTransverse === null) continue;
      if (kOrigin !== null && segment !== 'total-leg') {
        expect(Math.abs(Math.hypot(kTransverse, centre) - kOrigin), segment).toBeLessThan(0.0016);
      }
      if (kOther !== null && segment !== 'total-leg' && segment !== 'upper-arm') {
        expect(Math.abs(Math.hypot(kTransverse, 1 - centre) - kOther), segment).toBeLessThan(0.0016);
      }
    }
    const leg = rowOf(WINTER, 'total-leg');
    expect(leg.kOrigin).toBe(0.56);
    expect(Math.hypot(leg.kTransverse ?? 0, leg.centre)).toBeCloseTo(0.553, 3);
    expect(Math.hypot(rowOf(WINTER, 'upper-arm').kTransverse ?? 0, 1 - 0.436)).toBeCloseTo(0.649, 3);
  });
  test('A7: head and neck about the proximal end is 1.116, printed 0.116', () => {
    const head = rowOf(WINTER, 'head-neck');
    expect(head.kOrigin).toBe(1.116);
    expect(Math.hypot(head.kTransverse ?? 0, head.centre)).toBeCloseTo(1.116, 3);
  });
});

const length = (segment: SegmentName, origin?: string) => rowOf(DE_LEVA_MALE, segment, origin).lengthM ?? Number.NaN;

/** A man of the table's own lengths, standing straight, arms down or overhead. */
function standing(arms: -1 | 1): BodyPoints {
  const hip = 0.9;
  const shoulder = hip + length('trunk', 'MIDS');
  const heights = {
    shoulder,
    elbow: shoulder + arms * length('upper-arm'),
    wrist: shoulder + arms * (length('upper-arm') + length('forearm', 'EJC')),
    knuckle: shoulder + arms * (length('upper-arm') + length('forearm', 'EJC') + length('hand', 'WJC')),
    hip,
    knee: hip - length('thigh'),
    ankle: hip - length('thigh') - length('shank', 'KJC'),
    heel: 0,
    toe: 0,
  };
  const pairs = Object.entries(heights).flatMap(([name, y]) =>
    ['left', 'right'].map((side) => [`${name}-${side}`, { x: name === 'toe' ? 0.2 : 0, y }]),
  );
  return {
    vertex: { x: 0, y: shoulder + 0.33 },
    cervicale: { x: 0, y: shoulder + 0.09 },
    ...Object.fromEntries(pairs),
  };
}

test('A11: both arms from hanging to overhead raise the centre of mass by 0.0589 m (±0.002, computed)', () => {
  const [down, up] = [
    wholeBodyCentreOfMass(standing(-1), DE_LEVA_MALE),
    wholeBodyCentreOfMass(standing(1), DE_LEVA_MALE),
  ];
  if ('unknown' in down || 'unknown' in up) throw new Error('no centre');
  expect(Math.abs(up.y - down.y - 0.0589)).toBeLessThan(0.002);
});

describe('static joint moment', () => {
  const elbow = { x: 1, y: 1 };
  const arm: BodyPoints = {
    'elbow-right': elbow,
    'wrist-right': { x: 1.2689, y: 1 },
    'knuckle-right': { x: 1.2689 + 0.0862, y: 1 },
  };
  const load = {
    points: arm,
    table: DE_LEVA_MALE,
    bodyMass: measured('m_b', 'body mass', 72, 'kg', 0),
    joint: 'elbow',
    side: 'right',
    carries: 'hanging',
    held: { mass: measured('m_h', 'ball', 0.609, 'kg', 0), at: { x: 1.4, y: 1 } },
    pointU: 0.005,
  } as const;

  test('A12: horizontal forearm and hand with a ball of 0.609 kg at 0.40 m: 5.247 N·m', () => {
    const moment = staticJointMoment(load);
    expect('value' in moment && moment.value).toBeCloseTo(5.247, 3);
  });
  test('law: a load behind the joint turns the other way', () => {
    const mirrored = Object.fromEntries(Object.entries(arm).map(([name, { x, y }]) => [name, { x: 2 - x, y }]));
    const moment = staticJointMoment({ ...load, points: mirrored, held: { ...load.held, at: { x: 0.6, y: 1 } } });
    expect('value' in moment && moment.value).toBeCloseTo(-5.247, 3);
  });
  test('law: standing straight over the knee, nothing has to be held but the feet ahead of it', () => {
    const moment = staticJointMoment({ ...load, points: standing(-1), joint: 'knee', carries: 'two legs', held: null });
    expect('value' in moment && moment.value).toBeCloseTo(0, 9);
  });
  test('cannot tell where the limb is not all there', () => {
    const { 'knuckle-right': _, ...points } = arm;
    expect(staticJointMoment({ ...load, points })).toEqual({ unknown: 'not digitised: hand right' });
  });
});

describe('whole-body centre with uncertainty and working', () => {
  test('law: u is that of one point times the root of the squared weights, and the weights sum to 1', () => {
    const centre = bodyCentreOfMass(standing(-1), DE_LEVA_MALE, 0.01);
    if ('unknown' in centre) throw new Error(centre.unknown);
    // Twenty points of equal weight would give 0.01/√20; all weight on one, 0.01.
    expect(centre.x.u).toBeGreaterThan(0.01 / Math.sqrt(20));
    expect(centre.x.u).toBeLessThan(0.01);
    expect(centre.y.u).toBeCloseTo(centre.x.u ?? 0, 12);
    expect(centre.y.working.inputs).toHaveLength(14);
  });
  test('missing mass widens the uncertainty and is named', () => {
    const { 'wrist-left': _, ...points } = standing(-1);
    const [whole, part] = [
      bodyCentreOfMass(standing(-1), DE_LEVA_MALE, 0.01),
      bodyCentreOfMass(points, DE_LEVA_MALE, 0.01),
    ];
    if ('unknown' in whole || 'unknown' in part) throw new Error('no centre');
    expect(part.y.u).toBeGreaterThan(whole.y.u ?? 1);
    expect(part.y.working.variant).toContain('forearm left');
  });
  test('points without an uncertainty give none, and say why', () => {
    const centre = bodyCentreOfMass(standing(-1), DE_LEVA_MALE, 'digitised by eye');
    expect('x' in centre && centre.x.uReason).toBe('digitised by eye');
  });
});

const number = (text: string | undefined) => (text === undefined || text === '' ? null : Number(text));

describeOpenData(
  'body-segment-tables',
  'Duarte & Watanabe, notes on scientific computing: tables as published',
  (data) => {
    const csv = (file: string) =>
      data
        .text(file)
        .trim()
        .split('\n')
        .slice(1)
        .map((line) => line.split(','));
    test.each([
      ['de_leva_male.csv', DE_LEVA_MALE],
      ['de_leva_female.csv', DE_LEVA_FEMALE],
    ] as const)('%s: all 21 rows, mass, centre and radii', (file, table) => {
      const rows = csv(file);
      expect(rows).toHaveLength(21);
      for (const [segment = '', ends = '', ...values] of rows) {
        const name = segment.replace(/ \d$/, '').toLowerCase().replace(' ', '-');
        const row = table.rows.find((one) => one.segment === name && `${one.origin}-${one.other}` === ends);
        expect(
          [row?.massShare, row?.centre, row?.kSagittal, row?.kTransverse, row?.kLongitudinal],
          `${segment} ${ends}`,
        ).toEqual(values.map(Number));
      }
    });
    test('dempster_winter.csv: mass, centre and radii, but for the misprint 0.116', () => {
      const rows = csv('dempster_winter.csv');
      expect(rows).toHaveLength(19);
      for (const [segment = '', , mass, origin, , k, kOrigin, kOther] of rows) {
        const name = segment.toLowerCase().replaceAll(' ', '-');
        const row = rowOf(WINTER, name as SegmentName);
        expect([row.massShare, row.centre, row.kTransverse, row.kOther], segment).toEqual(
          [mass, origin, k, kOther].map(number),
        );
        expect(row.kOrigin, segment).toBe(name === 'head-neck' ? 1.116 : number(kOrigin));
      }
    });
  },
);
