import type { Source } from '../../quantity.ts';

/** A ball or implement as the rules of its sport allow it. Ranges are [least, most]. */
export interface Ball {
  /** kebab-case, `handball-3`. */
  readonly id: string;
  readonly label: string;
  readonly sport: string;
  readonly massKg: readonly [number, number];
  readonly diameterM: readonly [number, number];
  readonly source: Source;
  /** C_d and its standard uncertainty at playing speeds. */
  readonly drag: { readonly coefficient: number; readonly u: number; readonly source: Source };
}

/** The diameters of two circumferences, for rules that give those. */
export function fromCircumference(least: number, most: number): readonly [number, number] {
  return [least / Math.PI, most / Math.PI];
}
