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
 * what the calibration says. Tracked and imported points count as exact as those by hand; points of which something
 * else is on record, such as suggested ones, as that says. Pooled as the root mean square over samples.
 *
 * @returns px, standard uncertainty of one coordinate
 * @source digitisingError; pooling of variances, JCGM 100:2008, 5.1; tracked as by hand: convention
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
    const known = of.map(({ samples, uPx }) => ({ n: samples.length, u: uPx ?? handUPx }));
    const n = known.reduce((sum, one) => sum + one.n, 0);
    if (n === 0) return handUPx;
    const square = known.reduce(
      (sum, { n: some, u }) => (sum === null || u === null ? null : sum + some * u * u),
      0 as number | null,
    );
    return square === null ? null : Math.sqrt(square / n);
  };
  const counts = ORIGINS.flatMap(([origin, words]) => {
    const of = tracks.filter((track) => track.origin === origin);
    const n = of.reduce((sum, { samples }) => sum + samples.length, 0);
    const uPx = of.reduce((most, track) => Math.max(most, track.uPx ?? 0), 0);
    return n === 0 ? [] : [`${n} ${words}${uPx === 0 ? '' : `, each coordinate uncertain by ${uPx.toFixed(1)} px`}`];
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
