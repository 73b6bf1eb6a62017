import type { Source } from '../../quantity.ts';

/** Anatomical end points that segment tables measure from and to. Joint centres end in JC. */
export type Endpoint =
  | 'VERT'
  | 'MIDG'
  | 'EAR'
  | 'CERV'
  | 'SUPR'
  | 'XYPH'
  | 'OMPH'
  | 'T12'
  | 'L4'
  | 'MIDS'
  | 'MIDH'
  | 'SJC'
  | 'EJC'
  | 'WJC'
  | 'STYL'
  | 'MET3'
  | 'DAC3'
  | 'HJC'
  | 'TROC'
  | 'KJC'
  | 'AJC'
  | 'LMAL'
  | 'SPHY'
  | 'HEEL'
  | 'TTIP'
  | 'MT2';

export type SegmentName =
  | 'head'
  | 'head-neck'
  | 'trunk'
  | 'upper-trunk'
  | 'middle-trunk'
  | 'lower-trunk'
  | 'thorax'
  | 'abdomen'
  | 'pelvis'
  | 'thorax-abdomen'
  | 'abdomen-pelvis'
  | 'trunk-head-neck'
  | 'hat'
  | 'upper-arm'
  | 'forearm'
  | 'hand'
  | 'forearm-hand'
  | 'total-arm'
  | 'thigh'
  | 'leg'
  | 'shank'
  | 'foot'
  | 'foot-leg'
  | 'total-leg';

/** One segment by one pair of end points. */
export interface SegmentRow {
  readonly segment: SegmentName;
  readonly origin: Endpoint;
  readonly other: Endpoint;
  /** 2: left and right, and `massShare` is that of one. */
  readonly sides: 1 | 2;
  /** One row of each segment is used for a whole body; together these hold all of its mass. */
  readonly isInBody: boolean;
  /** Part of body mass. */
  readonly massShare: number;
  /** Centre of mass from the origin, in parts of the distance from origin to other. */
  readonly centre: number;
  /** Radii of gyration about an axis through the centre, in parts of that distance; transverse for side-view motion. */
  readonly kSagittal: number | null;
  readonly kTransverse: number | null;
  readonly kLongitudinal: number | null;
  /** The same about either end, where the source prints them. */
  readonly kOrigin: number | null;
  readonly kOther: number | null;
  /** Mean length in the source's sample. */
  readonly lengthM: number | null;
}

export interface SegmentTable {
  readonly id: string;
  readonly name: string;
  readonly source: Source;
  readonly rows: readonly SegmentRow[];
}
