import { describe, expect, test } from 'vitest';
import { correlationOfDerived } from '../../shared/kernel/quantity/correlationOfDerived.ts';
import { derive } from '../../shared/kernel/quantity/derive.ts';
import { betweenGroups } from '../../shared/kernel/uncertainty/betweenGroups.ts';
import { correlationOfReadings } from '../../shared/kernel/uncertainty/correlationOfReadings.ts';
import { coverageFactor } from '../../shared/kernel/uncertainty/coverageFactor.ts';
import { deriveByMonteCarlo } from '../../shared/kernel/uncertainty/deriveByMonteCarlo.ts';
import { deviationReading } from '../../shared/kernel/uncertainty/deviationReading.ts';
import { type Distribution, drawsFrom } from '../../shared/kernel/uncertainty/distribution.ts';
import { effectiveDegrees } from '../../shared/kernel/uncertainty/effectiveDegrees.ts';
import { fromHalfWidth } from '../../shared/kernel/uncertainty/fromHalfWidth.ts';
import { meanReading } from '../../shared/kernel/uncertainty/meanReading.ts';
import { monteCarlo } from '../../shared/kernel/uncertainty/monteCarlo.ts';
import { seededRandom } from '../../shared/kernel/uncertainty/seededRandom.ts';
import { straightLine } from '../../shared/kernel/uncertainty/straightLine.ts';
import { measured, type Quantity } from '../../shared/quantity.ts';
import { chancePast } from '../../shared/rules/checks/chancePast.ts';
import type { Unit } from '../../shared/units.ts';

const q = <U extends Unit>(value: number, unit: U, u: number): Quantity<U> => measured('x', 'input', value, unit, u);
const result = {
  symbol: 'y',
  name: 'result',
  unit: '1',
  formula: 'y = f',
  source: { cite: 'JCGM', status: 'published' },
} as const;

