import type { SKRSContext2D } from '@napi-rs/canvas';
import { LANDMARKS, type Landmark } from '../../shared/model/trial.ts';
import type { Point } from '../demo/figure.ts';
import type { RandomSource } from '../demo/randomSource.ts';
import type { Motion } from '../demo/motion.ts';
import { type Camera, project } from './camera.ts';
import { CODE_CELL_PX, CODE_CELLS, codeOf } from './frameCode.ts';
import type { Furniture } from './furniture.ts';

/** Parts from one landmark to another, the far side first; thickness in m. */
const PARTS: readonly (readonly [from: Landmark, to: Landmark, thick: number, colour: string])[] = [
  ['shoulder-left', 'elbow-left', 0.09, '#5f6b66'],
  ['elbow-left', 'wrist-left', 0.07, '#77655a'],
  ['wrist-left', 'knuckle-left', 0.06, '#77655a'],
  ['hip-left', 'knee-left', 0.14, '#4c5560'],
  ['knee-left', 'ankle-left', 0.1, '#77655a'],
  ['heel-left', 'toe-left', 0.06, '#3d4148'],
  ['cervicale', 'hip-right', 0.2, '#7f8f86'],
  ['vertex', 'cervicale', 0.13, '#b3957d'],
  ['hip-right', 'knee-right', 0.15, '#5c6774'],
  ['knee-right', 'ankle-right', 0.11, '#a5886f'],
  ['heel-right', 'toe-right', 0.06, '#565b64'],
  ['shoulder-right', 'elbow-right', 0.1, '#8b9a92'],
  ['elbow-right', 'wrist-right', 0.08, '#b3957d'],
  ['wrist-right', 'knuckle-right', 0.07, '#b3957d'],
];

/** Half the size of a marker, px. */
const MARKER_PX = 8;

/** Everything that does not move. */
export function drawBackground(
  context: SKRSContext2D,
  camera: Camera,
  furniture: Furniture,
  random: RandomSource,
): void {
  const { widthPx, heightPx } = camera;
  context.fillStyle = '#b9bfba';
  context.fillRect(0, 0, widthPx, heightPx);
  polygon(
    context,
    camera,
    [
      [-30, 0],
      [30, 0],
      [30, -4],
      [-30, -4],
    ],
    '#9c8a70',
  );
  // Blotches that look alike from frame to frame, as a wall and a floor do: the tracker must not mind them.
  for (let i = 0; i < 900; i += 1) {
    const grey = Math.round(255 * random.uniform());
    context.fillStyle = `rgba(${grey}, ${grey}, ${grey}, ${(0.09 * random.uniform()).toFixed(3)})`;
    context.fillRect(
      random.uniform() * widthPx,
      random.uniform() * heightPx,
      6 + 60 * random.uniform(),
      4 + 26 * random.uniform(),
    );
  }
  const { stick, plane } = furniture;
  line(context, camera, stick.from, stick.to, 5, '#2e3134');
  for (const end of [stick.from, stick.to]) marker(context, project(camera, end), 0, 7);
  for (const place of plane) marker(context, project(camera, place), 1, 9);
}

/** What moves, at one instant, over a background that is already there. */
export function drawFigure(context: SKRSContext2D, camera: Camera, motion: Motion, t: number): void {
  const figure = motion.figureAt(t);
  for (const [from, to, thick, colour] of PARTS) {
    line(context, camera, figure[from], figure[to], thick * camera.pxPerM, colour);
  }
  if (motion.movementId === 'tennis-serve') {
    const { 'wrist-right': wrist, 'knuckle-right': hand } = figure;
    const share = 0.5 / Math.hypot(hand.x - wrist.x, hand.y - wrist.y);
    const head = { x: hand.x + (hand.x - wrist.x) * share, y: hand.y + (hand.y - wrist.y) * share };
    line(context, camera, hand, head, 0.03 * camera.pxPerM, '#33383d');
  }
  const ball = motion.ballAt?.(t) ?? null;
  if (ball !== null) drawBall(context, camera, ball, motion.ballRadiusM);
  for (const [i, name] of LANDMARKS.entries()) {
    // Left hip and shoulder lie behind the right ones, whose markers stand for both.
    if (name === 'hip-left' || name === 'shoulder-left') continue;
    marker(context, project(camera, figure[name]), i, MARKER_PX);
  }
}

export function drawCode(context: SKRSContext2D, frame: number): void {
  context.fillStyle = '#000000';
  context.fillRect(0, 0, CODE_CELLS * CODE_CELL_PX, 2 * CODE_CELL_PX);
  context.fillStyle = '#ffffff';
  for (const [column, row] of codeOf(frame)) {
    context.fillRect(column * CODE_CELL_PX, row * CODE_CELL_PX, CODE_CELL_PX, CODE_CELL_PX);
  }
}

/** Where the middle of a pixel is for the canvas: half a pixel from its edge. */
const onCanvas = ({ x, y }: Point): [number, number] => [x + 0.5, y + 0.5];

function line(context: SKRSContext2D, camera: Camera, from: Point, to: Point, widthPx: number, colour: string): void {
  context.lineCap = 'round';
  context.lineWidth = widthPx;
  context.strokeStyle = colour;
  context.beginPath();
  context.moveTo(...onCanvas(project(camera, from)));
  context.lineTo(...onCanvas(project(camera, to)));
  context.stroke();
}

function polygon(
  context: SKRSContext2D,
  camera: Camera,
  corners: readonly (readonly [number, number])[],
  colour: string,
): void {
  context.fillStyle = colour;
  context.beginPath();
  for (const [x, y] of corners) context.lineTo(...onCanvas(project(camera, { x, y })));
  context.fill();
}

/** A white disc with two black quarters, turned by kind, so that neighbours do not look alike. */
function marker(context: SKRSContext2D, at: Point, kind: number, radiusPx: number): void {
  const [x, y] = onCanvas(at);
  const turn = (kind * Math.PI) / 7;
  context.fillStyle = '#ffffff';
  context.beginPath();
  context.arc(x, y, radiusPx, 0, 2 * Math.PI);
  context.fill();
  context.fillStyle = '#111111';
  for (const side of [0, Math.PI]) {
    context.beginPath();
    context.moveTo(x, y);
    context.arc(x, y, radiusPx, turn + side, turn + side + Math.PI / 2);
    context.fill();
  }
}

/** A ball with a dark ring and a bright middle, the same from all sides. */
function drawBall(context: SKRSContext2D, camera: Camera, at: Point, radiusM: number): void {
  const [x, y] = onCanvas(project(camera, at));
  const radius = Math.max(4, radiusM * camera.pxPerM);
  for (const [share, colour] of [
    [1, '#1b1b1b'],
    [0.82, '#d9a441'],
    [0.4, '#fff3cf'],
  ] as const) {
    context.fillStyle = colour;
    context.beginPath();
    context.arc(x, y, share * radius, 0, 2 * Math.PI);
    context.fill();
  }
}
