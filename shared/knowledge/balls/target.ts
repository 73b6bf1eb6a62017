import type { Source } from '../../quantity.ts';

/** What a sport aims at, seen from the side. */
export interface Target {
  /** kebab-case, `basketball-ring`. */
  readonly id: string;
  readonly label: string;
  readonly sport: string;
  readonly shape:
    | { readonly kind: 'ring'; readonly heightM: number; readonly diameterM: readonly [number, number] }
    | { readonly kind: 'goal'; readonly heightM: number; readonly widthM: number }
    | { readonly kind: 'net'; readonly heightM: number; readonly courtLengthM: number; readonly courtWidthM: number }
    | {
        readonly kind: 'sector';
        readonly circleDiameterM: number;
        readonly angleDeg: number;
        readonly boardHeightM: number;
      };
  /** Places it is usually played from: horizontal distance to the target, m. */
  readonly marks: readonly { readonly label: string; readonly distanceM: number }[];
  readonly source: Source;
}
