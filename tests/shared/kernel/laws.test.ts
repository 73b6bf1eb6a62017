import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assessCase } from '../../../shared/assess/assessCase.ts';
import { DE_LEVA_FEMALE, DE_LEVA_MALE } from '../../../shared/kernel/anthropometry/deLeva1996.ts';
import { segmentInertia } from '../../../shared/kernel/anthropometry/segmentInertia.ts';
import { wholeBodyCentreOfMass } from '../../../shared/kernel/anthropometry/wholeBodyCentreOfMass.ts';
import { WINTER } from '../../../shared/kernel/anthropometry/winter2009.ts';
import { asymmetry } from '../../../shared/kernel/change/asymmetry.ts';
import { ASYMMETRY_FORMULAS } from '../../../shared/kernel/change/asymmetryFormulas.ts';
import { leastSpeed } from '../../../shared/kernel/flight/leastSpeed.ts';
import { NO_AIR } from '../../../shared/kernel/flight/release.ts';
import { speedToScore } from '../../../shared/kernel/flight/speedToScore.ts';
import { analyseForceTrace } from '../../../shared/kernel/jump/analyseForceTrace.ts';
import { flightHeight } from '../../../shared/kernel/jump/flightHeight.ts';
import { heightFromTakeoffVelocity } from '../../../shared/kernel/jump/heightFromTakeoffVelocity.ts';
import { POWER_EQUATIONS } from '../../../shared/kernel/jump/powerEquations.ts';
import { predictPower } from '../../../shared/kernel/jump/predictPower.ts';
import { takeoffVelocityFromFlightTime } from '../../../shared/kernel/jump/takeoffVelocityFromFlightTime.ts';
import { takeoffVelocityFromHeight } from '../../../shared/kernel/jump/takeoffVelocityFromHeight.ts';
import { staticJointMoment } from '../../../shared/kernel/load/staticJointMoment.ts';
import { depthFactor } from '../../../shared/kernel/plane/depthFactor.ts';
import { outOfPlaneAngle } from '../../../shared/kernel/plane/outOfPlaneAngle.ts';
import type { Point } from '../../../shared/kernel/plane/point.ts';
import { derive } from '../../../shared/kernel/quantity/derive.ts';
import { derivative } from '../../../shared/kernel/signal/derivative.ts';
import { resample } from '../../../shared/kernel/signal/resample.ts';
import { residualAnalysis } from '../../../shared/kernel/signal/residualAnalysis.ts';
import { deriveByMonteCarlo } from '../../../shared/kernel/uncertainty/deriveByMonteCarlo.ts';
import { seededRandom } from '../../../shared/kernel/uncertainty/seededRandom.ts';
import { inUnit, isKnown, measured, type Quantity, type Reading } from '../../../shared/quantity.ts';
import { convert, type Unit, UNITS } from '../../../shared/units.ts';
import { anyCase } from '../../support/anyCase.ts';
import { FIGURE } from './trial/inventedTrial.ts';

// Laws of one function alone stand beside it; here are those that hold for many, or between two.

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const exact = <U extends Unit>(value: number, unit: U): Quantity<U> => measured('x', 'given', value, unit, 0);
const known = <U extends Unit>(reading: Reading<U>): Quantity<U> => {
  if (!isKnown(reading)) throw new Error(reading.unknown);
  return reading;
};
const what = {
  symbol: 'y',
  name: 'result',
  unit: '1',
  formula: 'y = f(x)',
  source: { cite: 'test', status: 'derived' },
} as const;

const total = (values: Readonly<Record<string, number>>) => Object.values(values).reduce((s, x) => s + x, 0);
const otherSide = (name: string) =>
  name.endsWith('left') ? name.replace('left', 'right') : name.replace('right', 'left');

describe('units (exact factors, NIST SP 811)', () => {
  const units = Object.keys(UNITS) as Unit[];
  const alike = fc
    .constantFrom(...units)
    .chain((from) =>
      fc.tuple(
        fc.constant(from),
        fc.constantFrom(...units.filter((to) => UNITS[to].dimension === UNITS[from].dimension)),
      ),
    );
  test('law: there and back is where one was, and uncertainty goes along', () => {
    fc.assert(
      fc.property(alike, between(-1e6, 1e6), between(0, 100), ([from, to], value, u) => {
        expect(convert(convert(value, from, to), to, from)).toBeCloseTo(value, 6);
        const quantity = measured('x', 'x', value, from, u);
        const back = inUnit(inUnit(quantity, to), from);
        expect(back.value).toBeCloseTo(value, 6);
        expect(back.u).toBeCloseTo(u, 9);
      }),
    );
  });
  test('law: a difference between sides does not depend on the unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ASYMMETRY_FORMULAS.map(({ id }) => id)),
        between(0.1, 10),
        between(0.1, 10),
        (id, a, b) => {
          const inMetres = asymmetry(id, exact(a, 'm'), exact(b, 'm')).value;
          const inInches = asymmetry(id, inUnit(exact(a, 'm'), '[in_i]'), inUnit(exact(b, 'm'), '[in_i]')).value;
          expect(inInches).toBeCloseTo(inMetres, 9);
        },
      ),
    );
  });
});

