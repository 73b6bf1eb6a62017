import {
  memo,
  type PointerEvent,
  type RefObject,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react';
import { Hatch } from './Hatch.tsx';
import type { RibbonPhase } from './PhaseRibbon.tsx';
import { ticks } from './ticks.ts';
import { useWidth } from './useWidth.ts';

/** Absent where there is no page, as in unit tests. */
const DARK = globalThis.matchMedia?.('(prefers-color-scheme: dark)');
const PAD = 12;
const HEIGHT = 104;
const TOP = 20;
/** A step this much longer than the usual one is a gap: the line is not drawn across it. */
const GAP_STEPS = 1.5;

type Points = readonly (readonly [timeS: number, value: number])[];

export interface StackedCurve {
  readonly id: string;
  readonly label: string;
  /** As written beside numbers; empty: none. */
  readonly unit: string;
  readonly filtered: Points;
  /** Drawn thin behind; null: not wanted. */
  readonly raw: Points | null;
}

/**
 * Curves below each other on one time axis, with the same phases as ground and one playhead through all. A press or drag
 * goes to that time. Only the playhead and the numbers at it are drawn anew as it moves.
 */
export function CurveStack(props: {
  curves: readonly StackedCurve[];
  phases: readonly RibbonPhase[];
  fromS: number;
  toS: number;
  playheadS: number | null;
  onSeek?: ((timeS: number) => void) | undefined;
  onRemove: (id: string) => void;
}) {
  const { curves, phases, fromS, toS, playheadS, onSeek, onRemove } = props;
  const [attach, width] = useWidth(720);
  const span = Math.max(toS - fromS, 1e-6);
  const seek = (pointer: PointerEvent<HTMLDivElement>) => {
    if (onSeek === undefined || (pointer.type === 'pointermove' && pointer.buttons !== 1)) return;
    if (pointer.target instanceof Element && pointer.target.closest('button') !== null) return;
    const bounds = pointer.currentTarget.getBoundingClientRect();
    const at = ((pointer.clientX - bounds.left) / bounds.width) * width;
    onSeek(Math.min(toS, Math.max(fromS, fromS + ((at - PAD) / (width - 2 * PAD)) * span)));
  };
  const share = playheadS === null ? null : (playheadS - fromS) / span;
  return (
    <div
      className={onSeek === undefined ? 'curve-stack' : 'curve-stack plot-seekable'}
      ref={attach}
      onPointerDown={seek}
      onPointerMove={seek}
    >
      {curves.map((curve) => (
        <figure key={curve.id} className="curve-strip">
          <Strip curve={curve} phases={phases} fromS={fromS} toS={toS} width={width} />
          <figcaption>
            <Now curve={curve} playheadS={playheadS} />
            <button
              type="button"
              className="button button-quiet"
              aria-label={`Take away ${curve.label}`}
              onClick={() => onRemove(curve.id)}
            >
              Take away
            </button>
          </figcaption>
        </figure>
      ))}
      {share !== null && share >= 0 && share <= 1 && (
        <div
          className="curve-playhead"
          style={{ transform: `translateX(${((PAD + share * (width - 2 * PAD)) / width) * 100}cqw)` }}
        />
      )}
    </div>
  );
}

/** The value of a curve at the playhead, as text beside it. */
function Now({ curve, playheadS }: { curve: StackedCurve; playheadS: number | null }) {
  const now = playheadS === null ? null : nearest(curve.filtered, playheadS);
  return (
    <output className="curve-now">
      {now === null ? '' : `${now[1].toFixed(2)} ${curve.unit} at ${now[0].toFixed(3)} s`}
    </output>
  );
}

const Strip = memo(function Strip(props: {
  curve: StackedCurve;
  phases: readonly RibbonPhase[];
  fromS: number;
  toS: number;
  width: number;
}) {
  const { curve, phases, fromS, toS, width } = props;
  const { label, unit, filtered, raw } = curve;
  const hatch = useId();
  const [low, high] = useMemo(() => rangeOf(filtered, raw), [filtered, raw]);
  const span = Math.max(toS - fromS, 1e-6);
  const wide = width - 2 * PAD;
  const x = (timeS: number) => PAD + ((timeS - fromS) / span) * wide;
  const y = (value: number) => TOP + ((high - value) / (high - low)) * (HEIGHT - TOP);
  const canvas = useLines(filtered, raw, [low, high], [fromS, toS]);
  // None in the line of the name.
  const levels = ticks(low, high, 3).filter((value) => y(value) > TOP + 8);
  return (
    <>
      <svg
        className="plot"
        viewBox={`0 0 ${width} ${HEIGHT + 4}`}
        role="img"
        aria-label={`${label} over time, from ${low.toFixed(2)} to ${high.toFixed(2)} ${unit}`}
      >
        <defs>
          <Hatch id={hatch} />
        </defs>
        {phases.map((phase, i) => {
          const [left, right] = [Math.max(PAD, x(phase.fromS)), Math.min(PAD + wide, x(phase.toS))];
          return i % 2 === 1 && right > left ? (
            <rect
              key={phase.id}
              fill={`url(#${hatch})`}
              className="curve-ground"
              x={left}
              y={TOP}
              width={right - left}
              height={HEIGHT - TOP}
            />
          ) : null;
        })}
        {levels.map((value) => (
          <g key={value}>
            <line className="curve-level" x1={PAD} y1={y(value)} x2={width - PAD} y2={y(value)} />
            <text className="plot-number plot-halo" x={PAD} y={y(value) - 3}>
              {value}
            </text>
          </g>
        ))}
        <text className="plot-label" x={PAD} y={13}>
          {label}
          {unit === '' ? '' : `, ${unit}`}
        </text>
      </svg>
      <canvas
        ref={canvas}
        className="curve-lines"
        style={{
          left: `${(100 * PAD) / width}%`,
          top: `${(100 * TOP) / (HEIGHT + 4)}%`,
          width: `${(100 * wide) / width}%`,
          height: `${(100 * (HEIGHT - TOP)) / (HEIGHT + 4)}%`,
        }}
      />
    </>
  );
});

/**
 * The lines of a strip on a canvas: a picture that is kept while only the playhead moves, where thousands of strokes of a
 * drawing would be drawn again whenever a number beside them changes.
 */
function useLines(
  filtered: Points,
  raw: Points | null,
  [low, high]: readonly [number, number],
  [fromS, toS]: readonly [number, number],
) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const lines = useMemo(() => ({ filtered: runsOf(filtered), raw: runsOf(raw ?? []) }), [filtered, raw]);
  const light = useLight();
  const size = useSize(canvas);
  useLayoutEffect(() => {
    const element = canvas.current;
    const context = element?.getContext('2d') ?? null;
    if (element === null || context === null || size.width === 0) return;
    const ratio = window.devicePixelRatio;
    element.width = Math.round(size.width * ratio);
    element.height = Math.round(size.height * ratio);
    const { color, outlineColor } = getComputedStyle(element);
    const draw = (runs: readonly Points[], colour: string, widthPx: number) => {
      context.strokeStyle = colour;
      context.lineWidth = widthPx * ratio;
      context.lineJoin = 'round';
      context.beginPath();
      for (const run of runs) {
        run.forEach(([timeS, value], i) => {
          const x = ((timeS - fromS) / (toS - fromS)) * element.width;
          const y = ((high - value) / (high - low)) * element.height;
          if (i === 0) context.moveTo(x, y);
          else context.lineTo(x, y);
        });
      }
      context.stroke();
    };
    if (lines.raw.some(({ length }) => length > 0)) draw(lines.raw, outlineColor, 1);
    draw(lines.filtered, color, 1.75);
    // Lit otherwise, the colours read above are others.
    // oxlint-disable-next-line react/exhaustive-effect-dependencies
  }, [lines, low, high, fromS, toS, light, size]);
  return canvas;
}

