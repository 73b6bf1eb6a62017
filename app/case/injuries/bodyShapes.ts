import type { Region } from '../../../shared/model/injury.ts';

/** One area of the outline: on the midline, or drawn for the athlete's left and mirrored for the right. */
export interface BodyShape {
  readonly region: Region;
  readonly isPaired: boolean;
  readonly path: string;
}

/** Our own drawing, about 300 units tall, x from the midline. Limbs are the same seen from the front and the back. */
const LIMBS: readonly BodyShape[] = [
  { region: 'shoulder', isPaired: true, path: 'M18 55 Q31 53 36 63 Q38 70 36.5 77 L26.5 80 L22 70 Z' },
  { region: 'upper-arm', isPaired: true, path: 'M27 81.5 L37 78.5 Q41 90 40 105 L31.5 107 Q28 94 27 81.5 Z' },
  { region: 'elbow', isPaired: true, path: 'M31.5 108.5 L40 106.5 Q42 113 42 120 L33.5 122 Q31.5 115 31.5 108.5 Z' },
  {
    region: 'forearm',
    isPaired: true,
    path: 'M33.8 123.5 L42.2 121.5 Q45.5 135 45 150 L38.5 151.5 Q34 138 33.8 123.5 Z',
  },
  {
    region: 'wrist-hand',
    isPaired: true,
    path: 'M38.6 153 L45 151.5 Q48.5 156 49.5 164 Q50 174 45.5 178 Q41.5 177 40 168 Q37.5 162 38.6 153 Z',
  },
  { region: 'hip-groin', isPaired: true, path: 'M0.75 137 L23.5 137 Q27 146 27.5 157 L3 166 L0.75 158 Z' },
  { region: 'thigh', isPaired: true, path: 'M3 167.5 L27.6 158.6 Q29.5 186 23.5 212 L9 212 Q4 190 3 167.5 Z' },
  { region: 'knee', isPaired: true, path: 'M9 213.5 L23.3 213.5 Q23.5 223 22 231 L10 231 Q8.6 222 9 213.5 Z' },
  { region: 'lower-leg', isPaired: true, path: 'M10 232.5 L22 232.5 Q25.5 250 19.5 274 L12 274 Q8 252 10 232.5 Z' },
  { region: 'ankle', isPaired: true, path: 'M12 275.5 L19.4 275.5 L20 285 L11.6 285 Z' },
  { region: 'foot', isPaired: true, path: 'M11.6 286.5 L20 286.5 Q27 293 27 299 L10 299 Q9.5 292 11.6 286.5 Z' },
];

const HEAD: BodyShape = {
  region: 'head',
  isPaired: false,
  path: 'M0 3 C9 3 13.5 10 13.5 19 C13.5 29 8 38 0 38 C-8 38 -13.5 29 -13.5 19 C-13.5 10 -9 3 0 3 Z',
};
const NECK: BodyShape = {
  region: 'neck',
  isPaired: false,
  path: 'M-7 37 Q0 41.5 7 37 L7.5 46 L17 53.5 Q0 57 -17 53.5 L-7.5 46 Z',
};
const UPPER_TRUNK = 'M-16.5 55.5 Q0 59 16.5 55.5 L21 71 L25.5 81 L22.5 99 Q0 104 -22.5 99 L-25.5 81 L-21 71 Z';
const LOWER_TRUNK =
  'M-22.3 100.8 Q0 105.5 22.3 100.8 Q19 112 20 122 L23.2 135.5 L-23.2 135.5 L-20 122 Q-19 112 -22.3 100.8 Z';

export const FRONT: readonly BodyShape[] = [
  HEAD,
  NECK,
  { region: 'chest', isPaired: false, path: UPPER_TRUNK },
  { region: 'abdomen', isPaired: false, path: LOWER_TRUNK },
  ...LIMBS,
];

export const BACK: readonly BodyShape[] = [
  HEAD,
  NECK,
  { region: 'thoracic-spine', isPaired: false, path: UPPER_TRUNK },
  { region: 'lumbosacral', isPaired: false, path: LOWER_TRUNK },
  ...LIMBS,
];

/** Regions that a body has twice. */
export const PAIRED: ReadonlySet<Region> = new Set(LIMBS.map(({ region }) => region));
