import type { Target } from '../../knowledge/balls/target.ts';
import type { Aim } from './passesAim.ts';

/**
 * A target of known shape, put where it stands: middle of the ring's allowed diameters, the whole goal, the net
 * with half a court behind it.
 *
 * @param distance from release, m
 * @param height of ring or net above the floor, m
 * @returns null where there is no such target
 * @source the targets' own
 */
export function aimFor(target: Target | null, distance: number, height: number): Aim | null {
  const shape = target?.shape;
  switch (shape?.kind) {
    case 'ring':
      return { kind: 'ring', distance, height, diameter: (shape.diameterM[0] + shape.diameterM[1]) / 2 };
    case 'goal':
      return { kind: 'goal', distance, bottom: 0, top: shape.heightM };
    case 'net':
      return { kind: 'net', distance, height, courtEnd: distance + shape.courtLengthM / 2 };
    default:
      return null;
  }
}
