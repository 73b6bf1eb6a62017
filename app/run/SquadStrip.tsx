import { useId } from 'react';
import type { BatteryItem } from '../../shared/knowledge/screening/battery.ts';
import { counted, quantityText } from '../../shared/format/number.ts';
import { convert, type Unit } from '../../shared/units.ts';
import { stackDots } from './stackDots.ts';

const WIDTH = 720;
const RADIUS = 5;
const EDGE = 24;

/**
 * One test, one side: a dot for each athlete, those of like values one above the other. The arrow keys go from athlete
 * to athlete by value; the one chosen is named here and marked in every strip.
 */
export function SquadStrip(props: {
  item: BatteryItem;
  sideWords: string;
  points: readonly { readonly caseId: string; readonly name: string; readonly valueSi: number }[];
  /** Least and greatest value of both sides, so that they share one scale. */
  extentSi: readonly [number, number];
  missing: number;
  caseId: string | null;
  onChoose: (caseId: string | null) => void;
}) {
  const { item, sideWords, extentSi, missing, caseId, onChoose } = props;
  const hatch = useId();
  const unit = item.unit as Unit;
  const shown = item.displayUnit as Unit;
  const say = (value: number) => quantityText({ value, unit, u: item.kind === 'counted' ? 0 : null }, shown);
  const points = props.points.toSorted((a, b) => a.valueSi - b.valueSi);
  const band =
    item.reference === null
      ? null
      : ([item.reference.low, item.reference.high] as const).map((end) => convert(end, shown, unit));
  const [least, most] = extentSi;
  const span = most - least || Math.abs(most) || 1;
  const x = (value: number) => EDGE + ((value - least) / span) * (WIDTH - 2 * EDGE);
  const dots = stackDots(
    points.map(({ valueSi }) => x(valueSi)),
    2 * RADIUS + 1,
  );
  const height = Math.max(...dots.map(({ level }) => level), 0) * (2 * RADIUS + 1) + 64;
  const axis = height - 24;
  const at = points.findIndex((point) => point.caseId === caseId);
  const chosen = points[at];
  const label = [item.label, sideWords].filter((part) => part !== '').join(', ');

  return (
    <figure className="squad-strip">
      <figcaption>
        {sideWords === '' ? '' : `${sideWords}, `}
        {counted(points.length, 'athlete')}
        {missing > 0 && <span className="quiet">, {missing} not entered</span>}
      </figcaption>
      <input
        type="range"
        className="only-heard"
        min={0}
        max={points.length}
        value={at + 1}
        aria-label={`${label}: athletes by value`}
        aria-valuetext={chosen === undefined ? 'nobody chosen' : `${chosen.name}, ${say(chosen.valueSi)}`}
        onChange={({ target }) => onChoose(points[Number(target.value) - 1]?.caseId ?? null)}
      />
      <svg viewBox={`0 0 ${WIDTH} ${height}`} aria-hidden="true">
        {band !== null && (
          <>
            <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <line className="hatch-line" x1="0" y1="0" x2="0" y2="5" />
            </pattern>
            <rect
              fill={`url(#${hatch})`}
              x={clamp(x(band[0] ?? 0))}
              width={Math.max(clamp(x(band[1] ?? 0)) - clamp(x(band[0] ?? 0)), 0)}
              y={axis - 10}
              height="10"
            />
          </>
        )}
        <line className="band-end" x1={0} x2={WIDTH} y1={axis} y2={axis} />
        <text className="band-text" x={EDGE} y={axis + 18} textAnchor="middle">
          {say(least)}
        </text>
        {most > least && (
          <text className="band-text" x={WIDTH - EDGE} y={axis + 18} textAnchor="middle">
            {say(most)}
          </text>
        )}
        {points.map((point, i) => (
          <circle
            key={point.caseId}
            className={point.caseId === caseId ? 'squad-dot squad-dot-chosen' : 'squad-dot'}
            cx={dots[i]?.x}
            cy={axis - 8 - (dots[i]?.level ?? 0) * (2 * RADIUS + 1)}
            r={point.caseId === caseId ? RADIUS + 2 : RADIUS}
            onPointerEnter={() => onChoose(point.caseId)}
          />
        ))}
        {chosen !== undefined && (
          <text
            className="band-text band-value"
            x={dots[at]?.x}
            y={14}
            textAnchor={(dots[at]?.x ?? 0) < 160 ? 'start' : (dots[at]?.x ?? 0) > WIDTH - 160 ? 'end' : 'middle'}
          >
            {chosen.name}, {say(chosen.valueSi)}
          </text>
        )}
      </svg>
      {item.reference !== null && (
        <p className="quiet squad-band">
          Hatched: {item.reference.low} to {say(band?.[1] ?? 0)}, {item.reference.group} ({item.reference.source.status}
          : {item.reference.source.cite}). Never a pass mark.
        </p>
      )}
    </figure>
  );
}

function clamp(at: number): number {
  return Math.min(Math.max(at, 0), WIDTH);
}
