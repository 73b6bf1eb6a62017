import type { Ball } from '../../knowledge/balls/ball.ts';
import { measured, type Quantity, type Source } from '../../quantity.ts';
import { derive } from '../quantity/derive.ts';
import { ballMass } from './ballMass.ts';

const AIR: Source = { cite: 'Dry air at 20 °C and sea level, 1.20 kg/m³; from memory', status: 'from memory' };
/** 10 °C to 30 °C and 0 to 500 m above the sea lie within ±6 %. */
const airDensity = measured('ρ', 'Air density', 1.2, 'kg/m3', 0.04, AIR);

/**
 * How strongly air slows a ball: k = ρ C_d A / (2 m), with A = π D²/4. Mass and diameter are the middle of what the
 * rules allow, their spread a rectangular distribution.
 *
 * @returns per metre of path
 * @source quadratic drag; the ball's own sources
 */
export function dragFactor(ball: Ball): Quantity<'/m'> {
  const [least, most] = ball.diameterM;
  return derive(
    {
      symbol: 'k',
      name: `Drag factor, ${ball.label}`,
      unit: '/m',
      formula: 'k = ρ C_d π D^2 / (8 m)',
      variant: 'quadratic drag, constant coefficient',
      source: { cite: 'Quadratic drag force over mass times speed squared', status: 'derived' },
    },
    {
      ρ: airDensity,
      C_d: measured('C_d', 'Drag coefficient', ball.drag.coefficient, '1', ball.drag.u, ball.drag.source),
      D: measured('D', 'Diameter', (least + most) / 2, 'm', (most - least) / Math.sqrt(12), ball.source),
      m: ballMass(ball),
    },
    (p) => (p.ρ * p.C_d * Math.PI * p.D * p.D) / (8 * p.m),
  );
}
