import type { Suggestion } from './suggestion.ts';

/** Suggestions on the picture: squares on their corner, where points of the case are rings. */
export function SuggestedPoints({ points, unit }: { points: readonly Suggestion[]; unit: number }) {
  const r = 5 * unit;
  return (
    <g className="bench-suggested">
      {points.map(({ point, x, y }) =>
        ['bench-halo', ''].map((look) => (
          <path
            key={`${point}${look}`}
            className={look}
            data-suggested={look === '' ? point : undefined}
            d={`M ${x} ${y - r} L ${x + r} ${y} L ${x} ${y + r} L ${x - r} ${y} Z`}
            strokeWidth={(look === '' ? 1.25 : 3) * unit}
          />
        )),
      )}
    </g>
  );
}
