import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Central differences of independent errors σ: σ/(√2 Δt) in velocity, √6 σ/Δt² in acceleration. The limits of 0.1 m/s and 1 m/s² are a convention',
  status: 'derived',
};

/** Noise that would still let a movement be seen. */
const BEARABLE = { 1: 0.1, 2: 1 } as const;
const UNIT = { 1: 'm/s', 2: 'm/s2' } as const;
const NAME = { 1: 'velocity', 2: 'acceleration' } as const;

/**
 * Mistake 17: were raw points differentiated? Misreading by a millimetre becomes many metres a second squared, the more
 * the faster the camera. The trial's own curves are always smoothed first; `smooth` asks this of a file.
 *
 * @param seen standard uncertainty of one point, m; frames a second, Hz; 1 velocity, 2 acceleration; smoothed or not
 * @source propagation through central differences; limits: convention
 */
export function rawPointsDifferentiated(seen: {
  readonly pointUM: number | null;
  readonly rateHz: number | null;
  readonly order: 1 | 2;
  readonly isSmoothed: boolean | null;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'raw-points-differentiated', about: seen.about, source: SOURCE };
  const { pointUM, rateHz, order } = seen;
  if (seen.isSmoothed === true) return fine(base, 'The points were smoothed before they were differentiated.');
  if (seen.isSmoothed === null || pointUM === null || rateHz === null) {
    const why = seen.isSmoothed === null ? 'whether they were smoothed' : 'how exact a point is, and the frame rate,';
    return cannotTell(base, `What differentiating did to the points cannot be told: ${why} must be known.`);
  }
  const noise = order === 1 ? (pointUM * rateHz) / Math.SQRT2 : Math.sqrt(6) * pointUM * rateHz ** 2;
  if (noise <= BEARABLE[order])
    return fine(base, `The points are exact enough for a ${NAME[order]} without smoothing.`);
  return questioned(
    base,
    `Points read to ${(1000 * pointUM).toFixed(1)} mm at ${rateHz.toFixed(0)} frames a second make the ${NAME[order]} uncertain by ${noise.toPrecision(3)} ${order === 1 ? 'm/s' : 'm/s²'}. Smooth first, or fit the flight.`,
    { label: `Noise of the ${NAME[order]}`, value: noise, unit: UNIT[order] },
    { label: 'Bearable', value: BEARABLE[order], unit: UNIT[order] },
  );
}