describe('first-order uncertainty (JCGM 100:2008, 5.1 and 5.2)', () => {
  test('law: for a sum the variances add, whatever the order; with r = 1 the uncertainties themselves', () => {
    fc.assert(
      fc.property(fc.array(between(0, 5), { minLength: 1, maxLength: 6 }), (us) => {
        const inputs = Object.fromEntries(us.map((u, i) => [`x${i}`, measured(`x${i}`, 'x', i, '1', u)]));
        const names = Object.keys(inputs);
        const turned = Object.fromEntries(Object.entries(inputs).toReversed());
        const apart = Math.hypot(...us);
        expect(derive(what, inputs, total).u).toBeCloseTo(apart, 9);
        expect(derive(what, turned, total).u).toBeCloseTo(apart, 9);
        const r = Object.fromEntries(names.flatMap((a, i) => names.slice(i + 1).map((b) => [`${a}|${b}`, 1])));
        expect(derive(what, inputs, total, r).u).toBeCloseTo(
          us.reduce((s, u) => s + u, 0),
          6,
        );
      }),
    );
  });
  test('law: scaling a result scales its uncertainty, and less sure inputs never give a surer result', () => {
    fc.assert(
      fc.property(between(0.2, 5), between(0.01, 0.05), between(1, 3), between(0.5, 20), (x, u, more, k) => {
        const u1 = derive(what, { x: measured('x', 'x', x, '1', u) }, (p) => p.x ** 2).u ?? 0;
        expect(derive(what, { x: measured('x', 'x', x, '1', u) }, (p) => k * p.x ** 2).u).toBeCloseTo(k * u1, 9);
        const u2 = derive(what, { x: measured('x', 'x', x, '1', u * more) }, (p) => p.x ** 2).u ?? 0;
        expect(u2).toBeGreaterThanOrEqual(u1 - 1e-12);
      }),
    );
  });
  test('law: Monte Carlo agrees where the release formula is near linear (JCGM 101:2008, 8.1)', () => {
    fc.assert(
      fc.property(between(3, 9), between(-1, 1.5), fc.integer({ min: 1, max: 99 }), (d, rise, seed) => {
        const θ = Math.PI / 4 + Math.atan(rise / d) / 2 + 0.1;
        const inputs = {
          d: measured('d', 'd', d, 'm', 0.01),
          h: measured('h', 'h', rise, 'm', 0.01),
          θ: measured('θ', 'θ', θ, 'rad', 0.004),
        };
        const speed = (p: { d: number; h: number; θ: number }) =>
          known(speedToScore(exact(p.d, 'm'), exact(p.h, 'm'), exact(p.θ, 'rad'), NO_AIR, false)).value;
        const first = known(speedToScore(inputs.d, inputs.h, inputs.θ, NO_AIR, false));
        const { distribution } = deriveByMonteCarlo({ ...what, unit: 'm/s' }, inputs, speed, seededRandom(seed), {
          mostDraws: 20_000,
        });
        expect((distribution?.sd ?? 0) / (first.u ?? 1)).toBeCloseTo(1, 1);
        expect(Math.abs((distribution?.mean ?? 0) - first.value)).toBeLessThan(0.1 * (first.u ?? 0));
      }),
      { numRuns: 4 },
    );
  });
});

const body = (place: (point: Point, name: string) => Point) =>
  Object.fromEntries(
    Object.entries(FIGURE).flatMap(([part, [x, y]]) =>
      (part === 'vertex' || part === 'cervicale' ? [part] : [`${part}-left`, `${part}-right`]).map((name) => [
        name,
        place({ x, y }, name),
      ]),
    ),
  );

const centreOf = (points: Record<string, Point>, table: typeof WINTER) => {
  const centre = wholeBodyCentreOfMass(points, table);
  if ('unknown' in centre) throw new Error(centre.unknown);
  return centre;
};

