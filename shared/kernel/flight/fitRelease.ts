import { DomainError } from '../../errors.ts';
import { measured, type Quantity, type Source } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { standardGravity } from '../constants/standardGravity.ts';
import type { PointU } from '../plane/point.ts';
import { correlationOfDerived } from '../quantity/correlationOfDerived.ts';
import { derive, pairKey } from '../quantity/derive.ts';
import { ownU } from './ownU.ts';
import { VACUUM } from './path.ts';
import { type PathFit, pathFit } from './pathFit.ts';

/** A digitised place of the ball in flight: real seconds, metres, y up. */
export interface FlightSample {
  readonly t: number;
  readonly x: number;
  readonly y: number;
}

export interface FitOptions {
  /** When the ball left the hand, s, on the samples' clock; by default the first sample. `u`: standard uncertainty. */
  readonly releaseAt?: { readonly t: number; readonly u: number };
  /** Relative standard uncertainty of every length, from the calibration. */
  readonly scaleU?: PointU;
  /** The part of the digitising uncertainty that all samples have in common, m: it shifts the path and bends nothing. */
  readonly sharedU?: number;
  /** `fitted`: nothing is assumed. `standard`: g is known, which halves the uncertainty of a short clip's speed. */
  readonly gravity?: 'fitted' | 'standard';
}

export interface ReleaseFit {
  readonly releaseSpeed: Quantity<'m/s'>;
  /** Above the horizontal, in the direction of flight. */
  readonly releaseAngle: Quantity<'rad'>;
  /** Of the errors of the two, −1 to 1: one scale and one clock stand behind both. */
  readonly correlation: number;
  readonly velocityX: Quantity<'m/s'>;
  readonly velocityY: Quantity<'m/s'>;
  /** Where the ball was at release, in the samples' coordinates. */
  readonly x: Quantity<'m'>;
  readonly y: Quantity<'m'>;
  /** The g that the samples themselves show, whichever g the speed was fitted with. */
  readonly gravity: Quantity<'m/s2'>;
  /** Root mean square distance of the samples from the fitted path, per coordinate. */
  readonly residual: Quantity<'m'>;
  readonly verdict: 'fine' | 'questioned' | 'cannot tell';
  /** What lies behind the verdict, in sentences. */
  readonly reasons: readonly string[];
  readonly frames: number;
}

export const LEAST_FLIGHT_FRAMES = 6;
/** g found further off than this is a wrong scale, frame rate or slow-motion factor: a convention. */
export const GRAVITY_BAND = 0.1;

const SOURCE: Source = {
  cite: 'Least squares on free flight; uncertainty from the normal equations (JCGM 100:2008, H.3)',
  status: 'derived',
};

/** A drag factor, /m. */
export interface DragGiven {
  readonly k: number;
  readonly u?: number;
}

/**
 * How a ball left the hand, from where it was afterwards: a straight line in x and a parabola in y by least squares
 * (from the ball's path, never from the forearm). With drag, the path's bend away from the parabola is integrated from
 * the current answer, taken off the samples, and the fit repeated until it stands still.
 *
 * Each coordinate's standard uncertainty is the larger of the digitising uncertainty given, less what all samples share, and
 * the scatter about the fit. What they share is in the place of the release alone.
 *
 * @param samples at least six, times strictly rising, s and m
 * @param pointU standard uncertainty of one coordinate, m, or why there is none (then the scatter alone counts)
 * @param drag k = ρ C A/(2m), /m, and its standard uncertainty if there is one; null: vacuum
 * @throws DomainError 'not-enough-data' for fewer than six samples; 'input-out-of-range' for samples not finite or not
 *   rising in time; 'no-solution' if the fit with drag does not settle
 * @source free flight; least squares
 */