describe('JCGM 100:2008, guide to the expression of uncertainty in measurement', () => {
  test('U1, clause 4.4.3: twenty temperatures', () => {
    const readings = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11,
      101.2, 101.57, 101.84, 102.36, 102.72,
    ];
    const mean = meanReading('t', 'temperature', readings, '1');
    expect(mean.value).toBeCloseTo(100.145, 3);
    expect(deviationReading('s', 'deviation', readings, '1').value).toBeCloseTo(1.489, 3);
    expect(mean.u).toBeCloseTo(0.333, 3);
  });

  test('U2, clause G.4.1: product of three inputs', () => {
    const [a, b, c] = [0.0025, 0.0057, 0.0082];
    const y = derive(result, { a: q(1, '1', a), b: q(1, '1', b), c: q(1, '1', c) }, (x) => x.a * x.b * x.c);
    expect(y.u).toBeCloseTo(0.0103, 4);
    const degrees = effectiveDegrees([
      { u: a, degrees: 9 },
      { u: b, degrees: 4 },
      { u: c, degrees: 14 },
    ]);
    expect(degrees).toBeCloseTo(19.0, 1);
    // The guide rounds to 19.0 before it looks up t.
    const k = coverageFactor(0.95, Math.round(degrees));
    expect(k).toBeCloseTo(2.09, 2);
    expect(k * (y.u ?? 0)).toBeCloseTo(0.022, 3);
  });

  test.each([
    [1, 12.71, 63.66],
    [2, 4.3, 9.92],
    [5, 2.57, 4.03],
    [10, 2.23, 3.17],
    [16, 2.12, 2.92],
    [20, 2.09, 2.85],
    [50, 2.01, 2.68],
    [Number.POSITIVE_INFINITY, 1.96, 2.576],
  ])('U3, table G.2: %d degrees of freedom, t95 %f, t99 %f', (degrees, t95, t99) => {
    const digits = degrees === Number.POSITIVE_INFINITY ? 3 : 2;
    expect(coverageFactor(0.95, degrees)).toBeCloseTo(t95, digits);
    expect(coverageFactor(0.99, degrees)).toBeCloseTo(t99, digits);
  });

  describe('U4, clause H.1: end gauge, nanometres', () => {
    const inputs = {
      l_S: q(50_000_623, '1', 75 / 3),
      d: q(215, '1', Math.hypot(13 / Math.sqrt(5), 10 / coverageFactor(0.95, 5), 20 / 3)),
      δα: q(0, '1', fromHalfWidth(1e-6, 'rectangular')),
      θ: q(-0.1, '1', Math.hypot(0.2, fromHalfWidth(0.5, 'arcsine'))),
      α_S: q(11.5e-6, '1', fromHalfWidth(2e-6, 'rectangular')),
      δθ: q(0, '1', fromHalfWidth(0.05, 'rectangular')),
    };
    const length = (x: { readonly [K in keyof typeof inputs]: number }) =>
      x.l_S + x.d - x.l_S * (x.δα * x.θ + x.α_S * x.δθ);

    test('u(d) 9.7 nm and u(θ) 0.41 °C', () => {
      expect(inputs.d.u).toBeCloseTo(9.7, 1);
      expect(inputs.θ.u).toBeCloseTo(0.41, 2);
    });
    test('first order: 50.000838 mm, u_c 32 nm', () => {
      const l = derive(result, inputs, length);
      expect(l.value).toBeCloseTo(50_000_838, 0);
      expect(Math.round(l.u ?? 0)).toBe(32);
    });
    test('ν_eff 16.7, k 2.92, U99 93 nm', () => {
      const degrees = effectiveDegrees([
        { u: 25, degrees: 18 },
        { u: 9.7, degrees: 25.6 },
        { u: 2.9, degrees: 50 },
        { u: 16.6, degrees: 2 },
      ]);
      // 16.7 is printed from rounded contributions.
      expect(Math.abs(degrees - 16.7)).toBeLessThan(0.2);
      const k = coverageFactor(0.99, degrees);
      expect(k).toBeCloseTo(2.92, 2);
      expect(Math.abs(k * 32 - 93)).toBeLessThan(1);
    });
    test('clause H.1.7: with the second order, u_c is 34 nm; random draws find it', () => {
      const { quantity } = deriveByMonteCarlo(result, inputs, length, seededRandom(1), { leastDraws: 200_000 });
      expect(Math.round(quantity.u ?? 0)).toBe(34);
    });
  });

  describe('U5, clause H.2: resistance and reactance from readings taken together', () => {
    const V = [5.007, 4.994, 5.005, 4.99, 4.999];
    const I = [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3];
    const φ = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
    const inputs = {
      V: meanReading('V', 'voltage', V, '1'),
      I: meanReading('I', 'current', I, '1'),
      φ: meanReading('φ', 'phase', φ, 'rad'),
    };
    const r = {
      'I|V': correlationOfReadings(V, I),
      'V|φ': correlationOfReadings(V, φ),
      'I|φ': correlationOfReadings(I, φ),
    };
    type X = { readonly V: number; readonly I: number; readonly φ: number };
    const R = (x: X) => (x.V / x.I) * Math.cos(x.φ);
    const reactance = (x: X) => (x.V / x.I) * Math.sin(x.φ);
    const Z = (x: X) => x.V / x.I;

    test('means, uncertainties and correlations of the readings', () => {
      expect(inputs.V.value).toBeCloseTo(4.999, 4);
      expect(inputs.V.u).toBeCloseTo(0.0032, 4);
      expect((inputs.I.u ?? 0) * 1000).toBeCloseTo(0.0095, 4);
      expect(inputs.φ.u).toBeCloseTo(0.00075, 5);
      expect(r['I|V']).toBeCloseTo(-0.36, 2);
      expect(r['V|φ']).toBeCloseTo(0.86, 2);
      expect(r['I|φ']).toBeCloseTo(-0.65, 2);
    });
    test.each([
      ['R', R, 127.732, 0.071],
      ['X', reactance, 219.847, 0.295],
      ['Z', Z, 254.26, 0.236],
    ] as const)('%s with correlations', (_name, f, value, u) => {
      const y = derive(result, inputs, f, r);
      expect(y.value).toBeCloseTo(value, 3);
      expect(Math.abs((y.u ?? 0) - u)).toBeLessThan(0.001);
    });
    test('correlations of the results: −0.588, −0.485, 0.993', () => {
      expect(correlationOfDerived(inputs, R, reactance, r)).toBeCloseTo(-0.588, 2);
      expect(correlationOfDerived(inputs, R, Z, r)).toBeCloseTo(-0.485, 2);
      expect(correlationOfDerived(inputs, reactance, Z, r)).toBeCloseTo(0.993, 3);
    });
    test('correlations ignored: u 0.195, 0.201, 0.204, and 0.056, 0.527, 0.878 between them', () => {
      expect(derive(result, inputs, R).u).toBeCloseTo(0.195, 3);
      expect(derive(result, inputs, reactance).u).toBeCloseTo(0.201, 3);
      expect(derive(result, inputs, Z).u).toBeCloseTo(0.204, 3);
      expect(correlationOfDerived(inputs, R, reactance)).toBeCloseTo(0.056, 2);
      expect(correlationOfDerived(inputs, R, Z)).toBeCloseTo(0.527, 2);
      expect(correlationOfDerived(inputs, reactance, Z)).toBeCloseTo(0.878, 2);
    });
  });

  test('U6, clause H.3: calibration line of a thermometer', () => {
    const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
    const b = [171, 169, 166, 159, 164, 165, 156, 157, 159, 161, 160].map((value) => -value / 1000);
    const line = straightLine(t, b, 20);
    expect(line.intercept).toBeCloseTo(-0.1712, 4);
    expect(line.interceptU).toBeCloseTo(0.0029, 4);
    expect(line.slope).toBeCloseTo(0.00218, 5);
    expect(line.slopeU).toBeCloseTo(0.00067, 5);
    expect(line.correlation).toBeCloseTo(-0.93, 3);
    expect(line.residual).toBeCloseTo(0.0035, 4);
    expect(line.degrees).toBe(9);
    expect(line.at(30).value).toBeCloseTo(-0.1494, 4);
    expect(line.at(30).u).toBeCloseTo(0.0041, 4);
    const centred = straightLine(t, b, 24.0085);
    expect(centred.intercept).toBeCloseTo(-0.1625, 4);
    expect(centred.interceptU).toBeCloseTo(0.0011, 4);
    expect(centred.correlation).toBeCloseTo(0, 3);
  });

  test('U7, clause H.5: a voltage standard over ten days of five readings, µV', () => {
    const means = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41];
    const deviations = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86];
    const days = means.map((mean, k) => ({ mean, deviation: deviations[k] as number, size: 5 }));
    const found = betweenGroups(days);
    expect(Math.round(found.mean)).toBe(97);
    expect(Math.round(found.deviationOfMeans)).toBe(57);
    expect(Math.round(found.fromMeans)).toBe(128);
    expect(Math.round(found.within)).toBe(85);
    // 2.25 is printed from the rounded 128 and 85.
    expect(Math.abs(found.f - 2.25)).toBeLessThan(0.03);
    expect(found.degrees).toEqual([9, 40]);
    expect(Math.round(found.between)).toBe(43);
    expect(Math.round(found.u)).toBe(18);
  });

  test('U8, clause H.6: hardness, resolution and repeats: variance 0.307, u_c 0.55', () => {
    const parts = {
      a: q(0, '1', 0.45 / Math.sqrt(5)),
      b: q(0, '1', fromHalfWidth(0.05, 'rectangular')),
      c: q(0, '1', fromHalfWidth(0.1, 'triangular')),
      d: q(0, '1', fromHalfWidth(0.11, 'triangular')),
      e: q(0, '1', fromHalfWidth((0.015 * 36) / 2, 'triangular')),
      f: q(0, '1', 0.5),
    };
    const y = derive(result, parts, (x) => x.a + x.b + x.c + x.d + x.e + x.f);
    expect((y.u ?? 0) ** 2).toBeCloseTo(0.307, 3);
    expect(y.u).toBeCloseTo(0.55, 2);
  });
});

