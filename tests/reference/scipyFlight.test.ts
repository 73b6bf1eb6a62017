import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { advance, launch } from '../../shared/kernel/flight/path.ts';

interface Flight {
  readonly speed: number;
  readonly degrees: number;
  readonly height: number;
  readonly drag: number;
  readonly lift: number;
  readonly seconds: number;
  readonly x: number;
  readonly y: number;
  readonly vx: number;
  readonly vy: number;
}
const flights = JSON.parse(
  readFileSync(join(import.meta.dirname, '..', 'fixtures', 'scipy-flight', 'flights.json'), 'utf8'),
) as Flight[];

test.each(flights)(
  'SciPy 1.17.1 solve_ivp (DOP853): $speed m/s at $degrees°, drag $drag /m, lift $lift /m, after $seconds s',
  ({ speed, degrees, height, drag, lift, seconds, ...end }) => {
    const state = advance(launch(speed, (degrees * Math.PI) / 180, height), seconds, { drag, lift });
    // Two adaptive methods, asked for 1e-11 and 1e-13 a step, agree to a nanometre and to a nanometre a second.
    for (const key of ['x', 'y', 'vx', 'vy'] as const) expect(state[key]).toBeCloseTo(end[key], 9);
  },
);
