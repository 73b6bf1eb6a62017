import type { CaseCheck } from '../../assess/assessment.ts';
import { isKnown, type Reading, type Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'Raising both arms overhead lifts the centre of mass 5.9 cm with the hips still (segment table of de Leva 1996). The limit of 2 cm is a convention',
  status: 'derived',
};

const APART_M = 0.02;

/**
 * Mistake 28: was the hip taken for the centre of mass? Arms and legs move it against the hip.
 *
 * @param seen rise as stated, m; rise of the hip and of the whole body's centre of mass in the same film, m
 * @source de Leva 1996, table 4; limit of 2 cm: convention
 */
export function hipAsCentreOfMass(seen: {
  readonly statedRiseM: number | null;
  readonly hipRise: Reading<'m'>;
  readonly centreRise: Reading<'m'>;
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'hip-as-centre-of-mass', about: seen.about, source: SOURCE };
  const { statedRiseM: stated, hipRise, centreRise } = seen;
  if (stated === null || !isKnown(centreRise)) {
    return cannotTell(
      base,
      `Whether the rise is that of the centre of mass cannot be told: ${stated === null ? 'none is stated' : 'the whole body is not digitised'}.`,
    );
  }
  const off = stated - centreRise.value;
  if (Math.abs(off) <= Math.max(APART_M, 2 * (centreRise.u ?? 0))) {
    return fine(base, 'The rise is that of the centre of mass.');
  }
  const isHip = isKnown(hipRise) && Math.abs(stated - hipRise.value) < Math.abs(off);
  return questioned(
    base,
    `${(100 * stated).toFixed(1)} cm is ${isHip ? 'how far the hip rises' : 'not how far the centre of mass rises'}. With arms and legs counted the centre of mass rises ${(100 * centreRise.value).toFixed(1)} cm.`,
    { label: 'Rise as stated', value: stated, unit: 'm' },
    { label: 'Rise of the centre of mass', value: centreRise.value, unit: 'm' },
  );
}
