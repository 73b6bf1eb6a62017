import type { ForceSummary } from '../../model/jump.ts';
import type { Quantity } from '../../quantity.ts';
import { KERNEL_VERSION } from '../../versions.ts';
import type { ForceJump } from './forceTrace.ts';

const stored = ({ value, u }: Quantity) => ({ value, u });

/**
 * A jump of a force record as it is stored: SI values with their uncertainty, and the kernel that found them.
 *
 * @param rateHz samples a second of the record
 * @param columns of the file that the plates were
 * @param forceUnit of the columns, if a person said so
 * @source analyseForceTrace
 */
export function toForceSummary(
  jump: ForceJump,
  rateHz: number,
  columns: readonly string[],
  forceUnit: ForceSummary['forceUnit'] | null = null,
): ForceSummary {
  const storedOrNull = (quantity: Quantity | null) => (quantity === null ? null : stored(quantity));
  return {
    kernelVersion: KERNEL_VERSION,
    rateHz,
    columns: [...columns],
    ...(forceUnit === null ? {} : { forceUnit }),
    bodyWeightN: stored(jump.bodyWeight),
    massKg: stored(jump.mass),
    onsetS: stored(jump.onset),
    takeoffS: stored(jump.takeoff),
    landingS: stored(jump.landing),
    takeoffVelocityMPerS: stored(jump.takeoffVelocity),
    jumpHeightM: stored(jump.jumpHeight),
    jumpHeightFlightTimeM: stored(jump.jumpHeightFlightTime),
    riseAboveStandingM: storedOrNull(jump.riseAboveStanding),
    timeToTakeoffS: stored(jump.timeToTakeoff),
    rsiModified: stored(jump.rsiModified),
    peakForceN: stored(jump.peakForce),
    peakPowerW: stored(jump.peakPower),
    countermovementDepthM: storedOrNull(jump.countermovementDepth),
    placedByHand: [...jump.placedByHand],
    details: {
      phases:
        jump.phases === null
          ? null
          : {
              unweightingS: stored(jump.phases.unweighting.duration),
              brakingS: stored(jump.phases.braking.duration),
              propulsionS: stored(jump.phases.propulsion.duration),
              pushOffDistanceM: stored(jump.phases.pushOffDistance),
              meanPowerW: stored(jump.phases.meanPower),
            },
      rateOfForceDevelopmentNPerS: storedOrNull(jump.rateOfForceDevelopment),
      peakLandingForceN: stored(jump.peakLandingForce),
      plates: jump.plates.map(({ impulse, peakLandingForce }) => ({
        impulseNs: stored(impulse),
        peakLandingForceN: stored(peakLandingForce),
      })),
    },
    warnings: [...jump.warnings],
  };
}
