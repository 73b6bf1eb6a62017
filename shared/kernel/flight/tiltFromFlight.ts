import { inverse, Matrix, solve } from 'ml-matrix';
import { measured, type Quantity } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { type FlightSample, refuseUnusableFlight } from './fitRelease.ts';

const SOURCE = { cite: 'Free fall points down; least squares (JCGM 100:2008, H.3)', status: 'derived' } as const;

/**
 * How far the picture's down is turned from true down (anticlockwise positive), from something in free flight: a
 * parabola is fitted to x and to y, and their accelerations point down. Slow, heavy balls only: drag bends x too.
 *
 * @param samples at least six, s and m, in coordinates not yet turned
 * @returns rad; the `tilt` of a calibration by length
 * @throws DomainError as fitRelease
 * @source free fall; least squares
 */
export function tiltFromFlight(samples: readonly FlightSample[]): Quantity<'rad'> {
  refuseUnusableFlight('tiltFromFlight', samples);
  const start = (samples[0] as FlightSample).t;
  const design = new Matrix(samples.map(({ t }) => [1, t - start, (t - start) ** 2 / 2]));
  const uShape = Math.sqrt(inverse(design.transpose().mmul(design)).get(2, 2));
  const acceleration = (axis: 'x' | 'y') => {
    const right = Matrix.columnVector(samples.map((sample) => sample[axis]));
    const parameters = solve(design, right);
    const scatter = Matrix.sub(right, design.mmul(parameters)).norm() / Math.sqrt(samples.length - 3);
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
      symbol: 'τ',
      name: 'Tilt of the picture',
      unit: 'rad',
      formula: 'τ = atan2(-a_x, -a_y)',
      source: SOURCE,
    },
    { a_x: acceleration('x'), a_y: acceleration('y') },
    ({ a_x, a_y }) => Math.atan2(-a_x, -a_y),
  );
}
