import type { Landmark } from '../model/trial.ts';

type Pair = readonly [Landmark, Landmark];

function onBothSides(from: string, to: string): Pair[] {
  return (['left', 'right'] as const).map((side) => [`${from}-${side}`, `${to}-${side}`] as [Landmark, Landmark]);
}

/** Lines drawn between landmarks. Only a drawing: the mechanics uses the segment tables of the kernel. */
export const LIMBS: readonly Pair[] = [
  ...onBothSides('shoulder', 'elbow'),
  ...onBothSides('elbow', 'wrist'),
  ...onBothSides('wrist', 'knuckle'),
  ...onBothSides('hip', 'knee'),
  ...onBothSides('knee', 'ankle'),
  ...onBothSides('ankle', 'heel'),
  ...onBothSides('heel', 'toe'),
  ...onBothSides('ankle', 'toe'),
];
export const TRUNK: readonly Pair[] = [
  ['shoulder-left', 'shoulder-right'],
  ['hip-left', 'hip-right'],
  ['shoulder-left', 'hip-left'],
  ['shoulder-right', 'hip-right'],
];
