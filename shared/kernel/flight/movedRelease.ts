import type { Quantity, Reading } from '../../quantity.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import { derive } from '../quantity/derive.ts';
import { angleToScore } from './angleToScore.ts';
import { leastSpeed } from './leastSpeed.ts';
import { leastSpeedAngle } from './leastSpeedAngle.ts';
import type { AirQuantities, Release } from './release.ts';
import { speedToScore } from './speedToScore.ts';

/** What changes: only the height of release, or its instant, which carries the body along its own flight. */
export type Move =
  | { readonly kind: 'higher'; readonly by: Quantity<'m'> }
  | {
      readonly kind: 'later';
      readonly by: Quantity<'s'>;
      /** Velocity of the body's centre of mass at the original release, up and towards the target. */
      readonly bodyUp: Quantity<'m/s'>;
      readonly bodyForward: Quantity<'m/s'>;
    };

export interface MovedRelease {
  readonly height: Quantity<'m'>;
  readonly distance: Quantity<'m'>;
  /** At the angle as it was. */
  readonly speed: Reading<'m/s'>;
  /** At the speed as it was; the flatter of two. */
  readonly angle: Reading<'rad'>;
  readonly leastSpeed: Quantity<'m/s'>;
  readonly leastSpeedAngle: Quantity<'rad'>;
}

const SOURCE = { cite: 'Constant acceleration of the body in the air', status: 'derived' } as const;

/**
 * The release that would reach the same target from a little higher, or a little later in the jump: the speed needed
 * at the same angle, the angle needed at the same speed, and the least speed there. Later, the point of release moves
 * with the body: Δy = v_b δt − g δt²/2, and the target comes nearer by v_f δt.
 *
 * @param distance from release to target, m, > 0
 * @param targetHeight above the floor, m
 * @throws DomainError 'input-out-of-range', also where the move carries the release past its target
 * @source constant acceleration; see speedToScore and angleToScore
 */
export function movedRelease(
  release: Release,
  distance: Quantity<'m'>,
  targetHeight: Quantity<'m'>,
  move: Move,
  air: AirQuantities,
  mustFall: boolean,
): MovedRelease {
  const height =
    move.kind === 'higher'
      ? derive(
          { symbol: 'y_1', name: 'Release height, moved', unit: 'm', formula: 'y_1 = y_0 + Δy', source: SOURCE },
          { y_0: release.height, Δy: move.by },
          ({ y_0, Δy }) => y_0 + Δy,
        )
      : derive(
          {
            symbol: 'y_1',
            name: 'Release height, later',
            unit: 'm',
            formula: 'y_1 = y_0 + v_b δt - g δt^2 / 2',
            source: SOURCE,
          },
          { y_0: release.height, v_b: move.bodyUp, δt: move.by, g: standardGravity },
          ({ y_0, v_b, δt, g }) => y_0 + v_b * δt - (g * δt * δt) / 2,
        );
  const left =
    move.kind === 'higher'
      ? distance
      : derive(
          { symbol: 'd_1', name: 'Distance left, later', unit: 'm', formula: 'd_1 = d - v_f δt', source: SOURCE },
          { d: distance, v_f: move.bodyForward, δt: move.by },
          ({ d, v_f, δt }) => d - v_f * δt,
        );
  const rise = derive(
    { symbol: 'Δh', name: 'Target above release', unit: 'm', formula: 'Δh = y_t - y_1', source: SOURCE },
    { y_t: targetHeight, y_1: height },
    ({ y_t, y_1 }) => y_t - y_1,
  );
  return {
    height,
    distance: left,
    speed: speedToScore(left, rise, release.angle, air, mustFall),
    angle: angleToScore(left, rise, release.speed, air),
    leastSpeed: leastSpeed(left, rise),
    leastSpeedAngle: leastSpeedAngle(left, rise),
  };
}
