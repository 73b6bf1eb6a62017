import { type KeyboardEvent, type PointerEvent, useId, useRef, useState } from 'react';
import { Hatch } from './Hatch.tsx';
import { stackLabels } from './stackLabels.ts';
import { textWidth } from './textWidth.ts';
import { ticks } from './ticks.ts';
import { useWidth } from './useWidth.ts';

export interface RibbonPhase {
  readonly id: string;
  readonly label: string;
  readonly fromS: number;
  readonly toS: number;
}

export interface RibbonEvent {
  readonly id: string;
  readonly label: string;
  readonly timeS: number;
  readonly uS: number | null;
}

/** How events are moved along the ribbon. */
export interface Moving {
  /** Length of a frame: events lie on frames. */
  readonly frameS: number;
  readonly onMove: (id: string, timeS: number) => void;
  /** While it is on its way, so that the stage can go along. */
  readonly onMoving: (timeS: number) => void;
}

const PAD = 12;
const BAND = 30;
const ROW = 17;
/** Labels that can be taken hold of are as tall as a finger or a shaking hand needs (WCAG 2.5.8). */
const HOLD_ROW = 26;

/**
 * One time axis: phases as bands, events as ticks with their names, the playhead through both. Phases are told apart
 * by number, name and alternate hatching, not by colour. Proposed events are dashed. With `moving`, an event is dragged
 * by its name or moved by the arrow keys, a frame at a time, ten with Shift.
 */
