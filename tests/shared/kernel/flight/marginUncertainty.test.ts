import { describe, expect, test } from 'vitest';
import { randomSource } from '../../../../main/demo/randomSource.ts';
import { marginForError } from '../../../../shared/kernel/flight/marginForError.ts';
import type { Aim } from '../../../../shared/kernel/flight/passesAim.ts';
import { NO_AIR } from '../../../../shared/kernel/flight/release.ts';
import { isKnown, measured, type Reading } from '../../../../shared/quantity.ts';

const EDGES = ['slower', 'faster', 'flatter', 'steeper'] as const;
const known = (reading: Reading) => {
  if (!isKnown(reading)) throw new Error(reading.unknown);
  return reading;
};
const release = (v: number, θ: number, y: number, u: readonly [number, number, number] = [0, 0, 0]) => ({
  speed: measured('v', 'Speed', v, 'm/s', u[0]),
  angle: measured('θ', 'Angle', θ, 'rad', u[1]),
  height: measured('y_0', 'Height', y, 'm', u[2]),
});

const CASES: readonly [string, Aim, readonly [number, number, number], number][] = [
  ['ring', { kind: 'ring', distance: 4.225, height: 3.05, diameter: 0.457 }, [7.1973, 0.907571, 2.1], 0.121],
  ['goal', { kind: 'goal', distance: 7, bottom: 0, top: 2 }, [22, -0.05, 2.2], 0.094],
  ['net', { kind: 'net', distance: 12, height: 0.914, courtEnd: 18.3 }, [50, -0.12, 2.75], 0.0335],
];
const U = [0.003, 0.0008, 0.002] as const;
const PLACE_U = { distance: 0.002, height: 0.0015 };

describe.each(CASES)('%s', (_name, aim, [v, θ, y], radius) => {
  const margin = marginForError(release(v, θ, y, U), aim, radius, NO_AIR, PLACE_U);

  test('JCGM 101:2008 beside JCGM 100: 600 random releases and places of the target spread the edges as u says', () => {
    const noise = randomSource(5);
    const found = Object.fromEntries(EDGES.map((edge) => [edge, [] as number[]]));
    for (let i = 0; i < 600; i += 1) {
      const [Δd, Δy] = [noise.normal(PLACE_U.distance), noise.normal(PLACE_U.height)];
      const moved = {
        ...aim,
        distance: aim.distance + Δd,
        ...('height' in aim ? { height: aim.height + Δy } : {}),
        ...('courtEnd' in aim ? { courtEnd: aim.courtEnd + Δd } : {}),
      } as Aim;
      const drawn = release(v + noise.normal(U[0]), θ + noise.normal(U[1]), y + noise.normal(U[2]));
      const here = marginForError(drawn, moved, radius, NO_AIR);
      expect(here.passes).toBe(true);
      for (const edge of EDGES) found[edge]?.push(known(here[edge]).value);
    }
    for (const edge of EDGES) {
      const of = found[edge] ?? [];
      const mean = of.reduce((sum, one) => sum + one, 0) / of.length;
      const sd = Math.sqrt(of.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (of.length - 1));
      const { u } = known(margin[edge]);
      // A standard deviation from 600 draws is good to 3 %; four times that is allowed.
      if (u !== null) expect(sd / u, edge).toBeCloseTo(1, 0.62);
    }
    expect(EDGES.filter((edge) => known(margin[edge]).u !== null).length).toBeGreaterThan(1);
  });

  test('law: an exact release at an exact target has exact edges', () => {
    const exact = marginForError(release(v, θ, y), aim, radius, NO_AIR);
    for (const edge of EDGES) {
      expect(known(exact[edge]).value).toBeCloseTo(known(margin[edge]).value, 6);
      if (known(exact[edge]).u !== null) expect(known(exact[edge]).u).toBe(0);
    }
  });
});

test('an edge is as uncertain as what it rests on: a target without u leaves it without one, and says why', () => {
  const [, aim, [v, θ, y], radius] = CASES[0] as (typeof CASES)[number];
  const { slower } = marginForError(release(v, θ, y, U), aim, radius, NO_AIR, {
    distance: 'entered without one',
    height: 0,
  });
  expect(known(slower).u).toBeNull();
  expect(known(slower).uReason).toContain('entered without one');
});
