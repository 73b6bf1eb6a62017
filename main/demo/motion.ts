import type { Point, Points } from './figure.ts';

/** A ball on its way, at the instant it is let go or struck. */
export interface Release {
  readonly timeS: number;
  readonly speedMPerS: number;
  /** Above level, rad. */
  readonly angleRad: number;
  /** Of the ball's centre above the floor, m. */
  readonly heightM: number;
}

/** A movement of an invented figure in one plane, known exactly at every instant: x forward, y up, floor at 0, metres. */
export interface Motion {
  /** Id of a shipped movement. */
  readonly movementId: string;
  readonly side: 'left' | 'right' | 'none';
  readonly statureM: number;
  readonly lastsS: number;
  /** Of the movement, s from the start, exact. */
  readonly events: Readonly<Record<string, number>>;
  readonly figureAt: (t: number) => Points;
  /** Centre of the ball; null where there is none. */
  readonly ballAt: ((t: number) => Point) | null;
  readonly ballRadiusM: number;
  readonly release: Release | null;
  /** Velocity up of the centre of mass as the feet leave the floor, m/s; null where they do not. */
  readonly riseMPerS: number | null;
}