const sumOf = (distributions: readonly Distribution[], seed: number) => {
  const random = seededRandom(seed);
  const draws = distributions.map((distribution) => drawsFrom(distribution, random));
  return monteCarlo(() => draws.reduce((sum, draw) => sum + draw(), 0), { leastDraws: 400_000 });
};

const rectangle = (sd: number): Distribution => ({
  kind: 'rectangular',
  low: -sd * Math.sqrt(3),
  high: sd * Math.sqrt(3),
});

const model = (x: { R: number; dR: number; a: number; W: number; S: number }) =>
  (x.R + x.dR) * (1 + (x.a - 1.2) * (1 / x.W - 1 / x.S)) - 100_000;

const loss = (x1: number, correlation: number) =>
  deriveByMonteCarlo(
    result,
    { a: q(x1, '1', 0.005), b: q(0, '1', 0.005) },
    ({ a, b }) => (a * a + b * b) * 1e6,
    seededRandom(6),
    { leastDraws: 400_000, correlations: { 'a|b': correlation } },
  );

describe('JCGM 101:2008, propagation of distributions by a Monte Carlo method', () => {
  const normal: Distribution = { kind: 'normal', mean: 0, sd: 1 };
  // Tolerances 0.01: half a unit in the second decimal printed, and the scatter of 400 000 draws.
  test('U9, clause 9.2.2: four standard normals, u 2.00, 95 % ±3.92', () => {
    const y = sumOf([normal, normal, normal, normal], 2);
    expect(y.isStable).toBe(true);
    expect(Math.abs(y.sd - 2)).toBeLessThan(0.01);
    expect(Math.abs(y.symmetric[1] - 3.92)).toBeLessThan(0.03);
    expect(Math.abs(y.symmetric[0] + 3.92)).toBeLessThan(0.03);
  });
  test('U10, clause 9.2.3: four rectangles, 95 % ±3.88, exactly 2√3[2 − (3/5)^¼]', () => {
    const y = sumOf([rectangle(1), rectangle(1), rectangle(1), rectangle(1)], 3);
    const exact = 2 * Math.sqrt(3) * (2 - (3 / 5) ** 0.25);
    expect(exact).toBeCloseTo(3.88, 2);
    expect(Math.abs(y.sd - 2)).toBeLessThan(0.01);
    expect(Math.abs(y.symmetric[1] - exact)).toBeLessThan(0.02);
  });
  test('U11, clause 9.2.4: one rectangle ten times as wide, u 10.1, 95 % ±17.0', () => {
    const y = sumOf([rectangle(1), rectangle(1), rectangle(1), rectangle(10)], 4);
    expect(Math.abs(y.sd - Math.sqrt(103))).toBeLessThan(0.05);
    expect(Math.abs(y.symmetric[1] - 17)).toBeLessThan(0.05);
  });

  test('U12, clause 9.3: mass calibration, 1.2341 mg, u 0.0754, [1.0834, 1.3825]; first order gives 0.0539', () => {
    const random = seededRandom(5);
    const draws = {
      R: drawsFrom({ kind: 'normal', mean: 100_000, sd: 0.05 }, random),
      dR: drawsFrom({ kind: 'normal', mean: 1.234, sd: 0.02 }, random),
      a: drawsFrom({ kind: 'rectangular', low: 1.1, high: 1.3 }, random),
      W: drawsFrom({ kind: 'rectangular', low: 7000, high: 9000 }, random),
      S: drawsFrom({ kind: 'rectangular', low: 7950, high: 8050 }, random),
    };
    const y = monteCarlo(() => model({ R: draws.R(), dR: draws.dR(), a: draws.a(), W: draws.W(), S: draws.S() }), {
      leastDraws: 400_000,
    });
    expect(Math.abs(y.mean - 1.2341)).toBeLessThan(0.0005);
    expect(Math.abs(y.sd - 0.0754)).toBeLessThan(0.0005);
    expect(Math.abs(y.shortest[0] - 1.0834)).toBeLessThan(0.002);
    expect(Math.abs(y.shortest[1] - 1.3825)).toBeLessThan(0.002);
    const first = derive(
      result,
      {
        R: q(100_000, '1', 0.05),
        dR: q(1.234, '1', 0.02),
        a: q(1.2, '1', fromHalfWidth(0.1, 'rectangular')),
        W: q(8000, '1', fromHalfWidth(1000, 'rectangular')),
        S: q(8000, '1', fromHalfWidth(50, 'rectangular')),
      },
      model,
    );
    expect(first.value).toBeCloseTo(1.234, 4);
    expect(first.u).toBeCloseTo(0.0539, 4);
  });

  describe('U13 and U14, clause 9.4: comparison loss X₁² + X₂², in 10⁻⁶', () => {
    test.each([
      [0, 0, 50, 50, 0, 150],
      [0.01, 0, 150, 112, 0, 367],
      [0.05, 0, 2551, 502, 1590, 3543],
      [0, 0.9, 50, 67, 0, 185],
      [0.01, 0.9, 150, 121, 13, 398],
      [0.05, 0.9, 2551, 505, 1628, 3555],
    ])('x₁ %f, r %f: mean %f, u %f, [%f, %f]', (x1, r, mean, u, low, high) => {
      const { distribution } = loss(x1, r);
      if (distribution === null) throw new Error('no distribution');
      // Mean and sd: about four standard errors of 400 000 draws. The ends of a shortest interval lie on a flat place
      // and settle slowly: 8 for 2 million draws, as the cube root of the number.
      expect(Math.abs(distribution.mean - mean)).toBeLessThan(u > 400 ? 4 : 1);
      expect(Math.abs(distribution.sd - u)).toBeLessThan(u > 400 ? 4 : 1);
      expect(Math.abs(distribution.shortest[0] - low)).toBeLessThan(u > 400 ? 14 : 3);
      expect(Math.abs(distribution.shortest[1] - high)).toBeLessThan(u > 400 ? 14 : 5);
    });
    test('first order fails at zero: u 0 against 50', () => {
      const first = derive(result, { a: q(0, '1', 0.005), b: q(0, '1', 0.005) }, ({ a, b }) => (a * a + b * b) * 1e6);
      expect(first).toMatchObject({ value: 0, u: 0 });
    });
  });

  test('U15, clause 9.5: end gauge by random draws, 838 nm, u 36, 99 % [745, 932]', () => {
    const random = seededRandom(7);
    const from = (distribution: Distribution) => drawsFrom(distribution, random);
    const t = (centre: number, scale: number, degrees: number) => from({ kind: 't', centre, scale, degrees });
    const trapezoid = (half: number, vagueness: number) =>
      from({ kind: 'curvilinear-trapezoid', low: -half, high: half, vagueness });
    const [L, D, d1, d2] = [t(50_000_623, 25, 18), t(215, 6, 24), t(0, 4, 5), t(0, 7, 8)] as const;
    const alpha = from({ kind: 'rectangular', low: 9.5e-6, high: 13.5e-6 });
    const theta0 = from({ kind: 'normal', mean: -0.1, sd: 0.2 });
    const swing = from({ kind: 'arcsine', low: -0.5, high: 0.5 });
    const dAlpha = trapezoid(1e-6, 0.1e-6);
    const dTheta = trapezoid(0.05, 0.025);
    const y = monteCarlo(
      () => {
        const l = L();
        return l + D() + d1() + d2() - l * (dAlpha() * (theta0() + swing()) + alpha() * dTheta()) - 50_000_000;
      },
      { coverage: 0.99, leastDraws: 600_000 },
    );
    expect(Math.round(y.mean)).toBe(838);
    expect(Math.abs(y.sd - 36)).toBeLessThan(0.5);
    expect(Math.abs(y.shortest[0] - 745)).toBeLessThan(1.5);
    expect(Math.abs(y.shortest[1] - 932)).toBeLessThan(1.5);
  });
});

describe('JCGM 106:2012, the role of measurement uncertainty in conformity assessment', () => {
  test('U16, clauses 7.3 and 7.4: chance of meeting a limit, 0.92, 0.99, 0.66', () => {
    expect(chancePast(-5.47, 0.05, '<=', [-5.4])).toBeCloseTo(0.92, 2);
    expect(chancePast(509.7, 8.6, '>=', [490])).toBeCloseTo(0.99, 2);
    expect(chancePast(13.6, 1.8, 'between', [12.5, 16.3])).toBeCloseTo(0.66, 2);
  });
  test('U17, clause 8.3: a guard band of 2u accepts falsely in at most 2.3 % of cases', () => {
    expect(1 - chancePast(10 - 2 * 0.5, 0.5, '<=', [10])).toBeCloseTo(0.023, 3);
  });
});
