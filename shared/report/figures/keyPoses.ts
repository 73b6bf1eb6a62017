import { frameClock } from '../../kernel/event/frameClock.ts';
import { LIMBS, TRUNK } from '../../knowledge/limbs.ts';
import type { Movement } from '../../knowledge/movement.ts';
import { BALL, type LandmarkTrack, type MovementTrial, type TrialEvent } from '../../model/trial.ts';
import { type Figure, figure } from '../blocks/figure.ts';
import type { Mark } from '../page.ts';
import { dot, label, line } from './drawing.ts';

type Point = readonly [x: number, y: number];
interface Pose {
  readonly label: string;
  /** x to the right, y up, in the trial's own units. */
  readonly points: ReadonlyMap<string, Point>;
}

const BODY_HEIGHT = 84;
const LABEL_ROOM = 13;
/** With fewer points a pose says nothing. */
const POINTS_AT_LEAST = 6;

/** The body at each event, joined from its landmarks, all to one scale over one ground; null if too little was digitised. */
export function keyPoses(
  trial: MovementTrial,
  tracks: readonly LandmarkTrack[],
  events: readonly TrialEvent[],
  movement: Movement,
): Figure | null {
  const poses = posesOf(trial, tracks, events, movement);
  if (poses.length < 2) return null;
  const names = poses.map((pose) => pose.label.toLowerCase()).join(', ');
  return figure({
    alt: `Stick figures of the body at ${poses.length} events: ${names}.`,
    caption:
      'The body at each event, to one scale over one ground. Left limbs are dashed, right limbs solid; the ring is the ball.',
    draw: (width, metrics) => {
      const slot = width / poses.length;
      const ys = poses.flatMap((pose) => [...pose.points.values()].map(([, y]) => y));
      const [low, high] = [Math.min(...ys), Math.max(...ys)];
      const widest = Math.max(...poses.map(widthOf));
      const scale = Math.min(BODY_HEIGHT / (high - low || 1), (slot - 8) / (widest || 1));
      const ground = (high - low) * scale + 4;
      const marks = poses.flatMap((pose, i): Mark[] => {
        const middle = slot * (i + 0.5);
        const centre = middleOf(pose);
        const place = ([x, y]: Point): Point => [middle + (x - centre) * scale, ground - (y - low) * scale];
        return [
          ...bodyMarks(pose, place, scale),
          label(pose.label, middle, ground + LABEL_ROOM - 2, { size: 7.5, align: 'middle' }, metrics),
        ];
      });
      return { height: ground + LABEL_ROOM, marks: [line(0, ground, width, ground, 0.5, 'muted'), ...marks] };
    },
  });
}

function posesOf(
  trial: MovementTrial,
  tracks: readonly LandmarkTrack[],
  events: readonly TrialEvent[],
  movement: Movement,
): Pose[] {
  const clock = frameClock(trial);
  if (clock === null) return [];
  const up = trial.calibration?.kind === 'metres' ? 1 : -1;
  return movement.events.flatMap(({ id, label: name }) => {
    const event = events.find((one) => one.event === id);
    if (event === undefined) return [];
    const frame = Math.round(clock.frameAt(event.timeS));
    const points = new Map<string, Point>();
    for (const track of tracks) {
      const sample = track.samples.find(([at]) => at === frame);
      if (sample !== undefined) points.set(track.point, [sample[1], up * sample[2]]);
    }
    return points.size < POINTS_AT_LEAST ? [] : [{ label: name, points }];
  });
}

function bodyMarks({ points }: Pose, place: (point: Point) => Point, scale: number): Mark[] {
  const marks: Mark[] = [];
  for (const [from, to] of [...TRUNK, ...LIMBS]) {
    const [a, b] = [points.get(from), points.get(to)];
    if (a === undefined || b === undefined) continue;
    const [[x1, y1], [x2, y2]] = [place(a), place(b)];
    marks.push(
      line(x1, y1, x2, y2, 1.1, 'ink', from.endsWith('-left') && to.endsWith('-left') ? [2.2, 1.6] : undefined),
    );
  }
  const [crown, neck] = [points.get('vertex'), points.get('cervicale')];
  if (crown !== undefined && neck !== undefined) {
    const [[x1, y1], [x2, y2]] = [place(crown), place(neck)];
    marks.push(dot((x1 + x2) / 2, (y1 + y2) / 2, Math.hypot(x1 - x2, y1 - y2) / 2.6, 'paper', 'ink'));
  }
  const ball = points.get(BALL);
  if (ball !== undefined) {
    const [x, y] = place(ball);
    marks.push(dot(x, y, Math.max(2.4, Math.min(5, 0.09 * scale)), null, 'accent'));
  }
  return marks;
}

function widthOf({ points }: Pose): number {
  const xs = [...points.values()].map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs);
}

function middleOf({ points }: Pose): number {
  const xs = [...points.values()].map(([x]) => x);
  return (Math.max(...xs) + Math.min(...xs)) / 2;
}