/** How the page is lit now; told anew when that changes, because a canvas keeps the colours it was drawn in. */
function useLight(): string {
  return useSyncExternalStore(hearLight, () => `${DARK.matches} ${document.documentElement.dataset['theme'] ?? ''}`);
}

function hearLight(tell: () => void): () => void {
  const observer = new MutationObserver(tell);
  observer.observe(document.documentElement, { attributes: true });
  DARK.addEventListener('change', tell);
  return () => {
    observer.disconnect();
    DARK.removeEventListener('change', tell);
  };
}

function useSize(element: RefObject<HTMLElement | null>): { readonly width: number; readonly height: number } {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useEffect(() => {
    if (element.current === null) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setSize({ width: entry.contentRect.width, height: entry.contentRect.height });
    });
    observer.observe(element.current);
    return () => observer.disconnect();
  }, [element]);
  return size;
}

/** With a little room above and below, so that no line lies on the edge. */
function rangeOf(filtered: Points, raw: Points | null): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const points of [filtered, raw ?? []]) {
    for (const [, value] of points) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  const slack = Math.max((high - low) * 0.08, 1e-9);
  return [low - slack, high + slack];
}

/** Stretches without a gap. */
export function runsOf(points: Points): Points[] {
  const steps = points.slice(1).map(([timeS], i) => timeS - (points[i]?.[0] ?? timeS));
  const usual = steps.toSorted((a, b) => a - b)[Math.floor(steps.length / 2)] ?? 0;
  const starts = [0, ...steps.flatMap((step, i) => (step > usual * GAP_STEPS ? [i + 1] : []))];
  return starts.map((start, i) => points.slice(start, starts[i + 1]));
}

/** The point nearest in time, by halving: points are in order. Null if there is none within a twentieth of a second. */
export function nearest(points: Points, timeS: number): readonly [number, number] | null {
  let [low, high] = [0, points.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points[middle]?.[0] ?? Infinity) <= timeS) low = middle;
    else high = middle;
  }
  const [a, b] = [points[low], points[high]];
  if (a === undefined || b === undefined) return null;
  const best = Math.abs(b[0] - timeS) < Math.abs(a[0] - timeS) ? b : a;
  return Math.abs(best[0] - timeS) <= 0.05 ? best : null;
}