describe('body', () => {
  const tables = fc.constantFrom(DE_LEVA_FEMALE, DE_LEVA_MALE, WINTER);
  const posture = fc.array(fc.tuple(between(-0.2, 0.2), between(-0.2, 0.2)), { minLength: 20, maxLength: 20 });

  test('law: moving, turning, scaling or mirroring the body does the same to its centre of mass', () => {
    fc.assert(
      fc.property(
        tables,
        posture,
        between(-5, 5),
        between(-3, 3),
        between(0.2, 4),
        fc.boolean(),
        (table, bent, dx, φ, k, flip) => {
          let i = 0;
          const standing = body(({ x, y }) => {
            const [a = 0, b = 0] = bent[i++ % bent.length] ?? [];
            return { x: x + a, y: y + b };
          });
          const move = ({ x, y }: Point): Point => {
            const s = flip ? -x : x;
            return { x: k * (s * Math.cos(φ) - y * Math.sin(φ)) + dx, y: k * (s * Math.sin(φ) + y * Math.cos(φ)) - dx };
          };
          const moved = centreOf(Object.fromEntries(Object.entries(standing).map(([n, p]) => [n, move(p)])), table);
          const expected = move(centreOf(standing, table));
          expect(moved.x).toBeCloseTo(expected.x, 9);
          expect(moved.y).toBeCloseTo(expected.y, 9);
        },
      ),
    );
  });
  test('law: the centre of mass lies inside the body it belongs to, and left and right may be exchanged', () => {
    fc.assert(
      fc.property(tables, posture, (table, bent) => {
        let i = 0;
        const points = body(({ x, y }) => {
          const [a = 0, b = 0] = bent[i++ % bent.length] ?? [];
          return { x: x + a, y: y + b };
        });
        const { x, y } = centreOf(points, table);
        const [xs, ys] = [Object.values(points).map((p) => p.x), Object.values(points).map((p) => p.y)];
        expect(x).toBeGreaterThan(Math.min(...xs));
        expect(x).toBeLessThan(Math.max(...xs));
        expect(y).toBeGreaterThan(Math.min(...ys));
        expect(y).toBeLessThan(Math.max(...ys));
        const exchanged = centreOf(
          Object.fromEntries(Object.entries(points).map(([n, p]) => [otherSide(n), p])),
          table,
        );
        expect(exchanged.x).toBeCloseTo(x, 12);
        expect(exchanged.y).toBeCloseTo(y, 12);
      }),
    );
  });
  test('law: inertia goes with mass and with the square of length, and is least about the centre', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...DE_LEVA_MALE.rows),
        between(40, 120),
        between(0.1, 0.7),
        between(1.1, 3),
        (row, m, L, k) => {
          const of = (mass: number, length: number) =>
            segmentInertia(row, DE_LEVA_MALE, exact(mass, 'kg'), exact(length, 'm'), 'transverse');
          const [one, heavy, long] = [of(m, L), of(k * m, L), of(m, k * L)];
          const centre = known(one.aboutCentre).value;
          expect(known(heavy.aboutCentre).value).toBeCloseTo(k * centre, 9);
          expect(known(long.aboutOrigin).value).toBeCloseTo(k * k * known(one.aboutOrigin).value, 9);
          expect(centre).toBeLessThanOrEqual(known(one.aboutOrigin).value);
          expect(centre).toBeLessThanOrEqual(known(one.aboutOther).value);
        },
      ),
    );
  });
  test('law: mirrored, a static joint moment changes its sign; what is held adds m g x', () => {
    fc.assert(
      fc.property(between(0.2, 10), between(-0.5, 0.5), between(-2, 2), (held, reach, shift) => {
        const arm = (sign: number, mass: number | null) => {
          const points = {
            'elbow-right': { x: sign * shift, y: 1 },
            'wrist-right': { x: sign * (shift + 0.25), y: 1.1 },
            'knuckle-right': { x: sign * (shift + 0.33), y: 1.12 },
          };
          const at = { x: sign * (shift + reach), y: 1.1 };
          const moment = staticJointMoment({
            points,
            table: DE_LEVA_MALE,
            bodyMass: exact(72, 'kg'),
            joint: 'elbow',
            side: 'right',
            carries: 'hanging',
            held: mass === null ? null : { mass: exact(mass, 'kg'), at },
            pointU: 0,
          });
          if ('unknown' in moment) throw new Error(moment.unknown);
          return moment.value;
        };
        expect(arm(-1, held)).toBeCloseTo(-arm(1, held), 9);
        expect(arm(1, held) - arm(1, null)).toBeCloseTo(held * 9.80665 * reach, 9);
      }),
    );
  });
});

