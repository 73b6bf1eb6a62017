import { standardGravity } from '../../shared/kernel/constants/standardGravity.ts';
import { motionThrough } from './curves.ts';
import type { RandomSource } from './randomSource.ts';

const G = standardGravity.value;
const RATE_HZ = 1000;

export interface InventedJump {
  readonly massKg: number;
  readonly takeoffVelocityMPerS: number;
  /** How far the centre of mass goes down, m. */
  readonly depthM: number;
  /** Share of the force that the left leg carries while pushing, 0 to 1. */
  readonly leftShare: number;
}

/**
 * Two force plates under a countermovement jump, as a CSV file: the centre of mass is moved by smooth polynomials from
 * quiet standing through the dip, ballistic flight and the landing, and the plates feel m(a + g) and a little noise.
 */
export function jumpTraceCsv(jump: InventedJump, random: RandomSource): string {
  const { massKg, takeoffVelocityMPerS: v, depthM, leftShare } = jump;
  const quiet = 1.6;
  const lowest = quiet + 0.52;
  const takeoff = lowest + 0.27;
  // Heels up at take-off, a little bent at landing: the landing is lower, so the flight lasts longer than 2v/g.
  const [yTakeoff, yLanding] = [0.1, 0.05];
  const flight = (v + Math.sqrt(v * v + 2 * G * (yTakeoff - yLanding))) / G;
  const landing = takeoff + flight;
  const onTheGround = motionThrough([
    { t: 0, x: 0, v: 0, a: 0 },
    { t: quiet, x: 0, v: 0, a: 0 },
    { t: lowest, x: -depthM, v: 0, a: 11 },
    { t: takeoff, x: yTakeoff, v, a: -G },
  ]);
  const afterLanding = motionThrough([
    { t: landing, x: yLanding, v: v - G * flight, a: -G },
    { t: landing + 0.24, x: -0.24, v: 0, a: 12 },
    { t: landing + 0.95, x: 0, v: 0, a: 0 },
    { t: landing + 2, x: 0, v: 0, a: 0 },
  ]);
  const lines = ['time_s,fz_left_n,fz_right_n'];
  for (let sample = 0; sample < (landing + 1.6) * RATE_HZ; sample += 1) {
    const t = sample / RATE_HZ;
    const inFlight = t >= takeoff && t < landing;
    const a = inFlight ? -G : (t < takeoff ? onTheGround : afterLanding)(t).a;
    const force = Math.max(0, massKg * (a + G));
    // The sides differ while pushing, not in quiet standing.
    const share = t > quiet && t < takeoff ? leftShare : 0.5;
    const plate = (part: number) => (force * part + random.normal(1.2)).toFixed(2);
    lines.push(`${t.toFixed(3)},${plate(share)},${plate(1 - share)}`);
  }
  return `${lines.join('\n')}\n`;
}
