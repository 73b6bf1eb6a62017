import { BALL, type Calibration, type LandmarkTrack } from '../../../shared/model/trial.ts';
import type { Bounds, Point } from '../../plots/StickFigure.tsx';

export interface Stage {
  readonly firstFrame: number;
  readonly lastFrame: number;
  readonly bounds: Bounds;
  readonly ballPath: readonly Point[];
  /** Points seen in a frame; a point that is missing there is absent. */
  at(frame: number): ReadonlyMap<string, Point>;
}

/** How far beyond the body, in body heights, the ball is followed before it leaves the picture. */
const BALL_REACH = 0.6;

/** Landmark tracks as frames to draw. Null where no track holds a sample. */
export function stageOf(tracks: readonly LandmarkTrack[]): Stage | null {
  const frames = tracks.flatMap(({ samples }) => samples.map(([frame]) => frame));
  if (frames.length === 0) return null;
  const byPoint = tracks.map(
    (track) => [track.point, new Map(track.samples.map(([frame, x, y]) => [frame, [x, y] as Point]))] as const,
  );
  const ballPath = [...(byPoint.find(([point]) => point === BALL)?.[1].values() ?? [])];
  const body = byPoint.flatMap(([point, samples]) => (point === BALL ? [] : [...samples.values()]));
  return {
    firstFrame: frames.reduce((a, b) => Math.min(a, b)),
    lastFrame: frames.reduce((a, b) => Math.max(a, b)),
    bounds: boundsOf(body, ballPath),
    ballPath,
    at: (frame) =>
      new Map(
        byPoint.flatMap(([point, samples]) => {
          const place = samples.get(frame);
          return place === undefined ? [] : [[point, place] as const];
        }),
      ),
  };
}

/** The body's extent, widened towards the ball but not so far that a long flight shrinks the athlete to a speck. */
function boundsOf(body: readonly Point[], ball: readonly Point[]): Bounds {
  const inner = extent(body.length > 0 ? body : ball);
  if (body.length === 0 || ball.length === 0) return inner;
  const outer = extent(ball);
  const reach = BALL_REACH * (inner.maxY - inner.minY);
  return {
    minX: Math.min(inner.minX, Math.max(outer.minX, inner.minX - reach)),
    maxX: Math.max(inner.maxX, Math.min(outer.maxX, inner.maxX + reach)),
    minY: Math.min(inner.minY, Math.max(outer.minY, inner.minY - reach)),
    maxY: Math.max(inner.maxY, Math.min(outer.maxY, inner.maxY + reach)),
  };
}

function extent(points: readonly Point[]): Bounds {
  return points.reduce<Bounds>(
    (box, [x, y]) => ({
      minX: Math.min(box.minX, x),
      maxX: Math.max(box.maxX, x),
      minY: Math.min(box.minY, y),
      maxY: Math.max(box.maxY, y),
    }),
    { minX: Infinity, maxX: -Infinity, minY: Infinity, maxY: -Infinity },
  );
}

/** Metres to one unit of the tracks' coordinates; null where the calibration does not give one number for it. */
export function metresPerUnit(calibration: Calibration | null): number | null {
  if (calibration === null || calibration.kind === 'plane') return null;
  if (calibration.kind === 'metres') return 1;
  const { from, to, lengthM } = calibration;
  const lengthPx = Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx);
  return lengthPx > 0 ? lengthM / lengthPx : null;
}