export function fitRelease(
  samples: readonly FlightSample[],
  pointU: PointU,
  drag: DragGiven | null,
  options: FitOptions = {},
): ReleaseFit {
  refuseUnusableFlight('fitRelease', samples);
  if (drag !== null && !(Number.isFinite(drag.k) && drag.k >= 0)) {
    throw new DomainError('input-out-of-range', `fitRelease needs a drag factor of 0 or more, got ${drag.k} /m`);
  }
  const releaseT = options.releaseAt?.t ?? (samples[0] as FlightSample).t;
  const after = samples.map(({ t, x, y }) => ({ t: t - releaseT, x, y }));
  const fitsWith = (k: number) => {
    const air = { ...VACUUM, drag: k };
    const free = pathFit(after, air, null);
    return { free, used: options.gravity === 'standard' ? pathFit(after, air, standardGravity.value) : free };
  };
  const [k, dragU] = [drag?.k ?? 0, drag?.u ?? 0];
  const { free, used } = fitsWith(k);
  // One standard uncertainty more of drag, and the velocity at release and the gravity that the same path then asks for.
  const heavier = dragU === 0 ? { free, used } : fitsWith(k + dragU);
  const byDrag = { x: heavier.used.vx - used.vx, y: heavier.used.vy - used.vy, g: heavier.free.g - free.g };

  const sharedU = options.sharedU ?? 0;
  const digitising = ownU(pointU, sharedU);
  const sigma = (f: PathFit) => Math.max(digitising, f.scatter);
  const scale = scaleQuantity(options.scaleU);
  const count = measured('n', 'Flight frames', samples.length, '1', 0);
  const value = <U extends Unit>(
    symbol: string,
    name: string,
    unit: U,
    f: PathFit,
    at: number,
    se: number,
    formula: string,
  ) => {
    const fittedSymbol = withIndex(symbol, 'f');
    const fitted: Quantity<U> = {
      value: at,
      unit,
      u: sigma(f) * se,
      uReason: null,
      working: {
        symbol: fittedSymbol,
        name: `${name}, fitted`,
        formula,
        inputs: [
          { symbol: 'n', quantity: count },
          { symbol: 'σ_p', quantity: measured('σ_p', 'One coordinate', sigma(f), 'm', 0) },
        ],
        variant: variantOf(drag, f === free ? 'g fitted' : 'g taken as standard'),
        source: SOURCE,
      },
    };
    return derive(
      {
        symbol,
        name,
        unit,
        formula: `${symbol} = ${fittedSymbol} s`,
        variant: 's: scale of the calibration, 1',
        source: SOURCE,
      },
      { [fittedSymbol]: fitted, s: scale },
      (p) => (p[fittedSymbol] as number) * p.s,
    );
  };
  const gravity = withDrag(
    value('g', 'Gravity found', 'm/s2', free, free.g, free.seG, 'least squares: y = y_0 + v_y t - g t^2 / 2'),
    byDrag.g,
  );
  const velocityX = withDrag(
    value('v_x', 'Horizontal velocity at release', 'm/s', used, used.vx, used.seVx, 'least squares: x = x_0 + v_x t'),
    byDrag.x,
  );
  const fromFit = withDrag(
    value(
      'v_y',
      'Vertical velocity at release',
      'm/s',
      used,
      used.vy,
      used.seVy,
      'least squares: y = y_0 + v_y t - g t^2 / 2',
    ),
    byDrag.y,
  );
  const releaseU = options.releaseAt?.u ?? 0;
  const velocityY =
    releaseU === 0
      ? fromFit
      : derive(
          {
            symbol: 'v_y0',
            name: 'Vertical velocity at release',
            unit: 'm/s',
            formula: 'v_y0 = v_y - g δt',
            variant: 'δt: how far the true release may lie from the frame chosen',
            source: SOURCE,
          },
          { v_y: fromFit, g: standardGravity, δt: measured('δt', 'Timing of release', 0, 's', releaseU) },
          ({ v_y, g, δt }) => v_y - g * δt,
        );
  const place = (axis: 'x' | 'y', at: number, se: number, velocity: Quantity<'m/s'>) =>
    derive(
      {
        symbol: `${axis}_0`,
        name: `Ball ${axis} at release`,
        unit: 'm',
        formula: `${axis}_0 = ${axis}_f + v_${axis} δt`,
        source: SOURCE,
      },
      {
        [`${axis}_f`]: measured(
          `${axis}_f`,
          `Ball ${axis} at release, fitted`,
          at,
          'm',
          Math.hypot(sigma(used) * se, sharedU),
          SOURCE,
        ),
        [`v_${axis}`]: measured(`v_${axis}`, velocity.working.name, velocity.value, 'm/s', 0),
        δt: measured('δt', 'Timing of release', 0, 's', releaseU),
      },
      (p) => (p[`${axis}_f`] as number) + (p[`v_${axis}`] as number) * p.δt,
    );
  const residual: Quantity<'m'> = {
    ...measured('r', 'Residual', free.rms, 'm', 'it describes the scatter itself', SOURCE),
    working: {
      symbol: 'r',
      name: 'Residual',
      formula: 'r = sqrt(Σ(x - x_f)^2 + Σ(y - y_f)^2) / sqrt(2 n)',
      inputs: [{ symbol: 'n', quantity: count }],
      variant: 'root mean square of one coordinate',
      source: SOURCE,
    },
  };
  const components = { v_x: velocityX, v_y: velocityY };
  // Both are as long as the scale makes them, and bent by the same air.
  const shared = velocityX.value * velocityY.value * (scale.u ?? 0) ** 2 + byDrag.x * byDrag.y;
  const apart = (velocityX.u ?? 0) * (velocityY.u ?? 0);
  const correlations = { [pairKey('v_x', 'v_y')]: apart > 0 ? shared / apart : 0 };
  return {
    releaseSpeed: derive(
      {
        symbol: 'v',
        name: 'Release speed',
        unit: 'm/s',
        formula: 'v = sqrt(v_x^2 + v_y^2)',
        variant: variantOf(drag, ''),
        source: SOURCE,
      },
      components,
      speedOf,
      correlations,
    ),
    releaseAngle: derive(
      {
        symbol: 'θ',
        name: 'Release angle',
        unit: 'rad',
        formula: 'θ = atan2(v_y, abs(v_x))',
        variant: 'above the horizontal, from the path of the ball',
        source: SOURCE,
      },
      components,
      angleOf,
      correlations,
    ),
    correlation: correlationOfDerived(components, speedOf, angleOf, correlations),
    velocityX,
    velocityY,
    x: place('x', used.x0, used.seX0, velocityX),
    y: place('y', used.y0, used.seY0, velocityY),
    gravity,
    residual,
    ...judge(gravity, free, pointU),
    frames: samples.length,
  };
}

