import { type KeyboardEvent, type PointerEvent, useState } from 'react';
import { usePlotArea, ZIndexLayer } from 'recharts';

export interface PlotHandle {
  readonly id: string;
  readonly label: string;
  readonly timeS: number;
  /** Nearest and farthest it may be moved. */
  readonly fromS: number;
  readonly toS: number;
}

/** The chart draws its labels in layer 2000; grips lie above them, or could not be taken hold of. */
const ABOVE_LABELS = 2100;

/** How far an arrow key moves a handle with Shift held, in steps. */
const LARGE_STEP = 10;

/**
 * Grips on the upright lines of a plot over time: dragged with a pointer, or moved with the arrow keys one sample at a
 * time. Says where it was let go, not every place on the way.
 */
export function PlotHandles(props: {
  handles: readonly PlotHandle[];
  fromS: number;
  toS: number;
  stepS: number;
  onMove: (id: string, timeS: number) => void;
}) {
  const { handles, fromS, toS, stepS, onMove } = props;
  const area = usePlotArea();
  const [drag, setDrag] = useState<{ readonly id: string; readonly timeS: number } | null>(null);
  if (area === undefined) return null;
  const { x: left, y: top, width, height } = area;
  const clamp = (handle: PlotHandle, timeS: number) => {
    const onSample = Math.round(timeS / stepS) * stepS;
    return Math.min(handle.toS, Math.max(handle.fromS, onSample));
  };
  const timeAt = ({ currentTarget, clientX }: PointerEvent<SVGGElement>, handle: PlotHandle) => {
    const box = currentTarget.ownerSVGElement?.getBoundingClientRect();
    return clamp(handle, fromS + ((clientX - (box?.left ?? 0) - left) / width) * (toS - fromS));
  };
  const onKeyDown = (event: KeyboardEvent, handle: PlotHandle) => {
    const steps = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key];
    if (steps === undefined) return;
    event.preventDefault();
    // The plot has arrow keys of its own, which walk along the samples.
    event.stopPropagation();
    onMove(handle.id, clamp(handle, handle.timeS + steps * (event.shiftKey ? LARGE_STEP : 1) * stepS));
  };
  return (
    <ZIndexLayer zIndex={ABOVE_LABELS}>
      <g className="plot-handles">
        {handles.map((handle) => {
          const timeS = drag?.id === handle.id ? drag.timeS : handle.timeS;
          const x = left + ((timeS - fromS) / (toS - fromS)) * width;
          return (
            <g
              key={handle.id}
              // A drawing holds no input element; this is the pattern for a slider drawn by oneself.
              // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
              role="slider"
              tabIndex={0}
              aria-label={`${handle.label}, move with the arrow keys`}
              aria-valuemin={handle.fromS}
              aria-valuemax={handle.toS}
              aria-valuenow={timeS}
              aria-valuetext={`${timeS.toFixed(3)} s`}
              onKeyDown={(event) => onKeyDown(event, handle)}
              onPointerDown={(event) => {
                event.currentTarget.setPointerCapture(event.pointerId);
                setDrag({ id: handle.id, timeS: handle.timeS });
              }}
              onPointerMove={(event) => {
                if (drag?.id === handle.id) setDrag({ id: handle.id, timeS: timeAt(event, handle) });
              }}
              onPointerUp={(event) => {
                if (drag?.id !== handle.id) return;
                const released = timeAt(event, handle);
                setDrag(null);
                if (Math.abs(released - handle.timeS) >= stepS / 2) onMove(handle.id, released);
              }}
              onPointerCancel={() => setDrag(null)}
            >
              <line x1={x} y1={top} x2={x} y2={top + height} />
              <rect className="plot-handle-reach" x={x - 12} y={top} width={24} height={height} />
              <path d={`M ${x} ${top + height - 4} l 7 10 h -14 z`} />
            </g>
          );
        })}
      </g>
    </ZIndexLayer>
  );
}
