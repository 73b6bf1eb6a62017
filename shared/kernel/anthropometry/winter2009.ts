import type { Endpoint, SegmentName, SegmentTable } from './segmentTable.ts';

type Row = readonly [
  segment: SegmentName,
  origin: Endpoint,
  other: Endpoint,
  sides: 1 | 2,
  isInBody: boolean,
  massShare: number,
  centre: number,
  kTransverse: number | null,
  kOrigin: number | null,
  kOther: number | null,
];

/**
 * Dempster's segment data as tabulated by Winter 2009, Biomechanics and Motor Control of Human Movement, 4th edition,
 * table 4.1; found in the teaching collection of Duarte & Watanabe (CC BY 4.0). Radii are about the transverse axis.
 * Head and neck: the book prints 0.116 about the proximal end, a misprint for 1.116. Total leg: the printed 0.560 and
 * 0.650 disagree with the other columns (0.553, 0.642) and are kept as printed.
 */
const ROWS: readonly Row[] = [
  ['hand', 'WJC', 'MET3', 2, true, 0.006, 0.506, 0.297, 0.587, 0.577],
  ['forearm', 'EJC', 'STYL', 2, true, 0.016, 0.43, 0.303, 0.526, 0.647],
  ['upper-arm', 'SJC', 'EJC', 2, true, 0.028, 0.436, 0.322, 0.542, 0.645],
  ['forearm-hand', 'EJC', 'STYL', 2, false, 0.022, 0.682, 0.468, 0.827, 0.565],
  ['total-arm', 'SJC', 'STYL', 2, false, 0.05, 0.53, 0.368, 0.645, 0.596],
  ['foot', 'LMAL', 'MT2', 2, true, 0.0145, 0.5, 0.475, 0.69, 0.69],
  ['leg', 'KJC', 'SPHY', 2, true, 0.0465, 0.433, 0.302, 0.528, 0.643],
  ['thigh', 'TROC', 'KJC', 2, true, 0.1, 0.433, 0.323, 0.54, 0.653],
  ['head-neck', 'CERV', 'EAR', 1, true, 0.081, 1.0, 0.495, 1.116, null],
  ['thorax', 'CERV', 'T12', 1, false, 0.216, 0.82, null, null, null],
  ['abdomen', 'T12', 'L4', 1, false, 0.139, 0.44, null, null, null],
  ['pelvis', 'L4', 'MIDH', 1, false, 0.142, 0.105, null, null, null],
  ['trunk', 'MIDH', 'MIDS', 1, true, 0.497, 0.5, null, null, null],
  ['trunk-head-neck', 'MIDH', 'MIDS', 1, false, 0.578, 0.66, 0.503, 0.83, 0.607],
  ['hat', 'MIDH', 'MIDS', 1, false, 0.678, 0.626, 0.496, 0.798, 0.621],
  ['foot-leg', 'KJC', 'SPHY', 2, false, 0.061, 0.606, 0.416, 0.735, 0.572],
  ['total-leg', 'TROC', 'SPHY', 2, false, 0.161, 0.447, 0.326, 0.56, 0.65],
  ['thorax-abdomen', 'CERV', 'L4', 1, false, 0.355, 0.63, null, null, null],
  ['abdomen-pelvis', 'T12', 'MIDH', 1, false, 0.281, 0.27, null, null, null],
];

export const WINTER: SegmentTable = {
  id: 'winter',
  name: 'Winter 2009, after Dempster 1955',
  source: {
    cite: 'Winter 2009, Biomechanics and Motor Control of Human Movement, 4th edition, table 4.1 (after Dempster 1955)',
    status: 'published',
  },
  rows: ROWS.map(([segment, origin, other, sides, isInBody, massShare, centre, kTransverse, kOrigin, kOther]) => ({
    segment,
    origin,
    other,
    sides,
    isInBody,
    massShare,
    centre,
    kSagittal: null,
    kTransverse,
    kLongitudinal: null,
    kOrigin,
    kOther,
    lengthM: null,
  })),
};