describe('plane', () => {
  test('law: a length corrected for depth is the true one, nearer or farther', () => {
    fc.assert(
      fc.property(between(2, 20), between(-1, 1), between(0.1, 3), (D, d, length) => {
        // Pinhole: an object at D − d looks D/(D − d) times as long as in the plane.
        const seen = (length * D) / (D - d);
        expect(seen / (1 + depthFactor(exact(D, 'm'), exact(d, 'm')).value)).toBeCloseTo(length, 9);
      }),
    );
  });
  test('law: the turn found from a foreshortened length is the turn that foreshortened it', () => {
    fc.assert(
      fc.property(between(0, 1.4), between(0.1, 1), (θ, L) => {
        expect(known(outOfPlaneAngle(exact(L * Math.cos(θ), 'm'), exact(L, 'm'))).value).toBeCloseTo(θ, 6);
      }),
    );
  });
});

describe('signals', () => {
  const samples = fc.array(
    fc.integer({ min: -1000, max: 1000 }).map((n) => n / 1000),
    { minLength: 60, maxLength: 120 },
  );
  test('law: the cut-off suggested does not depend on unit or origin, and its noise scales', () => {
    fc.assert(
      fc.property(samples, between(0.01, 1000), between(-50, 50), (xs, k, b) => {
        const [one, other] = [
          residualAnalysis(xs, 100),
          residualAnalysis(
            xs.map((x) => k * x + b),
            100,
          ),
        ];
        // A record of nothing has no noise to find.
        fc.pre(one.line.noise > 1e-4);
        expect(other.line.noise / k).toBeCloseTo(one.line.noise, 6);
        if ('cutoffHz' in one.suggestion && 'cutoffHz' in other.suggestion) {
          expect(other.suggestion.cutoffHz).toBeCloseTo(one.suggestion.cutoffHz, 4);
        } else {
          expect('unknown' in one.suggestion).toBe('unknown' in other.suggestion);
        }
      }),
      { numRuns: 30 },
    );
  });
  test('law: resampling at its own even times changes nothing, and a cubic is met exactly between them', () => {
    fc.assert(
      fc.property(
        fc.tuple(between(-2, 2), between(-2, 2), between(-2, 2), between(-2, 2)),
        between(20, 200),
        ([a, b, c, d], rate) => {
          const cubic = (t: number) => a + b * t + c * t * t + d * t ** 3;
          const times = Array.from({ length: 40 }, (_, i) => i / rate);
          const same = resample(times, times.map(cubic), rate);
          same.values.forEach((value, i) => expect(value).toBeCloseTo(cubic(i / rate), 9));
          const finer = resample(times, times.map(cubic), 3 * rate);
          finer.values.forEach((value, i) => expect(value).toBeCloseTo(cubic(i / (3 * rate)), 9));
        },
      ),
      { numRuns: 30 },
    );
  });
  test('law: the derivative of samples played k times slower is k times smaller, the second k² times', () => {
    fc.assert(
      fc.property(samples, between(1.5, 10), (xs, k) => {
        const at = (order: 1 | 2, rate: number) => derivative(xs, rate, order).slice(1, -1) as number[];
        at(1, 100).forEach((v, i) => expect(at(1, 100 / k)[i]).toBeCloseTo(v / k, 9));
        at(2, 100).forEach((a, i) => expect(at(2, 100 / k)[i]).toBeCloseTo(a / (k * k), 6));
      }),
      { numRuns: 20 },
    );
  });
});

const half = (from: number, to: number, size: number, t: number) =>
  t >= from && t < to ? size * Math.sin((Math.PI * (t - from)) / (to - from)) : 0;

/** J7 of the dossier, with a landing that mirrors the push. */
const record = (scale: number, stillS: number): number[] => {
  const W = 70 * 9.80665;
  return Array.from({ length: Math.round((stillS + 4) * 1000) }, (_, i) => {
    const t = i / 1000 - stillS;
    if (t >= 0.66 && t < 1.2) return 0;
    return (
      scale *
      (W + half(0, 0.3, -350, t) + half(0.3, 0.66, 1100, t) + half(1.2, 1.56, 1100, t) + half(1.56, 1.86, -350, t))
    );
  });
};

const analyse = (plates: readonly (readonly number[])[]) =>
  analyseForceTrace({ rateHz: 1000, plates, massKg: null, kind: 'countermovement' });

