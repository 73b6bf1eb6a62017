import { BALL, type LandmarkTrack, type MovementTrial, type PointRepeat } from '../../model/trial.ts';
import { digitisingError, LEAST_REPEATS } from '../uncertainty/digitisingError.ts';

/** How exact the points of a trial are, and how they were obtained. */
export interface PointUncertainty {
  /** Of one coordinate put down by hand, px; null: not known, or the coordinates are metres. */
  readonly handUPx: number | null;
  /** Pooled over the samples of the body, and of the ball; null: not known of some of them. */
  readonly bodyUPx: number | null;
  readonly ballUPx: number | null;
  /** For the working and the report: origins, and where the figures come from. */
  readonly said: readonly string[];
}

const ORIGINS = [
  ['by-hand', 'by hand'],
  ['tracked', 'tracked by template matching'],
  ['suggested-and-confirmed', 'suggested by a landmark model and confirmed by a person'],
  ['imported', 'imported'],
] as const;

/**
 * What is known of the error of a trial's points. By hand: the person's own error where points were put down twice, else
 * what the calibration says. Tracked points: that of the place they were tracked from, which is by hand, and their own
 * together; those tracked before they had one of their own, and imported points, count as exact as those by hand; points
 * of which something else is on record, such as suggested ones, as that says. Pooled as the root mean square over samples.
 *
 * @returns px, standard uncertainty of one coordinate
 * @source digitisingError; sum and pooling of variances, JCGM 100:2008, 5.1; imported as by hand: convention
 */
export function pointUncertainty(
  { calibration }: Pick<MovementTrial, 'calibration'>,
  tracks: readonly LandmarkTrack[],
  repeats: readonly PointRepeat[],
): PointUncertainty {
  const isPx = calibration?.kind !== 'metres';
  const own = isPx && repeats.length >= LEAST_REPEATS ? digitisingError(repeats) : null;
  const entered = calibration === null || calibration.kind === 'metres' ? null : calibration.pointUPx;
  const handUPx = own?.value ?? entered;
  const pooled = (of: readonly LandmarkTrack[]) => {
    const squares = of.flatMap(({ samples, uPx }) => {
      const start = uPx ?? handUPx;
      return samples.map(([, , , own = 0]) => (start === null ? null : start ** 2 + own ** 2));
    });
    if (squares.length === 0) return handUPx;
    const sum = squares.reduce((so, one) => (so === null || one === null ? null : so + one), 0);
    return sum === null ? null : Math.sqrt(sum / squares.length);
  };
  const counts = ORIGINS.flatMap(([origin, words]) => {
    const of = tracks.filter((track) => track.origin === origin);
    const n = of.reduce((sum, { samples }) => sum + samples.length, 0);
    const uPx = of.reduce((most, track) => Math.max(most, track.uPx ?? 0), 0);
    const how = origin === 'tracked' ? ownWords(of) : uPx === 0 ? '' : `, u = ${uPx.toFixed(1)} px a coordinate`;
    return n === 0 ? [] : [`${n} ${words}${how}`];
  });
  return {
    handUPx,
    bodyUPx: pooled(tracks.filter(({ point }) => point !== BALL)),
    ballUPx: pooled(tracks.filter(({ point }) => point === BALL)),
    said: [
      ...(counts.length === 0 ? [] : [`Points: ${counts.join('; ')}.`]),
      ...(own === null
        ? []
        : [
            `Points by hand are uncertain by ${own.value.toFixed(2)} px a coordinate: the person’s own error, from ${repeats.length} points put down twice.`,
          ]),
    ],
  };
}

/** What tracking itself adds, over all samples that have it. */
function ownWords(tracks: readonly LandmarkTrack[]): string {
  const own = tracks.flatMap(({ samples }) => samples.flatMap(([, , , u]) => (u === undefined ? [] : [u])));
  if (own.length === 0) return '';
  const u = Math.hypot(...own) / Math.sqrt(own.length);
  return `, u = ${u.toFixed(2)} px a coordinate beside that of the place put down by hand`;
}
