import type { Quantity, Reading } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';

/**
 * How far a segment is turned out of the plane of motion, from how short it looks: θ = acos(L_app / L).
 *
 * Near 0° the cosine is flat, so that a length misread by 1 % already makes 8°: the answer is blind below about 10°.
 * @param apparent length in the calibrated plane, m
 * @param trueLength the segment's own length measured on the person, m
 * @returns rad, 0 to π/2; Unknown where the segment looks longer than it is by more than two standard uncertainties
 * @source foreshortening
 */
export function outOfPlaneAngle(apparent: Quantity<'m'>, trueLength: Quantity<'m'>): Reading<'rad'> {
  const excess = apparent.value - trueLength.value;
  const u = Math.hypot(apparent.u ?? 0, trueLength.u ?? 0);
  if (excess > Math.max(2 * u, 0.03 * trueLength.value)) {
    return {
      unknown: `the segment looks ${(100 * (apparent.value / trueLength.value - 1)).toFixed(0)} % longer than it was measured: check the scale or the measured length`,
    };
  }
  return derive(
    {
      symbol: 'θ',
      name: 'Turned out of the plane by',
      unit: 'rad',
      formula: 'θ = acos(L_app / L)',
      source: { cite: 'Foreshortening of a segment in a parallel view', status: 'derived' },
    },
    { L_app: apparent, L: trueLength },
    // A hair longer than true is reading error: in the plane.
    ({ L_app, L }) => Math.acos(Math.min(1, L_app / L)),
  );
}
