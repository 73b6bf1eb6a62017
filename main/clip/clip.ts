import { standardGravity } from '../../shared/kernel/constants/standardGravity.ts';
import { BALL, LANDMARKS } from '../../shared/model/trial.ts';
import type { Motion, Release } from '../demo/motion.ts';
import type { RandomSource } from '../demo/randomSource.ts';
import { type Camera, project } from './camera.ts';
import { filmedFrom } from './filmedFrom.ts';
import { type Furniture, furnitureBetween } from './furniture.ts';
import { MOTIONS } from './motions/index.ts';
import { sourceFor } from './sourceFor.ts';

export interface ClipOptions {
  readonly movementId: string;
  readonly seed: number;
  /** Frames a second the camera records. */
  readonly captureRateHz: number;
  /** How many times slower than real the clip plays. */
  readonly slowMotion: number;
  readonly tiltDeg: number;
  readonly turnDeg: number;
}

/** A clip before it is drawn: what moves, what stands there and who looks. */
export interface Clip {
  readonly options: ClipOptions;
  readonly motion: Motion;
  readonly camera: Camera;
  readonly furniture: Furniture;
  readonly frames: number;
}

/** What is exactly so in a clip, written beside it. Lengths m, times real s from the first frame, places px. */
export interface ClipTruth {
  readonly invented: true;
  readonly movement: string;
  readonly seed: number;
  readonly captureRateHz: number;
  readonly playbackRateHz: number;
  readonly frames: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly camera: Camera;
  readonly gravityMPerS2: number;
  readonly statureM: number;
  readonly side: Motion['side'];
  readonly stick: {
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
    readonly lengthM: number;
  };
  readonly plane: readonly { readonly px: readonly [number, number]; readonly m: readonly [number, number] }[];
  readonly events: Readonly<Record<string, number>>;
  readonly release: (Release & { readonly beforeApexS: number | null }) | null;
  /** Rise of the centre of mass from leaving the floor to its highest, m. */
  readonly jumpHeightM: number | null;
  /** [frame, x, y], each point in every frame in which it is in the picture. */
  readonly points: Readonly<Record<string, readonly (readonly [number, number, number])[]>>;
}

const WIDTH_PX = 1280;
const HEIGHT_PX = 720;

/** @throws Error for a movement that is not shipped */
export function planClip(options: ClipOptions): Clip {
  const make = MOTIONS[options.movementId];
  if (make === undefined)
    throw new Error(`No movement ${options.movementId}; there are ${Object.keys(MOTIONS).join(', ')}.`);
  const laterS = sourceFor(options.seed, 'clock').uniform() / options.captureRateHz;
  const motion = filmedFrom(make(sourceFor(options.seed, 'motion')), laterS);
  const frames = Math.floor(motion.lastsS * options.captureRateHz) + 1;
  const camera = cameraFor(motion, options, sourceFor(options.seed, 'camera'));
  const half = WIDTH_PX / camera.pxPerM / 2;
  const furniture = furnitureBetween(camera.lookingAt.x - half, camera.lookingAt.x + half);
  return { options, motion, camera, furniture, frames };
}

/** Near enough to see well, far enough to see the whole movement and the beginning of the ball's flight. */
function cameraFor(motion: Motion, { tiltDeg, turnDeg }: ClipOptions, random: RandomSource): Camera {
  const places = Array.from({ length: 41 }, (_, i) => motion.figureAt((i / 40) * motion.lastsS)).flatMap((figure) =>
    LANDMARKS.map((name) => figure[name]),
  );
  const flight =
    motion.release === null ? [] : [0.05, 0.1, 0.16].map((s) => motion.ballAt?.((motion.release?.timeS ?? 0) + s));
  const xs = [...places, ...flight.filter((place) => place !== undefined)].map(({ x }) => x);
  const ys = places.map(({ y }) => y);
  const [left, right, top] = [Math.min(...xs) - 0.5, Math.max(...xs) + 0.5, Math.max(3.1, ...ys.map((y) => y + 0.35))];
  const pxPerM = Math.min(WIDTH_PX / (right - left), HEIGHT_PX / (top + 0.35), 230) * (0.96 + 0.04 * random.uniform());
  return {
    widthPx: WIDTH_PX,
    heightPx: HEIGHT_PX,
    lookingAt: { x: (left + right) / 2, y: HEIGHT_PX / pxPerM / 2 - 0.3 },
    pxPerM,
    distanceM: 9,
    tiltDeg,
    turnDeg,
  };
}

export function truthOf({ options, motion, camera, furniture, frames }: Clip): ClipTruth {
  const { captureRateHz, slowMotion } = options;
  const px = (place: { x: number; y: number }) => {
    const { x, y } = project(camera, place);
    return [round(x), round(y)] as const;
  };
  const points: Record<string, [number, number, number][]> = {};
  for (let frame = 0; frame < frames; frame += 1) {
    const t = frame / captureRateHz;
    const ball = motion.ballAt?.(t) ?? null;
    const places = { ...motion.figureAt(t), ...(ball === null ? {} : { [BALL]: ball }) };
    for (const [name, place] of Object.entries(places)) {
      const [x, y] = px(place);
      const isSeen = x > 2 && y > 2 && x < camera.widthPx - 3 && y < camera.heightPx - 3;
      if (isSeen) (points[name] ??= []).push([frame, x, y]);
    }
  }
  const { release, riseMPerS } = motion;
  const g = standardGravity.value;
  const takeoff = motion.events['take-off'];
  const apex = riseMPerS === null || takeoff === undefined ? null : takeoff + riseMPerS / g;
  return {
    invented: true,
    movement: motion.movementId,
    seed: options.seed,
    captureRateHz,
    playbackRateHz: captureRateHz / slowMotion,
    frames,
    widthPx: camera.widthPx,
    heightPx: camera.heightPx,
    camera,
    gravityMPerS2: g,
    statureM: motion.statureM,
    side: motion.side,
    stick: { from: px(furniture.stick.from), to: px(furniture.stick.to), lengthM: furniture.stick.lengthM },
    plane: furniture.plane.map((place) => ({ px: px(place), m: [place.x, place.y] })),
    events: motion.events,
    release: release === null ? null : { ...release, beforeApexS: apex === null ? null : apex - release.timeS },
    jumpHeightM: riseMPerS === null ? null : riseMPerS ** 2 / (2 * g),
    points,
  };
}

function round(px: number): number {
  return Math.round(px * 1e4) / 1e4;
}
