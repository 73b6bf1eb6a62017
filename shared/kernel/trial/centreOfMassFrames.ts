import { LANDMARKS } from '../../model/trial.ts';
import { DE_LEVA_FEMALE, DE_LEVA_MALE } from '../anthropometry/deLeva1996.ts';
import type { SegmentTable } from '../anthropometry/segmentTable.ts';
import { wholeBodyCentreOfMass } from '../anthropometry/wholeBodyCentreOfMass.ts';
import { WINTER } from '../anthropometry/winter2009.ts';
import type { Point } from '../plane/point.ts';
import type { PointSeries } from './pointSeries.ts';

/** The body's centre of mass frame by frame. */
export interface CentreOfMassFrames {
  readonly smooth: ReadonlyMap<number, Point>;
  readonly raw: ReadonlyMap<number, Point>;
  /** As the points were digitised, each at its own instant: see PointSeries. */
  readonly seen: ReadonlyMap<number, Point>;
  /** Why there is none; null: there is. */
  readonly unknown: string | null;
  readonly warnings: readonly string[];
}

/** With less of the body's mass than this digitised, its centre is not the body's: a convention. */
const LEAST_MASS_SHARE = 0.7;

/** The segment table of the reference sex; without one, Winter's. */
export function segmentTableFor(referenceSex: 'female' | 'male' | 'no-reference' | null): SegmentTable {
  if (referenceSex === 'female') return DE_LEVA_FEMALE;
  return referenceSex === 'male' ? DE_LEVA_MALE : WINTER;
}

function none(unknown: string): CentreOfMassFrames {
  return { smooth: new Map(), raw: new Map(), seen: new Map(), unknown, warnings: [] };
}

/**
 * The whole-body centre of mass in every frame that shows as much of the body as the best frames do. A frame with less
 * would make the centre jump, so it is left out.
 *
 * @source the segment table used
 */
export function centreOfMassFrames(
  points: ReadonlyMap<string, PointSeries>,
  referenceSex: 'female' | 'male' | 'no-reference' | null,
): CentreOfMassFrames {
  const table = segmentTableFor(referenceSex);
  const framesOf = (kind: 'smooth' | 'seen') => [
    ...new Set(LANDMARKS.flatMap((name) => [...(points.get(name)?.[kind].keys() ?? [])])),
  ];
  const frames = framesOf('smooth');
  if (frames.length === 0) return none('no landmark of the body is digitised');

  // Filmed from the side, often only the near shoulder and hip are digitised; each then stands for the middle too.
  const alone = (['shoulder', 'hip'] as const).flatMap((part) => {
    const sides = (['left', 'right'] as const).filter((side) => points.has(`${part}-${side}`));
    return sides.length === 1 ? [`${part}-${sides[0]}`] : [];
  });
  const standIn = (name: string) => {
    const other = name.endsWith('left') ? name.replace('left', 'right') : name.replace('right', 'left');
    return points.get(name) ?? (alone.includes(other) ? points.get(other) : undefined);
  };
  const centres = (kind: 'smooth' | 'raw' | 'seen') =>
    (kind === 'seen' ? framesOf(kind) : frames)
      .toSorted((a, b) => a - b)
      .flatMap((frame) => {
        const here = LANDMARKS.flatMap((name) => {
          const point = standIn(name)?.[kind].get(frame);
          return point === undefined ? [] : [[name, point] as const];
        });
        const centre = wholeBodyCentreOfMass(Object.fromEntries(here), table);
        return 'unknown' in centre ? [] : [{ frame, centre }];
      });
  const smooth = centres('smooth');
  const best = Math.max(0, ...smooth.map(({ centre }) => centre.massShare));
  if (best < LEAST_MASS_SHARE) {
    return none(
      `only ${Math.round(100 * best)} % of the body's mass is digitised; ${100 * LEAST_MASS_SHARE} % are needed`,
    );
  }
  const complete = (all: typeof smooth) =>
    new Map(
      all.flatMap(({ frame, centre: { x, y, massShare } }) => (massShare > best - 0.01 ? [[frame, { x, y }]] : [])),
    );
  const raw = complete(centres('raw'));
  const isEven = [...points.values()].every((one) => one.seen === one.raw);
  const missing = smooth.find(({ centre }) => centre.massShare > best - 0.01)?.centre.missing ?? [];
  return {
    smooth: complete(smooth),
    raw,
    seen: isEven ? raw : complete(centres('seen')),
    unknown: null,
    warnings: [
      ...alone.map(
        (name) => `Only the ${name.split('-').toReversed().join(' ')} is digitised; it stands for the middle of both.`,
      ),
      ...(missing.length === 0
        ? []
        : [
            `The centre of mass rests on ${Math.round(100 * best)} % of the body's mass; not digitised: ${missing.join(', ')}.`,
          ]),
    ],
  };
}
