import { inverse, Matrix, solve } from 'ml-matrix';
import { DomainError } from '../../errors.ts';
import { measured, type Quantity } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { type DragGiven, type FlightSample, refuseUnusableFlight } from './fitRelease.ts';
import { VACUUM } from './path.ts';
import { pathFit } from './pathFit.ts';

const SOURCE = { cite: 'Free fall points down; least squares (JCGM 100:2008, H.3)', status: 'derived' } as const;

/** Of g. Where drag comes near gravity, two tilts explain one path: a convention well below that. */
const MOST_DRAG = 0.3;

/**
 * How far the picture's down is turned from true down (anticlockwise positive), from something in free flight: a
 * parabola is fitted to x and to y, and their accelerations point down. Air bends a path too: what it bends is worked out
 * in the picture turned level so far, taken off, and the fit repeated until it stands still.
 *
 * @param samples at least six, s and m, in coordinates not yet turned
 * @param drag of the ball, /m, and its uncertainty; null: none, as for a body
 * @returns rad; the `tilt` of a calibration by length. Its u counts the scatter and the uncertainty of the drag.
 * @throws DomainError as fitRelease; 'no-solution' where air slows the ball by more than MOST_DRAG of gravity, or where it
 *   does not settle
 * @source free fall; quadratic drag; least squares
 */
export function tiltFromFlight(samples: readonly FlightSample[], drag: DragGiven | null = null): Quantity<'rad'> {
  refuseUnusableFlight('tiltFromFlight', samples);
  const start = (samples[0] as FlightSample).t;
  const flight = samples.map(({ t, x, y }) => ({ t: t - start, x, y }));
  if (drag === null || drag.k === 0) return tiltOf(flight);
  const tilt = settledTilt(flight, drag.k);
  const change = drag.u === undefined || drag.u === 0 ? 0 : settledTilt(flight, drag.k + drag.u).value - tilt.value;
  return derive(
    {
      symbol: 'τ',
      name: 'Tilt of the picture',
      unit: 'rad',
      formula: 'τ = τ_k + δ_k',
      variant: 'δ_k: what one standard uncertainty of the drag factor changes',
      source: SOURCE,
    },
    { τ_k: tilt, δ_k: measured('δ_k', 'Change with the drag factor', 0, 'rad', Math.abs(change)) },
    (p) => p.τ_k + p.δ_k,
  );
}

function settledTilt(flight: readonly FlightSample[], k: number): Quantity<'rad'> {
  let turned = 0;
  for (let pass = 0; pass < 50; pass += 1) {
    const { vx, vy, withoutAir } = pathFit(turn(flight, -turned), { ...VACUUM, drag: k }, null);
    const drag = (k * (vx * vx + vy * vy)) / standardGravity.value;
    if (drag > MOST_DRAG) {
      throw new DomainError(
        'no-solution',
        `air slows this ball by ${drag.toFixed(1)} of gravity, too much for its path to say which way is down`,
      );
    }
    const tilt = tiltOf(turn(withoutAir, turned));
    if (Math.abs(tilt.value - turned) < 1e-9) return tilt;
    turned = tilt.value;
  }
  throw new DomainError('no-solution', 'tiltFromFlight did not settle: check the drag factor and the units');
}

/** As a camera turned by the angle sees it. */
function turn(flight: readonly FlightSample[], angle: number): FlightSample[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return flight.map(({ t, x, y }) => ({ t, x: x * c + y * s, y: y * c - x * s }));
}

function tiltOf(flight: readonly FlightSample[]): Quantity<'rad'> {
  const design = new Matrix(flight.map(({ t }) => [1, t, t ** 2 / 2]));
  const uShape = Math.sqrt(inverse(design.transpose().mmul(design)).get(2, 2));
  const acceleration = (axis: 'x' | 'y') => {
    const right = Matrix.columnVector(flight.map((sample) => sample[axis]));
    const parameters = solve(design, right);
    const scatter = Matrix.sub(right, design.mmul(parameters)).norm() / Math.sqrt(flight.length - 3);
    return measured(
      `a_${axis}`,
      `Acceleration along ${axis}, fitted`,
      parameters.get(2, 0),
      'm/s2',
      scatter * uShape,
      SOURCE,
    );
  };
  return derive(
    {
      symbol: 'τ_k',
      name: 'Tilt of the picture, as fitted',
      unit: 'rad',
      formula: 'τ_k = atan2(-a_x, -a_y)',
      source: SOURCE,
    },
    { a_x: acceleration('x'), a_y: acceleration('y') },
    ({ a_x, a_y }) => Math.atan2(-a_x, -a_y),
  );
}
