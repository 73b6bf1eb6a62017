import { quantityText } from '../../../shared/format/number.ts';
import { plateAsymmetry } from '../../../shared/kernel/jump/plateAsymmetry.ts';
import type { ForceSummary } from '../../../shared/model/jump.ts';
import { measured } from '../../../shared/quantity.ts';
import type { Unit } from '../../../shared/units.ts';

export interface ForceDetail {
  readonly label: string;
  readonly text: string;
}

/** What stands behind the heights of a force record, in words and numbers; empty for one kept by an earlier version. */
export function forceDetails({ details, columns }: ForceSummary): readonly ForceDetail[] {
  if (details === undefined) return [];
  const { phases, plates } = details;
  const share = plateAsymmetry(
    plates.map(({ impulseNs }) => measured('J', 'Impulse', impulseNs.value, 'N.s', impulseNs.u ?? NO_U)),
  );
  return [
    ...(phases === null
      ? []
      : [
          row('Unweighting lasts', phases.unweightingS, 's'),
          row('Braking lasts', phases.brakingS, 's'),
          row('Propulsion lasts', phases.propulsionS, 's'),
          row('Push-off distance', phases.pushOffDistanceM, 'm', 'cm'),
          row('Mean power of the push-off', phases.meanPowerW, 'W'),
        ]),
    row('Rate of force development, lowest to highest force', details.rateOfForceDevelopmentNPerS, 'N/s'),
    row('Peak landing force', details.peakLandingForceN, 'N'),
    ...(plates.length < 2
      ? []
      : plates.flatMap((plate, i) => [
          row(`Impulse on ${columns[i]}`, plate.impulseNs, 'N.s'),
          row(`Peak landing force on ${columns[i]}`, plate.peakLandingForceN, 'N'),
        ])),
    ...(share === null
      ? []
      : [
          {
            label: `Difference of impulse, ${share.working.name}`,
            text: `${quantityText(share, '%')}, ${Math.abs(share.value) < SHOWN_AS_EVEN ? 'even' : `more on ${columns[share.value > 0 ? 0 : 1]}`}`,
          },
        ]),
  ];
}

const NO_U = 'kept without one';
/** Reads 0 %, so no side may be named. */
const SHOWN_AS_EVEN = 0.005;

function row(
  label: string,
  stored: { readonly value: number; readonly u: number | null } | null,
  unit: Unit,
  shownIn: Unit = unit,
): ForceDetail {
  if (stored === null) return { label, text: 'not known' };
  return { label, text: quantityText(measured('x', label, stored.value, unit, stored.u ?? NO_U), shownIn) };
}