/** What is fitted with what the uncertainty of the drag factor adds to its own. */
function withDrag<U extends Unit>(fitted: Quantity<U>, change: number): Quantity<U> {
  if (change === 0) return fitted;
  const { unit, working } = fitted;
  const { symbol, name } = working;
  const asGiven = withIndex(symbol, 'k');
  return derive(
    {
      symbol,
      name,
      unit,
      formula: `${symbol} = ${asGiven} + δ_k`,
      variant: 'δ_k: what one standard uncertainty of the drag factor changes',
      source: SOURCE,
    },
    {
      [asGiven]: { ...fitted, working: { ...working, symbol: asGiven } },
      δ_k: measured('δ_k', 'Change with the drag factor', 0, unit, Math.abs(change)),
    },
    (p) => (p[asGiven] as number) + p.δ_k,
  );
}

function withIndex(symbol: string, index: string): string {
  return symbol.includes('_') ? `${symbol}${index}` : `${symbol}_${index}`;
}

interface Components {
  readonly v_x: number;
  readonly v_y: number;
}

function speedOf({ v_x, v_y }: Components): number {
  return Math.hypot(v_x, v_y);
}

function angleOf({ v_x, v_y }: Components): number {
  return Math.atan2(v_y, Math.abs(v_x));
}

function variantOf(drag: DragGiven | null, g: string): string {
  const air = drag === null ? 'in a vacuum' : `with drag, k = ${drag.k.toPrecision(4)} /m`;
  return g === '' ? air : `${air}, ${g}`;
}

function scaleQuantity(scaleU: PointU | undefined): Quantity<'1'> {
  // A scale whose uncertainty nobody knows must not erase what the fit does know.
  return measured('s', 'Scale of the calibration', 1, '1', typeof scaleU === 'number' ? scaleU : 0);
}

/** Three answers: is this the flight of a ball that falls with g? */
function judge(gravity: Quantity<'m/s2'>, free: PathFit, pointU: PointU): Pick<ReleaseFit, 'verdict' | 'reasons'> {
  const g = standardGravity.value;
  const off = Math.abs(gravity.value - g);
  const U = 2 * (gravity.u ?? 0);
  const found = `gravity found ${gravity.value.toFixed(2)} m/s² (± ${U.toFixed(2)}) against ${g.toFixed(2)}`;
  if (off - U > GRAVITY_BAND * g) {
    return {
      verdict: 'questioned',
      reasons: [`${found}: the scale, the frame rate or the slow-motion factor is wrong, or this is not free flight`],
    };
  }
  if (typeof pointU === 'number' && pointU > 0 && free.scatter > 3 * pointU) {
    return {
      verdict: 'questioned',
      reasons: [
        `the points scatter ${(1000 * free.scatter).toFixed(0)} mm about the path, more than three times the ${(1000 * pointU).toFixed(0)} mm entered: one of them may be misread`,
      ],
    };
  }
  if (off > GRAVITY_BAND * g || U > 2 * GRAVITY_BAND * g) {
    return { verdict: 'cannot tell', reasons: [`${found}: too few frames or too coarse points to tell`] };
  }
  return { verdict: 'fine', reasons: [found] };
}

/**
 * The door of everything that reads a flight.
 * @throws DomainError 'not-enough-data' for fewer than six samples; 'input-out-of-range' for one that is not finite or
 *   does not come after the one before
 */
export function refuseUnusableFlight(name: string, samples: readonly FlightSample[]): void {
  if (samples.length < LEAST_FLIGHT_FRAMES) {
    throw new DomainError(
      'not-enough-data',
      `${name} needs at least ${LEAST_FLIGHT_FRAMES} frames of flight, got ${samples.length}`,
    );
  }
  samples.forEach(({ t, x, y }, i) => {
    if (![t, x, y].every(Number.isFinite)) {
      throw new DomainError(
        'input-out-of-range',
        `${name} needs finite samples, got (${t}, ${x}, ${y})`,
        `samples.${i}`,
      );
    }
    const before = samples[i - 1]?.t ?? Number.NEGATIVE_INFINITY;
    if (t <= before) {
      throw new DomainError(
        'input-out-of-range',
        `${name} needs times that rise, got ${t} s after ${before} s`,
        `samples.${i}`,
      );
    }
  });
}
