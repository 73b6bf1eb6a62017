import type { Side } from '../../model/parts.ts';
import { measured, type Quantity, type Source, type Unknown } from '../../quantity.ts';
import { type BodyPoints, type PlacedSegment, segmentCentres } from '../anthropometry/segmentCentres.ts';
import type { SegmentName, SegmentTable } from '../anthropometry/segmentTable.ts';
import { weightedCentre } from '../anthropometry/wholeBodyCentreOfMass.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import type { Point, PointU } from '../plane/point.ts';
import { derive } from '../quantity/derive.ts';
import { requirePositive } from '../quantity/requirePositive.ts';

export type Joint = 'shoulder' | 'elbow' | 'hip' | 'knee';

/** What hangs beyond each joint; leg names of both tables. */
const BEYOND: Readonly<Record<Joint, readonly SegmentName[]>> = {
  shoulder: ['upper-arm', 'forearm', 'hand'],
  elbow: ['forearm', 'hand'],
  hip: ['thigh', 'shank', 'leg', 'foot'],
  knee: ['shank', 'leg', 'foot'],
};

const SOURCE: Source = {
  cite: 'Static equilibrium: the moment at the joint balances that of the weights it carries. No acceleration is included',
  status: 'derived',
};

export interface JointLoad {
  readonly points: BodyPoints;
  readonly table: SegmentTable;
  readonly bodyMass: Quantity<'kg'>;
  readonly joint: Joint;
  readonly side: Side;
  /** `hanging`: the joint carries the limb beyond it; `one leg`, `two legs`: hip or knee carries the body above it. */
  readonly carries: 'hanging' | 'one leg' | 'two legs';
  /** Something held in the hand; null: nothing. Counted where the joint carries that hand. */
  readonly held: { readonly mass: Quantity<'kg'>; readonly at: Point } | null;
  /** Standard uncertainty of one coordinate, m, or why there is none. */
  readonly pointU: PointU;
}

/**
 * Static moment that muscles and ligaments hold at a joint in one frame: M = g Σ mᵢ (xᵢ − x_j), positive where the load
 * lies forward (+x) of the joint. For a body at rest or nearly so; in a fast movement the true moment is another, and
 * may be several times as great.
 *
 * Hanging: the segments beyond the joint and what the hand holds. One leg: all the body but that leg beyond the joint.
 * Two legs: half of what lies above both joints, for a stance alike on both sides.
 *
 * @returns N·m; unknown where a segment that counts is not digitised
 * @throws DomainError 'input-out-of-range' for a mass that is not above zero or a coordinate that is not finite
 * @source static equilibrium; segment masses and centres of the table used
 */
export function staticJointMoment(load: JointLoad): Quantity<'N.m'> | Unknown {
  const { points, table, bodyMass, joint, side, carries, held, pointU } = load;
  requirePositive('staticJointMoment', bodyMass, ...(held === null ? [] : [held.mass]));
  const axis = points[`${joint}-${side}`];
  if (axis === undefined) return { unknown: `the ${side} ${joint} is not digitised` };
  const { segments, missing } = segmentCentres(points, table);
  const isBeyond = (name: string, of: Side) => BEYOND[joint].some((segment) => name === `${segment} ${of}`);
  const counts = (name: string) =>
    carries === 'hanging'
      ? isBeyond(name, side)
      : carries === 'one leg'
        ? !isBeyond(name, side)
        : !isBeyond(name, 'left') && !isBeyond(name, 'right');
  const gone = missing.filter(counts);
  if (gone.length > 0) return { unknown: `not digitised: ${gone.join(', ')}` };
  const carried = segments.filter(({ name }) => counts(name));
  const share = carries === 'two legs' ? 0.5 : 1;
  const body = partOfBody(carried, table, bodyMass, share, pointU);
  const isHeld = held !== null && (carries !== 'hanging' || joint === 'shoulder' || joint === 'elbow');
  const x_j = measured('x_j', `${joint} ${side}, x`, axis.x, 'm', pointU);
  const what = {
    symbol: 'M',
    name: `static moment at the ${side} ${joint}`,
    unit: 'N.m',
    variant: `static; ${carries === 'hanging' ? 'the hanging limb' : `the body over ${carries}`}; ${table.name}`,
    source: SOURCE,
  } as const;
  if (!isHeld) {
    return derive(
      { ...what, formula: 'M = m g (x - x_j)' },
      { m: body.mass, g: standardGravity, x: body.x, x_j },
      ({ m, g, x, x_j: j }) => m * g * (x - j),
    );
  }
  const heldMass =
    share === 1 ? held.mass : { ...held.mass, value: held.mass.value * share, u: held.mass.u && held.mass.u * share };
  return derive(
    { ...what, formula: 'M = g (m (x - x_j) + m_h (x_h - x_j))' },
    {
      m: body.mass,
      g: standardGravity,
      x: body.x,
      x_j,
      m_h: heldMass,
      x_h: measured('x_h', 'what is held, x', held.at.x, 'm', pointU),
    },
    ({ m, g, x, x_j: j, m_h, x_h }) => g * (m * (x - j) + m_h * (x_h - j)),
  );
}

/** Mass and place of the segments carried, as one. */
function partOfBody(
  carried: readonly PlacedSegment[],
  table: SegmentTable,
  bodyMass: Quantity<'kg'>,
  share: number,
  pointU: PointU,
): { readonly mass: Quantity<'kg'>; readonly x: Quantity<'m'> } {
  const centre = weightedCentre(carried);
  const f = measured('f', 'share of body mass carried', centre.massShare * share, '1', 0, table.source);
  return {
    mass: derive(
      { symbol: 'm', name: 'mass carried', unit: 'kg', formula: 'm = f m_b', source: table.source },
      { f, m_b: bodyMass },
      ({ f: part, m_b }) => part * m_b,
    ),
    // Each centre rests on two points or more, so the uncertainty of one point is on the safe side.
    x: measured('x', 'centre of mass of what is carried, x', centre.x, 'm', pointU, table.source),
  };
}
