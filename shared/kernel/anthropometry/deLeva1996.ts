import type { Endpoint, SegmentName, SegmentRow, SegmentTable } from './segmentTable.ts';

/** Mass of one segment in parts of body mass; centre from the origin and radii of gyration about it in parts of length; mm. */
type Values = readonly [
  mass: number,
  centre: number,
  kSagittal: number,
  kTransverse: number,
  kLongitudinal: number,
  lengthMm: number,
];
type Row = readonly [
  segment: SegmentName,
  origin: Endpoint,
  other: Endpoint,
  sides: 1 | 2,
  isInBody: boolean,
  female: Values,
  male: Values,
];

/**
 * Zatsiorsky's segment data as adjusted by de Leva 1996, Journal of Biomechanics 29(9):1223-1230, table 4; found in the
 * teaching collection of Duarte & Watanabe (CC BY 4.0). Several rows of one segment are alternative end points, of which
 * `isInBody` marks the one used for a whole body. Reference lengths are from memory; every alternative row places the
 * centre within 0.1 mm by them. Female masses sum to 0.9999 as published.
 */
const ROWS: readonly Row[] = [
  [
    'head',
    'VERT',
    'MIDG',
    1,
    false,
    [0.0668, 0.5894, 0.33, 0.359, 0.318, 200.2],
    [0.0694, 0.5976, 0.362, 0.376, 0.312, 203.3],
  ],
  [
    'trunk',
    'SUPR',
    'MIDH',
    1,
    false,
    [0.4257, 0.4151, 0.357, 0.339, 0.171, 529.3],
    [0.4346, 0.4486, 0.372, 0.347, 0.191, 531.9],
  ],
  [
    'upper-trunk',
    'SUPR',
    'XYPH',
    1,
    false,
    [0.1545, 0.2077, 0.746, 0.502, 0.718, 142.5],
    [0.1596, 0.2999, 0.716, 0.454, 0.659, 170.7],
  ],
  [
    'middle-trunk',
    'XYPH',
    'OMPH',
    1,
    false,
    [0.1465, 0.4512, 0.433, 0.354, 0.415, 205.3],
    [0.1633, 0.4502, 0.482, 0.383, 0.468, 215.5],
  ],
  [
    'lower-trunk',
    'OMPH',
    'MIDH',
    1,
    false,
    [0.1247, 0.492, 0.433, 0.402, 0.444, 181.5],
    [0.1117, 0.6115, 0.615, 0.551, 0.587, 145.7],
  ],
  [
    'upper-arm',
    'SJC',
    'EJC',
    2,
    true,
    [0.0255, 0.5754, 0.278, 0.26, 0.148, 275.1],
    [0.0271, 0.5772, 0.285, 0.269, 0.158, 281.7],
  ],
  [
    'forearm',
    'EJC',
    'WJC',
    2,
    true,
    [0.0138, 0.4559, 0.261, 0.257, 0.094, 264.3],
    [0.0162, 0.4574, 0.276, 0.265, 0.121, 268.9],
  ],
  [
    'hand',
    'WJC',
    'MET3',
    2,
    true,
    [0.0056, 0.7474, 0.531, 0.454, 0.335, 78.0],
    [0.0061, 0.79, 0.628, 0.513, 0.401, 86.2],
  ],
  [
    'thigh',
    'HJC',
    'KJC',
    2,
    true,
    [0.1478, 0.3612, 0.369, 0.364, 0.162, 368.5],
    [0.1416, 0.4095, 0.329, 0.329, 0.149, 422.2],
  ],
  [
    'shank',
    'KJC',
    'AJC',
    2,
    true,
    [0.0481, 0.4352, 0.267, 0.263, 0.092, 438.6],
    [0.0433, 0.4395, 0.251, 0.246, 0.102, 440.3],
  ],
  [
    'foot',
    'HEEL',
    'TTIP',
    2,
    true,
    [0.0129, 0.4014, 0.299, 0.279, 0.139, 228.3],
    [0.0137, 0.4415, 0.257, 0.245, 0.124, 258.1],
  ],
  [
    'head',
    'VERT',
    'CERV',
    1,
    true,
    [0.0668, 0.4841, 0.271, 0.295, 0.261, 243.7],
    [0.0694, 0.5002, 0.303, 0.315, 0.261, 242.9],
  ],
  [
    'trunk',
    'CERV',
    'MIDH',
    1,
    false,
    [0.4257, 0.4964, 0.307, 0.292, 0.147, 614.8],
    [0.4346, 0.5138, 0.328, 0.306, 0.169, 603.3],
  ],
  [
    'trunk',
    'MIDS',
    'MIDH',
    1,
    true,
    [0.4257, 0.3782, 0.379, 0.361, 0.182, 497.9],
    [0.4346, 0.431, 0.384, 0.358, 0.197, 515.5],
  ],
  [
    'upper-trunk',
    'CERV',
    'XYPH',
    1,
    false,
    [0.1545, 0.505, 0.466, 0.314, 0.449, 228.0],
    [0.1596, 0.5066, 0.505, 0.32, 0.465, 242.1],
  ],
  [
    'forearm',
    'EJC',
    'STYL',
    2,
    false,
    [0.0138, 0.4592, 0.263, 0.259, 0.095, 262.4],
    [0.0162, 0.4608, 0.278, 0.267, 0.122, 266.9],
  ],
  [
    'hand',
    'WJC',
    'DAC3',
    2,
    false,
    [0.0056, 0.3427, 0.244, 0.208, 0.154, 170.1],
    [0.0061, 0.3624, 0.288, 0.235, 0.184, 187.9],
  ],
  [
    'hand',
    'STYL',
    'DAC3',
    2,
    false,
    [0.0056, 0.3502, 0.241, 0.206, 0.152, 172.0],
    [0.0061, 0.3691, 0.285, 0.233, 0.182, 189.9],
  ],
  [
    'hand',
    'STYL',
    'MET3',
    2,
    false,
    [0.0056, 0.7534, 0.519, 0.443, 0.327, 79.9],
    [0.0061, 0.7948, 0.614, 0.502, 0.392, 88.2],
  ],
  [
    'shank',
    'KJC',
    'LMAL',
    2,
    false,
    [0.0481, 0.4416, 0.271, 0.267, 0.093, 432.3],
    [0.0433, 0.4459, 0.255, 0.249, 0.103, 434.0],
  ],
  [
    'shank',
    'KJC',
    'SPHY',
    2,
    false,
    [0.0481, 0.4481, 0.275, 0.271, 0.094, 426.0],
    [0.0433, 0.4524, 0.258, 0.253, 0.105, 427.7],
  ],
];

function row([segment, origin, other, sides, isInBody, female, male]: Row, sex: 'female' | 'male'): SegmentRow {
  const [massShare, centre, kSagittal, kTransverse, kLongitudinal, lengthMm] = sex === 'female' ? female : male;
  const k = { kSagittal, kTransverse, kLongitudinal, kOrigin: null, kOther: null };
  return { segment, origin, other, sides, isInBody, massShare, centre, ...k, lengthM: lengthMm / 1000 };
}

const source = {
  cite: 'de Leva 1996, Journal of Biomechanics 29(9):1223-1230, table 4 (after Zatsiorsky & Seluyanov)',
  status: 'published',
} as const;

export const DE_LEVA_FEMALE: SegmentTable = {
  id: 'de-leva-female',
  name: 'de Leva 1996, women',
  source,
  rows: ROWS.map((entry) => row(entry, 'female')),
};

export const DE_LEVA_MALE: SegmentTable = {
  id: 'de-leva-male',
  name: 'de Leva 1996, men',
  source,
  rows: ROWS.map((entry) => row(entry, 'male')),
};