export function PhaseRibbon(props: {
  phases: readonly RibbonPhase[];
  events: readonly RibbonEvent[];
  /** Instants nobody has confirmed. */
  proposals?: readonly RibbonEvent[];
  fromS: number;
  toS: number;
  playheadS: number | null;
  onSeek?: ((timeS: number) => void) | undefined;
  moving?: Moving | undefined;
}) {
  const { fromS, toS, playheadS, onSeek, moving } = props;
  const [attach, width] = useWidth(720);
  const hatch = useId();
  const svg = useRef<SVGSVGElement>(null);
  const [drag, setDrag] = useState<{ readonly id: string; readonly timeS: number } | null>(null);
  const span = Math.max(toS - fromS, 1e-6);
  const x = (timeS: number) => PAD + ((timeS - fromS) / span) * (width - 2 * PAD);
  const isShown = ({ timeS }: RibbonEvent) => timeS >= fromS - 1e-9 && timeS <= toS + 1e-9;

  const placed = props.events.map((event) => (event.id === drag?.id ? { ...event, timeS: drag.timeS } : event));
  const proposed = new Set((props.proposals ?? []).map(({ id }) => id));
  const events = [...placed, ...(props.proposals ?? [])].filter(isShown).toSorted((a, b) => a.timeS - b.timeS);
  const row = moving === undefined ? ROW : HOLD_ROW;
  const boxes = events.map((event) => labelBox(x(event.timeS), labelOf(event), width));
  const eventRows = stackLabels(boxes, 8);
  const eventDepth = Math.max(0, ...eventRows.map((at) => at + 1));
  const top = eventDepth * row + 8;

  const phases = props.phases
    .map((phase, i, all) => ({
      ...phase,
      number: i + 1,
      from: Math.max(fromS, phase.fromS),
      to: Math.min(toS, phase.toS),
      // Bands that can be seen take turns: a phase of no length is not one.
      isHatched: all.slice(0, i).filter((before) => before.toS > before.fromS).length % 2 === 1,
    }))
    .filter(({ from, to }) => to >= from);
  // A name too long for its band hangs below it.
  const hanging = phases.flatMap((phase) => {
    const middle = (x(phase.from) + x(phase.to)) / 2;
    const fits = textWidth(`${phase.number} ${phase.label}`) < x(phase.to) - x(phase.from) - 6;
    return fits ? [] : [{ phase, middle, box: labelBox(middle, `${phase.number} ${phase.label}`, width) }];
  });
  const hangingRows = stackLabels(
    hanging.map((item) => item.box),
    8,
  );
  const hangingDepth = Math.max(0, ...hangingRows.map((at) => at + 1));
  const axisY = top + BAND + (hangingDepth > 0 ? 8 + hangingDepth * ROW : 0) + 6;
  const height = axisY + 24;

  const timeAt = (clientX: number) => {
    const bounds = svg.current?.getBoundingClientRect();
    if (bounds === undefined) return fromS;
    const at = ((clientX - bounds.left) / bounds.width) * width;
    return Math.min(toS, Math.max(fromS, fromS + ((at - PAD) / (width - 2 * PAD)) * span));
  };
  const seek = (pointer: PointerEvent<SVGSVGElement>) => {
    if (onSeek === undefined || drag !== null || (pointer.type === 'pointermove' && pointer.buttons !== 1)) return;
    onSeek(timeAt(pointer.clientX));
  };
  const handlesOf = (event: RibbonEvent) => {
    if (moving === undefined || proposed.has(event.id)) return {};
    const onFrame = (timeS: number) => Math.max(0, Math.round(timeS / moving.frameS) * moving.frameS);
    return {
      role: 'slider',
      tabIndex: 0,
      className: 'ribbon-hold',
      'aria-label': `${event.label}, move`,
      'aria-valuemin': 0,
      'aria-valuemax': Number(toS.toFixed(4)),
      'aria-valuenow': Number(event.timeS.toFixed(4)),
      'aria-valuetext': `${event.timeS.toFixed(4)} s`,
      onPointerDown: (pointer: PointerEvent<SVGGElement>) => {
        if (pointer.button !== 0) return;
        pointer.stopPropagation();
        pointer.currentTarget.setPointerCapture(pointer.pointerId);
        setDrag({ id: event.id, timeS: event.timeS });
      },
      onPointerMove: (pointer: PointerEvent<SVGGElement>) => {
        if (drag?.id !== event.id) return;
        pointer.stopPropagation();
        const timeS = onFrame(timeAt(pointer.clientX));
        if (timeS === drag.timeS) return;
        setDrag({ id: event.id, timeS });
        moving.onMoving(timeS);
      },
      onPointerUp: () => {
        if (drag?.id !== event.id) return;
        const stored = props.events.find(({ id }) => id === event.id);
        if (stored !== undefined && Math.abs(stored.timeS - drag.timeS) > moving.frameS / 100)
          moving.onMove(event.id, drag.timeS);
        setDrag(null);
      },
      onPointerCancel: () => setDrag(null),
      onKeyDown: (key: KeyboardEvent<SVGGElement>) => {
        const by = { ArrowLeft: -1, ArrowRight: 1 }[key.key];
        if (by === undefined || key.altKey || key.ctrlKey || key.metaKey) return;
        key.preventDefault();
        key.stopPropagation();
        const timeS = onFrame(event.timeS + by * (key.shiftKey ? 10 : 1) * moving.frameS);
        moving.onMove(event.id, timeS);
        moving.onMoving(timeS);
      },
    };
  };

  return (
    <figure className="ribbon" ref={attach}>
      <svg
        ref={svg}
        viewBox={`0 0 ${width} ${height}`}
        className={onSeek === undefined ? 'plot' : 'plot plot-seekable'}
        role={moving === undefined ? 'img' : 'group'}
        aria-label={describe(props.phases, props.events)}
        onPointerDown={seek}
        onPointerMove={seek}
      >
        <defs>
          <Hatch id={hatch} />
        </defs>
        {phases.map(({ id, label, number, from, to, isHatched }) => {
          const left = x(from);
          const wide = Math.max(x(to) - left, 1);
          const name = `${number} ${label}`;
          return (
            <g key={id}>
              <rect className="band" x={left} y={top} width={wide} height={BAND} />
              {isHatched && <rect fill={`url(#${hatch})`} x={left} y={top} width={wide} height={BAND} />}
              <text className="plot-label plot-halo" x={left + wide / 2} y={top + BAND / 2 + 4.5} textAnchor="middle">
                {textWidth(name) < wide - 6 ? name : wide > 9 ? number : ''}
              </text>
            </g>
          );
        })}
        {hanging.map(({ phase, middle, box }, i) => {
          const y = top + BAND + 8 + ((hangingRows[i] ?? 0) + 1) * ROW - 5;
          return (
            <g key={phase.id}>
              <line className="plot-leader" x1={middle} y1={top + BAND} x2={middle} y2={y - 11} />
              <text className="plot-label plot-halo" x={box.start} y={y}>
                {phase.number} {phase.label}
              </text>
            </g>
          );
        })}
        {events.map((event, i) => {
          const at = x(event.timeS);
          const bottom = ((eventRows[i] ?? 0) + 1) * row;
          const half = event.uS === null ? 0 : (event.uS / span) * (width - 2 * PAD);
          const isProposed = proposed.has(event.id);
          const box = boxes[i] ?? { start: at, width: 0 };
          return (
            <g key={event.id} {...handlesOf(event)}>
              <line
                className="plot-tick"
                strokeDasharray={isProposed ? '3 3' : undefined}
                x1={at}
                y1={bottom - 1}
                x2={at}
                y2={top + BAND}
              />
              {half > 1 && <line className="plot-error" x1={at - half} y1={top} x2={at + half} y2={top} />}
              {moving !== undefined && !isProposed && (
                <>
                  <rect className="ribbon-hit" x={at - 6} y={bottom - 1} width={12} height={top + BAND - bottom + 1} />
                  <rect
                    className="ribbon-hit ribbon-name"
                    x={box.start - 3}
                    y={bottom - row + 1}
                    width={Math.max(24, box.width + 6)}
                    height={row - 2}
                    rx={2}
                  />
                </>
              )}
              <text className="plot-label plot-halo" x={box.start} y={bottom - (row === ROW ? 5 : 9)}>
                {labelOf(event)}
              </text>
            </g>
          );
        })}
        <line className="plot-axis" x1={PAD} y1={axisY} x2={width - PAD} y2={axisY} />
        {ticks(fromS, toS, Math.max(2, Math.floor(width / 110))).map((timeS) => (
          <g key={timeS}>
            <line className="plot-axis" x1={x(timeS)} y1={axisY} x2={x(timeS)} y2={axisY + 4} />
            <text className="plot-number" x={x(timeS)} y={axisY + 17} textAnchor="middle">
              {timeS}
            </text>
          </g>
        ))}
        <text className="plot-number" x={width - PAD} y={axisY - 5} textAnchor="end">
          s
        </text>
        {playheadS !== null && playheadS >= fromS && playheadS <= toS && (
          <g className="playhead">
            <line x1={x(playheadS)} y1={0} x2={x(playheadS)} y2={axisY} />
            <path d={`M ${x(playheadS) - 5} ${axisY + 7} h 10 l -5 -8 z`} />
          </g>
        )}
      </svg>
    </figure>
  );

  function labelOf(event: RibbonEvent): string {
    return proposed.has(event.id) ? `${event.label}?` : event.label;
  }
}

/** Where a label centred on `middle` starts, kept inside the drawing. */
function labelBox(middle: number, label: string, width: number) {
  const wide = textWidth(label);
  return { start: Math.max(0, Math.min(middle - wide / 2, width - wide)), width: wide };
}

function describe(phases: readonly RibbonPhase[], events: readonly RibbonEvent[]): string {
  if (phases.length > 0) {
    return `Phases: ${phases.map((p) => `${p.label}, ${p.fromS.toFixed(2)} to ${p.toS.toFixed(2)} s`).join('; ')}.`;
  }
  return `Events: ${events.map((event) => `${event.label} at ${event.timeS.toFixed(2)} s`).join('; ')}.`;
}
