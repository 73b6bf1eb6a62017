import { type KeyboardEvent, type PointerEvent, type ReactNode, type RefObject, useRef, useState } from 'react';
import type { Place } from '../../shared/kernel/track/image.ts';
import { Loupe } from './Loupe.tsx';

export interface DrawnPoint extends Place {
  readonly point: string;
  readonly label: string;
  /** How it was obtained: a person's own points are drawn solid, others dashed. */
  readonly isByHand: boolean;
}

/** Arrow keys move a point by this many px; with Shift by the second. */
const NUDGES_PX = [0.25, 2] as const;
const ARROWS: Readonly<Record<string, Place>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/**
 * The picture with what is drawn on it. A click gives its place in px of the film; the middle of the first pixel is 0, 0.
 * On the keyboard: Page Up and Page Down step by a frame, arrow keys move the point at hand, Enter puts it down.
 */
export function Stage(props: {
  canvas: RefObject<HTMLCanvasElement | null>;
  width: number;
  height: number;
  shownFrame: number | null;
  label: string;
  points: readonly DrawnPoint[];
  /** The point at hand, whether or not it is in this frame. */
  active: string | null;
  /** What else is drawn in px of the film: a scale, a path. */
  drawing: ReactNode;
  /** What a click does now, in a word for the cursor. */
  isPlacing: boolean;
  onPlace: (place: Place) => void;
  onEnter: () => void;
  onNudge: (by: Place) => void;
  onStep: (frames: number) => void;
  onRemove: () => void;
}) {
  const { canvas, width, height, points, active, isPlacing } = props;
  const [cursor, setCursor] = useState<Place | null>(null);
  const svg = useRef<SVGSVGElement>(null);
  const here = points.find(({ point }) => point === active) ?? null;
  const unit = width / 640;

  /** The drawing knows where it lies on screen, margins and all; its units are the film's pixels. */
  const placeOf = ({ clientX, clientY }: PointerEvent): Place => {
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(svg.current?.getScreenCTM()?.inverse());
    return { x, y };
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const arrow = ARROWS[event.key];
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'PageDown') props.onStep(1);
    else if (event.key === 'PageUp') props.onStep(-1);
    else if (event.key === 'Enter' && isPlacing) props.onEnter();
    else if (event.key === 'Delete' && here !== null) props.onRemove();
    else if (arrow !== undefined && here !== null) {
      const px = NUDGES_PX[event.shiftKey ? 1 : 0];
      props.onNudge({ x: arrow.x * px, y: arrow.y * px });
    } else if (arrow !== undefined && arrow.x !== 0) props.onStep(arrow.x);
    else return;
    event.preventDefault();
  };

  return (
    // The picture itself is worked on, with the keyboard as with the pointer: it is one control.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions
    <div className="bench-stage" role="application" aria-label={props.label} tabIndex={0} onKeyDown={onKeyDown}>
      <canvas ref={canvas} data-frame={props.shownFrame ?? undefined} style={{ aspectRatio: `${width} / ${height}` }} />
      <svg
        ref={svg}
        className={isPlacing ? 'bench-drawing bench-placing' : 'bench-drawing'}
        viewBox={`-0.5 -0.5 ${width} ${height}`}
        aria-hidden="true"
        onPointerMove={(event) => setCursor(placeOf(event))}
        onPointerLeave={() => setCursor(null)}
        onPointerDown={(event) => {
          if (event.button === 0 && isPlacing) props.onPlace(placeOf(event));
        }}
      >
        {props.drawing}
        {points.map(({ point, label, x, y, isByHand }) => {
          const isActive = point === active;
          const r = (isActive ? 7 : 4) * unit;
          const dash = isByHand ? undefined : `${2.5 * unit} ${2 * unit}`;
          return (
            <g key={point} className={isActive ? 'bench-point bench-point-active' : 'bench-point'}>
              <circle className="bench-halo" cx={x} cy={y} r={r} strokeWidth={3.5 * unit} />
              <circle cx={x} cy={y} r={r} strokeWidth={1.5 * unit} strokeDasharray={dash} />
              {isActive && (
                <text
                  className="bench-name"
                  x={x + 1.6 * r}
                  y={y - 1.2 * r}
                  fontSize={13 * unit}
                  strokeWidth={3 * unit}
                >
                  {label}
                </text>
              )}
            </g>
          );
        })}
      </svg>
      <Loupe canvas={canvas} at={cursor ?? here} width={width} frame={props.shownFrame} marks={points} />
    </div>
  );
}
