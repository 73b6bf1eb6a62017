import type { Region } from '../../model/injury.ts';
import type { SideOrNone } from '../../model/parts.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { Mark } from '../page.ts';
import { shiftMark } from '../placed.ts';
import { dot, label, line, polyline } from './drawing.ts';

export interface BodyMark {
  readonly region: Region;
  readonly side: SideOrNone;
  readonly label: string;
  /** False: hollow, for what is resolved. */
  readonly isActive: boolean;
}

/** A body seen from the front, so that its left is on the right of the page; each injury is named beside it. */
export function bodyOutline(marks: readonly BodyMark[]): Figure | null {
  if (marks.length === 0) return null;
  return figure({
    alt: `Body outline from the front with ${marks.map((mark) => mark.label).join('; ')}.`,
    caption: 'Seen from the front: the body’s left is on the right. Filled: not resolved. Hollow: resolved.',
    draw: (width, metrics) => {
      const spots = marks
        .map((mark) => ({ ...mark, at: spotOf(mark.region, mark.side) }))
        .toSorted((a, b) => a.at[1] - b.at[1]);
      const pitch = Math.max(ROW, HEIGHT / Math.max(1, spots.length));
      const height = Math.max(HEIGHT, spots.length * ROW + 4);
      const labels = spots.flatMap(({ at: [x, y], label: words, isActive }, i): Mark[] => {
        const row =
          spots.length * ROW > HEIGHT
            ? i * ROW + ROW / 2
            : Math.min(Math.max(y, ROW / 2 + i * ROW), HEIGHT - (spots.length - i - 0.5) * Math.min(pitch, ROW));
        return [
          line(x, y, WIDTH + 12, row, 0.4, 'muted'),
          dot(x, y, 3, isActive ? 'ink' : 'paper', 'ink'),
          label(words, WIDTH + 16, row + 2.8, { size: 8 }, metrics),
        ];
      });
      const outline = OUTLINE.map((part) => polyline(part, 0.9, 'muted'));
      const shown = [dot(WIDTH / 2, 11, 8.5, null, 'muted'), ...outline, ...labels];
      return { height, marks: shown.map((mark) => shiftMark(mark, Math.max(0, Math.min(20, width - WIDTH - 200)), 0)) };
    },
  });
}

const WIDTH = 76;
const HEIGHT = 150;
const ROW = 12;

/** Half of the outline, from neck to inner foot, mirrored. Drawn for this program. */
const HALF: readonly (readonly [number, number])[] = [
  [3.5, 19],
  [4, 24],
  [15, 28],
  [19, 33],
  [22, 48],
  [25, 62],
  [28, 77],
  [31, 84],
  [28, 87],
  [25, 84],
  [22, 76],
  [18, 62],
  [14.5, 48],
  [13, 42],
  [13, 58],
  [14, 70],
  [15, 80],
  [14, 97],
  [12, 108],
  [11.5, 122],
  [8.5, 138],
  [13, 145],
  [4, 146],
  [3, 138],
  [3.5, 122],
  [3, 108],
  [2, 92],
  [0, 84],
];
const OUTLINE = [1, -1].map((side) => HALF.map(([x, y]) => [WIDTH / 2 + side * x, y] as const));

/** Where a region lies on the half outline: distance from the middle, and height. */
const SPOTS: Readonly<Record<Region, readonly [number, number]>> = {
  head: [0, 9],
  neck: [0, 22],
  shoulder: [16, 32],
  'upper-arm': [19.5, 44],
  elbow: [22, 56],
  forearm: [24.5, 67],
  'wrist-hand': [28, 81],
  chest: [6, 38],
  'thoracic-spine': [0, 44],
  lumbosacral: [0, 66],
  abdomen: [0, 57],
  'hip-groin': [7, 78],
  thigh: [8.5, 92],
  knee: [8, 107],
  'lower-leg': [7.5, 122],
  ankle: [6, 137],
  foot: [8, 144],
  'whole-body': [0, 50],
};

/** The body's left is on the right of the page. */
function spotOf(region: Region, side: SideOrNone): readonly [number, number] {
  const [x, y] = SPOTS[region];
  return [WIDTH / 2 + (side === 'left' ? x : side === 'right' ? -x : 0), y];
}
