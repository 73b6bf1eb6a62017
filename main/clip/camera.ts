import type { Point } from '../demo/figure.ts';

/** A camera that looks at a plane: x to the right, y up, metres. */
export interface Camera {
  readonly widthPx: number;
  readonly heightPx: number;
  /** What the middle of the picture shows. */
  readonly lookingAt: Point;
  /** Scale at that place. */
  readonly pxPerM: number;
  readonly distanceM: number;
  /** How far the camera leans to one side, degrees: its picture of the plane is turned the other way. */
  readonly tiltDeg: number;
  /** How far it is turned from square on to the plane, degrees: what lies to the right is farther away. */
  readonly turnDeg: number;
}

const RAD = Math.PI / 180;

/** Where a point of the plane is in the picture, px, y down; whole numbers are the middles of pixels. A pinhole, no lens. */
export function project(camera: Camera, { x, y }: Point): Point {
  const { widthPx, heightPx, lookingAt, pxPerM, distanceM, tiltDeg, turnDeg } = camera;
  const [right, up] = [x - lookingAt.x, y - lookingAt.y];
  const nearer = distanceM / (distanceM + right * Math.sin(turnDeg * RAD));
  const [u, v] = [right * Math.cos(turnDeg * RAD) * nearer * pxPerM, up * nearer * pxPerM];
  const [cos, sin] = [Math.cos(tiltDeg * RAD), Math.sin(tiltDeg * RAD)];
  return { x: widthPx / 2 - 0.5 + u * cos - v * sin, y: heightPx / 2 - 0.5 - (u * sin + v * cos) };
}
