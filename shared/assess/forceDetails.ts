import { type Quantified, quantityText } from '../format/number.ts';
import { PHASE_BOUNDARIES, WORK_ENERGY } from '../kernel/jump/countermovementPhases.ts';
import { INTEGRATION } from '../kernel/jump/forceContext.ts';
import { plateAsymmetry } from '../kernel/jump/plateAsymmetry.ts';
import type { ForceSummary } from '../model/jump.ts';
import { measured, type Source } from '../quantity.ts';
import type { Unit } from '../units.ts';

export interface ForceDetail {
  readonly label: string;
  /** Null: not known. */
  readonly quantity: Quantified | null;
  readonly displayUnit: Unit;
  /** Which plate took more; empty elsewhere. */
  readonly remark: string;
  /** What was done to the record, where the label does not say it. */
  readonly how: string;
  readonly source: Source;
}

/** What stands behind the heights of a force record; empty for one kept by an earlier version. */
export function forceDetails({ details, columns }: ForceSummary): readonly ForceDetail[] {
  if (details === undefined) return [];
  const { phases, plates } = details;
  const share = plateAsymmetry(
    plates.map(({ impulseNs }) => measured('J', 'Impulse', impulseNs.value, 'N.s', impulseNs.u ?? NO_U)),
  );
  const landing = (label: string, stored: Stored) => row(label, stored, 'N', LANDING_PEAK, 'in half a second');
  return [
    ...(phases === null
      ? []
      : [
          row('Unweighting lasts', phases.unweightingS, 's', PHASE_BOUNDARIES, 'to the lowest velocity', 'ms'),
          row('Braking lasts', phases.brakingS, 's', PHASE_BOUNDARIES, 'to standstill', 'ms'),
          row('Propulsion lasts', phases.propulsionS, 's', PHASE_BOUNDARIES, 'to take-off', 'ms'),
          row('Push-off distance', phases.pushOffDistanceM, 'm', PHASE_BOUNDARIES, 'rise in propulsion', 'cm'),
          row('Mean power of the push-off', phases.meanPowerW, 'W', WORK_ENERGY, 'work over time'),
        ]),
    row(
      'Rate of force development, lowest to highest force',
      details.rateOfForceDevelopmentNPerS,
      'N/s',
      { cite: 'Definition', status: 'convention' },
      'mean rate',
    ),
    landing('Peak landing force', details.peakLandingForceN),
    ...(plates.length < 2
      ? []
      : plates.flatMap((plate, i) => [
          row(`Impulse on ${columns[i]}`, plate.impulseNs, 'N.s', INTEGRATION, 'onset to take-off'),
          landing(`Peak landing force on ${columns[i]}`, plate.peakLandingForceN),
        ])),
    ...(share === null
      ? []
      : [
          {
            label: `Difference of impulse, ${share.working.name}`,
            quantity: share,
            displayUnit: '%' as const,
            remark: Math.abs(share.value) < SHOWN_AS_EVEN ? 'even' : `more on ${columns[share.value > 0 ? 0 : 1]}`,
            how: '',
            source: share.working.source ?? LANDING_PEAK,
          },
        ]),
  ];
}

/** `12.0 %, more on left`; `not known`. */
export function detailWords({ quantity, displayUnit, remark }: ForceDetail): string {
  if (quantity === null) return 'not known';
  return [quantityText(quantity, displayUnit), remark].filter((words) => words !== '').join(', ');
}

type Stored = { readonly value: number; readonly u: number | null } | null;

const NO_U = 'kept without one';
/** Reads 0 %, so no side may be named. */
const SHOWN_AS_EVEN = 0.005;
const LANDING_PEAK: Source = {
  cite: 'Highest single reading; u: spread of the unloaded plates',
  status: 'convention',
};

function row(
  label: string,
  stored: Stored,
  unit: Unit,
  source: Source,
  how: string,
  displayUnit: Unit = unit,
): ForceDetail {
  return { label, quantity: stored && { ...stored, unit }, displayUnit, remark: '', how, source };
}