describe('jumps', () => {
  test('law: time, velocity and height of one free flight agree, and each rises with the others', () => {
    fc.assert(
      fc.property(between(0.2, 0.8), between(0.001, 0.1), (t, more) => {
        const height = flightHeight(exact(t, 's'));
        const v = takeoffVelocityFromFlightTime(exact(t, 's'));
        expect(heightFromTakeoffVelocity(v).value).toBeCloseTo(height.value, 12);
        expect(takeoffVelocityFromHeight(height).value).toBeCloseTo(v.value, 12);
        expect(flightHeight(exact(t + more, 's')).value).toBeGreaterThan(height.value);
        expect(flightHeight(exact(2 * t, 's')).value).toBeCloseTo(4 * height.value, 12);
      }),
    );
  });
  test('law: predicted power rises with height and with mass', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...POWER_EQUATIONS.map(({ id }) => id)),
        between(0.35, 0.5),
        between(60, 90),
        (id, h, m) => {
          const power = (height: number, mass: number) => predictPower(id, exact(height, 'm'), exact(mass, 'kg'));
          const one = known(power(h, m)).value;
          expect(known(power(h + 0.02, m)).value).toBeGreaterThan(one);
          expect(known(power(h, m + 2)).value).toBeGreaterThan(one);
        },
      ),
    );
  });

  test('law: a jumper twice as heavy who pushes twice as hard jumps the same; forces and power double', () => {
    fc.assert(
      fc.property(between(0.5, 2), (k) => {
        const [one, other] = [analyse([record(1, 1.2)]), analyse([record(k, 1.2)])];
        expect(other.jumpHeight.value).toBeCloseTo(one.jumpHeight.value, 4);
        expect(other.mass.value).toBeCloseTo(k * one.mass.value, 4);
        expect(other.peakForce.value).toBeCloseTo(k * one.peakForce.value, 4);
        expect(other.peakPower.value / (k * one.peakPower.value)).toBeCloseTo(1, 3);
      }),
      { numRuns: 10 },
    );
  });
  test('law: the load shared out over plates in any way or order, and a longer stance before, change no height', () => {
    fc.assert(
      fc.property(between(0.2, 0.8), between(0, 2), (share, longer) => {
        const fz = record(1, 1.2);
        const one = analyse([fz]);
        const parts = [fz.map((f) => share * f), fz.map((f) => (1 - share) * f)];
        for (const plates of [parts, parts.toReversed()]) {
          expect(analyse(plates).jumpHeight.value).toBeCloseTo(one.jumpHeight.value, 6);
        }
        const later = analyse([record(1, 1.2 + Math.round(longer * 1000) / 1000)]);
        // The record's own grid shifts by up to a sample.
        expect(Math.abs(later.jumpHeight.value - one.jumpHeight.value)).toBeLessThan(1e-4);
        expect(Math.abs(later.timeToTakeoff.value - one.timeToTakeoff.value)).toBeLessThan(0.0011);
        expect(Math.abs(later.takeoff.value - one.takeoff.value - longer)).toBeLessThan(0.0016);
      }),
      { numRuns: 10 },
    );
  });
});

describe('flight', () => {
  test('law: in a vacuum everything scales: k times as far and high takes √k times the speed', () => {
    fc.assert(
      fc.property(between(1, 10), between(-2, 2), between(0.2, 5), (d, rise, k) => {
        const one = leastSpeed(exact(d, 'm'), exact(rise, 'm')).value;
        expect(leastSpeed(exact(k * d, 'm'), exact(k * rise, 'm')).value).toBeCloseTo(Math.sqrt(k) * one, 9);
        expect(leastSpeed(exact(d + 0.1, 'm'), exact(rise, 'm')).value).toBeGreaterThan(one);
        expect(leastSpeed(exact(d, 'm'), exact(rise + 0.1, 'm')).value).toBeGreaterThan(one);
      }),
    );
  });
});

describe('case checks', () => {
  test('law: whatever the case, a question has its numbers, any other answer has none, and nothing is NaN', () => {
    fc.assert(
      fc.property(anyCase, ({ file }) => {
        for (const { verdict, numbers, sentence, about } of assessCase(file).checks) {
          expect(numbers.length > 0).toBe(verdict === 'questioned');
          expect(numbers.every(({ value }) => Number.isFinite(value))).toBe(true);
          expect(sentence).not.toMatch(/NaN|undefined|null|Infinity/);
          expect(about).not.toBe('');
        }
      }),
      { numRuns: 30 },
    );
  });
});
